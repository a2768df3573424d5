import type { LawFinding } from './law-pack';
import type { LawPoint } from './law-points';

const MSU = 'Michigan State University Extension, processor protocol, 2022';
const MISSOURI = 'Missouri 3 CSR 10-4.135';

/** The careful value of each point, and what it rests on: what holds where no place was chosen or nothing was read. */
export const CAREFUL_FINDINGS: { readonly [P in LawPoint]: LawFinding<P> } = {
  sawnBoneFromZone: {
    value: 'not-allowed',
    citation: MSU,
    textYear: 2022,
    note: 'Bone out, and never cut the spine. Advice to processors, taken as the careful figure everywhere.',
  },
  spineFromZone: {
    value: 'not-allowed',
    citation: `${MSU}; ${MISSOURI}`,
    textYear: 2022,
    note: 'The spine is never cut, and no list of parts that may move holds it.',
  },
  looseBonesFromZone: {
    value: 'not-allowed',
    citation: MISSOURI,
    basis: 'judgement',
    note: 'The list of parts that may move holds boned meat and quarters, not loose bones.',
  },
  headFromZone: {
    value: 'clean-skull-plate-only',
    citation: MISSOURI,
    note: 'Antlers move with a clean skull plate, the hide without the head. Other places have nearly the same list.',
  },
  testWanted: {
    value: 'all-from-zone',
    citation: 'Centers for Disease Control and Prevention, chronic wasting disease',
    note: 'Test before eating in affected areas; a negative test is not a guarantee. It is advice.',
  },
  overBorder: {
    value: 'boned-and-clean-plate-only',
    citation: MISSOURI,
    basis: 'judgement',
    note: 'The narrowest of what its list lets move. Some places also let quarters through without spine and head.',
  },
  pooling: {
    value: 'not-allowed',
    citation: `Wisconsin ATCP 55.08; ${MSU}`,
    note: 'No mixing with other people’s food, and no ground product from several carcasses.',
  },
  trichinellaTest: {
    value: 'wanted',
    citation: '(EC) 853/2004 Annex III Section IV; CDC MMWR 73(20), 2024',
    note: 'Boar: head and diaphragm go to the test. Freezing does not make wild meat safe from it.',
  },
  coldCelsiusTenths: {
    value: 50,
    citation: 'FDA Food Code 3-501.16',
    note: '41 °F (5 °C) or colder; frozen 0 °F (-18 °C). The European Union asks 4 °C of small game, which is colder.',
  },
  keepRecordDays: {
    value: 1096,
    citation: 'Wisconsin ATCP 55.07(13)',
    note: '3 years, the longest that was read, counted from release. Keep until the latest of all that apply: they start at different events.',
  },
};
