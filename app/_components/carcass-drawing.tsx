import { useId, type KeyboardEvent, type ReactNode } from 'react';
import type { CarcassChart, ChartPart } from '@/lib/documents';
import type { ChartPartState } from './carcass-chart';
import { ChartMark, describeState } from './chart-mark';
import { ChartPatterns } from './chart-patterns';

/** The lines to draw. A page that never shows the muscles leaves them out. */
export type DrawnShapes = Omit<CarcassChart, 'muscles'> & Partial<Pick<CarcassChart, 'muscles'>>;

type CarcassDrawingProps = {
  readonly shapes: DrawnShapes;
  readonly side: 'left' | 'right';
  readonly parts: readonly ChartPartState[];
  readonly isPointerOnly: boolean;
  readonly showsMuscles: boolean;
};

type Drawn = ChartPart & { readonly of: ChartPartState };

const LINE = 30;

/** The drawing from one side. The right side is the left mirrored, with its words upright. */
export function CarcassDrawing({ shapes: chart, side, parts, isPointerOnly, showsMuscles }: CarcassDrawingProps) {
  const id = useId();
  const isMirrored = side === 'right';
  const turn = isMirrored ? `translate(${chart.width} 0) scale(-1 1)` : undefined;
  const across = (x: number) => (isMirrored ? chart.width - x : x);
  const drawn: Drawn[] = chart.parts.flatMap((shape) => {
    const of = parts.find(({ part }) => part === shape.part);
    return of ? [{ ...shape, of }] : [];
  });
  const present = drawn.filter(({ of }) => of.state !== 'absent');
  const absent = drawn.filter(({ of }) => of.state === 'absent');
  const woven = present.filter(({ of }) => of.state !== 'undecided' && of.state !== 'sound');
  const access = isPointerOnly
    ? ({ 'aria-hidden': true } as const)
    : ({ role: 'group', 'aria-label': isMirrored ? 'Right side' : 'Left side' } as const);

  return (
    <svg className="chart-drawing" viewBox={chart.viewBox} width={chart.width} height={chart.height} {...access}>
      <ChartPatterns id={id} />
      <g transform={turn}>
        <path className="chart-far" d={chart.farLimbs.join(' ')} />
        <path className="chart-near" d={chart.nearLimbs.join(' ')} />
        <path className="chart-face" d={chart.headLines.join(' ')} />
        <path className="chart-eye" d={chart.eye} />
        <path className="chart-ground" d={chart.outline} />
        {present.map(({ part, d, of }) => (
          <path key={part} className={`chart-part ${of.state}`} d={d} />
        ))}
        <path className="chart-engraving" d={`${chart.shading} ${chart.ribLines}`} />
        {woven.map(({ part, d, of }) => (
          <path key={part} d={d} fill={`url(#${id}-${of.state})`} />
        ))}
        <path className="chart-outline" d={chart.outline} />
        {absent.map(({ part, d }) => (
          <path key={part} className="chart-part absent" d={d} />
        ))}
        {showsMuscles &&
          chart.muscles?.map(({ muscle, isInside, d }) => (
            <path key={muscle} className={isInside ? 'chart-seam inside' : 'chart-seam muscle'} d={d} />
          ))}
        {absent.map(({ part, d }) => (
          <path key={part} className="chart-seam absent" d={d} />
        ))}
        {chart.parts.map(({ part, d }) =>
          absent.some((gone) => gone.part === part) ? null : <path key={part} className="chart-seam" d={d} />,
        )}
        {drawn.map(({ part, leaderD }) => leaderD && <path key={part} className="chart-leader" d={leaderD} />)}
      </g>
      {inTouchOrder(drawn).map((shape) => (
        <Target key={shape.part} of={shape.of} isPointerOnly={isPointerOnly}>
          <g transform={turn}>
            <path className="chart-lit" d={shape.d} />
            <path className="chart-hit" d={shape.hitD ?? shape.d} />
          </g>
          <Label text={shape.of.label} x={across(shape.labelX)} y={shape.labelY} />
          <g transform={`translate(${across(shape.markX)} ${shape.markY})`}>
            <ChartMark state={shape.of.state} />
          </g>
        </Target>
      ))}
    </svg>
  );
}

/** Slim parts last, so that their larger touch areas lie on top of their neighbours. */
function inTouchOrder(drawn: readonly Drawn[]): readonly Drawn[] {
  const slim = (shape: Drawn) => (shape.part === 'fillet' ? 2 : shape.hitD ? 1 : 0);
  return [...drawn].sort((a, b) => slim(a) - slim(b));
}

/** Long names stand on two lines, broken at a space. */
function Label({ text, x, y }: { readonly text: string; readonly x: number; readonly y: number }) {
  const at = text.length > 11 ? text.lastIndexOf(' ', 10) : -1;
  const lines = at > 0 ? [text.slice(0, at), text.slice(at + 1)] : [text];
  return (
    <text className="chart-label">
      {lines.map((line, row) => (
        <tspan key={line} x={x} y={y + 9 - (lines.length - 1 - row) * LINE}>
          {line}
        </tspan>
      ))}
    </text>
  );
}

type TargetProps = { readonly of: ChartPartState; readonly isPointerOnly: boolean; readonly children: ReactNode };

function Target({ of, isPointerOnly, children }: TargetProps) {
  const name = isPointerOnly ? {} : { 'aria-label': `${of.name}: ${describeState(of)}` };
  const tabIndex = isPointerOnly ? -1 : 0;
  const { href, onSelect } = of;
  if (href) {
    return (
      <a className="chart-target" href={href} tabIndex={tabIndex} {...name}>
        {children}
      </a>
    );
  }
  if (!onSelect) return <g>{children}</g>;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    onSelect();
  };
  return (
    <g className="chart-target" role="button" tabIndex={tabIndex} onClick={onSelect} onKeyDown={onKeyDown} {...name}>
      {children}
    </g>
  );
}
