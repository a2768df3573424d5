import { Field, FieldGroup } from '../../_components/field';
import type { FormAnswer } from '../../_components/kept-form';
import { TextField } from '../../_components/place-fields';

type Product = { readonly value: string; readonly text: string };
type MadeThingsProps = { readonly answer: FormAnswer; readonly products: readonly Product[]; readonly mince: string };

/** What the shop makes and how long its work takes: what an order is held against. */
export function MadeThings({ answer, products, mince }: MadeThingsProps) {
  return (
    <section className="section stack" aria-labelledby="made-heading">
      <h2 id="made-heading">Made things and how long it takes</h2>
      <p className="quiet-text">Orders are held against these: who asks for their own meat only, who may not eat what is in it, who needs it by a day.</p>
      <TextField
        name="plainDays"
        label="Days until plain cuts are ready"
        hint="From coming in, hanging included. Leave it empty if it differs too much to say."
        optional
        size="short"
        inputMode="numeric"
        answer={answer}
      />
      <TextField name="madeDays" label="Days until made things are ready" hint="Sausage, sticks and the like, from coming in." optional size="short" inputMode="numeric" answer={answer} />
      <Field id="madeUntil" label="Last day to bring an animal for made things" hint="Leave it empty if you make them all year." optional error={answer.fieldErrors['madeUntil']}>
        {(wiring) => <input {...wiring} className="medium" type="date" name="madeUntil" defaultValue={answer.values['madeUntil']} />}
      </Field>
      <TextField name="mostFatPercent" label={`Most fat in ${mince}, in percent`} hint="Of the whole, fat added included. 30 is the usual limit." size="short" inputMode="numeric" answer={answer} />
      <FieldGroup id="mixedOnly" legend="Made only in batches with everybody's meat" hint="Nobody gets only their own meat back of these." optional>
        <div className="choices two">
          {products.map(({ value, text }) => (
            <label className="choice" key={value}>
              <input type="checkbox" name={`mixedOnly.${value}`} defaultChecked={answer.values[`mixedOnly.${value}`] === 'on'} />
              <span>{text}</span>
            </label>
          ))}
        </div>
      </FieldGroup>
      <h3>What is in each made thing</h3>
      <p className="quiet-text">What people must avoid, with commas between, as your spice mix says: milk, wheat, soy, mustard, celery, nuts. Write none where there is none, and nothing where you have not looked.</p>
      {products.map(({ value, text }) => (
        <TextField key={value} name={`allergens.${value}`} label={`In ${text.toLowerCase()}`} optional answer={answer} />
      ))}
    </section>
  );
}
