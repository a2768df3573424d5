'use client';

import { type PartId, partsOf } from '@/lib/carcass';
import { TARGETS, partName, targetName, targetsOfPart } from '@/lib/cuts';
import { capital, planOf } from '@/lib/forms';
import { FindingsAt } from './findings';
import { useFormWorld, useStand } from './form-context';
import { LineRow } from './line-row';
import { OrderChart } from './order-chart';
import { FormSection } from './form-section';

export function CutsSection() {
  const { state, shop } = useFormWorld();
  return (
    <FormSection
      section="cuts"
      number={2}
      title="How it is cut"
      lede="Name only what you care about. Everything else goes where you say in the next step."
    >
      {state.values.lines.length === 0 && (
        <div className="panel raised">
          <p>In a hurry, or not sure? Take what most people have, then change it as you like.</p>
          <div className="buttons">
            <button type="submit" name="intent" value="usual" className="button plain">
              Cut it the usual way
            </button>
          </div>
        </div>
      )}
      <OrderChart />
      {partsOf(planOf(state.values, shop)).map((part) => (
        <PartCard key={part} part={part} title={capital(partName(part, shop.country))} />
      ))}
    </FormSection>
  );
}

function PartCard({ part, title }: { readonly part: PartId; readonly title: string }) {
  const { shop, state } = useFormWorld();
  const lines = state.values.lines.map((line, index) => ({ line, index })).filter(({ line }) => TARGETS[line.target].part === part);
  const id = `part-${part}`;
  return (
    <section className="panel part-card" {...useStand(id)} aria-labelledby={`${id}-title`}>
      <h3 id={`${id}-title`}>{title}</h3>
      {lines.map(({ line, index }) => (
        <LineRow key={line.id} line={line} index={index} />
      ))}
      <FindingsAt place={{ kind: 'part', part }} />
      <div className="add-buttons" role="group" aria-label={`Add a cut of the ${title.toLowerCase()}`}>
        {targetsOfPart(part).map((target) => (
          <button type="submit" name="intent" value={`add:${target}`} key={target} className="button">
            <span className="visually-hidden">Add </span>
            <span className="plus">
              {targetName(target, shop.country)}
              {isWhole(target) && ', all of it'}
            </span>
          </button>
        ))}
      </div>
    </section>
  );
}

function isWhole(target: ReturnType<typeof targetsOfPart>[number]): boolean {
  return target !== 'saddle' && TARGETS[target].muscles.length > 1;
}
