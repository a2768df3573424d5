import { formatWeight } from '@/lib/units';
import { listed } from './gone-words';
import type { GoesWords, GonePart, GoneStage, WhereItGoes } from './where-it-goes';

/**
 * "Where is the rest of my deer?", answered of this animal: what it weighed and hung at, what of that is no meat, what goes home.
 *
 * @example
 * // 'Your buck weighed 150.0 lb gutted; without head, hide and lower legs it hung at 118.0 lb.'
 * // 'Of that about 28.4 lb was bone, 9.1 lb fat, membrane and trim, and 3.0 lb dried off on the rail.'
 * // 'You take home 77.5 lb of meat, 66% of what hung.'
 */
export function threeSentences(goes: WhereItGoes, { unit, locale }: Pick<GoesWords, 'unit' | 'locale'>): readonly [string, string, string] {
  const write = (grams: number): string => formatWeight(grams, unit, locale);
  return [weightSentence(goes, write), lossSentence(goes, write), homeSentence(goes, write)];
}

type Write = (grams: number) => string;

function weightSentence({ stages, words, isPacked }: WhereItGoes, write: Write): string {
  const came = stages.at(-2);
  if (!came) throw new Error('An animal that came as nothing');
  const isMeasured = came.known === 'measured';
  const grams = `${isMeasured ? '' : 'about '}${write(came.range.likely)}`;
  const weighed = isMeasured ? `weighed ${grams}` : isPacked ? `came to ${grams}` : `should weigh ${grams}`;
  const without = words.without === '' ? '' : `, without ${words.without},`;
  if (words.form === 'quartered') return `The quarters of your ${words.animal}${without} ${weighed}.`;
  if (words.form === 'boned-out') return `The meat of your ${words.animal}, off the bone${without === '' ? ',' : ` and${without.slice(1)}`} ${weighed}.`;
  const hung = words.isBird
    ? `${isMeasured || isPacked ? 'came' : 'should come'} to ${grams}`
    : `${isMeasured || isPacked ? 'hung' : 'should hang'} at ${grams}`;
  if (!words.isWhole) return `Without ${words.without}, your ${words.animal} ${hung}.`;
  const above = stages.slice(0, -2);
  const from = above.findLast((stage) => stage.known === 'measured') ?? above.find(({ id }) => id === 'field-dressed') ?? came;
  return `Your ${words.animal} ${fromWords(from, words.isBird, isMeasured || isPacked, write)}; without ${words.between(from.id === 'came' || from.id === 'home' ? 'field-dressed' : from.id, 'hanging')} it ${hung}.`;
}

function fromWords({ id, known, range }: GoneStage, isBird: boolean, isPast: boolean, write: Write): string {
  const as =
    id === 'live'
      ? 'alive'
      : id === 'field-dressed'
        ? isBird ? 'drawn, in its feathers' : 'gutted'
        : id === 'legs-off'
          ? isBird ? 'drawn, its feet off' : 'gutted, its lower legs off'
          : isBird ? 'in its feathers, without head and feet' : 'in the hide, without head and lower legs';
  if (known === 'measured') return `weighed ${write(range.likely)} ${as}`;
  return `${isPast ? 'weighed' : 'should weigh'} about ${write(range.likely)} ${as}`;
}

function lossSentence({ stages, isPacked }: WhereItGoes, write: Write): string {
  const leaves = stages.at(-2)?.leaves ?? [];
  if (leaves.length === 0) return isPacked ? 'None of that was lost.' : 'None of that should be lost.';
  const said = leaves.map((part, at) => `${at === 0 ? 'about ' : ''}${write(part.range.likely)} ${lossWords(part, at, leaves, isPacked)}`);
  return `Of that ${said.length < 3 ? listed(said) : `${said.slice(0, -1).join(', ')}, and ${said.at(-1)}`}.`;
}

function lossWords({ id, label }: GonePart, at: number, leaves: readonly GonePart[], isPacked: boolean): string {
  switch (id) {
    case 'bone':
    case 'trim': {
      const isFirst = at === 0 || !['bone', 'trim'].includes(leaves[at - 1]?.id ?? '');
      return isFirst ? `${isPacked ? 'was' : 'should be'} ${label}` : label;
    }
    case 'wounds':
      return label.startsWith('round')
        ? `${label.replace(', not fit to eat', '')} ${isPacked ? 'was' : 'will'} not ${isPacked ? '' : 'be '}fit to eat`
        : `${isPacked ? 'was' : 'will be'} ${label}`;
    default:
      return isPacked ? label : `should ${label.replace(/^dried/, 'dry')}`;
  }
}

function homeSentence({ takesHome, isPacked, words, home, stages, addedGrams, hasBoneIn, forecastHome }: WhereItGoes, write: Write): string {
  const came = stages.at(-2)?.range.likely ?? 0;
  const open = home.find(({ id }) => id === 'undecided');
  const waits = open ? `${write(open.range.likely)} of meat waits for you to say how it is cut` : '';
  const grams = takesHome.range.likely;
  if (grams === 0) return waits === '' ? 'No meat of it goes home.' : `About ${waits}.`;
  const percent = `${Math.round((grams * 100) / came)}%`;
  const isPast = isPacked || stages.at(-2)?.known === 'measured';
  const ofWhat = words.isWhole ? (words.isBird ? 'of the plucked bird' : isPast ? 'of what hung' : 'of what hangs') : isPast ? 'of what came' : 'of what comes';
  const meat = hasBoneIn ? 'of meat, some of it on the bone,' : 'of meat,';
  if (isPacked) {
    const added = addedGrams > 0 ? `; ${write(addedGrams)} of pork or fat went in besides` : '';
    const was = forecastHome ? `; the forecast was ${write(forecastHome.low)} to ${write(forecastHome.high)}` : '';
    return `You take home ${write(grams)} ${meat} ${percent} ${ofWhat}${was}${added}.`;
  }
  const { low, high } = takesHome.range;
  const dries = words.dries === '' ? '' : `; what goes into ${words.dries} comes out lighter`;
  const between = low < high ? `; eight times in ten it is between ${write(low)} and ${write(high)}` : '';
  return `You should take home about ${write(grams)} ${meat} ${percent} ${ofWhat}${between}${waits === '' ? '' : `, and another ${waits}`}${dries}.`;
}
