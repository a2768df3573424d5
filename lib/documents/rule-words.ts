import type { NameCountry } from '@/lib/cuts';
import type { Rule, RuleChange, RuleTopic, Stage } from '@/lib/rules';

/** What a rule is about: the heading its group stands under. */
export const TOPIC_WORDS: Readonly<Record<RuleTopic, string>> = {
  meat: 'Where the meat goes',
  amount: 'How much there is',
  cutting: 'How it is cut',
  'made-things': 'Sausage, jerky and what else is made',
  trophy: 'Antlers, cape and hide',
  condition: 'How the animal comes in',
  health: 'Health',
  'paper-and-law': 'Tags, papers and the law',
  'packing-and-bill': 'Packing, the bill and collecting',
};

/** When rules are looked at, as it goes on in a sentence that begins "We look at it". */
export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  order: 'while the order is written',
  receiving: 'when the animal comes in',
  cutting: 'before the knife starts',
  packing: 'when it is packed and weighed',
  billing: 'before the invoice is issued',
  release: 'when it is handed over',
};

/** A severity in plain words: what a finding of this rule means for whoever reads it. */
export function severityWords(severity: Rule['severity'] | RuleChange['severity'], { stages, whom }: Pick<Rule, 'stages' | 'whom'>): string {
  switch (severity) {
    case 'stop':
      return `Has to be mended before it can be ${doneNext(stages)}`;
    case 'ask':
      return whom === 'shop' ? 'We settle it ourselves' : 'We ask you';
    case 'note':
      return 'Worth knowing';
    case 'off':
      return 'This shop leaves it out';
  }
}

/** What a stop keeps from being done to the animal, by the first stage it stands at. */
function doneNext([first = 'order']: readonly Stage[]): string {
  return { order: 'cut', receiving: 'cut', cutting: 'cut', packing: 'packed', billing: 'billed', release: 'handed over' }[first];
}

/** What a rule that this shop has softened is elsewhere, in a sentence. */
export function softenedWords(rule: Pick<Rule, 'severity' | 'stages' | 'whom'>): string {
  switch (rule.severity) {
    case 'stop':
      return `Elsewhere it ${inSentence(severityWords(rule.severity, rule))}; this shop has softened that.`;
    case 'ask':
      return `Elsewhere ${rule.whom === 'shop' ? 'the shop settles it' : 'you are asked'}; this shop has softened that.`;
    case 'note':
      return 'Elsewhere it is said; this shop leaves it out.';
  }
}

/** Why a rule cannot be softened, or null where a shop may. */
export function groundWords(ground: Rule['ground']): string | null {
  switch (ground) {
    case 'safety':
      return 'This is about safety, so no shop can soften it or switch it off.';
    case 'law':
      return 'This is about the law, so no shop can soften it or switch it off.';
    case 'trade':
      return null;
  }
}

/**
 * When a rule is looked at, in a sentence.
 *
 * @example stagesWords(['order', 'cutting']) // 'We look at it while the order is written and before the knife starts.'
 */
export function stagesWords(stages: readonly Stage[]): string {
  const said = stages.map((stage) => STAGE_WORDS[stage]);
  const last = said.at(-1) ?? '';
  return `We look at it ${said.length > 1 ? `${said.slice(0, -1).join(', ')} and ${last}` : last}.`;
}

/**
 * The first sentence of a paragraph: the line that stands for it in a list.
 *
 * @example firstSentence('A muscle can be cut once. A leg has more.') // 'A muscle can be cut once.'
 */
export function firstSentence(paragraph: string): string {
  return /^.*?[.!](?=\s+[A-Z]|$)/s.exec(paragraph)?.[0] ?? paragraph;
}

/** First letter small, as words go on in a sentence. */
export function inSentence(text: string): string {
  return `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
}

/** Words of the reasons, which are written in one country's, in another's; the longer phrase before the shorter. */
const US_WORDS: readonly (readonly [RegExp, string])[] = [
  [/\bminced\b/g, 'ground'],
  [/\bminces?\b/g, 'ground meat'],
  [/\bboned, rolled joints?\b/g, 'boned, rolled roast'],
  [/\bfillets\b/g, 'tenderloins'],
  [/\bfillet\b/g, 'tenderloin'],
  [/\bhaunches\b/g, 'hind legs'],
  [/\bhaunch\b/g, 'hind leg'],
  [/\bjoints\b/g, 'roasts'],
  [/\bjoint\b/g, 'roast'],
  [/\btopside\b/g, 'top round'],
  [/\btenderiser\b/g, 'tenderizer'],
  [/\btenderised\b/g, 'tenderized'],
  [/\bsilversides?\b/g, 'bottom round'],
  [/\bgrey\b/g, 'gray'],
  [/\bspoilt\b/g, 'spoiled'],
  [/\bdearest\b/g, 'most expensive'],
];

/** A paragraph of a reason in the words of the shop's country. */
export function inCountryWords(paragraph: string, country: NameCountry): string {
  return country === 'us' ? US_WORDS.reduce((text, [from, to]) => text.replace(from, to), paragraph) : paragraph;
}
