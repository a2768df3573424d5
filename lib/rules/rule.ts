import type { DeliveryForm, PartId, Sex, SpeciesBook } from '@/lib/carcass';
import type { NameCountry } from '@/lib/cuts';
import type { Edit, Instructions } from '@/lib/instructions';
import type { Plan } from '@/lib/plan';
import type { WeightUnit } from '@/lib/units';

/** Stop: it cannot or may not be done. Ask: the hunter should choose. Note: worth knowing. */
export const SEVERITIES = ['stop', 'ask', 'note'] as const;
export type Severity = (typeof SEVERITIES)[number];

/** When rules run: as the hunter writes, when the animal has been received, before the knife starts. */
export const STAGES = ['order', 'receiving', 'cutting'] as const;
export type Stage = (typeof STAGES)[number];

export const TEST_STATES = ['none', 'pending', 'negative', 'positive'] as const;
/** Of a disease sample: none taken, result awaited, or what it said. */
export type TestState = (typeof TEST_STATES)[number];

/** What a rule may know of the place and the animal beyond its instructions. */
export type Circumstances = {
  readonly diseaseZone: boolean;
  readonly test: TestState;
  readonly sex: Sex;
  readonly form: DeliveryForm;
};

/** Everything a rule reads. Weights in grams; words and units are the reader's. */
export type RuledOrder = {
  readonly stage: Stage;
  readonly instructions: Instructions;
  readonly plan: Plan;
  readonly circumstances: Circumstances;
  readonly words: { readonly country: NameCountry; readonly unit: WeightUnit };
};

/** One concrete change, what it is called on its button, and what follows from it. */
export type Suggestion = {
  readonly label: string;
  readonly consequence: string;
  readonly edits: readonly Edit[];
};

/** Where in the form a finding belongs. */
export type FindingPlace =
  | { readonly kind: 'line'; readonly lineId: string }
  | { readonly kind: 'part'; readonly part: PartId }
  | { readonly kind: 'field'; readonly field: 'rest' | 'mince' | 'products' | 'keep' | 'animal' };

export type Finding = {
  readonly ruleId: string;
  /** Same finding, same key, whatever the order of lines: what a stored question is known by. */
  readonly key: string;
  readonly severity: Severity;
  readonly title: string;
  readonly place: FindingPlace;
  readonly part: PartId | null;
  readonly message: string;
  readonly suggestions: readonly Suggestion[];
};

/** An order made for a rule's examples. It takes the species it speaks of, so that no rule carries them about. */
export type ExampleOrder = (book: SpeciesBook) => RuledOrder;

/** What a reader of the rules sees of one: everything but the functions. */
type RuleFacts = {
  /** Kebab-case, the same as the file's name. */
  readonly id: string;
  readonly severity: Severity;
  readonly title: string;
  /** Safety and law rules cannot be softened by a shop. */
  readonly ground: 'safety' | 'law' | 'trade';
  readonly stages: readonly Stage[];
};

export type RuleReason = {
  /** Why the trade objects, in a paragraph a customer can read. */
  readonly why: string;
  /** A citation, or 'common practice, no source'. */
  readonly source: string;
};

/** Orders a rule has nothing to say of, and orders it has, with its exact sentences. */
export type RuleExamples = {
  readonly valid: readonly ExampleOrder[];
  readonly invalid: readonly { readonly order: ExampleOrder; readonly messages: readonly string[] }[];
};

/** How a finding is mended: by at least one suggestion, the best first, or not by the hunter at all, and then why not. */
type Mending<Data> =
  | { readonly suggestions: (data: Data, order: RuledOrder) => readonly Suggestion[]; readonly noSuggestionBecause?: undefined }
  | { readonly noSuggestionBecause: string; readonly suggestions?: undefined };

/** A rule as its file writes it. `Data` is what check found; sentences are derived from it. */
export type RuleSpec<Data> = RuleFacts & Mending<Data> & {
  readonly check: (order: RuledOrder) => readonly Data[];
  /** Tells two findings of this rule apart; stable under reordering of lines. */
  readonly keyOf: (data: Data) => string;
  readonly place: (data: Data, order: RuledOrder) => FindingPlace;
  readonly part: (data: Data, order: RuledOrder) => PartId | null;
  readonly message: (data: Data, order: RuledOrder) => string;
};

/** A rule as the registry holds it, its data closed over. */
export type Rule = RuleFacts & {
  /** Why its findings carry no suggestion; null where each carries one. */
  readonly noSuggestionBecause: string | null;
  readonly find: (order: RuledOrder) => readonly Finding[];
};

/** Closes a rule over the type of its data. */
export function defineRule<Data>(spec: RuleSpec<Data>): Rule {
  const { check, keyOf, place, part, message, suggestions, noSuggestionBecause, ...shown } = spec;
  return {
    ...shown,
    noSuggestionBecause: noSuggestionBecause ?? null,
    find: (order) =>
      check(order).map((data) => ({
        ruleId: spec.id,
        key: `${spec.id}|${keyOf(data)}`,
        severity: spec.severity,
        title: spec.title,
        place: place(data, order),
        part: part(data, order),
        message: message(data, order),
        suggestions: suggestions?.(data, order) ?? [],
      })),
  };
}
