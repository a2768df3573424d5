import type { Answer } from '@/lib/forms';

/** Questions and their answers, read over or read back. */
export function AnswerList({ answers, look }: { readonly answers: readonly Answer[]; readonly look: 'answers' | 'facts' }) {
  return (
    <dl className={look}>
      {answers.map(({ label, answer }, at) => (
        <div key={`${label} ${at}`}>
          <dt>{label}</dt>
          <dd>{answer}</dd>
        </div>
      ))}
    </dl>
  );
}
