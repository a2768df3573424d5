'use client';

import { useFormWorld } from './form-context';
import { CheckField, TextField } from './form-fields';

/** Who shares the animal, and in what parts. Rare, so folded away; open where something is written. */
export function Shares() {
  const { state } = useFormWorld();
  const { shares } = state.values;
  const isOpen = shares.some(({ name, percent }) => name !== '' || percent !== '') || Object.keys(state.fieldErrors).some((path) => path.startsWith('shares.'));
  return (
    <details className="fold" open={isOpen}>
      <summary>Share this animal, or give some of it away</summary>
      <p className="quiet-text">By the weight of what is packed. Together they make 100 percent; put yourself in as well, and leave empty what you do not need.</p>
      {shares.map((_, at) => (
        // The rows are always as many, and stay in their places.
        // oxlint-disable-next-line react/no-array-index-key
        <fieldset className="share" key={at}>
          <legend className="visually-hidden">Share {at + 1}</legend>
          <TextField name={`shares.${at}.name`} label="Name on the label" maxLength={40} />
          <TextField name={`shares.${at}.percent`} label="Share" unit="%" inputMode="decimal" maxLength={4} />
          <CheckField name={`shares.${at}.isGiven`} label="Given to a food bank" />
        </fieldset>
      ))}
    </details>
  );
}
