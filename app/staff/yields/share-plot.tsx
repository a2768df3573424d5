import type { LearnedShare } from '@/lib/learning';

/** 90th percentile of the standard normal: eight in ten lie between minus and plus this many deviations. */
const Z90 = 1.2816;

const ROW_HEIGHT = 22;

/** Published, own and now on one axis: a range with a mark each, told apart by shape. The table beside it says it in words. */
export function SharePlot({ share }: { readonly share: LearnedShare }) {
  const { prior, own, result } = share;
  const rows = [
    { name: 'published', mean: prior.mean, sd: prior.sd, shape: 'open' as const },
    ...(own.mean === null ? [] : [{ name: 'yours', mean: own.mean, sd: 0, shape: 'cross' as const }]),
    ...(own.mean === null ? [] : [{ name: 'now', mean: result.mean, sd: result.sd, shape: 'full' as const }]),
  ];
  const ends = rows.flatMap(({ mean, sd }) => [mean - Z90 * sd, mean + Z90 * sd]);
  const room = Math.max(0.01, Math.max(...ends) - Math.min(...ends)) * 0.12;
  const from = Math.min(...ends) - room;
  const across = Math.max(...ends) + room - from;
  const at = (value: number): string => `${((100 * (value - from)) / across).toFixed(2)}%`;
  return (
    <svg className="share-plot" width="100%" height={rows.length * ROW_HEIGHT} aria-hidden="true" focusable="false">
      {rows.map(({ name, mean, sd, shape }, index) => {
        const y = index * ROW_HEIGHT + ROW_HEIGHT / 2;
        return (
          <g key={name}>
            <line className="share-axis" x1="0" x2="100%" y1={y} y2={y} />
            {sd > 0 && <line className={`share-range ${shape}`} x1={at(mean - Z90 * sd)} x2={at(mean + Z90 * sd)} y1={y} y2={y} />}
            <svg x={at(mean)} y={y} overflow="visible">
              {shape === 'cross' ? (
                <path className="share-cross" d="M-6-6L6 6M-6 6L6-6" />
              ) : (
                <circle className={`share-mark ${shape}`} r="6" />
              )}
            </svg>
          </g>
        );
      })}
    </svg>
  );
}
