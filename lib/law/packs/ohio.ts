import { statePackOf } from './any-state';

export const ohio = statePackOf({
  id: 'us-ohio',
  place: 'Ohio',
  read: {},
  remarks: {
    overBorder: 'The clock that was read: 24 hours to an authorised processor.',
    pooling: 'A retail food shop cuts game at the end of the day only, takes clean carcasses, packs hide and head apart, wraps and stores apart, and cleans down after; the tag or its number stays with the animal (OAC 3717-1-08.2).',
  },
});
