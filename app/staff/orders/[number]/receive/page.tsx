import { hunterShapes } from '@/app/order/hunter-shapes';
import { BASIS_WORDS, FORM_WORDS } from '@/app/staff/_components/arrival-words';
import { isoDay } from '@/app/staff/_components/moments';
import { OrderPage } from '@/app/staff/_components/order-page';
import { ageChoices, sexChoices } from '@/lib/forms';
import { addDays, formatWeight } from '@/lib/units';
import type { StaffOrder } from '@/lib/workflows/read-order';
import { openOrder } from '../open-order';
import { ReceiveForm } from './receive-form';
import { receiveValues } from './receive-values';

export const metadata = { title: null };

/** Everything that is taken down when an animal comes through the door, on one screen. */
export default async function ReceivePage({ params }: PageProps<'/staff/orders/[number]/receive'>) {
  const { order } = await openOrder((await params).number, 'order.receive');
  const { shop } = order;
  const isOpen = order.state === 'booked' || order.state === 'received' || order.state === 'hanging' || order.state === 'on-hold';
  const task = order.arrival ? 'Correct what came in' : 'Take it in';
  const today = isoDay(new Date(), shop.timeZone);
  return (
    <OrderPage order={order} task={task} hasForm={isOpen}>
      {isOpen ? (
        <ReceiveForm
          order={{ number: order.number, version: order.version }}
          title={`${task} · ${order.numberText}`}
          values={receiveValues(order.arrivalValues)}
          days={{ today, yesterday: addDays(today, -1) }}
          unit={shop.unit}
          country={shop.nameCountry}
          plan={order.assessment.plan.forecast.species.plan}
          shapes={hunterShapes}
          expected={expectedWords(order)}
          choices={{ sex: sexChoices(order.assessment.plan.forecast.species), age: ageChoices(), form: FORM_WORDS, basis: BASIS_WORDS }}
        />
      ) : (
        <p className="notice stop">This animal is {order.stateWords}; what came in can no longer be changed.</p>
      )}
    </OrderPage>
  );
}

/** What the hunter said it weighs, as a check on the scale. */
function expectedWords({ animal, shop }: StaffOrder): string {
  if (!animal.weight) return 'The hunter told no weight.';
  const basis = BASIS_WORDS.find(({ value }) => value === animal.weight?.basis)?.label.toLowerCase() ?? '';
  return `The hunter says ${formatWeight(animal.weight.grams, shop.unit, shop.locale)}, ${basis}.`;
}
