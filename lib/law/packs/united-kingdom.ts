import { packOf } from '../law-pack';

const HYGIENE = '(EC) 853/2004 Annex III Section IV';

export const unitedKingdom = packOf({
  id: 'uk',
  place: 'United Kingdom',
  read: {
    trichinellaTest: { value: 'wanted', citation: HYGIENE, note: 'Boar: head and diaphragm go with the body to the test.' },
    coldCelsiusTenths: {
      value: 70,
      citation: HYGIENE,
      basis: 'from-memory',
      note: '7 °C for large game, 4 °C for small game: enter that where you take birds and hares in. Read as the figure of the European Union; that it holds here unchanged is from memory.',
    },
  },
  remarks: {
    keepRecordDays: 'One step back and one step forward can be named (178/2002 Art. 18; 931/2011); no number of days was read. The trained person’s declaration carries number, date, time and place of killing.',
  },
});
