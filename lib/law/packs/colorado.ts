import { statePackOf } from './any-state';

export const colorado = statePackOf({
  id: 'us-colorado',
  place: 'Colorado',
  read: {
    keepRecordDays: { value: 366, citation: '2 CCR 406-0-018', note: '1 year after release, at most 366 days; tag, certificate or equivalent stays with the game.' },
  },
});
