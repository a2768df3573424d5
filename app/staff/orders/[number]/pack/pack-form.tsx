'use client';

import { type KeyboardEvent, useState } from 'react';
import type { FormAnswer } from '@/app/_components/kept-form';
import { RangeBar } from '@/app/_components/range-bar';
import { ActionForm } from '@/app/staff/_components/action-form';
import { WEIGHTS_ARE_RIGHT, packBalance } from '@/lib/forms';
import { type PackRow, farOff, rowName } from '@/lib/orders';
import { type WeightUnit, formatWeight, parseWeight } from '@/lib/units';
import { packAction } from './actions';

type Row = PackRow & { readonly expectedText: string };

type PackFormProps = {
  readonly order: { readonly number: string; readonly version: number };
  readonly title: string;
  readonly values: Readonly<Record<string, string>>;
  readonly rows: readonly Row[];
  readonly hanging: { readonly grams: number; readonly isWeighed: boolean };
  readonly unit: WeightUnit;
  readonly locale: string;
};

export function PackForm({ order, title, values, ...table }: PackFormProps) {
  const rowOf = (field: string): string => {
    const row = table.rows.find(({ lineKey }) => field === `weight.${lineKey}` || field === `packages.${lineKey}`);
    return row ? rowName(row) : '';
  };
  return (
    <ActionForm action={packAction} order={order} title={title} values={values} rowOf={rowOf}>
      {(answer, pending) => (
        <>
          <PackTable answer={answer} {...table} />
          <RightTick answer={answer} />
          <div className="buttons">
            <button className="button primary large" disabled={pending}>
              {pending ? 'Saving' : 'Save the weights'}
            </button>
            <a className="button quiet" href={`/staff/orders/${order.number}`}>
              Back without saving
            </a>
          </div>
        </>
      )}
    </ActionForm>
  );
}

type PackTableProps = Omit<PackFormProps, 'order' | 'title' | 'values'> & { readonly answer: FormAnswer };

function PackTable({ answer, rows, hanging, unit, locale }: PackTableProps) {
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>(() =>
    Object.fromEntries(rows.map(({ lineKey }) => [lineKey, answer.values[`weight.${lineKey}`] ?? ''])),
  );
  const balance = packBalance(rows, typed, { unit, locale });
  const words = (grams: number): string => formatWeight(grams, unit, locale);
  const weighed = rows.filter(({ lineKey }) => (typed[lineKey] ?? '').trim() !== '').length;
  const rail = hanging.isWeighed ? 'on the rail' : 'on the rail by the forecast';

  return (
    <>
      <table className="stacks pack" role="table">
        <caption className="visually-hidden">What is packed, row by row. A row left empty is not packed.</caption>
        <thead role="rowgroup">
          <tr role="row">
            <th role="columnheader" scope="col">
              Row
            </th>
            <th role="columnheader" scope="col">
              Should give
            </th>
            <th role="columnheader" scope="col">
              Weight
            </th>
            <th role="columnheader" scope="col">
              Packages
            </th>
          </tr>
        </thead>
        <tbody role="rowgroup">
          {rows.map((row, index) => {
            const { lineKey, label, expectedText } = row;
            const [weight, packages] = [`weight.${lineKey}`, `packages.${lineKey}`];
            return (
              <tr role="row" key={lineKey}>
                <th role="rowheader" scope="row" id={`row.${lineKey}`}>
                  {label}
                </th>
                <td role="cell" data-label="Should give" className="number expected">
                  {expectedText}
                  <FarOff typed={typed[lineKey] ?? ''} row={row} unit={unit} locale={locale} />
                </td>
                <td role="cell" data-label="Weight">
                  <span>
                    <Problem id={weight} answer={answer} />
                    <span className="with-unit">
                      <input
                        id={weight}
                        name={weight}
                        aria-label={`Weight of ${label}`}
                        aria-invalid={answer.fieldErrors[weight] ? true : undefined}
                        aria-describedby={answer.fieldErrors[weight] ? `${weight}-error` : undefined}
                        inputMode="decimal"
                        autoComplete="off"
                        maxLength={20}
                        value={typed[lineKey] ?? ''}
                        onKeyDown={goOnAtEnter}
                        onChange={(event) => setTyped((before) => ({ ...before, [lineKey]: event.target.value }))}
                        // The first weight is what the packer comes to type.
                        // oxlint-disable-next-line jsx-a11y/no-autofocus
                        autoFocus={index === 0}
                      />
                      <span className="unit">{unit}</span>
                    </span>
                  </span>
                </td>
                <td role="cell" data-label="Packages">
                  <span>
                    <Problem id={packages} answer={answer} />
                    <input
                      className="short"
                      id={packages}
                      name={packages}
                      aria-label={`Packages of ${label}`}
                      aria-invalid={answer.fieldErrors[packages] ? true : undefined}
                      aria-describedby={answer.fieldErrors[packages] ? `${packages}-error` : undefined}
                      inputMode="numeric"
                      autoComplete="off"
                      maxLength={4}
                      defaultValue={answer.values[packages]}
                      onKeyDown={goOnAtEnter}
                    />
                  </span>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>

      <div className="panel raised running" aria-live="polite">
        <RangeBar
          label={`Own meat packed, ${weighed} of ${rows.length} rows`}
          low={Math.min(balance.ownGrams, hanging.grams)}
          likely={Math.min(balance.ownGrams, hanging.grams)}
          high={Math.min(balance.ownGrams, hanging.grams)}
          max={hanging.grams}
          text={`${words(balance.ownGrams)}${balance.ownGrams > hanging.grams ? ', more than the' : ' of'} ${words(hanging.grams)} ${rail}`}
        />
        {balance.packedGrams !== balance.ownGrams && <p>{words(balance.packedGrams)} in all, with what was added and what is kept besides the meat.</p>}
        {balance.unread > 0 && <p>{balance.unread === 1 ? 'One weight' : `${balance.unread} weights`} cannot be read yet.</p>}
      </div>
    </>
  );
}

/** A scale that types ends with the enter key: it leads to the next box, and never sends a table half filled in. */
function goOnAtEnter(event: KeyboardEvent<HTMLInputElement>): void {
  if (event.key !== 'Enter') return;
  event.preventDefault();
  const { form } = event.currentTarget;
  const boxes = [...(form?.querySelectorAll<HTMLInputElement>('.pack input') ?? [])];
  const next = boxes[boxes.indexOf(event.currentTarget) + 1] ?? form?.querySelector<HTMLElement>('button.primary');
  next?.focus();
}

type FarOffProps = { readonly typed: string; readonly row: PackRow; readonly unit: WeightUnit; readonly locale: string };

/** A word where a weight is so far from what was expected that a figure or a lug may be wrong. */
function FarOff({ typed, row, unit, locale }: FarOffProps) {
  const weight = typed.trim() === '' ? null : parseWeight(typed, { unit, locale });
  if (!weight?.ok) return null;
  const far = farOff(row, weight.value);
  return far && <b className="far-off">Far {far} than expected: look again.</b>;
}

/** Asked only once something looked odd: the packer looks again, and says that it is so. */
function RightTick({ answer }: { readonly answer: FormAnswer }) {
  const isTicked = Boolean(answer.values[WEIGHTS_ARE_RIGHT]);
  if (!isTicked && !answer.fieldErrors[WEIGHTS_ARE_RIGHT]) return null;
  return (
    <div className="field">
      <Problem id={WEIGHTS_ARE_RIGHT} answer={answer} />
      <label className="choice">
        <input
          id={WEIGHTS_ARE_RIGHT}
          name={WEIGHTS_ARE_RIGHT}
          type="checkbox"
          aria-describedby={answer.fieldErrors[WEIGHTS_ARE_RIGHT] ? `${WEIGHTS_ARE_RIGHT}-error` : undefined}
          defaultChecked={isTicked}
        />
        <span>These weights are right</span>
      </label>
    </div>
  );
}

function Problem({ id, answer }: { readonly id: string; readonly answer: FormAnswer }) {
  const message = answer.fieldErrors[id];
  if (!message) return null;
  return (
    <span className="error" id={`${id}-error`}>
      <span className="visually-hidden">Error: </span>
      {message}
    </span>
  );
}
