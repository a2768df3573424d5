import { isoDay } from '@/app/staff/_components/moments';
import { OrderPage } from '@/app/staff/_components/order-page';
import { ageChoices, basisChoices, formChoices, sexChoices } from '@/lib/forms';
import { addDays, formatWeightRange } from '@/lib/units';
import { openOrder } from '../open-order';
import { ReceiveForm } from './receive-form';
import { receiveValues } from './receive-values';

export const metadata = { title: null };

/** Everything that is taken down when an animal comes through the door, on one screen. */
export default async function ReceivePage({ params }: PageProps<'/staff/orders/[number]/receive'>) {
  const { order } = await openOrder((await params).number, 'order.receive');
  const { shop, animal } = order;
  const isOpen = order.state === 'booked' || order.state === 'received' || order.state === 'hanging' || order.state === 'on-hold';
  const task = order.arrival ? 'Correct what came in' : 'Take it in';
  const today = isoDay(new Date(), shop.timeZone);
  return (
    <OrderPage order={order} task={task}>
      {isOpen ? (
        <ReceiveForm
          order={{ number: order.number, version: order.version }}
          title={`${task} · ${order.numberText}`}
          values={receiveValues(order.arrivalValues)}
          days={{ today, yesterday: addDays(today, -1) }}
          unit={shop.unit}
          country={shop.nameCountry}
          expected={`The hunter's telling makes it ${formatWeightRange(order.assessment.plan.forecast.hanging, shop.unit, shop.locale)} on the rail.`}
          choices={{ sex: sexChoices(animal.speciesId), age: ageChoices(), form: formChoices(), basis: basisChoices() }}
        />
      ) : (
        <p className="notice stop">This animal is {order.stateWords}; what came in can no longer be changed.</p>
      )}
    </OrderPage>
  );
}
