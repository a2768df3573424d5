import { statePackOf } from './any-state';

export const wisconsin = statePackOf({
  id: 'us-wisconsin',
  place: 'Wisconsin',
  read: {
    pooling: {
      value: 'not-allowed',
      citation: 'ATCP 55.08',
      note: 'No mixing with other people’s or sold food; everything goes back, trim included. Loose sausages over 1 1/2 in are labelled one by one.',
    },
    keepRecordDays: {
      value: 1096,
      citation: 'ATCP 55.07(13)',
      note: '3 years, at most 1096 days, for every custom transaction; the record is made at the time and initialled.',
    },
  },
});
