import { type LawFinding, type LawPack, type PlaceRead, packOf } from '../law-pack';

/** The model code that states adopt, each in its own year and words. */
const FOOD_CODE: LawFinding<'coldCelsiusTenths'> = {
  value: 50,
  citation: 'FDA Food Code 3-501.16',
  note: '41 °F (5 °C) or colder; frozen 0 °F (-18 °C). This is the model code; how the state adopted it was not read.',
};

/** What holds in every state besides its own clock. */
const BIRDS = 'Migratory birds: 1 year after the last entry in the book (50 CFR 20.36 and 20.81 to 20.83, second-hand). Keep until the latest of all that apply.';

/** A pack of a state of the United States: what was read of it, with the model food code and the federal clock of migratory birds. */
export function statePackOf({ read, remarks = {}, ...rest }: PlaceRead): LawPack {
  const own = remarks.keepRecordDays;
  return packOf({
    ...rest,
    read: { coldCelsiusTenths: FOOD_CODE, ...read },
    remarks: { ...remarks, keepRecordDays: own === undefined ? BIRDS : `${own} ${BIRDS}` },
  });
}
