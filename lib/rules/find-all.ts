import { PARTS } from '@/lib/carcass';
import { RULES } from './registry';
import { type Finding, type RuledOrder, SEVERITIES } from './rule';
import { type RuleChanges, findSoftened } from './softening';

/**
 * All findings of one order at its stage, as the shop has softened the rules: worst first, then part by part, then as
 * the registry lists the rules. Of several with one cause only the first is told. Does not depend on the order of lines
 * beyond which of two claims came first.
 */
export function findAll(order: RuledOrder, changes: RuleChanges = {}): readonly Finding[] {
  const rank = (finding: Finding): number =>
    SEVERITIES.indexOf(finding.severity) * 100 + (finding.part ? PARTS.indexOf(finding.part) : PARTS.length);
  const told = new Set<string>();
  return RULES.filter((rule) => rule.stages.includes(order.stage))
    .flatMap((rule) => findSoftened(rule, order, changes))
    .sort((a, b) => rank(a) - rank(b))
    .flatMap(({ cause, ...finding }) => {
      if (told.has(cause)) return [];
      told.add(cause);
      return [finding];
    });
}

/** Whether anything stands that cannot or may not be done. */
export function hasStop(findings: readonly Finding[]): boolean {
  return findings.some((finding) => finding.severity === 'stop');
}
