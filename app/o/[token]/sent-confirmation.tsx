import { OrderNumber } from '@/app/_components/order-number';
import type { HunterOrder } from '@/lib/workflows/hunter-orders';
import { KeepLink } from './keep-link';

/** The order is in: its number, what happens next, and how to keep the link. */
export function SentConfirmation({ order }: { readonly order: HunterOrder }) {
  const { shop } = order;
  return (
    <header className="panel raised confirmation">
      <h1>Order sent</h1>
      <p role="status">{shop.name} has your order. This is its number:</p>
      <p>
        <OrderNumber number={order.numberText} big label="Your order number is" />
      </p>
      <h2>What happens next</h2>
      <ol className="how-steps">
        <li>Bring the animal in, cooled. Say your number, or your name.</li>
        <li>The shop weighs and tags it. If something has to be asked, the question stands on this page and the shop calls.</li>
        <li>When it is ready, the shop calls you{order.values.hunter.phone && ` on ${order.values.hunter.phone}`}.</li>
      </ol>
      <h2>Keep this page</h2>
      <p>Its address is your private link: it shows where your animal is. Anyone who has it can see and change this order.</p>
      <KeepLink title={`${shop.name}, order ${order.numberText}`} />
    </header>
  );
}
