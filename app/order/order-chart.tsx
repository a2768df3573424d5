'use client';

import { CarcassChart } from '@/app/_components/carcass-chart';
import { chartRows, partStandings } from '@/lib/documents';
import { planOf } from '@/lib/forms';
import { useFormWorld, useLiveForm } from './form-context';

/** The carcass with what is decided on it. Tapping a part goes to its card. Both halves are drawn; a switch shows one. */
export function OrderChart() {
  const { shop, shapes, state } = useFormWorld();
  const { planned } = useLiveForm();
  const rows = chartRows(planned ? partStandings(planned.plan, shop) : null, shop.country, planOf(state.values, shop));
  const differs = rows.some((row) => row.side === 'left');
  return (
    <div className="order-chart">
      {differs && (
        <fieldset className="side-switch">
          <legend className="visually-hidden">Side to look at</legend>
          <div className="pill-choices">
            <label className="choice">
              <input type="radio" name="look" value="left" className="look-left" defaultChecked />
              <span>Left side</span>
            </label>
            <label className="choice">
              <input type="radio" name="look" value="right" className="look-right" />
              <span>Right side</span>
            </label>
          </div>
        </fieldset>
      )}
      <CarcassChart
        shapes={shapes}
        side={differs ? 'both' : 'left'}
        parts={rows.map((row) => ({ ...row, href: `#part-${row.part}` }))}
        caption={differs ? 'The carcass, side by side. Tap a part to say how it is cut.' : 'The carcass. Tap a part to say how it is cut.'}
      />
    </div>
  );
}
