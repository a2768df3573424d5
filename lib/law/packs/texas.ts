import { statePackOf } from './any-state';

export const texas = statePackOf({
  id: 'us-texas',
  place: 'Texas',
  read: {
    pooling: {
      value: 'not-allowed',
      citation: 'Texas chronic wasting disease rules, 2024',
      textYear: 2024,
      note: 'Boned meat stays in whole muscle groups, one container per carcass. The number of the rule was not read.',
    },
  },
  remarks: {
    overBorder: 'Boned meat that moves stays in whole muscle groups (rules of 2024). "Quartered" is two hind legs with femur, two shoulders with scapula and humerus, and the backstraps (42.001(8)).',
    keepRecordDays: 'The tag stays on the premises as long as any part of the animal does (Parks and Wildlife Code 62.029, part read).',
  },
});
