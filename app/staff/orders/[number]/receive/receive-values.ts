import { type ArrivalFormValues, SPOTS, readArrivalForm } from '@/lib/forms';

/** What one menu of the grid says of a part: sound, hit in three grades, or not there at all. */
export const SPOT_STATES = ['', 'light', 'heavy', 'lost', 'absent'] as const;
export type SpotState = (typeof SPOT_STATES)[number];

export const SPOT_WORDS: Readonly<Record<SpotState, string>> = {
  '': 'sound',
  light: 'hit, light',
  heavy: 'hit, heavy',
  lost: 'hit, lost',
  absent: 'did not come',
};

/** The inputs of the receiving page by name: `spots.left-haunch` holds wound and absence in one. */
export function receiveValues(values: ArrivalFormValues): Record<string, string> {
  const { wounds, missing, conditions, hasTransferNote, ...texts } = values;
  return {
    ...texts,
    ...(hasTransferNote && { hasTransferNote: 'on' }),
    ...Object.fromEntries(SPOTS.map(({ id }) => [`spots.${id}`, missing[id] ? 'absent' : (wounds[id] ?? '')])),
    ...Object.fromEntries(Object.entries(conditions).flatMap(([id, ticked]) => (ticked ? [[`conditions.${id}`, 'on']] : []))),
  };
}

/** Reads what the receiving page sent. */
export function readReceiveForm(entries: Iterable<readonly [string, unknown]>): ArrivalFormValues {
  const renamed = [...entries].map(([name, value]): readonly [string, unknown] => {
    if (!name.startsWith('spots.')) return [name, value];
    const id = name.slice('spots.'.length);
    return value === 'absent' ? [`missing.${id}`, 'on'] : [`wounds.${id}`, value];
  });
  return readArrivalForm(renamed);
}

/** The state a tap on the chart leads to. */
export function nextSpotState(state: string): SpotState {
  const at = SPOT_STATES.findIndex((one) => one === state);
  return SPOT_STATES[(at + 1) % SPOT_STATES.length] ?? '';
}
