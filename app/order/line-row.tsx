'use client';

import { useFormContext, useWatch } from 'react-hook-form';
import { WhereIsThis } from '@/app/_components/muscle-figure';
import { CUTS, TARGETS, cutName, cutsOf, targetName } from '@/lib/cuts';
import { AS_SEEN_FIT, capital, chosenLabel, packChoices, readPack, readSize, sideChoices, sizeChoices, type LineValues, type OrderFormValues } from '@/lib/forms';
import { pieceWords } from '@/lib/documents';
import { formatWeightRange } from '@/lib/units';
import { FindingsAt } from './findings';
import { useFormWorld, useLiveForm, useStand } from './form-context';
import { HiddenField, RadioField, SelectField, TextField } from './form-fields';

type LineRowProps = { readonly line: LineValues; readonly index: number };

/** One wish: which side, which cut, how thick or heavy, how it is packed. */
export function LineRow({ line, index }: LineRowProps) {
  const { shop, state } = useFormWorld();
  const { control, setValue } = useFormContext<OrderFormValues>();
  const at = `lines.${index}` as const;
  const cut = useWatch({ control, name: `${at}.cut` }) ?? line.cut;
  const name = capital(targetName(line.target, shop.country));
  const isSided = TARGETS[line.target].reach === 'sided';
  const { sizing, packing } = CUTS[cut];
  const where = shop.places[line.target];
  const isOpen = state.focus === line.id || Object.keys(state.fieldErrors).some((path) => path.startsWith(`${at}.`));

  return (
    <fieldset className="repeat line" {...useStand(line.id)}>
      <legend className="visually-hidden">{name}</legend>
      <details open={isOpen}>
        <LineSummary line={line} index={index} name={name} />
        <HiddenField name={`${at}.id`} />
        <HiddenField name={`${at}.target`} />
        {where && <WhereIsThis target={line.target} name={name} where={where} />}
        {isSided ? (
          <RadioField name={`${at}.side`} label="Which side" layout="pill-choices" choices={sideChoices()} />
        ) : (
          <HiddenField name={`${at}.side`} />
        )}
        <div className="line-choices">
          <SelectField
            name={`${at}.cut`}
            label="Cut"
            choices={cutsOf(line.target).map((id) => ({ value: id, label: cutName(id, shop.country) }))}
            options={{
              // What the new cut cannot have goes back to the honest choice.
              onChange: () => {
                setValue(`${at}.size`, AS_SEEN_FIT);
                setValue(`${at}.pack`, AS_SEEN_FIT);
              },
            }}
          />
          {sizing === 'none' ? (
            <HiddenField name={`${at}.size`} />
          ) : (
            <SelectField
              key={sizing}
              name={`${at}.size`}
              label={sizing === 'thickness' ? 'How thick' : 'How big'}
              choices={sizeChoices(cut, shop.unit, readSize(line.size, cut))}
            />
          )}
          {packing === 'each' ? (
            <HiddenField name={`${at}.pack`} />
          ) : (
            <SelectField key={packing} name={`${at}.pack`} label="How packed" choices={packChoices(cut, shop.unit, readPack(line.pack, cut))} />
          )}
        </div>
        <p className="without-script">
          <button type="submit" name="intent" value="refresh" className="button quiet">
            Show the sizes for this cut
          </button>
        </p>
        <TextField
          name={`${at}.asked`}
          label="I want this much of it"
          hint="Over all its pieces. Empty: all there is."
          optional
          unit={shop.unit}
          inputMode="decimal"
          maxLength={20}
        />
        <button type="submit" name="intent" value={`remove:${line.id}`} className="button quiet">
          Remove {name}
        </button>
      </details>
      <FindingsAt place={{ kind: 'line', lineId: line.id }} />
    </fieldset>
  );
}

/** The line in a few words, with what it packs: all that is seen of it while it is closed. */
function LineSummary({ line, index, name }: LineRowProps & { readonly name: string }) {
  const { shop } = useFormWorld();
  const { values, planned: outlook } = useLiveForm();
  const now = values.lines[index] ?? line;
  const planned = outlook?.plan.lines.find((one) => one.line.id === line.id);
  const side = TARGETS[line.target].reach === 'sided' ? [chosenLabel(sideChoices(), now.side)] : [];
  return (
    <summary>
      <span>
        <b>{name}</b> {[cutName(now.cut, shop.country), ...side].join(', ')}
      </span>
      {planned && planned.packed.likely > 0 && (
        <span className="number">
          {formatWeightRange(planned.packed, shop.unit, shop.locale)}
          <span className="quiet-text pieces">{pieceWords(planned.pieces)}</span>
        </span>
      )}
    </summary>
  );
}
