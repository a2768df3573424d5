import { FindingSign } from '@/app/_components/finding-card';
import type { RuleLine } from '@/lib/documents';

/** How heavy a rule weighs in this shop: the sign its findings carry, and what that means. */
export function RuleWeight({ severity, words }: { readonly severity: RuleLine['severity']; readonly words: string }) {
  return (
    <p className={`rule-weight ${severity}`}>
      {severity !== 'off' && <FindingSign severity={severity} />}
      <span>{words}</span>
    </p>
  );
}
