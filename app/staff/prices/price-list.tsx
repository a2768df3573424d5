import type { SpeciesBook } from '@/lib/carcass';
import { CUT_IDS, type NameCountry, cutName } from '@/lib/cuts';
import { figureText } from '@/lib/forms';
import type { BaseCharge, Tariff } from '@/lib/pricing';
import { formatMoney, formatRate } from '@/lib/units';

type PriceListProps = { readonly tariff: Tariff; readonly locale: string; readonly country: NameCountry; readonly species: SpeciesBook };

type Row = { readonly id: string; readonly name: string; readonly detail: string; readonly prices: readonly string[]; readonly taxId: string | null };

/** The price list to read out to a customer. */
export function PriceList({ tariff, locale, country, species }: PriceListProps) {
  const { currency, weightUnit } = tariff;
  const money = (minor: number): string => formatMoney(minor, currency, locale);
  const rate = (per10k: number): string => `${formatRate(per10k, currency, locale)} a ${weightUnit}`;
  const lists: readonly { readonly title: string; readonly rows: readonly Row[] }[] = [
    {
      title: 'By the animal',
      rows: tariff.base.map(({ id, name, speciesIds, charge, includes, taxId }) => ({
        id,
        name,
        detail: [
          Object.values(species).filter(({ id }) => speciesIds.includes(id)).map(({ name }) => name).join(', '),
          ...(includes.length > 0
            ? [`with ${tariff.perPiece.filter((extra) => includes.includes(extra.id)).map((extra) => extra.name.toLowerCase()).join(', ')}`]
            : []),
        ].join('; '),
        prices: chargeWords(charge, { money, rate, weight: (hundredths) => `${figureText(hundredths, { scale: 2, least: 0, locale })} ${weightUnit}` }),
        taxId,
      })),
    },
    {
      title: 'Extra, by packed weight',
      rows: tariff.perWeight.map(({ id, name, cutIds, ratePer10k, taxId }) => ({
        id,
        name,
        detail: CUT_IDS.filter((cut) => cutIds.includes(cut)).map((cut) => cutName(cut, country)).join(', '),
        prices: [rate(ratePer10k)],
        taxId,
      })),
    },
    {
      title: 'Extra, by the piece',
      rows: tariff.perPiece.map(({ id, name, eachMinor, per, needsHide, taxId }) => ({
        id,
        name,
        detail: needsHide ? 'Only when it comes with the hide on' : '',
        prices: [`${money(eachMinor)}${per === 'animal' ? ' an animal' : ' each'}`],
        taxId,
      })),
    },
    {
      title: 'Products, by finished weight',
      rows: tariff.products.map(({ id, name, ratePer10k, addedRatePer10k, taxId }) => ({
        id,
        name,
        detail: '',
        prices: [rate(ratePer10k), ...(addedRatePer10k > 0 ? [`added meat ${rate(addedRatePer10k)}`] : [])],
        taxId,
      })),
    },
  ];
  const taxName = (taxId: string | null): string => tariff.taxes.find((tax) => tax.id === taxId)?.name ?? '';
  return (
    <div className="stack">
      {lists.map(({ title, rows }) => (
        <section key={title} className="section">
          <h2>{title}</h2>
          <table className="bill">
            <caption className="visually-hidden">{title}</caption>
            <thead className="visually-hidden">
              <tr>
                <th scope="col">For</th>
                <th scope="col">Price</th>
              </tr>
            </thead>
            <tbody>
              {rows.map((row) => (
                <tr key={row.id}>
                  <th scope="row">
                    {row.name}
                    {row.detail !== '' && <span className="basis">{row.detail}</span>}
                    {row.taxId !== null && <span className="basis">plus {taxName(row.taxId).toLowerCase()}</span>}
                  </th>
                  <td className="num">
                    {row.prices.map((price) => (
                      <span className="price" key={price}>
                        {price}
                      </span>
                    ))}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
      <section className="section">
        <h2>Tax</h2>
        <dl className="facts">
          {tariff.taxes.map((tax) => (
            <div key={tax.id}>
              <dt>{tax.name}</dt>
              <dd>{tax.ratePer100k / 1_000}%</dd>
            </div>
          ))}
        </dl>
      </section>
    </div>
  );
}

type Words = Readonly<Record<'money' | 'rate' | 'weight', (value: number) => string>>;

function chargeWords(charge: BaseCharge, { money, rate, weight }: Words): readonly string[] {
  switch (charge.kind) {
    case 'flat':
      return [`${money(charge.amountMinor)} an animal`];
    case 'per-weight':
      return [`${rate(charge.ratePer10k)} hanging`];
    case 'steps': {
      const last = charge.steps.at(-1);
      return [
        ...charge.steps.map((step) => `up to ${weight(step.upToHundredths)}: ${money(step.amountMinor)}`),
        ...(last && charge.excessRatePer10k > 0 ? [`above ${weight(last.upToHundredths)}: ${rate(charge.excessRatePer10k)} more`] : []),
      ];
    }
  }
}
