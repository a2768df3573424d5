import { z } from 'zod';
import { tidyLine, tidyLines } from './tidy-text';

/** One line that has to be filled in. Line breaks become spaces; hidden characters go. `missing` says what to enter. */
export function lineOf({ missing, longest, tooLong }: { missing: string; longest: number; tooLong?: string }) {
  const sentence = tooLong ?? `Shorten this to ${longest} characters`;
  return z.string(missing).transform(tidyLine).pipe(z.string().min(1, missing).max(longest, sentence));
}

/** One line that may stay empty. */
export function optionalLine(longest: number) {
  return z.string().transform(tidyLine).pipe(z.string().max(longest, `Shorten this to ${longest} characters`));
}

/** Several lines that may stay empty. */
export function optionalLines(longest: number) {
  return z.string().transform(tidyLines).pipe(z.string().max(longest, `Shorten this to ${longest} characters`));
}

type Whole = { readonly what: string; readonly example: string; readonly least: number; readonly most: number; readonly unit: 'days' | 'percent' };

/** A whole number as typed in a form or as stored. `what` says what to enter: 'a number of days'. */
export function wholeNumber({ what, example, least, most, unit }: Whole) {
  const one = unit === 'days' && least === 1 ? 'day' : unit;
  return z
    .union([z.string(), z.number()], `Enter ${what}`)
    .transform((typed) => (typeof typed === 'number' ? typed : /^\s*\d{1,4}\s*$/.test(typed) ? Number(typed) : Number.NaN))
    .pipe(z.int(`Enter a whole number of ${unit}, for example ${example}`).min(least, `Enter at least ${least} ${one}`).max(most, `Enter at most ${most} ${unit}`));
}
