import { nothingHere } from '@/app/_components/turn-away';
import { HunterPage } from '@/app/_components/hunter-page';
import { PageHeader } from '@/app/_components/page-header';
import { openedForm, withFindings } from '@/lib/forms';
import { readHunterOrder } from '@/lib/workflows/hunter-orders';
import { hunterShapes } from '../../../order/hunter-shapes';
import { OrderForm } from '../../../order/order-form';
import '../../../order/order.css';
import { stepOrderChange } from '../actions';

// The form writes the title, which says when it was refused.
export const metadata = { title: null, robots: { index: false, follow: false } };

/** The form again, filled in as the order stands, until the knife starts. */
export default async function ChangePage({ params }: PageProps<'/o/[token]/change'>) {
  const { token } = await params;
  const order = await readHunterOrder(token);
  if (!order) nothingHere('public');
  const { shop, numberText, version } = order;
  const back = { href: `/o/${encodeURIComponent(token)}`, text: `Order ${numberText}` };
  if (!order.isChangeable) {
    return (
      <HunterPage shop={shop}>
        <title>{`Too late to change · ${shop.name}`}</title>
        <PageHeader title="This order can no longer be changed here" lede={`It is ${order.stateWords}.`} back={back} />
        <p>
          Once the knife has started, a cut cannot be uncut.
          {shop.phone ? ` Call the shop on ${shop.phone}: what has not been cut yet may still be settled.` : ' Ask the shop: what has not been cut yet may still be settled.'}
        </p>
      </HunterPage>
    );
  }
  return (
    <HunterPage shop={shop} wide>
      <OrderForm
        shop={shop}
        shapes={hunterShapes}
        opened={{ ...withFindings(openedForm(order.values), shop), base: { version, values: order.values } }}
        action={stepOrderChange}
        draftName={`gambrel:change:${order.number}:${version}`}
        title={`Change order ${numberText}`}
        words={{ send: 'Send the change', after: 'The shop works by your newest instructions.' }}
        header={
          <PageHeader
            title={`Change order ${numberText}`}
            kicker={shop.name}
            lede={
              shop.found
                ? 'Change what you like, until the knife starts. The forecast goes by what the shop weighed and found.'
                : 'Everything is as you sent it. Change what you like, until the knife starts.'
            }
            back={back}
          />
        }
      >
        <input type="hidden" name="token" value={token} />
      </OrderForm>
    </HunterPage>
  );
}
