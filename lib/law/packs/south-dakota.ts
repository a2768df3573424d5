import { statePackOf } from './any-state';

export const southDakota = statePackOf({
  id: 'us-south-dakota',
  place: 'South Dakota',
  read: {
    keepRecordDays: { value: 366, citation: 'ARSD 41:06:03:11', note: '1 year from receipt, at most 366 days; a receipt leaves with the meat.' },
  },
});
