import type { ReactNode } from 'react';
import { Field, FieldGroup } from '@/app/_components/field';
import type { Choice, FieldErrors } from '@/lib/forms';

/** What every row of the price form needs. */
export type RowTools = {
  readonly errors: FieldErrors;
  readonly currency: string;
  readonly unit: string;
  readonly taxes: readonly Choice[];
  /** Adds or takes away a row at once, where script runs. */
  readonly press: (intent: string) => void;
};

type PriceRowProps = {
  readonly path: string;
  /** Its tax: '' is none, null where the row has no such question. */
  readonly row: { readonly id: string; readonly name: string; readonly tax: string | null };
  readonly tools: RowTools;
  readonly onChange: (part: { name?: string; tax?: string }) => void;
  /** The figures that stand on the line of the name. */
  readonly figures?: ReactNode;
  /** What goes below. */
  readonly children?: ReactNode;
};

/** One price: its name, its figures and its tax on a line, what else there is to it below. */
export function PriceRow({ path, row, tools, onChange, figures, children }: PriceRowProps) {
  return (
    <div className="repeat price-row">
      <input type="hidden" name={`${path}.id`} value={row.id} />
      <div className="price-cells">
        <div className="price-name">
          <Field id={`${path}.name`} label="Name" error={tools.errors[`${path}.name`]}>
            {(wiring) => <input {...wiring} name={`${path}.name`} value={row.name} autoComplete="off" maxLength={100} onChange={(event) => onChange({ name: event.target.value })} />}
          </Field>
        </div>
        {figures}
        {row.tax !== null && <TaxMenu path={`${path}.tax`} value={row.tax} tools={tools} onChange={(tax) => onChange({ tax })} />}
      </div>
      {children}
    </div>
  );
}

type TaxMenuProps = { readonly path: string; readonly value: string; readonly tools: RowTools; readonly onChange: (tax: string) => void };

export function TaxMenu({ path, value, tools, onChange }: TaxMenuProps) {
  return (
    <Field id={path} label="Tax" error={tools.errors[path]}>
      {(wiring) => (
        <select {...wiring} className="medium" name={path} value={value} onChange={(event) => onChange(event.target.value)}>
          <option value="">none</option>
          {tools.taxes.map((tax) => (
            <option key={tax.value} value={tax.value}>
              {tax.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

type CellProps = {
  readonly path: string;
  readonly label: string;
  readonly unit: string;
  readonly value: string;
  readonly tools: RowTools;
  readonly onChange: (value: string) => void;
};

/** One figure. */
export function Cell({ path, label, unit, value, tools, onChange }: CellProps) {
  return (
    <Field id={path} label={label} error={tools.errors[path]}>
      {(wiring) => (
        <div className="with-unit">
          <input {...wiring} name={path} inputMode="decimal" autoComplete="off" maxLength={20} value={value} onChange={(event) => onChange(event.target.value)} />
          <span className="unit">{unit}</span>
        </div>
      )}
    </Field>
  );
}

type TicksProps = {
  readonly path: string;
  readonly legend: string;
  readonly choices: readonly Choice[];
  readonly ticked: Readonly<Record<string, boolean>>;
  readonly tools: RowTools;
  /** What stands for an empty choice; without it one has to be made, and the list is open. */
  readonly emptyText?: string;
  readonly onChange: (ticked: Record<string, boolean>) => void;
};

/** Several of a list, which opens at a tap. */
export function Ticks({ path, legend, choices, ticked, tools, emptyText, onChange }: TicksProps) {
  const boxes = (
    <div className="pill-choices">
      {choices.map(({ value, label }) => (
        <label className="choice" key={value}>
          <input
            type="checkbox"
            name={`${path}.${value}`}
            checked={ticked[value] ?? false}
            onChange={(event) => onChange({ ...ticked, [value]: event.target.checked })}
          />
          <span>{label}</span>
        </label>
      ))}
    </div>
  );
  const named = choices.filter(({ value }) => ticked[value]).map(({ label }) => label.toLowerCase());
  const error = tools.errors[path];
  return (
    <FieldGroup id={path} legend={legend} error={error}>
      <details open={error !== undefined || (named.length === 0 && emptyText === undefined)}>
        <summary className="button quiet">{named.join(', ') || (emptyText ?? 'none yet')}</summary>
        {boxes}
      </details>
    </FieldGroup>
  );
}

type RowButtonProps = { readonly intent: string; readonly tools: RowTools; readonly text: string };

export function GrowButton({ intent, tools, text }: RowButtonProps) {
  return (
    <button
      className="button"
      name="intent"
      value={intent}
      onClick={(event) => {
        event.preventDefault();
        tools.press(intent);
      }}
    >
      + {text}
    </button>
  );
}

export function ShrinkButton({ intent, tools, text, of }: RowButtonProps & { readonly of: string }) {
  return (
    <button
      className="button quiet shrink"
      name="intent"
      value={intent}
      onClick={(event) => {
        event.preventDefault();
        tools.press(intent);
      }}
    >
      {text}
      {of !== '' && <span className="visually-hidden"> {of}</span>}
    </button>
  );
}
