import { FieldGroup } from '@/app/_components/field';
import { type BaseValues, CHARGE_KINDS, type ChargeKind, type Choice } from '@/lib/forms';
import { Cell, GrowButton, PriceRow, type RowTools, ShrinkButton, Ticks } from './price-row';

const KIND_WORDS: Readonly<Record<ChargeKind, string>> = {
  flat: 'one price',
  steps: 'steps by weight',
  'per-weight': 'by weight throughout',
};

type BaseRowsProps = {
  readonly rows: readonly BaseValues[];
  readonly tools: RowTools;
  readonly species: readonly Choice[];
  readonly extras: readonly Choice[];
  readonly onChange: (at: number, part: Partial<BaseValues>) => void;
};

/** What cutting one animal costs, by its hanging weight. */
export function BaseRows({ rows, tools, species, extras, onChange }: BaseRowsProps) {
  return (
    <section className="section" aria-labelledby="by-animal">
      <h2 id="by-animal">By the animal</h2>
      {rows.map((row, at) => {
        const path = `base.${at}`;
        return (
          <PriceRow key={at} path={path} row={row} tools={tools} onChange={(part) => onChange(at, part)}>
            <Ticks path={`${path}.species`} legend="For" choices={species} ticked={row.species} tools={tools} onChange={(ticked) => onChange(at, { species: ticked })} />
            <FieldGroup id={`${path}.kind`} legend="Worked out as" error={tools.errors[`${path}.kind`]}>
              <div className="pill-choices">
                {CHARGE_KINDS.map((kind) => (
                  <label className="choice" key={kind}>
                    <input type="radio" name={`${path}.kind`} value={kind} checked={row.kind === kind} onChange={() => onChange(at, { kind })} />
                    <span>{KIND_WORDS[kind]}</span>
                  </label>
                ))}
              </div>
            </FieldGroup>
            <Charge row={row} path={path} tools={tools} onChange={(part) => onChange(at, part)} />
            <Ticks path={`${path}.includes`} legend="Already in it" choices={extras} ticked={row.includes} tools={tools} emptyText="nothing more" onChange={(ticked) => onChange(at, { includes: ticked })} />
            {rows.length > 1 && <ShrinkButton intent={`remove:${path}`} tools={tools} text="Take away" of={row.name} />}
          </PriceRow>
        );
      })}
      <GrowButton intent="add:base" tools={tools} text="Add a price by the animal" />
    </section>
  );
}

type ChargeProps = { readonly row: BaseValues; readonly path: string; readonly tools: RowTools; readonly onChange: (part: Partial<BaseValues>) => void };

/** The figures of all kinds; the look shows those of the kind that is chosen. */
function Charge({ row, path, tools, onChange }: ChargeProps) {
  const setStep = (at: number, part: Partial<BaseValues['steps'][number]>): void =>
    onChange({ steps: row.steps.map((step, index) => (index === at ? { ...step, ...part } : step)) });
  return (
    <div className="charge">
      <div className="for-flat">
        <Cell path={`${path}.flat`} label="Price an animal" unit={tools.currency} value={row.flat} tools={tools} onChange={(flat) => onChange({ flat })} />
      </div>
      <div className="for-per-weight">
        <Cell path={`${path}.rate`} label={`Price a ${tools.unit} hanging`} unit={tools.currency} value={row.rate} tools={tools} onChange={(rate) => onChange({ rate })} />
      </div>
      <div className="for-steps stack tight">
        {row.steps.map((step, at) => (
          <div className="price-cells step-cells" key={at}>
            <Cell path={`${path}.steps.${at}.upTo`} label="Up to" unit={tools.unit} value={step.upTo} tools={tools} onChange={(upTo) => setStep(at, { upTo })} />
            <Cell path={`${path}.steps.${at}.amount`} label="Price" unit={tools.currency} value={step.amount} tools={tools} onChange={(amount) => setStep(at, { amount })} />
            <ShrinkButton intent={`remove:${path}.steps.${at}`} tools={tools} text="Take away" of={`the step up to ${step.upTo}`} />
          </div>
        ))}
        <GrowButton intent={`add:${path}.steps`} tools={tools} text="Add a step" />
        <Cell path={`${path}.excess`} label={`Each ${tools.unit} above the last step`} unit={tools.currency} value={row.excess} tools={tools} onChange={(excess) => onChange({ excess })} />
      </div>
    </div>
  );
}
