import type { Finding, Suggestion } from '@/lib/rules';

/** Rules that are asked again at the door, even if the hunter sent the order with them open: no knife starts before somebody has read it. */
const ASKED_AGAIN: readonly string[] = ['part-without-destination', 'name-means-two-things', 'note-against-a-choice'];

/**
 * The findings that become a question to the hunter: what may be mended by a choice of theirs and was not known when
 * they sent the order. Notes are never asked.
 */
export function newQuestions(input: {
  readonly now: readonly Finding[];
  /** As the order stood when it was sent, before the animal was seen. */
  readonly whenSent: readonly Finding[];
  /** Keys of questions still open. */
  readonly open: readonly string[];
  /** Keys of questions answered: an 'ask' is left as the hunter left it, a stop that stands again is asked again. */
  readonly answered: readonly string[];
}): readonly Finding[] {
  const known = new Set(input.whenSent.map((finding) => finding.key));
  const open = new Set(input.open);
  const answered = new Set(input.answered);
  return input.now.filter(
    (finding) =>
      finding.severity !== 'note' &&
      finding.whom === 'hunter' &&
      finding.suggestions.length > 0 &&
      !open.has(finding.key) &&
      !(finding.severity === 'ask' && answered.has(finding.key)) &&
      (finding.severity === 'stop' || !known.has(finding.key) || ASKED_AGAIN.includes(finding.ruleId)),
  );
}

/** The ways to answer a finding: its suggestions, and for an 'ask' also to leave it be. */
export function answersTo(finding: Finding): readonly Suggestion[] {
  return finding.severity === 'ask'
    ? [...finding.suggestions, { label: 'Leave it as I asked', consequence: 'The butcher does what can be done.', edits: [] }]
    : finding.suggestions;
}

/** The stop that is told where something is refused: the worst of those that stand, but for those known by key. */
export function firstStop(findings: readonly Finding[], known: readonly string[] = []): Finding | undefined {
  return findings.find(({ severity, key }) => severity === 'stop' && !known.includes(key));
}
