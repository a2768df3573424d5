import { AsyncLocalStorage } from 'node:async_hooks';

const moment = new AsyncLocalStorage<Date>();

/** The moment it is: the one clock of the shell, which every row's date comes from. */
export function now(): Date {
  return moment.getStore() ?? new Date();
}

/** Runs `work` as if it were another moment: how the demonstration season gets its past, and tests their dates. */
export function atMoment<Value>(at: Date, work: () => Promise<Value>): Promise<Value> {
  return moment.run(at, work);
}
