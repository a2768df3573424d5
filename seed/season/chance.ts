/** A small generator of even numbers, the same row of them for the same seed: mulberry32, public domain, T. Ettinger 2017. */
export type Chance = {
  /** From 0, below 1. */
  readonly next: () => number;
  /** A whole number from `from` to `to`, both included. */
  readonly whole: (from: number, to: number) => number;
  readonly pick: <Value>(values: readonly Value[]) => Value;
};

export function chanceFrom(seed: number): Chance {
  let state = seed | 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const whole = (from: number, to: number): number => from + Math.floor(next() * (to - from + 1));
  return {
    next,
    whole,
    pick: (values) => {
      const value = values[whole(0, values.length - 1)];
      if (value === undefined) throw new Error('Nothing to pick from');
      return value;
    },
  };
}
