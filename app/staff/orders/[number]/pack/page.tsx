import { FindingCards } from '@/app/staff/_components/finding-cards';
import { OrderPage } from '@/app/staff/_components/order-page';
import { weightFigure } from '@/lib/forms';
import { formatWeightRange } from '@/lib/units';
import { openOrder } from '../open-order';
import { PackForm } from './pack-form';

export const metadata = { title: null };

/** The packing table: every row to weigh, with what it should give beside it. */
export default async function PackPage({ params }: PageProps<'/staff/orders/[number]/pack'>) {
  const { order } = await openOrder((await params).number, 'pack.weigh', 'packing');
  const { shop, packRows, weighings, assessment } = order;
  const weighed = new Map(weighings.map((one) => [one.lineKey, one]));
  const values = Object.fromEntries(
    packRows.flatMap(({ lineKey }) => {
      const one = weighed.get(lineKey);
      return one
        ? [
            [`weight.${lineKey}`, weightFigure(one.grams, shop)],
            [`packages.${lineKey}`, String(one.packages)],
          ]
        : [];
    }),
  );
  const isOpen = (order.state === 'on-the-bench' || order.state === 'packed') && !order.invoice;
  return (
    <OrderPage order={order} task={order.state === 'packed' ? 'Correct the weights' : 'Weigh and pack'} hasForm={isOpen}>
      {isOpen && <FindingCards findings={assessment.findings} />}
      {isOpen ? (
        <PackForm
          order={{ number: order.number, version: order.version }}
          title={`Weigh and pack · ${order.numberText}`}
          values={values}
          rows={packRows.map((row) => ({
            ...row,
            expectedText: row.expected.likely > 0 ? formatWeightRange(row.expected, shop.unit, shop.locale) : 'as it comes',
          }))}
          hanging={{ grams: assessment.plan.forecast.hanging.likely, isWeighed: order.hangingGrams !== null }}
          unit={shop.unit}
          locale={shop.locale}
        />
      ) : (
        <p className="notice stop">
          {order.invoice ? 'The invoice has been issued: its weights stand.' : `This animal is ${order.stateWords}; it is weighed out once it has been on the bench.`}
        </p>
      )}
    </OrderPage>
  );
}
