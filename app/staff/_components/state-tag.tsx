import type { OrderState } from '@/lib/orders';

const LOOKS: Readonly<Record<OrderState, string>> = {
  booked: 'tag open',
  received: 'tag',
  hanging: 'tag',
  'on-hold': 'tag stop',
  'on-the-bench': 'tag strong',
  packed: 'tag',
  ready: 'tag done',
  collected: 'tag done',
  cancelled: 'tag open',
};

/** Where an animal is, in a word. */
export function StateTag({ state, words }: { readonly state: OrderState; readonly words: string }) {
  return <span className={LOOKS[state]}>{words}</span>;
}
