import { type Rule, type RuledOrder, SEVERITIES, type Severity } from './rule';

/** What a shop may make of a rule, hardest first. */
export const SOFTER_SEVERITIES = ['ask', 'note', 'off'] as const;

/** What a shop has made of one rule, and why, in its own words. */
export type RuleChange = { readonly severity: (typeof SOFTER_SEVERITIES)[number]; readonly reason: string };

/** The rules a shop has softened, by their ids. */
export type RuleChanges = Readonly<Record<string, RuleChange>>;

type Weight = Pick<Rule, 'id' | 'severity' | 'ground'>;

/**
 * What a shop may make of a rule: whatever is softer than the rule itself. Nothing, where safety or law speaks.
 *
 * @example softerChoices({ id: 'probably-short', severity: 'ask', ground: 'trade' }) // ['note', 'off']
 */
export function softerChoices({ severity, ground }: Weight): readonly RuleChange['severity'][] {
  if (ground !== 'trade') return [];
  return SOFTER_SEVERITIES.filter((softer) => softer === 'off' || SEVERITIES.indexOf(softer) > SEVERITIES.indexOf(severity));
}

/** What the shop has made of a rule, or null where the rule stands as it is: a change that is not softer counts for nothing. */
export function softenedTo(rule: Weight, changes: RuleChanges): RuleChange | null {
  const change = Object.hasOwn(changes, rule.id) ? changes[rule.id] : undefined;
  return change && softerChoices(rule).includes(change.severity) ? change : null;
}

/** The findings of a rule with the severity the shop gives them; none where it is off. */
export function findSoftened(rule: Rule, order: RuledOrder, changes: RuleChanges): ReturnType<Rule['find']> {
  const severity: Severity | 'off' = softenedTo(rule, changes)?.severity ?? rule.severity;
  if (severity === 'off') return [];
  const findings = rule.find(order);
  return severity === rule.severity ? findings : findings.map((finding) => ({ ...finding, severity }));
}
