import { stateWords, type OrderState } from '@/lib/orders';
import { capital } from '@/lib/forms';

const WAY: readonly OrderState[] = ['booked', 'received', 'hanging', 'on-the-bench', 'packed', 'ready', 'collected'];

/** How far along the animal is. Held and cancelled orders say so in a word instead. */
export function OrderProgress({ state }: { readonly state: OrderState }) {
  const at = WAY.indexOf(state);
  if (at < 0) {
    return (
      <p>
        <span className="tag strong">{capital(stateWords(state))}</span>
      </p>
    );
  }
  return (
    <ol className="steps">
      {WAY.map((step, place) => (
        <li key={step} className={place < at || state === 'collected' ? 'done' : undefined} aria-current={place === at ? 'step' : undefined}>
          {capital(stateWords(step))}
        </li>
      ))}
    </ol>
  );
}

type OrderTimelineProps = {
  readonly entries: readonly { readonly at: Date; readonly words: string }[];
  readonly locale: string;
  readonly timeZone: string;
};

/** What happened, newest first, in the shop's own time. */
export function OrderTimeline({ entries, locale, timeZone }: OrderTimelineProps) {
  const clock = new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeStyle: 'short', timeZone });
  return (
    <ol className="timeline">
      {entries.toReversed().map(({ at, words }) => (
        <li key={`${at.toISOString()} ${words}`}>
          <b>{capital(words)}</b>
          <br />
          <time dateTime={at.toISOString()} className="quiet-text">
            {clock.format(at)}
          </time>
        </li>
      ))}
    </ol>
  );
}
