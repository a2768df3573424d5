'use client';

import { useState } from 'react';
import { CarcassDrawing, type DrawnShapes } from '@/app/_components/carcass-drawing';
import type { ChartPartState } from '@/app/_components/carcass-chart';
import { ChartMarkIcon } from '@/app/_components/chart-mark';
import { type BodyPlan, isSidedPart, partsOf } from '@/lib/carcass';
import { type NameCountry, partName, sidedName } from '@/lib/cuts';
import { SPOTS, capital, spotsOf } from '@/lib/forms';
import { SPOT_STATES, SPOT_WORDS, nextSpotState } from './receive-values';

type SpotGridProps = { readonly shapes: DrawnShapes; readonly values: Readonly<Record<string, string>>; readonly country: NameCountry; readonly plan: BodyPlan };

/** Left and right of every part, each a menu. Where script runs, the drawing shows the same and a tap on it moves the menu on. */
export function SpotGrid({ shapes, values, country, plan }: SpotGridProps) {
  const [spots, setSpots] = useState<Readonly<Record<string, string>>>(() => Object.fromEntries(SPOTS.map(({ id }) => [id, values[`spots.${id}`] ?? ''])));
  const set = (id: string, state: string): void => setSpots((before) => ({ ...before, [id]: state }));
  const chartParts = spotsOf(plan).map(({ id, part, place }): ChartPartState => {
    const state = spots[id] ?? '';
    const name = capital(sidedName(partName(part, country), place));
    return {
      part,
      side: place,
      state: state === 'absent' ? 'absent' : state === '' ? 'sound' : 'wounded',
      name,
      // The drawing is small here; the menus beside it carry the names.
      label: '',
      onSelect: () => set(id, nextSpotState(state)),
    };
  });
  const menu = (id: string, name: string) => (
    <select
      id={`spots.${id}`}
      name={`spots.${id}`}
      aria-label={name}
      className={spots[id] ? 'changed' : undefined}
      value={spots[id] ?? ''}
      onChange={(event) => set(id, event.target.value)}
    >
      {SPOT_STATES.map((state) => (
        <option key={state} value={state}>
          {SPOT_WORDS[state]}
        </option>
      ))}
    </select>
  );

  return (
    <div className="spots">
      <table>
        <caption className="visually-hidden">What is hit or did not come, by part and side</caption>
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col">Left</th>
            <th scope="col">Right</th>
          </tr>
        </thead>
        <tbody>
          {partsOf(plan).map((part) => {
            const name = partName(part, country);
            return (
              <tr key={part}>
                <th scope="row">{capital(name)}</th>
                {isSidedPart(part) ? (
                  <>
                    <td>{menu(`left-${part}`, capital(sidedName(name, 'left')))}</td>
                    <td>{menu(`right-${part}`, capital(sidedName(name, 'right')))}</td>
                  </>
                ) : (
                  <td colSpan={2}>{menu(`middle-${part}`, capital(name))}</td>
                )}
              </tr>
            );
          })}
        </tbody>
      </table>
      {/* The menus say all of it; the drawing is for the eye and the finger. */}
      <div className="spot-charts script-only" aria-hidden="true">
        {plan === 'four-legged' && (['left', 'right'] as const).map((side) => (
          <figure className="chart" key={side}>
            <figcaption>{capital(side)}</figcaption>
            <CarcassDrawing shapes={shapes} side={side} parts={chartParts.filter((part) => part.side === side || part.side === 'middle')} isPointerOnly showsMuscles={false} />
          </figure>
        ))}
      </div>
      {plan === 'four-legged' && (
        <p className="row spot-key script-only" aria-hidden="true">
          <span>Tap a part that is not sound:</span>
          <span className="row">
            <ChartMarkIcon state="wounded" /> hit
          </span>
          <span className="row">
            <ChartMarkIcon state="absent" /> did not come
          </span>
        </p>
      )}
    </div>
  );
}
