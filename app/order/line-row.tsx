'use client';

import { useFormContext, useWatch } from 'react-hook-form';
import { CUTS, TARGETS, cutName, cutsOf, targetName } from '@/lib/cuts';
import { AS_SEEN_FIT, capital, packChoices, readPack, readSize, sideChoices, sizeChoices, type LineValues, type OrderFormValues } from '@/lib/forms';
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
  const opensAmount = line.asked !== '' || state.fieldErrors[`${at}.asked`] !== undefined;

  return (
    <fieldset className="repeat" {...useStand(line.id)}>
      <legend className="visually-hidden">{name}</legend>
      <div className="row apart">
        <h4 className="h3">{name}</h4>
        <button type="submit" name="intent" value={`remove:${line.id}`} className="button quiet">
          Remove<span className="visually-hidden"> {name}</span>
        </button>
      </div>
      <HiddenField name={`${at}.id`} />
      <HiddenField name={`${at}.target`} />
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
      <button type="submit" name="intent" value="refresh" className="button quiet without-script">
        Show the sizes for this cut
      </button>
      <LineForecast lineId={line.id} />
      <details open={opensAmount}>
        <summary>I want a certain amount of it</summary>
        <TextField
          name={`${at}.asked`}
          label="How much, over all its pieces"
          hint="Leave it empty to have all there is."
          optional
          unit={shop.unit}
          inputMode="decimal"
          maxLength={20}
        />
      </details>
      <FindingsAt place={{ kind: 'line', lineId: line.id }} />
    </fieldset>
  );
}

function LineForecast({ lineId }: { readonly lineId: string }) {
  const { shop } = useFormWorld();
  const { assessment } = useLiveForm();
  const planned = assessment?.plan.lines.find(({ line }) => line.id === lineId);
  if (!planned || planned.packed.likely === 0) return null;
  return <p className="line-forecast">Packs {formatWeightRange(planned.packed, shop.unit, shop.locale)}</p>;
}
