import { statePackOf } from './any-state';

export const anotherState = statePackOf({
  id: 'us-another-state',
  place: 'United States, another state',
  read: {
    keepRecordDays: {
      value: 1095,
      citation: '9 CFR 320.3',
      note: '2 years after 31 December of the year of the entry, at most 1095 days. The federal clock; whether it reaches a shop that only cuts hunters’ own game was not read.',
    },
  },
  remarks: {
    pooling: 'Federal law keeps a hunter’s own meat apart from product for sale and marks each package "Not for Sale" (21 USC 623(a); 9 CFR 316.16, 317.16).',
  },
});
