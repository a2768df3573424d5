import type { NameCountry } from '@/lib/cuts';
import { type RuleLine, ruleIndex, severityWords } from '@/lib/documents';
import { RULES, type Rule, type RuleChange, type RuleTopic, softerChoices } from '@/lib/rules';
import { capital } from './order-form-words';
import { AS_IT_IS, ruleFields } from './rule-changes-form';

/** What a rule is or becomes, as its owner reads it. */
const CHOICE_WORDS: Readonly<Record<Rule['severity'] | RuleChange['severity'], string>> = {
  stop: 'stop, it has to be mended first',
  ask: 'ask, the order can go on',
  note: 'note, it is only said',
  off: 'off, it is left out',
};

/** A rule the shop may soften, with what it may make of it and under which names the form says so. */
export type RuleChoice = Pick<RuleLine, 'id' | 'title' | 'line'> & {
  readonly fields: { readonly severity: string; readonly reason: string };
  readonly choices: readonly { readonly value: string; readonly text: string }[];
};

/** A rule that stands as it is. */
export type FixedRule = Pick<RuleLine, 'id' | 'title' | 'severityWords'> & { readonly ground: 'safety' | 'law' };

/** All rules as the shop's owner reads them: what may be softened, under what it is about, and what may not. */
export function ruleChoices(country: NameCountry): {
  readonly groups: readonly { readonly topic: RuleTopic; readonly title: string; readonly rules: readonly RuleChoice[] }[];
  readonly fixed: readonly FixedRule[];
} {
  const groups = ruleIndex({}, country).map(({ topic, title, rules }) => ({ topic, title, rules: rules.flatMap(choiceOf) }));
  return {
    groups: groups.filter(({ rules }) => rules.length > 0),
    fixed: RULES.flatMap((rule) => {
      const { id, title, ground } = rule;
      return ground === 'trade' ? [] : [{ id, title, severityWords: severityWords(rule.severity, rule), ground }];
    }),
  };
}

function choiceOf({ id, title, line }: RuleLine): readonly RuleChoice[] {
  const rule = RULES.find((one) => one.id === id);
  const softer = rule ? softerChoices(rule) : [];
  if (!rule || softer.length === 0) return [];
  const asItIs = { value: AS_IT_IS, text: `As it is: ${CHOICE_WORDS[rule.severity]}` };
  return [{ id, title, line, fields: ruleFields(rule), choices: [asItIs, ...softer.map((value) => ({ value, text: capital(CHOICE_WORDS[value]) }))] }];
}
