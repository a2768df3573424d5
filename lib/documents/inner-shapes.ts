// What lies inside the carcass or under its meat, in the units of the chart and laid upon its outline. Ours, by eye.

type Point = { readonly x: number; readonly y: number };

/** Where the loin lies upon the spine, from front to back. */
const UNDER_THE_LOIN: readonly Point[] = [
  { x: 305, y: 244.2 },
  { x: 350, y: 250 },
  { x: 382, y: 250.7 },
  { x: 417, y: 249.5 },
  { x: 454, y: 244 },
  { x: 486, y: 237 },
];

/** The topside as it lies on the inner face of the haunch, from the aitch bone to the knee. */
export const INNER_TOPSIDE =
  'M531 262 C540 252 553 249 566 246 C582 242 598 236 611 234 C619 246 622 264 621 284 C620 306 614 332 606 350 C598 357 584 358 570 357 C556 356 543 352 534 346 C527 332 523 310 524 292 C525 280 527 269 531 262 Z';

/** Seams of the inner face round the topside: of the thick flank before it, the rump above it, the shank below it. */
export const INNER_SEAMS: readonly string[] = [
  'M485 237 C497 250 513 259 531 262',
  'M611 234 L622 225',
  'M534 346 C529 354 525 361 522 366',
  'M606 350 L616 358',
];

/** The aitch bone, where the pelvis was split. */
export const AITCH_BONE = 'M531 262 C528 254 534 244 546 239 C560 233 578 229 592 227 C600 226 604 231 599 235 C588 241 570 245 556 250 C546 254 540 260 531 262 Z';

/** Bodies of the vertebrae along the back, as a split carcass shows them. */
export const SPINE = bodies();

/** Their upright blades, within the loin. */
export const SPINE_FEATHERS = feathers();

/** The blade bone under the meat of the shoulder, and the bone of the upper arm. */
export const BLADE_BONE = 'M238 196 C252 190 272 192 284 198 C278 226 262 262 240 300 C236 306 228 306 226 300 C222 264 226 226 238 196 Z M230 304 C238 318 248 330 256 344';

/** The height of that line at a place along it. */
function lineAt(x: number): number {
  const next = UNDER_THE_LOIN.findIndex((point) => point.x >= x);
  const [from, to] = [UNDER_THE_LOIN[Math.max(0, next - 1)], UNDER_THE_LOIN[next]];
  if (!from || !to || from === to) return to?.y ?? 0;
  return from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x);
}

/** Thirteen vertebrae along the line, evenly spaced from front to back. */
function places(): readonly Point[] {
  return Array.from({ length: 13 }, (_, at) => ({ x: 308 + at * 13.7, y: lineAt(314 + at * 13.7) }));
}

function bodies(): string {
  return places()
    .map(({ x, y }) => [x, y - 6, x + 5.7, y - 4, x + 11.4, y - 6.4, x + 10.2, y, x + 11.4, y + 5.6, x + 5.7, y + 4, x, y + 6, x + 1.2, y, x, y - 6].map((figure) => figure.toFixed(1)))
    .map(([x = '', y = '', ...rest]) => `M${x} ${y} ${inPairs(rest).map((pair) => `Q${pair}`).join(' ')} Z`)
    .join(' ');
}

/** Four figures a piece: the bend and the end of a curve. */
function inPairs(figures: readonly string[]): readonly string[] {
  return figures.flatMap((_, at) => (at % 4 === 0 ? [figures.slice(at, at + 4).join(' ')] : []));
}

function feathers(): string {
  return places()
    .map(({ x, y }) => `M${(x + 3).toFixed(1)} ${(y - 6).toFixed(1)} Q${(x + 4).toFixed(1)} ${(y - 18).toFixed(1)} ${(x + 9).toFixed(1)} ${(y - 30).toFixed(1)} L${(x + 12).toFixed(1)} ${(y - 29).toFixed(1)} Q${(x + 9).toFixed(1)} ${(y - 18).toFixed(1)} ${(x + 9).toFixed(1)} ${(y - 6).toFixed(1)}`)
    .join(' ');
}
