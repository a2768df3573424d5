import { OrderPage } from '@/app/staff/_components/order-page';
import { basisChoices, chosenLabel, weightFigure } from '@/lib/forms';
import { formatWeight, formatWeightRange } from '@/lib/units';
import { openOrder } from '../open-order';
import { HangForm } from './hang-form';

export const metadata = { title: null };

/** The weight on the rail: hide, head and lower legs off. */
export default async function HangPage({ params }: PageProps<'/staff/orders/[number]/hang'>) {
  const { order } = await openOrder((await params).number, 'order.receive');
  const { shop, arrival, hangingGrams } = order;
  const words = (grams: number): string => formatWeight(grams, shop.unit, shop.locale);
  const isOpen = arrival !== null && (order.state === 'received' || order.state === 'hanging' || order.state === 'on-hold');
  const decimal = weightFigure(1500, shop).includes(',') ? ',' : '.';
  return (
    <OrderPage order={order} task="Weigh on the rail" hasForm={isOpen}>
      {isOpen ? (
        <HangForm
          order={{ number: order.number, version: order.version }}
          title={`Weigh on the rail · ${order.numberText}`}
          weight={hangingGrams === null ? '' : weightFigure(hangingGrams, shop)}
          unit={shop.unit}
          decimal={decimal}
          hint={
            hangingGrams === null
              ? `It came in at ${words(arrival.weight.grams)}, ${chosenLabel(basisChoices(), arrival.weight.basis)}; that makes ${formatWeightRange(order.assessment.plan.forecast.hanging, shop.unit, shop.locale)} on the rail.`
              : `It was weighed on the rail before, at ${words(hangingGrams)}.`
          }
        />
      ) : (
        <p className="notice stop">
          {order.state === 'booked' ? 'Take the animal in first, then weigh it on the rail.' : `This animal is ${order.stateWords}; its weight on the rail can no longer be changed.`}
        </p>
      )}
    </OrderPage>
  );
}
