/** Where an animal is on its way. */
export const ORDER_STATES = [
  'booked',
  'received',
  'hanging',
  'on-hold',
  'on-the-bench',
  'packed',
  'ready',
  'collected',
  'cancelled',
] as const;
export type OrderState = (typeof ORDER_STATES)[number];

/** What moves it on. */
export const ORDER_STEPS = ['receive', 'hang', 'hold', 'free', 'start-cutting', 'pack', 'bill', 'hand-over', 'cancel'] as const;
export type OrderStep = (typeof ORDER_STEPS)[number];

/** The one table of transitions: step, from where, to where. */
export const TRANSITIONS: Readonly<Record<OrderStep, { readonly from: readonly OrderState[]; readonly to: OrderState }>> = {
  receive: { from: ['booked'], to: 'received' },
  hang: { from: ['received'], to: 'hanging' },
  hold: { from: ['received', 'hanging'], to: 'on-hold' },
  free: { from: ['on-hold'], to: 'hanging' },
  'start-cutting': { from: ['received', 'hanging'], to: 'on-the-bench' },
  pack: { from: ['on-the-bench'], to: 'packed' },
  bill: { from: ['packed'], to: 'ready' },
  'hand-over': { from: ['ready'], to: 'collected' },
  cancel: { from: ['booked'], to: 'cancelled' },
};

const STATE_WORDS: Readonly<Record<OrderState, string>> = {
  booked: 'booked',
  received: 'received',
  hanging: 'hanging',
  'on-hold': 'on hold',
  'on-the-bench': 'on the bench',
  packed: 'packed',
  ready: 'ready to collect',
  collected: 'collected',
  cancelled: 'cancelled',
};

/** Whether a step may be taken from a state. */
export function canStep(state: OrderState, step: OrderStep): boolean {
  return TRANSITIONS[step].from.includes(state);
}

/** The state a step leads to. Throws when it may not be taken: ask `canStep` first. */
export function stepFrom(state: OrderState, step: OrderStep): OrderState {
  if (!canStep(state, step)) throw new Error(`No '${step}' from '${state}'`);
  return TRANSITIONS[step].to;
}

/** Steps that may be taken from a state, in the order of the day. */
export function stepsFrom(state: OrderState): readonly OrderStep[] {
  return ORDER_STEPS.filter((step) => canStep(state, step));
}

/** Whether the hunter may still change the instructions: until the knife starts. */
export function isChangeable(state: OrderState): boolean {
  return state === 'booked' || state === 'received' || state === 'hanging' || state === 'on-hold';
}

/** Whether a cutting sheet is of use: from when the animal has come until it is handed over. */
export function hasSheet(state: OrderState): boolean {
  return state !== 'booked' && state !== 'cancelled' && state !== 'collected';
}

/** A state as people say it: 'on the bench'. */
export function stateWords(state: OrderState): string {
  return STATE_WORDS[state];
}
