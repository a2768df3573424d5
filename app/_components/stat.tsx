import type { ReactNode } from 'react';

type StatProps = {
  readonly label: ReactNode;
  readonly value: ReactNode;
  readonly unit?: ReactNode;
  readonly detail?: ReactNode;
};

/** One figure with its name. Several stand in a `<div className="stats">`. */
export function Stat({ label, value, unit, detail }: StatProps) {
  return (
    <dl className="stat">
      <dt>{label}</dt>
      <dd className="number nowrap">
        {value}
        {unit && <span className="unit"> {unit}</span>}
      </dd>
      {detail && <dd className="quiet-text">{detail}</dd>}
    </dl>
  );
}
