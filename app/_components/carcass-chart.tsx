import type { ReactNode } from 'react';
import type { PartId } from '@/lib/carcass';
import { CarcassDrawing, type DrawnShapes } from './carcass-drawing';
import { ChartMarkIcon, describeState, type ChartState } from './chart-mark';

export type ChartPartState = {
  readonly part: PartId;
  /** `both` where the halves are alike, `middle` for what is not halved. */
  readonly side: 'left' | 'right' | 'both' | 'middle';
  readonly state: ChartState;
  /** Full name, in the list: "Left haunch". */
  readonly name: string;
  /** Short name, on the drawing: "Haunch". */
  readonly label: string;
  /** What is to be done with it: "roasts, 3 lb". */
  readonly detail?: string;
  readonly href?: string;
  readonly onSelect?: () => void;
};

type CarcassChartProps = {
  /** `carcassChart` of lib/documents, handed over by the page: so its lines are not part of a page's script. */
  readonly shapes: DrawnShapes;
  /** `both` draws the two halves, each from its own side. */
  readonly side: 'left' | 'right' | 'both';
  readonly parts: readonly ChartPartState[];
  readonly caption: ReactNode;
  /**
   * `targets`: a list below carries the links for keyboard and screen reader, and the drawing answers to a pointer only.
   * `words`: the drawing's parts take focus themselves, and the list is for screen readers.
   */
  readonly list?: 'targets' | 'words';
  readonly showsMuscles?: boolean;
};

/** The carcass, each part a target with its state, and the same as a list. */
export function CarcassChart({ shapes, side, parts, caption, list = 'targets', showsMuscles = false }: CarcassChartProps) {
  // A bird has no drawing yet: its parts stand in the list.
  const isDrawn = parts.some(({ part }) => shapes.parts.some((shape) => shape.part === part));
  const sides = side === 'both' ? (['left', 'right'] as const) : ([side] as const);
  return (
    <figure className={side === 'both' ? 'chart both-sides' : 'chart'}>
      <figcaption>{caption}</figcaption>
      <div className="chart-sides">
        {isDrawn && sides.map((drawn) => (
          <CarcassDrawing
            key={drawn}
            shapes={shapes}
            side={drawn}
            parts={parts.filter((part) => part.side === drawn || part.side === 'both' || part.side === 'middle')}
            isPointerOnly={list === 'targets'}
            showsMuscles={showsMuscles}
          />
        ))}
      </div>
      <ul className={list === 'targets' ? 'chart-list' : 'visually-hidden'}>
        {parts.map((part) => (
          <li key={`${part.side} ${part.part}`}>
            <ChartLine part={part} isTarget={list === 'targets'} />
          </li>
        ))}
      </ul>
    </figure>
  );
}

function ChartLine({ part, isTarget }: { readonly part: ChartPartState; readonly isTarget: boolean }) {
  const words = (
    <>
      <ChartMarkIcon state={part.state} />
      <span>
        <b>{part.name}</b>: {describeState(part)}
      </span>
    </>
  );
  if (isTarget && part.href) return <a href={part.href}>{words}</a>;
  if (isTarget && part.onSelect) {
    return (
      <button type="button" onClick={part.onSelect}>
        {words}
      </button>
    );
  }
  return <span className="chart-line">{words}</span>;
}
