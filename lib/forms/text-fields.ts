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
