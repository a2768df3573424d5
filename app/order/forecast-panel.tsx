'use client';

import { lazy, Suspense, useEffect, useMemo, useRef } from 'react';
import { RangeBar } from '@/app/_components/range-bar';
import { estimateView, likelyText, planView, type ForecastRow } from '@/lib/documents';
import { capital, describedInstructions } from '@/lib/forms';
import { useFormWorld, useLiveForm } from './form-context';

/** Without it, as where the signal was lost, the panel still says all the figures. */
const WhereItGoesLive = lazy(() =>
  import('./where-it-goes-live').then(
    ({ WhereItGoesLive }) => ({ default: WhereItGoesLive }),
    () => ({ default: () => null }),
  ),
);

/** What the animal gives and may cost, worked out anew at each change: at the foot of a phone, beside the form elsewhere. */
export function ForecastPanel() {
  const { shop } = useFormWorld();
  const { values, planned, findings } = useLiveForm();
  const panel = useOpenWhereThereIsRoom();
  const shown = useMemo(() => {
    if (!planned) return null;
    return {
      view: planView(planned.plan, shop),
      estimate: estimateView(planned, describedInstructions(values, shop), shop),
    };
  }, [planned, values, shop]);

  if (!planned || !shown) {
    return (
      <details className="forecast order-forecast" ref={panel}>
        <summary>
          <span>What you will get</span>
        </summary>
        <p>Choose the animal first. Then this shows what it gives, cut by cut, and what it may cost, as you fill in the form.</p>
      </details>
    );
  }
  const { view, estimate } = shown;
  const stops = findings.filter((finding) => finding.severity === 'stop').length;
  return (
    <details className="forecast order-forecast" ref={panel}>
      <summary>
        <span className="forecast-line">
          {view.packedTotal.range.likely > 0 ? (
            <>
              <span className="nowrap">{likelyText(view.packedTotal.range, shop)} to take home</span>
              <span className="nowrap">{estimate.likely}</span>
            </>
          ) : (
            <span>Say how it is cut, and this adds up</span>
          )}
          {stops > 0 && <span className="tag stop">{stops === 1 ? '1 thing does not fit' : `${stops} things do not fit`}</span>}
        </span>
      </summary>
      <h2 className="h3">What you will get</h2>
      <p className="quiet-text">
        A forecast from animals like yours. Eight times in ten the scale will show something between the lowest and the highest
        figure.
      </p>
      <dl className="facts">
        <Fact row={view.hanging} label="On the rail" />
        <Fact row={view.packedTotal} label="To take home" />
      </dl>
      <Bars title="Your cuts" rows={view.lines} most={view.mostGrams} />
      <Bars title="And the rest" rows={view.pools} most={view.mostGrams} />
      <h3>What it may cost</h3>
      <p>
        <strong className="number">{estimate.text}</strong>
      </p>
      <dl className="facts">
        {estimate.rows.map(({ label, amount }) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd className="number">{amount}</dd>
          </div>
        ))}
      </dl>
      {estimate.unpriced && <p>Some of this is not on the price list; ask the shop.</p>}
      <p className="quiet-text">An estimate, not an invoice. The shop bills what it weighs.</p>
      <Way />
    </details>
  );
}

/** Where all of it goes: closed on a phone, so as not to be in the way. */
function Way() {
  const way = useOpenWhereThereIsRoom();
  return (
    <details className="more" ref={way}>
      <summary>Where all of it goes, from alive to the packets</summary>
      <Suspense>
        <WhereItGoesLive />
      </Suspense>
    </details>
  );
}

function Fact({ row, label }: { readonly row: ForecastRow; readonly label: string }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd className="number">{row.text}</dd>
    </div>
  );
}

function Bars({ title, rows: all, most }: { readonly title: string; readonly rows: readonly ForecastRow[]; readonly most: number }) {
  // What is ground is in its pool, not in its line.
  const rows = all.filter(({ range }) => range.high > 0);
  if (rows.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul className="ranges">
        {rows.map(({ key, label, range, text, asked }) => (
          <li key={key}>
            <RangeBar
              label={capital(label)}
              low={range.low}
              likely={range.likely}
              high={range.high}
              max={most}
              text={text}
              wanted={asked?.grams ?? undefined}
              wantedText={asked?.text}
            />
          </li>
        ))}
      </ul>
    </>
  );
}

/** Open beside the form, closed at the foot of a phone, until the hunter says otherwise. */
function useOpenWhereThereIsRoom() {
  const panel = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    const details = panel.current;
    if (details && window.matchMedia('(min-width: 60rem)').matches) details.open = true;
  }, []);
  return panel;
}
