import { statePackOf } from './any-state';

const EXTENSION = 'Michigan State University Extension, processor protocol, 2022';

export const michigan = statePackOf({
  id: 'us-michigan',
  place: 'Michigan',
  read: {
    sawnBoneFromZone: { value: 'not-allowed', citation: EXTENSION, textYear: 2022, note: 'Bone out, and never cut the spine. Advice to processors, not a statute.' },
    spineFromZone: { value: 'not-allowed', citation: EXTENSION, textYear: 2022, note: 'The spine is never cut, so no meat goes home on it. Advice to processors, not a statute.' },
    pooling: { value: 'not-allowed', citation: EXTENSION, textYear: 2022, note: 'No ground product from several carcasses; an animal under test is processed alone. Advice to processors, not a statute.' },
    keepRecordDays: { value: 90, citation: 'Wildlife Conservation Order 4.4(1)', basis: 'second-hand', note: '90 days after receipt: owner’s name and address, date accepted, licence number.' },
  },
  remarks: {
    testWanted: 'The protocol has a carcass under test held, and not cut, until its result (Michigan State University Extension, 2022).',
    coldCelsiusTenths: 'For ageing clean carcasses the Extension advises 34 to 37 °F (1 to 3 °C).',
  },
});
