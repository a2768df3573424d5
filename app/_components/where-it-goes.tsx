import { useId } from 'react';
import type { GonePart, GonePartId, GoneStage, WhereItGoes } from '@/lib/documents';

type WhereItGoesProps = {
  readonly goes: WhereItGoes;
  readonly sentences: readonly string[];
};

/**
 * The way of one animal: a bar a stage, each as long as its weight; what leaves is hatched, what goes on is solid. Every
 * name and weight stands in words beside its bar, so the drawing itself is left out for readers.
 */
export function WhereItGoesFigure({ goes, sentences }: WhereItGoesProps) {
  const id = useId();
  const most = goes.stages[0]?.range.likely ?? 0;
  const how = goes.isPacked ? 'Solid is what goes on, hatched is what leaves.' : 'A forecast, as far as it is not weighed. Solid is what goes on, hatched is what leaves.';
  return (
    <figure className="goes">
      <GoesPatterns id={id} />
      <p className="goes-sentences">{sentences.join(' ')}</p>
      <ol>
        {goes.stages.map((stage) => (
          <Stage key={stage.id} stage={stage} home={stage.id === 'home' ? goes.home : []} most={most} id={id} />
        ))}
      </ol>
      <figcaption className="quiet-text">{how}</figcaption>
    </figure>
  );
}

function Stage({ stage, home, most, id }: { readonly stage: GoneStage; readonly home: readonly GonePart[]; readonly most: number; readonly id: string }) {
  const share = (grams: number): string => `${most > 0 ? ((100 * grams) / most).toFixed(2) : '0'}%`;
  const leaving = stage.leaves.reduce((sum, { range }) => sum + range.likely, 0);
  const goesOn = stage.range.likely - leaving;
  const parts = home.length > 0 ? home : stage.leaves;
  const start = home.length > 0 ? 0 : goesOn;
  return (
    <li>
      <p className="goes-stage">
        <b>{stage.label}</b> <span className="number">{stage.text}</span>
      </p>
      <svg className="goes-bar" width="100%" height="30" aria-hidden="true" focusable="false">
        {home.length === 0 && <rect className="goes-on" x="0" y="1" width={share(goesOn)} height="28" />}
        {parts.map((part, at) => {
          const before = parts.slice(0, at).reduce((sum, { range }) => sum + range.likely, start);
          return <rect key={`${part.id} ${at}`} className={partClass(part.id, home.length > 0)} x={share(before)} y="1" width={share(part.range.likely)} height="28" fill={`url(#${id}${part.id})`} />;
        })}
      </svg>
      {parts.length > 0 && (
        <ul className={home.length > 0 ? 'goes-parts' : 'goes-parts leaving'}>
          {parts.map((part, at) => (
            <li key={`${part.id} ${at}`}>
              <svg className="goes-swatch" width="20" height="20" aria-hidden="true" focusable="false">
                <rect className={partClass(part.id, false)} x="1" y="1" width="18" height="18" fill={`url(#${id}${part.id})`} />
              </svg>
              <span>{part.label}</span> <span className="number">{part.text}</span>
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

function partClass(id: GonePartId, isHome: boolean): string {
  return id === 'undecided' ? 'goes-part open' : isHome ? 'goes-part kept' : 'goes-part';
}

/** The marks of a butcher's chalk: an open ground for what leaves, a solid one for what goes home. Each differs without colour. */
const MARKS: Readonly<Record<GonePartId, { readonly isSolid: boolean; readonly size: number; readonly d: string; readonly turn?: number }>> = {
  innards: { isSolid: false, size: 7, d: 'M0 0V7', turn: 45 },
  outside: { isSolid: false, size: 7, d: 'M0 0V7', turn: -45 },
  bone: { isSolid: false, size: 8, d: 'M0 0V8M0 0H8', turn: 45 },
  trim: { isSolid: false, size: 7, d: 'M2 3.5H4.4' },
  wounds: { isSolid: false, size: 11, d: 'M2 2L9 9M9 2L2 9' },
  drying: { isSolid: false, size: 9, d: 'M0 4.5H9' },
  making: { isSolid: false, size: 6, d: 'M0 3H6' },
  cuts: { isSolid: true, size: 8, d: '' },
  stew: { isSolid: true, size: 8, d: 'M0 0V8M0 0H8' },
  mince: { isSolid: true, size: 6, d: 'M2 3H4' },
  products: { isSolid: true, size: 6, d: 'M0 0V6', turn: 45 },
  undecided: { isSolid: false, size: 8, d: '' },
};

function GoesPatterns({ id }: { readonly id: string }) {
  return (
    <svg className="goes-patterns" width="0" height="0" aria-hidden="true" focusable="false">
      <defs>
        {Object.entries(MARKS).map(([name, { isSolid, size, d, turn = 0 }]) => (
          <pattern key={name} id={`${id}${name}`} width={size} height={size} patternUnits="userSpaceOnUse" patternTransform={`rotate(${turn})`}>
            <rect className={isSolid ? 'goes-on' : 'goes-ground'} width={size} height={size} />
            <path className={isSolid ? 'goes-chalk' : 'goes-ink'} d={d} strokeWidth="1.6" />
          </pattern>
        ))}
      </defs>
    </svg>
  );
}
