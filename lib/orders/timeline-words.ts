/** What is recorded of an order, and how it is told. Hunters see what concerns them; staff see all. */
const TIMELINE: Readonly<Record<string, { readonly words: string; readonly forHunter: boolean }>> = {
  'order-placed': { words: 'Order sent', forHunter: true },
  'instructions-changed': { words: 'Instructions changed', forHunter: true },
  'details-changed': { words: 'Name, telephone or animal changed', forHunter: true },
  'animal-received': { words: 'Animal received', forHunter: true },
  'receiving-corrected': { words: 'Receiving corrected', forHunter: false },
  'weighed-hanging': { words: 'Weighed on the rail', forHunter: true },
  'question-answered': { words: 'Question answered', forHunter: true },
  hang: { words: 'Hanging in the cooler', forHunter: true },
  hold: { words: 'Put on hold', forHunter: true },
  free: { words: 'Hold lifted', forHunter: true },
  'start-cutting': { words: 'On the bench', forHunter: true },
  packed: { words: 'Packed and weighed', forHunter: true },
  'yield-judged': { words: 'Said whether the forecast learns from it', forHunter: false },
  'invoice-issued': { words: 'Invoice issued, ready to collect', forHunter: true },
  'payment-taken': { words: 'Payment taken', forHunter: true },
  'handed-over': { words: 'Collected', forHunter: true },
  cancel: { words: 'Cancelled', forHunter: true },
};

/** A recorded action as a person reads it; the action itself where it has no words. */
export function timelineWords(action: string): string {
  return TIMELINE[action]?.words ?? action;
}

/** Whether a hunter's status page tells of an action. */
export function isForHunter(action: string): boolean {
  return TIMELINE[action]?.forHunter ?? false;
}
