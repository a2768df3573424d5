import { statePackOf } from './any-state';

export const indiana = statePackOf({
  id: 'us-indiana',
  place: 'Indiana',
  read: {
    keepRecordDays: { value: 550, citation: '312 IAC 9-3-10', basis: 'second-hand', note: '18 months after preparation, at most 550 days.' },
  },
});
