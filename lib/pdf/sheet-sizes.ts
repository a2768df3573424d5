/** Sizes of a cutting sheet, in points. Capitals of the face are 0.668 of its size: 14 points give 3.3 mm, 19.1 give 4.5 mm. */
export type SheetSizes = {
  /** Part, action, size and pack. */
  readonly line: number;
  /** How an action is done, and notes under a line. */
  readonly detail: number;
  /** The letters that tell left from right. */
  readonly side: number;
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

/** Between things that stand side by side. */
export const GAP = 6;

export const LARGEST = 24;
/** Nothing that a cutter acts on is smaller. Cautions are a point less, which is the floor of the whole sheet. */
export const FLOOR = 14;
const SMALLEST = 13;

/** How much room is given to what stands round the lines. */
export type Frame = 'roomy' | 'tight';

/**
 * Sizes that go with lines of a size. Stop bars are half as large again as the lines.
 *
 * @example sizesFor(20, 'roomy').stop // 30
 */
export function sizesFor(line: number, frame: Frame): SheetSizes {
  const isTight = frame === 'tight';
  const stop = line * 1.5;
  return {
    line,
    detail: Math.max(FLOOR, Math.round(line * 0.7)),
    side: Math.max(FLOOR, line * 0.7),
    stop,
    stopHeight: stop * 1.2,
    number: isTight ? 72 : 80,
    numberAgain: isTight ? 34 : 38,
    code: isTight ? 88 : 98,
    header: isTight ? 90 : 99,
    surname: isTight ? 24 : 28,
    animal: isTight ? 16 : 19,
    title: FLOOR,
    titleHeight: FLOOR * 1.25 + 2,
    chart: isTight ? 90 : 100,
    label: FLOOR,
    value: isTight ? 16 : 18,
    fact: isTight ? FLOOR : 16,
    note: isTight ? FLOOR : 16,
    caution: SMALLEST,
    writeIn: isTight ? 44 : 48,
    signOff: isTight ? 36 : 42,
    stripNumber: isTight ? 27 : 30,
    stripTitle: FLOOR,
    stripHeight: isTight ? 66 : 72,
  };
}
