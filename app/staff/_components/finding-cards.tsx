import { FindingCard } from '@/app/_components/finding-card';
import type { Finding } from '@/lib/rules';

/** What the rules say, to be read: worst first, as they come. Nothing where they say nothing. */
export function FindingCards({ findings }: { readonly findings: readonly Pick<Finding, 'key' | 'ruleId' | 'severity' | 'title' | 'message'>[] }) {
  if (findings.length === 0) return null;
  return (
    <div className="findings">
      {findings.map(({ key, ruleId, severity, title, message }) => (
        <FindingCard key={key} severity={severity} title={title} message={message} ruleId={ruleId} />
      ))}
    </div>
  );
}
