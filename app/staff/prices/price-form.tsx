'use client';

import { useState } from 'react';
import type { FormAnswer } from '@/app/_components/kept-form';
import { ActionForm } from '@/app/staff/_components/action-form';
import { type Choice, type TariffFormValues, applyTariffIntent, parseTariffForm, priceOfField, readTariffForm } from '@/lib/forms';
import type { Tariff } from '@/lib/pricing';
import { pricesAction } from './actions';
import { BaseRows } from './base-rows';
import { ExamplePrice } from './example-price';
import { Cell, GrowButton, PriceRow, ShrinkButton, Ticks, type RowTools } from './price-row';

/** Loads the page anew: what was typed and not saved goes. */
const AS_SAVED = '/staff/prices';

type PriceFormProps = {
  readonly tariff: Tariff;
  readonly versionId: number;
  readonly values: FormAnswer['values'];
  readonly locale: string;
  readonly species: readonly Choice[];
  readonly cuts: readonly Choice[];
};

/** The price list as a form. With script rows come and go at once and the example follows; without, the server does it. */
export function PriceForm({ tariff, versionId, values, ...rest }: PriceFormProps) {
  const rowOf = (field: string, answer: FormAnswer): string => priceOfField(readTariffForm(Object.entries(answer.values)), field);
  return (
    <ActionForm action={pricesAction} title="Prices" values={{ ...values, versionId: String(versionId) }} rowOf={rowOf}>
      {(answer, pending) => <PriceFields answer={answer} pending={pending} current={tariff} {...rest} />}
    </ActionForm>
  );
}

type PriceFieldsProps = Omit<PriceFormProps, 'tariff' | 'versionId' | 'values'> & {
  readonly answer: FormAnswer;
  readonly pending: boolean;
  readonly current: Tariff;
};

function PriceFields({ answer, pending, current, locale, species, cuts }: PriceFieldsProps) {
  const [values, setValues] = useState<TariffFormValues>(() => readTariffForm(Object.entries(answer.values)));
  const parsed = parseTariffForm(values, { current, locale });
  const unit = current.weightUnit;
  const tools: RowTools = {
    errors: answer.fieldErrors,
    currency: current.currency,
    unit,
    taxes: values.taxes.flatMap(({ id, name }) => (id === '' ? [] : [{ value: id, label: name }])),
    press: (intent) => setValues((before) => applyTariffIntent(before, intent) ?? before),
  };
  const change = <List extends keyof TariffFormValues>(list: List, at: number, part: Partial<TariffFormValues[List][number]>): void =>
    setValues((before) => ({ ...before, [list]: before[list].map((row, index) => (index === at ? { ...row, ...part } : row)) }));

  return (
    <div className="split">
      <div className="stack loose">
        {/* The first button answers the enter key: it must save, not add a row. */}
        <button className="visually-hidden" tabIndex={-1} aria-hidden="true" name="intent" value="save">
          Save the prices
        </button>
        <input type="hidden" name="versionId" value={answer.values['versionId']} />

        <BaseRows rows={values.base} tools={tools} species={species} extras={current.perPiece.map(({ id, name }) => ({ value: id, label: name }))} onChange={(at, part) => change('base', at, part)} />

        <section className="section" aria-labelledby="by-weight">
          <h2 id="by-weight">Extra, by packed weight</h2>
          {values.perWeight.map((row, at) => (
            <PriceRow
              key={at}
              path={`perWeight.${at}`}
              row={row}
              tools={tools}
              onChange={(part) => change('perWeight', at, part)}
              figures={<Cell path={`perWeight.${at}.rate`} label={`Price a ${unit}`} unit={tools.currency} value={row.rate} tools={tools} onChange={(rate) => change('perWeight', at, { rate })} />}
            >
              <Ticks path={`perWeight.${at}.cuts`} legend="For these cuts" choices={cuts} ticked={row.cuts} tools={tools} onChange={(ticked) => change('perWeight', at, { cuts: ticked })} />
              <ShrinkButton intent={`remove:perWeight.${at}`} tools={tools} text="Take away" of={row.name} />
            </PriceRow>
          ))}
          <GrowButton intent="add:perWeight" tools={tools} text="Add an extra by weight" />
        </section>

        <section className="section" aria-labelledby="by-piece">
          <h2 id="by-piece">Extra, by the piece</h2>
          {values.perPiece.map((row, at) => (
            <PriceRow
              key={row.id}
              path={`perPiece.${at}`}
              row={row}
              tools={tools}
              onChange={(part) => change('perPiece', at, part)}
              figures={<Cell path={`perPiece.${at}.each`} label="Price an animal" unit={tools.currency} value={row.each} tools={tools} onChange={(each) => change('perPiece', at, { each })} />}
            />
          ))}
        </section>

        <section className="section" aria-labelledby="products">
          <h2 id="products">Products, by finished weight</h2>
          {values.products.map((row, at) => (
            <PriceRow
              key={row.id}
              path={`products.${at}`}
              row={row}
              tools={tools}
              onChange={(part) => change('products', at, part)}
              figures={
                <>
                  <Cell path={`products.${at}.rate`} label={`Price a ${unit}`} unit={tools.currency} value={row.rate} tools={tools} onChange={(rate) => change('products', at, { rate })} />
                  <Cell path={`products.${at}.added`} label={`Added meat, a ${unit}`} unit={tools.currency} value={row.added} tools={tools} onChange={(added) => change('products', at, { added })} />
                </>
              }
            />
          ))}
        </section>

        <section className="section" aria-labelledby="taxes">
          <h2 id="taxes">Taxes</h2>
          {values.taxes.map((row, at) => (
            <PriceRow
              key={at}
              path={`taxes.${at}`}
              row={{ ...row, tax: null }}
              tools={tools}
              onChange={({ name }) => name !== undefined && change('taxes', at, { name })}
              figures={
                <>
                  <Cell path={`taxes.${at}.rate`} label="Rate" unit="%" value={row.rate} tools={tools} onChange={(rate) => change('taxes', at, { rate })} />
                  <ShrinkButton intent={`remove:taxes.${at}`} tools={tools} text="Take away" of={row.name} />
                </>
              }
            />
          ))}
          <GrowButton intent="add:taxes" tools={tools} text="Add a tax" />
          <p className="quiet-text">A new tax can be put on a price once it has been saved.</p>
        </section>

        <div className="buttons bar">
          <button className="button primary large" name="intent" value="save" disabled={pending}>
            {pending ? 'Saving' : 'Save the prices'}
          </button>
          <a className="button quiet" href={AS_SAVED}>
            Back to how they were
          </a>
        </div>
      </div>
      <ExamplePrice tariff={parsed.ok ? parsed.value : null} locale={locale} species={species} />
    </div>
  );
}
