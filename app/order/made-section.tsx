'use client';

import { useFormContext, useWatch } from 'react-hook-form';
import { FieldGroup } from '@/app/_components/field';
import { allergenName, ALLERGENS } from '@/lib/instructions';
import { capital, describedInstructions, mixingChoices, productChoices, productHint, type OrderFormValues } from '@/lib/forms';
import { PRODUCTS } from '@/lib/plan';
import { FindingsAtField } from './findings';
import { useFormWorld, useLiveForm, useStand } from './form-context';
import { CheckField, HiddenField, RadioField, TextField } from './form-fields';

/** Things made of the meat, whose batch they come from, which is made first, and what may not be in them. */
export function MadeThings() {
  const { shop, state } = useFormWorld();
  const offered = productChoices(shop.tariff, state.values);
  const isAsked = offered.length > 0 && (shop.law.pooling === 'allowed' || state.values.mixing === 'may-be-mixed');
  return (
    <>
      <h3>Made things</h3>
      <p className="quiet-text">How much of your own meat, raw, goes into each. Leave it empty for none.</p>
      {offered.map((id) => (
        <TextField
          key={id}
          name={`products.${id}`}
          label={capital(PRODUCTS[id].name)}
          hint={`${productHint(id, shop)}${shop.terms?.mixedOnly.includes(id) ? ' Made here only in batches with other hunters’ meat.' : ''}`}
          optional
          unit={shop.unit}
          inputMode="decimal"
          maxLength={20}
        />
      ))}
      <ServedFirst />
      {isAsked ? <RadioField name="mixing" label="Whose meat may be in them?" choices={mixingChoices()} /> : <HiddenField name="mixing" />}
      <CheckField name="noPork" label="No pork" hint="Nothing of pork may touch this order." />
      <Allergies />
      <FindingsAtField field="products" />
    </>
  );
}

/** The order in which made things get their meat, where there are two or more. */
function ServedFirst() {
  const { shop } = useFormWorld();
  const { values } = useLiveForm();
  const { products, isPriorityStated } = describedInstructions(values, shop);
  const stand = useStand('served-first');
  return (
    <>
      <HiddenField name="served" />
      {products.length > 1 && (
        <div {...stand} className="served">
          <h4>If meat runs short</h4>
          <p className="quiet-text">{isPriorityStated ? 'They get their meat in the order you chose.' : 'They get their meat in this order. Tap what matters most to you.'}</p>
          <ol>
            {products.map(({ productId }, at) => (
              <li key={productId}>
                {capital(PRODUCTS[productId].name)}
                {at > 0 && (
                  <button type="submit" name="intent" value={`first:${productId}`} className="button quiet">
                    Make {PRODUCTS[productId].name} first
                  </button>
                )}
              </li>
            ))}
          </ol>
        </div>
      )}
    </>
  );
}

function Allergies() {
  const { state } = useFormWorld();
  const { control } = useFormContext<OrderFormValues>();
  const avoid = useWatch({ control, name: 'avoid' });
  const ticked = ALLERGENS.filter((id) => avoid[id]).map(allergenName);
  return (
    <details className="fold" open={ALLERGENS.some((id) => state.values.avoid[id])}>
      <summary>Allergies in the household{ticked.length > 0 ? `: ${ticked.join(', ')}` : ''}</summary>
      <FieldGroup id="avoid" legend="What may nobody eat?" hint="Nothing made with it comes to you. If an allergy is severe, talk to the shop as well.">
        <div className="choices two">
          {ALLERGENS.map((id) => (
            <CheckField key={id} name={`avoid.${id}`} label={capital(allergenName(id))} />
          ))}
        </div>
      </FieldGroup>
    </details>
  );
}
