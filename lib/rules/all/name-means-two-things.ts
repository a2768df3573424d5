import { readTissueKey } from '@/lib/carcass';
import { type MisleadingName, type NameBook, type NameMeaning, TARGETS, cutsOf, nameBook } from '@/lib/cuts';
import { type Edit, usualSide } from '@/lib/instructions';
import { exampleOrder } from '../example-order';
import { type NoteSpan, noteWords, wordsOfPhrase } from '../note-words';
import { type RuleExamples, type RuleReason, type RuledOrder, type Suggestion, defineRule } from '../rule';
import { lineWords, sentence } from '../wording';

type Misled = { readonly name: MisleadingName; readonly spot: NoteSpan };

/** A beef word names something from this heaviest live weight of a kind on: elk and moose. Judgement. */
const ELK_GRAMS = 500_000;

function isAmiss({ notOn }: MisleadingName, { plan }: RuledOrder): boolean {
  const { plausibleLiveGrams, cooking } = plan.forecast.species;
  if (notOn === 'below-elk') return plausibleLiveGrams.to < ELK_GRAMS;
  return notOn !== 'lean-belly' || cooking !== 'birds-bear-boar';
}

/** Names not said plainly: once, however often a name is written. What stands in brackets behind a name settles it. */
function misledBy(note: string, { names, plain }: NameBook): readonly Misled[] {
  const words = noteWords(note);
  const found = new Map<string, Misled>();
  const settled = new Set<string>();
  const phrases = [...names.flatMap((name) => name.spellings.map((spelling) => ({ name, spelling }))), ...plain.map((spelling) => ({ name: null, spelling }))];
  let from = 0;
  while (from < words.length) {
    const here = phrases.map(({ name, spelling }) => ({ name, long: wordsOfPhrase(note, words, from, spelling) }));
    const { name, long } = here.reduce((best, one) => (one.long > best.long ? one : best), { name: null, long: 0 });
    const [at, end] = [words[from]?.at ?? 0, words[from + Math.max(long, 1) - 1]?.end ?? 0];
    from += Math.max(long, 1);
    if (!name) continue;
    if (note.slice(end).trimStart().startsWith('(')) {
      settled.add(name.term);
      const close = note.indexOf(')', end);
      from = words.findIndex((word) => close >= 0 && word.at > close);
      if (from < 0) break;
    } else if (!found.has(name.term)) found.set(name.term, { name, spot: { at, end } });
  }
  return [...found.values()].filter(({ name }) => !settled.has(name.term));
}

function misled(order: RuledOrder): readonly Misled[] {
  const { note } = order.instructions;
  if (note === '' || order.plan.forecast.species.plan === 'bird') return [];
  return misledBy(note, nameBook(order.words.country)).filter(({ name }) => isAmiss(name, order));
}

/** The meaning in brackets behind the word, and what else of the order has to say the same. */
function meant({ name, spot }: Misled, meaning: NameMeaning, order: RuledOrder): Suggestion {
  const { note } = order.instructions;
  const inBrackets = `(${meaning.words}: ${meaning.where})`;
  const also = keptWhole(spot, meaning, order) ?? minced(meaning, order);
  return {
    label: sentence(meaning.words),
    consequence: `${sentence(meaning.where)}. It is written into the note behind "${name.term}"${also ? `, and ${also.words}` : ''}.`,
    edits: [{ kind: 'set-note', note: `${note.slice(0, spot.end)} ${inBrackets}${note.slice(spot.end)}` }, ...(also?.edits ?? [])],
    ...(meaning.target && { target: meaning.target }),
  };
}

type Also = { readonly words: string; readonly edits: readonly Edit[] };

/** A line for what the note wants whole and no line speaks of: else it would go with the rest. */
function keptWhole(spot: NoteSpan, { target }: NameMeaning, { instructions, plan, circumstances, words }: RuledOrder): Also | null {
  if (!target || !/\b(whole|one piece)\b/i.test(clauseAt(instructions.note, spot))) return null;
  // Boned meat has no muscles to name, and fillets of a gut-shot animal are nobody's.
  if (circumstances.form === 'boned-out' || (target === 'fillet' && plan.forecast.facts.gutShot)) return null;
  const muscles: readonly string[] = TARGETS[target].muscles;
  const mine = plan.ledger.filter(({ key }) => muscles.includes(readTissueKey(key).tissue));
  const cut = (['whole', 'joint'] as const).find((one) => cutsOf(target).includes(one));
  if (!cut || mine.length === 0 || mine.some(({ lineId }) => lineId !== null)) return null;
  const side = usualSide(target);
  return { words: `your list gets ${lineWords({ target, side, cut }, words)}`, edits: [{ kind: 'add-line', target, side, cut }] };
}

/** The words round a name up to the next comma, stop or 'and': what is said there is said of it. */
function clauseAt(note: string, { at, end }: NoteSpan): string {
  const before = note.slice(0, at).split(/[,.;:!\n]| and | but /i).at(-1) ?? '';
  const after = note.slice(end).split(/[,.;:!\n]| and | but /i)[0] ?? '';
  return `${before}${note.slice(at, end)}${after}`;
}

/** Ground meat as the meaning has it, where the order has it otherwise. */
function minced({ mince: meaning }: NameMeaning, { instructions: { mince } }: RuledOrder): Also | null {
  switch (meaning) {
    case 'without-fat':
      return mince.addedFat === 'none' ? null : { words: 'no fat is added', edits: [{ kind: 'set-fat', addedFat: 'none', fatPercent: 0 }] };
    case 'with-fat':
      return mince.addedFat === 'none' ? { words: '10 percent of beef fat is added', edits: [{ kind: 'set-fat', addedFat: 'beef', fatPercent: 10 }] } : null;
    case 'patties':
      return mince.shape === 'patties' ? null : { words: 'it is made into patties', edits: [{ kind: 'set-mince-shape', shape: 'patties' }] };
    case undefined:
      return null;
  }
}

/** Why the trade objects, in a paragraph a customer can read, and where that is from. */
export const nameMeansTwoThingsReason: RuleReason = {
  topic: 'cutting',
  why: 'The same name is said of different muscles: sirloin is the loin in the UK and a muscle of the hind leg in the US. Names of beef cuts are asked for that an animal the size of a deer does not have. The cutter cannot see which was meant, and a cut cannot be uncut.',
  source: 'public trade and standards text of the UK and the US, read side by side; the rest common practice, no source',
};

export const nameMeansTwoThings = defineRule<Misled>({
  id: 'name-means-two-things',
  severity: 'ask',
  title: 'A name that means more than one thing',
  ground: 'trade',
  stages: ['order', 'receiving', 'cutting'],
  check: misled,
  keyOf: ({ name }) => name.term,
  place: () => ({ kind: 'field', field: 'note' }),
  part: () => null,
  message: ({ name }, { plan }) => {
    const meanings = name.meanings.map(({ words, where }) => `${words} (${where})`);
    const either = `${meanings.slice(0, -1).join(', ')} or ${meanings.at(-1) ?? ''}`;
    return name.notOn
      ? `The note says "${name.term}", which is no cut of ${withArticle(plan.forecast.species.name)}; what comes closest is ${either}.`
      : `The note says "${name.term}", which can mean ${either}.`;
  },
  suggestions: (found, order) => found.name.meanings.map((meaning) => meant(found, meaning, order)),
});

function withArticle(name: string): string {
  return `${/^[aeiou]/i.test(name) ? 'an' : 'a'} ${name}`;
}

const said = (note: string, country: 'uk' | 'us' = 'uk', speciesId = 'white-tailed-deer'): ReturnType<typeof exampleOrder> =>
  exampleOrder({ instructions: { note }, facts: { speciesId }, words: { country, unit: 'lb' } });

/** Orders that are fine, and orders that are not with exactly what is said of them. */
export const nameMeansTwoThingsExamples = (): RuleExamples => ({
  valid: [
    said('Top sirloin in steaks, and by Friday.', 'us'),
    said('Hind quarters in quarter-inch slices, boneless chops, nothing from three quarters down.', 'us'),
    said('Backstrap whole.', 'us'),
    said('Sirloin (rump: top of the hind leg, behind the loin) in steaks. Leave the rest of the sirloin.'),
    said('I dressed it at once. Add bacon to the sausage.'),
    said('Ribeye and brisket.', 'us', 'elk'),
    said('Bacon of the belly.', 'us', 'wild-boar'),
    said('Ham and chops and a quarter.', 'uk', 'pheasant'),
  ],
  invalid: [
    {
      order: said('Sirloin in steaks.'),
      messages: ['The note says "sirloin", which can mean loin (along the back, outside) or rump (top of the hind leg, behind the loin).'],
    },
    {
      order: said('sirloin tips and TENDERLOINS whole', 'us'),
      messages: [
        'The note says "sirloin tip", which can mean sirloin tip (front of the thigh, above the knee) or top sirloin (top of the hind leg, behind the loin).',
        'The note says "tenderloin", which can mean tenderloin (inside the body, under the spine) or backstrap (along the back, outside).',
      ],
    },
    {
      order: said('Tri-tip for the grill', 'us'),
      messages: [
        'The note says "tri-tip", which is no cut of a white-tailed deer; what comes closest is top sirloin roast (top of the hind leg, behind the loin) or top sirloin steaks (top of the hind leg, behind the loin).',
      ],
    },
    {
      order: said('It was 140 lbs dressed', 'us'),
      messages: [
        'The note says "dressed", which can mean field-dressed weight (gutted, with hide, head and legs), hanging weight (on the rail, without hide, head and lower legs), boneless weight (clean meat off the bone) or finished weight (what is packed).',
      ],
    },
  ],
});
