/** Sizes of a cutting sheet, in points. Capitals of the face are 0.668 of its size: 14 points give 3.3 mm, 19.1 give 4.5 mm. */
export type SheetSizes = {
  /** Part, action, size and pack. */
  readonly line: number;
  /** How an action is done, and notes under a line. */
  readonly detail: number;
  readonly stop: number;
  readonly stopHeight: number;
  readonly number: number;
  readonly numberAgain: number;
  /** Side of the QR code, its quiet modules included. */
  readonly code: number;
  readonly header: number;
  readonly surname: number;
  readonly animal: number;
  readonly title: number;
  readonly titleHeight: number;
  readonly chart: number;
  /** Label and value of the boxes. */
  readonly label: number;
  readonly value: number;
  readonly fact: number;
  readonly note: number;
  readonly caution: number;
  readonly writeIn: number;
  readonly signOff: number;
  readonly stripNumber: number;
  readonly stripTitle: number;
  readonly stripHeight: number;
};

export const LARGEST = 24;
/** Nothing that a cutter acts on is smaller. Cautions are a point less, which is the floor of the whole sheet. */
export const FLOOR = 14;
const SMALLEST = 13;
/** Below this the lines are many, and what stands round them gives way. */
const DENSE_BELOW = 18;

/**
 * Sizes that go with lines of a size. Stop bars are half as large again as the lines.
 *
 * @example sizesFor(20).stop // 30
 */
export function sizesFor(line: number): SheetSizes {
  const isDense = line < DENSE_BELOW;
  const stop = line * 1.5;
  return {
    line,
    detail: Math.max(FLOOR, Math.round(line * 0.75)),
    stop,
    stopHeight: stop * 1.2,
    number: isDense ? 66 : 78,
    numberAgain: isDense ? 36 : 42,
    code: isDense ? 92 : 106,
    header: isDense ? 94 : 108,
    surname: isDense ? 24 : 28,
    animal: isDense ? 16 : 19,
    title: FLOOR,
    titleHeight: FLOOR * 1.25 + 3,
    chart: isDense ? 92 : 106,
    label: FLOOR,
    value: isDense ? 16 : 18,
    fact: isDense ? FLOOR : 16,
    note: isDense ? FLOOR : 16,
    caution: SMALLEST,
    writeIn: isDense ? 46 : 50,
    signOff: isDense ? 40 : 46,
    stripNumber: 27,
    stripTitle: FLOOR,
    stripHeight: 66,
  };
}
