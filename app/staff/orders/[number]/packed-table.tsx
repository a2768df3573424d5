import { WhereItGoesFigure } from '@/app/_components/where-it-goes';
import { formatWeight, formatWeightRange } from '@/lib/units';
import type { StaffOrder } from '@/lib/workflows/read-order';

/** What was packed, row by row, beside what was expected: the answer to "where is the rest of my deer?". */
export function PackedTable({ order }: { readonly order: StaffOrder }) {
  const { shop, packRows, weighings, assessment, went } = order;
  const weighed = new Map(weighings.map((one) => [one.lineKey, one]));
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  const total = weighings.reduce((sum, one) => sum + one.grams, 0);
  return (
    <>
      <table className="stacks" role="table">
        <caption className="visually-hidden">What was packed, beside what was expected</caption>
        <thead role="rowgroup">
          <tr role="row">
            <th role="columnheader" scope="col">
              Row
            </th>
            <th role="columnheader" scope="col" className="num">
              Packages
            </th>
            <th role="columnheader" scope="col" className="num">
              Gave
            </th>
            <th role="columnheader" scope="col" className="num">
              Should have given
            </th>
          </tr>
        </thead>
        <tbody role="rowgroup">
          {packRows.map((row) => {
            const one = weighed.get(row.lineKey);
            return (
              <tr role="row" key={row.lineKey}>
                <th role="rowheader" scope="row">
                  {row.label}
                </th>
                <td role="cell" className="num" data-label="Packages">
                  {one?.packages ?? 0}
                </td>
                <td role="cell" className="num nowrap" data-label="Gave">
                  <b>{one ? words(one.grams) : 'none'}</b>
                </td>
                <td role="cell" className="num" data-label="Expected">
                  {row.expected.likely > 0 ? formatWeightRange(row.expected, shop.unit, shop.locale) : 'as it comes'}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {went ? (
        <WhereItGoesFigure {...went} />
      ) : (
        <p>
          <b>{words(total)}</b> packed of {words(assessment.plan.forecast.hanging.likely)} {order.hangingGrams === null ? 'that should have hung' : 'on the rail'}. The rest is bone, trim and
          drying.
        </p>
      )}
    </>
  );
}
