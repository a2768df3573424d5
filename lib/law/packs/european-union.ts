import { packOf } from '../law-pack';

const HYGIENE = '(EC) 853/2004 Annex III Section IV';

export const europeanUnion = packOf({
  id: 'eu',
  place: 'European Union',
  read: {
    trichinellaTest: { value: 'wanted', citation: HYGIENE, note: 'Boar: head and diaphragm go with the body to the test.' },
    coldCelsiusTenths: { value: 70, citation: HYGIENE, note: '7 °C for large game. Small game 4 °C: enter that where you take birds and hares in.' },
  },
  remarks: {
    keepRecordDays: 'One step back and one step forward can be named (178/2002 Art. 18; (EU) 931/2011); no number of days was read. The trained person’s declaration carries number, date, time and place of killing.',
  },
});
