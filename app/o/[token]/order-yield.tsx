import { RangeBar } from '@/app/_components/range-bar';
import { WhereItGoesFigure } from '@/app/_components/where-it-goes';
import { estimateView } from '@/lib/documents';
import { capital } from '@/lib/forms';
import { formatWeight } from '@/lib/units';
import type { HunterOrder } from '@/lib/workflows/hunter-orders';

/** What the animal gives: measured once it is packed, forecast until then. */
export function OrderYield({ order }: { readonly order: HunterOrder }) {
  return order.packed.length > 0 ? <Packed order={order} /> : <Forecast order={order} />;
}

/** Where all of it goes; nothing where the figures cannot be true of one animal. */
function Went({ order: { went } }: { readonly order: HunterOrder }) {
  if (!went) return null;
  return (
    <>
      <h3>{went.goes.isPacked ? 'Where the rest of it is' : 'Where it goes'}</h3>
      <WhereItGoesFigure {...went} />
    </>
  );
}

function Packed({ order }: { readonly order: HunterOrder }) {
  const { packed, hangingGrams, shop, went } = order;
  const weight = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  const total = packed.reduce((sum, row) => sum + row.grams, 0);
  return (
    <section className="section" aria-labelledby="packed">
      <h2 id="packed">What it gave</h2>
      <table className="stacks">
        <thead>
          <tr>
            <th scope="col">Packed</th>
            <th scope="col" className="num">
              Packs
            </th>
            <th scope="col" className="num">
              Weight
            </th>
          </tr>
        </thead>
        <tbody>
          {packed.map(({ label, grams, packages }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td className="num" data-label="Packs">
                {packages > 0 ? packages : 'not counted'}
              </td>
              <td className="num" data-label="Weight">
                {weight(grams)}
              </td>
            </tr>
          ))}
          <tr className="total">
            <th scope="row">Together</th>
            <td className="num" data-label="Packs">
              {packed.reduce((sum, row) => sum + row.packages, 0)}
            </td>
            <td className="num" data-label="Weight">
              {weight(total)}
            </td>
          </tr>
        </tbody>
      </table>
      <Went order={order} />
      {!went && hangingGrams !== null && <p className="quiet-text">It hung at {weight(hangingGrams)}. Bone, trim and drying stay behind.</p>}
    </section>
  );
}

function Forecast({ order }: { readonly order: HunterOrder }) {
  const { planView: view, assessment, instructions, shop, hangingGrams, invoice } = order;
  const rows = [...view.lines, ...view.pools].filter(({ range }) => range.high > 0);
  return (
    <section className="section" aria-labelledby="forecast">
      <h2 id="forecast">What you can expect</h2>
      <dl className="facts">
        <div>
          <dt>{hangingGrams === null ? 'On the rail, forecast' : 'On the rail, weighed'}</dt>
          <dd className="number">{view.hanging.text}</dd>
        </div>
        <div>
          <dt>To take home</dt>
          <dd className="number">{view.packedTotal.text}</dd>
        </div>
        {!invoice && (
          <div>
            <dt>Price, an estimate</dt>
            <dd className="number">{estimateView(assessment, instructions, shop).text}</dd>
          </div>
        )}
      </dl>
      <ul className="ranges">
        {rows.map(({ key, label, range, text }) => (
          <li key={key}>
            <RangeBar label={capital(label)} low={range.low} likely={range.likely} high={range.high} max={view.mostGrams} text={text} />
          </li>
        ))}
      </ul>
      <Went order={order} />
    </section>
  );
}
