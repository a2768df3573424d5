import { type Rule, type RuleChange, type RuleChanges, softenedTo, softerChoices } from '@/lib/rules';
import type { FormOutcome } from './form-outcome';
import { softeningReason } from './rule-changes';

/** What the form writes where a rule stands as it is. */
export const AS_IT_IS = '';

type Weighed = Pick<Rule, 'id' | 'severity' | 'ground'>;

/** The names of a rule's two fields. */
export function ruleFields({ id }: Pick<Rule, 'id'>): { readonly severity: string; readonly reason: string } {
  return { severity: `severity.${id}`, reason: `reason.${id}` };
}

/** What the form holds at first: what the shop has made of each rule that can be softened, and why. */
export function ruleChangesValues(changes: RuleChanges, rules: readonly Weighed[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    rules.flatMap((rule): readonly [string, string][] => {
      const change = softenedTo(rule, changes);
      const fields = ruleFields(rule);
      return change ? [[fields.severity, change.severity], [fields.reason, change.reason]] : [];
    }),
  );
}

/** Reads the form of softened rules. A rule that is safety or law, or unknown, is not read at all. */
export function parseRuleChanges(typed: Readonly<Record<string, string>>, rules: readonly Weighed[]): FormOutcome<RuleChanges> {
  const changes: Record<string, RuleChange> = {};
  const fieldErrors: Record<string, string> = {};
  for (const rule of rules.filter((one) => softerChoices(one).length > 0)) {
    const fields = ruleFields(rule);
    const chosen = typed[fields.severity] ?? AS_IT_IS;
    const severity = softerChoices(rule).find((choice) => choice === chosen);
    const reason = softeningReason.safeParse(typed[fields.reason] ?? '');
    if (severity && reason.success) changes[rule.id] = { severity, reason: reason.data };
    else if (severity) fieldErrors[fields.reason] = reason.error?.issues[0]?.message ?? 'Say why';
    else if (chosen !== AS_IT_IS) fieldErrors[fields.severity] = 'Choose one of the softer ways';
    else if ((typed[fields.reason] ?? '').trim() !== '') fieldErrors[fields.severity] = 'Choose what becomes of this rule, or clear the reason';
  }
  if (Object.keys(fieldErrors).length > 0) return { ok: false, formErrors: [], fieldErrors };
  return { ok: true, value: changes };
}
