import { statePackOf } from './any-state';

const MOVING = '3 CSR 10-4.135';

export const missouri = statePackOf({
  id: 'us-missouri',
  place: 'Missouri',
  read: {
    spineFromZone: { value: 'not-allowed', citation: MOVING, note: 'Parts that may usually move: cut and wrapped or boned meat, and quarters with no spine or head.' },
    headFromZone: { value: 'clean-skull-plate-only', citation: MOVING, note: 'Antlers with a clean skull plate, hide without head, teeth, finished mounts.' },
    overBorder: {
      value: 'no-spine-no-head',
      citation: MOVING,
      textYear: 2020,
      note: 'Cut and wrapped meat, boned meat, quarters with no spine or head, hide without head, antlers with a clean skull plate, teeth, finished mounts. The clock is 48 hours (rule of 2020).',
    },
  },
});
