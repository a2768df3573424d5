import { expect, test } from 'vitest';
import { nextSpotState, readReceiveForm, receiveValues, SPOT_STATES } from '@/app/staff/orders/[number]/receive/receive-values';
import { readArrivalForm } from '@/lib/forms';

test('a menu of the grid holds a wound or an absence, never both', () => {
  const read = readReceiveForm([
    ['spots.left-haunch', 'heavy'],
    ['spots.right-fillet', 'absent'],
    ['spots.middle-neck', ''],
  ]);
  expect(read.wounds).toMatchObject({ 'left-haunch': 'heavy', 'right-fillet': '', 'middle-neck': '' });
  expect(read.missing).toMatchObject({ 'left-haunch': false, 'right-fillet': true, 'middle-neck': false });
});

test('what was taken down comes back into the same inputs', () => {
  const found = readArrivalForm([
    ['licence', 'HA-1'],
    ['diseaseZone', 'yes'],
    ['conditions.dirty', 'on'],
    ['wounds.left-loin', 'lost'],
    ['missing.right-ribs', 'on'],
  ]);
  const inputs = receiveValues(found);
  expect(inputs).toMatchObject({ licence: 'HA-1', diseaseZone: 'yes', 'conditions.dirty': 'on', 'spots.left-loin': 'lost', 'spots.right-ribs': 'absent', 'spots.left-fillet': '' });
  expect(inputs).not.toHaveProperty('conditions.clean');
  expect(readReceiveForm(Object.entries(inputs))).toEqual(found);
});

test('taps on the chart go once round all states', () => {
  const walk = SPOT_STATES.reduce<string[]>((states) => [...states, nextSpotState(states.at(-1) ?? '')], ['']);
  expect(walk).toEqual([...SPOT_STATES, '']);
});
