import { hunterShapes } from '@/app/order/hunter-shapes';
import { OrderForm } from '@/app/order/order-form';
import '@/app/order/order.css';
import { OrderPage } from '@/app/staff/_components/order-page';
import { openedForm, withFindings } from '@/lib/forms';
import { isChangeable } from '@/lib/orders';
import { openOrderForm } from '@/lib/workflows/hunter-orders';
import { foundOf } from '@/lib/workflows/read-order';
import { openOrder } from '../open-order';
import { changeAction } from './actions';
import { ReasonField } from './reason-field';

export const metadata = { title: null };

/** The cuts changed by the counter for a hunter: the hunter's own form, and a reason. */
export default async function ChangePage({ params }: PageProps<'/staff/orders/[number]/change'>) {
  const { order } = await openOrder((await params).number, 'order.write');
  const opened = await openOrderForm();
  if (!opened) throw new Error('The shop has not been set up');
  const { formKey, ...view } = opened;
  const shop = { ...view, found: foundOf(order) };
  const values = { ...order.formValues, formKey: order.formValues.formKey || formKey };
  const isOpen = isChangeable(order.state);
  return (
    <OrderPage order={order} task="Change the cuts" hasForm={isOpen}>
      {isOpen ? (
        <>
          {order.arrival && (
            <div className="notice">
              <p>The forecast goes by what was found at receiving. What you change about the animal itself here is not saved.</p>
              <p>
                <a className="button" href={`/staff/orders/${order.number}/receive`}>
                  Correct what came in
                </a>
              </p>
            </div>
          )}
          <OrderForm
            shop={shop}
            shapes={hunterShapes}
            opened={{ ...withFindings(openedForm(values), shop), base: { version: order.version, values } }}
            action={changeAction}
            draftName={`gambrel:staff-change:${order.number}:${order.version}`}
            title={`Change the cuts · ${order.numberText}`}
            words={{ send: `Save as version ${order.instructionVersion + 1}`, after: 'The hunter sees the new version on their page. A sheet that is printed already is out of date then.' }}
            header={null}
          >
            <input type="hidden" name="number" value={order.number} />
            <ReasonField />
          </OrderForm>
        </>
      ) : (
        <p className="notice stop">This animal is {order.stateWords}: the knife has started, so the cuts can no longer be changed.</p>
      )}
    </OrderPage>
  );
}
