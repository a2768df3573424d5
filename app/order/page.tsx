import { redirect } from 'next/navigation';
import { HunterPage } from '@/app/_components/hunter-page';
import { PageHeader } from '@/app/_components/page-header';
import { blankOrderForm, openedForm } from '@/lib/forms';
import { openOrderForm } from '@/lib/workflows/hunter-orders';
import { stepNewOrder } from './actions';
import { hunterShapes } from './hunter-shapes';
import { OrderForm } from './order-form';
import './order.css';

// The form writes the title, which says when it was refused.
export const metadata = { title: null };

export default async function OrderPage() {
  const opened = await openOrderForm();
  if (!opened) redirect('/');
  const { formKey, ...shop } = opened;
  return (
    <HunterPage shop={shop} wide>
      <OrderForm
        shop={shop}
        shapes={hunterShapes}
        opened={openedForm(blankOrderForm(formKey))}
        action={stepNewOrder}
        draftName="gambrel:order:1"
        title="Start an order"
        words={{ send: 'Send the order', after: 'You then get a number and a private link. You can change the order until the knife starts.' }}
        header={
          <PageHeader
            title="Start an order"
            kicker={shop.name}
            lede="One animal, about five minutes. You need no account, and you can bring it in before or after."
            back={{ href: '/', text: 'Front page' }}
          />
        }
      />
    </HunterPage>
  );
}
