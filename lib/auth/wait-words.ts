/**
 * Says how long to wait, rounded up: to ten seconds below two minutes, else to the minute.
 *
 * @example waitWords(new Date(61_000), new Date(0)) // 'Try again in 70 seconds.'
 */
export function waitWords(until: Date, now: Date): string {
  const seconds = Math.max(1, Math.ceil((until.getTime() - now.getTime()) / 1000));
  return seconds < 120 ? `Try again in ${Math.ceil(seconds / 10) * 10} seconds.` : `Try again in ${Math.ceil(seconds / 60)} minutes.`;
}
