import type { ReactNode } from 'react';
import { cutName, knifeOrder, minceName } from '@/lib/cuts';
import { pieceWords } from '@/lib/documents';
import { antlerChoices, capital, chosenLabel, fatChoices, lineLabel, packWords, restChoices, sizeWords, squaredOffChoices } from '@/lib/forms';
import { PRODUCTS } from '@/lib/plan';
import { formatWeight } from '@/lib/units';
import type { StaffOrder } from '@/lib/workflows/read-order';

/** The cutting instructions as the knife goes, each line with what it is expected to give. */
export function InstructionTable({ order }: { readonly order: StaffOrder }) {
  const { instructions, planView, shop } = order;
  const country = shop.nameCountry;
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  const forecast = new Map(planView.lines.map((row) => [row.key, row.text]));
  const pieces = new Map(order.assessment.plan.lines.map((planned) => [planned.line.id, pieceWords(planned.pieces)]));
  const lines = instructions.lines.toSorted((a, b) => knifeOrder(a.target) - knifeOrder(b.target));
  const { keep, mince } = instructions;
  const kept = (['heart', 'liver', 'bones'] as const).filter((item) => keep[item]);
  const fat = mince.addedFat === 'none' ? 'no fat added' : `${mince.fatPercent}% ${chosenLabel(fatChoices(), mince.addedFat)}`;
  return (
    <>
      {lines.length === 0 ? (
        <p>No cut is named: everything goes the way of the rest.</p>
      ) : (
        <table className="stacks" role="table">
          <caption className="visually-hidden">Cuts in the order of the knife</caption>
          <thead role="rowgroup">
            <tr role="row">
              <th role="columnheader" scope="col">
                Part
              </th>
              <th role="columnheader" scope="col">
                Cut
              </th>
              <th role="columnheader" scope="col">
                Size and packs
              </th>
              <th role="columnheader" scope="col">
                Should give
              </th>
            </tr>
          </thead>
          <tbody role="rowgroup">
            {lines.map((line) => (
              <tr role="row" key={line.id}>
                <th role="rowheader" scope="row">
                  {lineLabel(line, country)}
                </th>
                <td role="cell" data-label="Cut">
                  {cutName(line.cut, country)}
                </td>
                <td role="cell" data-label="Size, packs">
                  {[
                    ...(line.size.kind === 'as-seen-fit' ? [] : [sizeWords(line.size, shop.unit)]),
                    ...(line.pack.kind === 'as-seen-fit' ? [] : [packWords(line.pack, shop.unit)]),
                    ...(line.askedGrams === null ? [] : [`${words(line.askedGrams)} wanted`]),
                  ].join(', ') || 'as seen fit'}
                </td>
                <td role="cell" data-label="Should give" className="number">
                  {forecast.get(line.id) ?? ''}
                  <span className="basis">{pieces.get(line.id)}</span>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <dl className="facts">
        <Fact name="The rest">{chosenLabel(restChoices(country), instructions.rest)}</Fact>
        <Fact name="Squared off">{chosenLabel(squaredOffChoices(country), instructions.squaredOff)}</Fact>
        <Fact name={capital(minceName(country))}>
          {fat}, {words(mince.packGrams)} packs
        </Fact>
        {instructions.products.map((product) => (
          <Fact key={product.productId} name={capital(PRODUCTS[product.productId].name)}>
            from {words(product.gameGrams)} of own meat
          </Fact>
        ))}
        <Fact name="Keep">
          {[...kept, ...(keep.antlers === 'none' ? [] : [chosenLabel(antlerChoices(), keep.antlers)]), ...(keep.cape ? ['the cape'] : [])].join(', ') ||
            'nothing besides the meat'}
        </Fact>
        {instructions.noPork && <Fact name="Pork">Nothing of pork may touch this order</Fact>}
        {instructions.note !== '' && <Fact name="Note">{instructions.note}</Fact>}
      </dl>
    </>
  );
}

export function Fact({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}
