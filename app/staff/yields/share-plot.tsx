import type { YieldMark } from '@/lib/documents';

const ROW_HEIGHT = 22;
const MARKS = { published: 'open', yours: 'cross', now: 'full' } as const;

/** Published, own and now on one axis: a range with a mark each, told apart by shape. The table beside it says it in words. */
export function SharePlot({ marks }: { readonly marks: readonly YieldMark[] }) {
  return (
    <svg className="share-plot" width="100%" height={marks.length * ROW_HEIGHT} aria-hidden="true" focusable="false">
      {marks.map(({ of, at, range }, index) => {
        const y = index * ROW_HEIGHT + ROW_HEIGHT / 2;
        return (
          <g key={of}>
            <line className="share-axis" x1="0" x2="100%" y1={y} y2={y} />
            {range && <line className={`share-range ${MARKS[of]}`} x1={`${range.from}%`} x2={`${range.to}%`} y1={y} y2={y} />}
            <svg x={`${at}%`} y={y} overflow="visible">
              {of === 'yours' ? <path className="share-cross" d="M-6-6L6 6M-6 6L6-6" /> : <circle className={`share-mark ${MARKS[of]}`} r="6" />}
            </svg>
          </g>
        );
      })}
    </svg>
  );
}
