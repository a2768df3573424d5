'use client';

import { useState } from 'react';
import { Field } from '@/app/_components/field';
import { BillTable } from '@/app/staff/_components/bill-table';
import type { Choice } from '@/lib/forms';
import type { Tariff } from '@/lib/pricing';
import { formatWeight, parseWeight } from '@/lib/units';
import { ADDED, EXTRA_CUT, FINISHED, priceExample } from './example-animal';

type ExamplePriceProps = {
  /** Null while a figure of the form cannot be read. */
  readonly tariff: Tariff | null;
  readonly locale: string;
  readonly species: readonly Choice[];
};

const USUAL = { lb: '92', kg: '42' } as const;

/** What one animal would cost on the prices as they stand on the screen. */
export function ExamplePrice({ tariff, locale, species }: ExamplePriceProps) {
  const unit = tariff?.weightUnit ?? 'lb';
  const [speciesId, setSpeciesId] = useState('white-tailed-deer');
  const [weight, setWeight] = useState<string>(USUAL[unit]);
  const words = (grams: number): string => formatWeight(grams, unit, locale);
  const read = parseWeight(weight, { unit, locale });
  return (
    <aside className="panel raised example" aria-labelledby="example">
      <h2 id="example">One animal as an example</h2>
      <div className="together script-only">
        <Field id="example-species" label="Animal">
          {(wiring) => (
            <select {...wiring} value={speciesId} onChange={(event) => setSpeciesId(event.target.value)}>
              {species.map(({ value, label }) => (
                <option key={value} value={value}>
                  {label}
                </option>
              ))}
            </select>
          )}
        </Field>
        <Field id="example-weight" label="On the rail">
          {(wiring) => (
            <div className="with-unit">
              <input {...wiring} inputMode="decimal" autoComplete="off" value={weight} maxLength={12} onChange={(event) => setWeight(event.target.value)} />
              <span className="unit">{unit}</span>
            </div>
          )}
        </Field>
      </div>
      {tariff && read.ok ? (
        <BillTable bill={priceExample({ speciesId, hangingGrams: read.value }, tariff)} locale={locale} />
      ) : (
        <p>{tariff && !read.ok ? read.message : 'The example comes back once every figure can be read.'}</p>
      )}
      <p className="quiet-text small">
        Invented: hide on, antlers kept, {words(EXTRA_CUT)} of each cut that costs extra, {words(FINISHED)} of each product with {words(ADDED)} of added meat in it.
      </p>
    </aside>
  );
}
