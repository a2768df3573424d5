import type { SpeciesBook } from '@/lib/carcass';
import type { NameCountry } from '@/lib/cuts';
import { animalWords } from '@/lib/orders';
import {
  RULES,
  RULE_EXAMPLES,
  RULE_REASONS,
  RULE_TOPICS,
  type Rule,
  type RuleChange,
  type RuleChanges,
  type RuleReason,
  type RuleTopic,
  type RuledOrder,
  type Suggestion,
  softenedTo,
} from '@/lib/rules';
import { formatWeight } from '@/lib/units';
import { TOPIC_WORDS, firstSentence, groundWords, inCountryWords, inSentence, severityWords, softenedWords, stagesWords } from './rule-words';

/** More examples than these say nothing new to a reader. */
const MOST_EXAMPLES = 3;

/** One rule in a list. */
export type RuleLine = {
  readonly id: string;
  readonly title: string;
  readonly line: string;
  /** What it is in this shop, and in words. */
  readonly severity: Rule['severity'] | RuleChange['severity'];
  readonly severityWords: string;
  readonly isSoftened: boolean;
};

export type RuleGroup = { readonly topic: RuleTopic; readonly title: string; readonly rules: readonly RuleLine[] };

/** What a rule says of an invented order for this animal, and the ways out it offers. */
export type RuleExample = {
  readonly animal: string;
  readonly message: string;
  readonly ways: readonly Pick<Suggestion, 'label' | 'consequence'>[];
};

/** One rule on a page of its own. */
export type RulePage = RuleLine & {
  readonly topic: string;
  readonly why: string;
  readonly source: string;
  readonly askedWhen: string;
  readonly examples: readonly RuleExample[];
  /** Why it offers no way out, in a sentence; null where it does. */
  readonly noWayBecause: string | null;
  /** Why no shop can soften it; null where a shop may. */
  readonly ground: string | null;
  /** What it is where no shop has softened it, and why this one has; null where it stands as it is. */
  readonly softened: { readonly sentence: string; readonly reason: string } | null;
};

/** Every rule under what it is about, in the order of the registry. Topics without a rule are left out. */
export function ruleIndex(changes: RuleChanges, country: NameCountry): readonly RuleGroup[] {
  return RULE_TOPICS.map((topic) => ({
    topic,
    title: TOPIC_WORDS[topic],
    rules: RULES.filter(({ id }) => reasonOf(id).topic === topic).map((rule) => ruleLine(rule, changes, country)),
  })).filter(({ rules }) => rules.length > 0);
}

/** One rule, told with examples worked out for these words and units; null where there is no such rule. */
export function rulePage(
  id: string,
  shop: { readonly changes: RuleChanges; readonly words: RuledOrder['words']; readonly book: SpeciesBook },
): RulePage | null {
  const rule = RULES.find((one) => one.id === id);
  if (!rule) return null;
  const { topic, why, source } = reasonOf(id);
  const change = softenedTo(rule, shop.changes);
  return {
    ...ruleLine(rule, shop.changes, shop.words.country),
    topic: TOPIC_WORDS[topic],
    why: inCountryWords(why, shop.words.country),
    source: `${source.charAt(0).toUpperCase()}${source.slice(1)}.`,
    askedWhen: stagesWords(rule.stages),
    examples: examplesOf(rule, shop),
    noWayBecause: rule.noSuggestionBecause && `There is nothing to choose: ${inSentence(rule.noSuggestionBecause)}`,
    ground: groundWords(rule.ground),
    softened: change && { sentence: softenedWords(rule), reason: change.reason },
  };
}

function ruleLine(rule: Rule, changes: RuleChanges, country: NameCountry): RuleLine {
  const change = softenedTo(rule, changes);
  const severity = change?.severity ?? rule.severity;
  return {
    id: rule.id,
    title: inCountryWords(rule.title, country),
    line: firstSentence(inCountryWords(reasonOf(rule.id).why, country)),
    severity,
    severityWords: severityWords(severity, rule),
    isSoftened: change !== null,
  };
}

function reasonOf(id: string): RuleReason {
  const reason = RULE_REASONS[id];
  if (!reason) throw new Error(`${id} has no reason in lib/rules/reasons.ts`);
  return reason;
}

/** What a rule says of invented orders: first one sentence of each, and none twice. */
function examplesOf(rule: Rule, { words, book }: { readonly words: RuledOrder['words']; readonly book: SpeciesBook }): readonly RuleExample[] {
  const examples = (RULE_EXAMPLES[rule.id]?.().invalid ?? []).flatMap(({ order }) => {
    const told = { ...order(book), words };
    return rule.find(told).map(({ message, suggestions }, at) => ({
      at,
      animal: exampleAnimal(told, book),
      message,
      ways: suggestions.map(({ label, consequence }) => ({ label, consequence })),
    }));
  });
  return examples
    .toSorted((a, b) => a.at - b.at)
    .filter(({ message }, at, all) => all.findIndex((one) => one.message === message) === at)
    .slice(0, MOST_EXAMPLES)
    .map(({ animal, message, ways }) => ({ animal, message, ways }));
}

function exampleAnimal({ plan, words }: RuledOrder, book: SpeciesBook): string {
  const { facts } = plan.forecast;
  const weight = facts.weight ? `, ${formatWeight(facts.weight.grams, words.unit)} ${facts.weight.basis}` : '';
  return `${animalWords(facts, book)}${weight}`;
}
