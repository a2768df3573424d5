/** `sound` is for what came whole, where cuts are not the matter: no mark at all. */
export type ChartState = 'sound' | 'decided' | 'undecided' | 'doubled' | 'wounded' | 'absent';

export const CHART_STATE_WORDS: Readonly<Record<ChartState, string>> = {
  sound: 'sound',
  decided: 'decided',
  undecided: 'to decide',
  doubled: 'asked for twice',
  wounded: 'wounded',
  absent: 'not here',
};

/** "decided, roasts, 3 lb" */
export function describeState({ state, detail }: { readonly state: ChartState; readonly detail?: string }): string {
  return detail ? `${CHART_STATE_WORDS[state]}, ${detail}` : CHART_STATE_WORDS[state];
}

const DISC = 'M0 -13 C7.2 -13 13 -7.2 13 0 C13 7.2 7.2 13 0 13 C-7.2 13 -13 7.2 -13 0 C-13 -7.2 -7.2 -13 0 -13 Z';

const SHAPES: Readonly<Record<ChartState, string>> = {
  sound: '',
  decided: DISC,
  undecided: DISC,
  doubled: 'M-6 -14 L6 -14 L14 -6 L14 6 L6 14 L-6 14 L-14 6 L-14 -6 Z',
  wounded: 'M0 -15 L15 0 L0 15 L-15 0 Z',
  absent: DISC,
};

const LINES: Readonly<Record<ChartState, string>> = {
  sound: '',
  decided: 'M-6 0.5 L-1.5 5 L6.5 -5',
  undecided: 'M-4.5 0 L-4 0 M0 0 L0.5 0 M4.5 0 L5 0',
  doubled: 'M-6 -3.5 L6 -3.5 M-6 3.5 L6 3.5',
  wounded: 'M-4 -4 L4 4 M4 -4 L-4 4',
  absent: 'M-6 0 L6 0',
};

/** The sign of a state, drawn round the origin, 30 units across: tick, dots, double bar, cross, dash. */
export function ChartMark({ state }: { readonly state: ChartState }) {
  if (state === 'sound') return null;
  return (
    <>
      <path className={`chart-mark ${state}`} d={SHAPES[state]} />
      <path className={`chart-mark-line ${state}`} d={LINES[state]} />
    </>
  );
}

export function ChartMarkIcon({ state }: { readonly state: ChartState }) {
  return (
    <svg viewBox="-16 -16 32 32" width="24" height="24" aria-hidden="true" focusable="false">
      <ChartMark state={state} />
    </svg>
  );
}
