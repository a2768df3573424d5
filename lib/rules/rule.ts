import type { Condition, DeliveryForm, PartId, Sex, ShotWith, SpeciesBook, WeightBasis } from '@/lib/carcass';
import type { NameCountry, TargetId } from '@/lib/cuts';
import type { Allergen, Edit, Instructions, ProductId } from '@/lib/instructions';
import { CAREFUL, type LawPoints } from '@/lib/law';
import type { Plan } from '@/lib/plan';
import type { CalendarDay, WeightUnit } from '@/lib/units';

/** Stop: it cannot or may not be done. Ask: the hunter should choose. Note: worth knowing. */
export const SEVERITIES = ['stop', 'ask', 'note'] as const;
export type Severity = (typeof SEVERITIES)[number];

/** When rules run: as the hunter writes, when it has been received, before the knife, at the packing table, on the bill, at the hand-over. */
export const STAGES = ['order', 'receiving', 'cutting', 'packing', 'billing', 'release'] as const;
export type Stage = (typeof STAGES)[number];

export const TEST_STATES = ['none', 'pending', 'negative', 'positive'] as const;
/** Of a disease sample: none taken, result awaited, or what it said. */
export type TestState = (typeof TEST_STATES)[number];

/** What a shop says of its own work, as far as rules ask. Null and empty: it has not said. */
export type ShopTerms = {
  /** Days a carcass hangs as a rule. */
  readonly hangDays: number | null;
  /** Made things that come only from batches with everybody's meat. */
  readonly mixedOnly: readonly ProductId[];
  /** What is in each made thing. */
  readonly allergens: Readonly<Partial<Record<ProductId, readonly Allergen[]>>>;
  /** Days from the arrival until plain cuts are frozen and ready, and until made things are. */
  readonly plainDays: number | null;
  readonly madeDays: number | null;
  /** The last day an animal may come in for made things this season. */
  readonly madeUntil: CalendarDay | null;
  /** The most fat in mince, in percent. */
  readonly mostFatPercent: number;
};

/** Weights as they were read, in grams; null where nobody has weighed. */
export type ReadWeights = {
  readonly brought: { readonly grams: number; readonly basis: WeightBasis } | null;
  readonly hangingGrams: number | null;
  /** The hunter's own meat at the packing table, without what was added or kept besides. */
  readonly ownPackedGrams: number | null;
};

/** What a rule may know of the place and the animal beyond its instructions. */
export type Circumstances = {
  readonly diseaseZone: boolean;
  readonly test: TestState;
  readonly sex: Sex;
  readonly form: DeliveryForm;
  /** What the counter found; empty before it has looked. */
  readonly conditions: readonly Condition[];
  readonly shotWith: ShotWith;
  /** Whole days since the kill; null before the counter has asked. */
  readonly killedDaysAgo: number | null;
  readonly celsiusTenths: number | null;
  /** Name on the order; '' while it is not written yet. */
  readonly hunterName: string;
  /** Who killed it, where that is somebody else; '' otherwise. */
  readonly killedBy: string;
  readonly hasTransferNote: boolean;
  readonly weights: ReadWeights;
  /** The shop's day, or null where none is known, as for another program. */
  readonly today: CalendarDay | null;
  readonly shop: ShopTerms;
  /** What the place allows. */
  readonly law: LawPoints;
};

/** A shop that has said nothing of its work. */
export const PLAIN_TERMS: ShopTerms = {
  hangDays: null,
  mixedOnly: [],
  allergens: {},
  plainDays: null,
  madeDays: null,
  madeUntil: null,
  mostFatPercent: 30,
};

/** Nothing known beyond the order: no zone, no test, nothing found. */
export const PLAIN_CIRCUMSTANCES: Circumstances = {
  diseaseZone: false,
  test: 'none',
  sex: 'unknown',
  form: 'hide-on',
  conditions: [],
  shotWith: 'unknown',
  killedDaysAgo: null,
  celsiusTenths: null,
  hunterName: '',
  killedBy: '',
  hasTransferNote: false,
  weights: { brought: null, hangingGrams: null, ownPackedGrams: null },
  today: null,
  shop: PLAIN_TERMS,
  law: CAREFUL.points,
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
  /** What it speaks of, to be shown on a drawing. */
  readonly target?: TargetId;
};

/** Where in the form a finding belongs. */
export type FindingPlace =
  | { readonly kind: 'line'; readonly lineId: string }
  | { readonly kind: 'part'; readonly part: PartId }
  | { readonly kind: 'field'; readonly field: FindingField };

export const FINDING_FIELDS = ['rest', 'mince', 'products', 'keep', 'shares', 'wanted', 'note', 'animal'] as const;
/** Questions of the form that a finding can belong to. */
export type FindingField = (typeof FINDING_FIELDS)[number];

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
  readonly whom: 'hunter' | 'shop';
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
  /** Who settles it: a finding for the shop is never put to the hunter as a question. */
  readonly whom?: 'hunter' | 'shop';
};

export const RULE_TOPICS = ['meat', 'amount', 'cutting', 'made-things', 'trophy', 'condition', 'health', 'paper-and-law', 'packing-and-bill'] as const;
/** What a rule is about, as a hunter would look for it. */
export type RuleTopic = (typeof RULE_TOPICS)[number];

export type RuleReason = {
  readonly topic: RuleTopic;
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
  /** Trouble with the same cause is told once, by the rule listed first; left out, each finding is its own. */
  readonly cause?: (data: Data, order: RuledOrder) => string;
  readonly message: (data: Data, order: RuledOrder) => string;
};

/** A rule as the registry holds it, its data closed over. */
export type Rule = RuleFacts & {
  /** Why its findings carry no suggestion; null where each carries one. */
  readonly noSuggestionBecause: string | null;
  readonly find: (order: RuledOrder) => readonly (Finding & { readonly cause: string })[];
};

/** Closes a rule over the type of its data. */
export function defineRule<Data>(spec: RuleSpec<Data>): Rule {
  const { check, keyOf, place, part, cause, message, suggestions, noSuggestionBecause, ...shown } = spec;
  return {
    ...shown,
    noSuggestionBecause: noSuggestionBecause ?? null,
    find: (order) =>
      // What the hunter has said yes to is settled: not what cannot be done, and not what is the shop's to settle.
      check(order)
        .filter((data) => spec.severity === 'stop' || spec.whom === 'shop' || !order.instructions.agreed.includes(`${spec.id}|${keyOf(data)}`))
        .map((data) => ({
        ruleId: spec.id,
        key: `${spec.id}|${keyOf(data)}`,
        severity: spec.severity,
        title: spec.title,
        place: place(data, order),
        part: part(data, order),
        message: message(data, order),
        suggestions: suggestions?.(data, order) ?? [],
        whom: spec.whom ?? 'hunter',
        cause: cause?.(data, order) ?? `${spec.id}|${keyOf(data)}`,
      })),
  };
}
