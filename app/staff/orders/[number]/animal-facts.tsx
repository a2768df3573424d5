import { ageChoices, basisChoices, capital, chosenLabel, formChoices, licenceWord, sexChoices, zoneChoices } from '@/lib/forms';
import { formatDay, formatTemperature, formatWeight } from '@/lib/units';
import type { StaffOrder } from '@/lib/workflows/read-order';
import { CONDITION_WORDS, SHOT_WORDS, TEST_WORDS } from '@/app/staff/_components/arrival-words';
import { Fact } from './instruction-table';

/** What is known of the animal: as it was found once it has come, as the hunter told of it before. */
export function AnimalFacts({ order }: { readonly order: StaffOrder }) {
  const { animal, arrival, shop, hangingGrams } = order;
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  const known = arrival ?? animal;
  const weight = known.weight;
  return (
    <dl className="facts">
      {hangingGrams !== null && <Fact name="On the rail">{words(hangingGrams)}</Fact>}
      <Fact name={arrival ? 'Came in at' : 'Hunter says'}>
        {weight ? `${words(weight.grams)}, ${chosenLabel(basisChoices(), weight.basis)}` : 'no weight told'}
      </Fact>
      <Fact name="Sex, age">
        {chosenLabel(sexChoices(order.assessment.plan.forecast.species), known.sex)}, {chosenLabel(ageChoices(), known.ageClass).toLowerCase()}
      </Fact>
      <Fact name="Came as">{chosenLabel(formChoices(), known.form)}</Fact>
      {arrival ? (
        <>
          <Fact name={capital(licenceWord(shop.nameCountry))}>{arrival.licence}</Fact>
          <Fact name="Tag">{arrival.tag}</Fact>
          <Fact name="Killed">
            {formatDay(arrival.killedOn, shop.locale)}, {arrival.killedWhere}
          </Fact>
          {arrival.shotWith !== 'unknown' && <Fact name="Killed with">{SHOT_WORDS[arrival.shotWith]}</Fact>}
          {(arrival.killedBy !== '' || arrival.hasTransferNote) && (
            <Fact name="Killed by">
              {arrival.killedBy || 'somebody else'}, {arrival.hasTransferNote ? 'their note came with it' : 'no note came with it'}
            </Fact>
          )}
          <Fact name="Disease zone">{order.fromZone ? 'Yes' : 'No'}</Fact>
          <Fact name="Sample">
            {TEST_WORDS[arrival.test]}
            {arrival.sampleNumber !== '' && `, ${arrival.sampleNumber}`}
          </Fact>
          {arrival.celsiusTenths !== null && <Fact name="Temperature">{formatTemperature(arrival.celsiusTenths, shop.unit === 'lb' ? 'F' : 'C', shop.locale)}</Fact>}
          <Fact name="Condition">{capital(arrival.conditions.map((one) => CONDITION_WORDS[one].toLowerCase()).join(', ') || 'nothing noted')}</Fact>
          {arrival.note !== '' && <Fact name="Note">{arrival.note}</Fact>}
        </>
      ) : (
        <>
          <Fact name="Taken at">{animal.takenWhere || 'not told'}</Fact>
          <Fact name="Disease zone">{order.fromZone ? 'Yes' : chosenLabel(zoneChoices(), animal.diseaseZone)}</Fact>
        </>
      )}
    </dl>
  );
}
