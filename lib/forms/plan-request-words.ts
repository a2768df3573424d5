import type { z } from 'zod';

/** One mistake: the dotted path of where it is ('' for the whole), and a sentence with the way out. */
export type PlanProblem = { readonly path: string; readonly message: string };

/** So many are told at once; whoever has more mends these first. */
export const MOST_PROBLEMS = 20;
const LONGEST_SHOWN = 40;

/** Text of a stranger's as it may stand in a sentence or on a terminal: short, and nothing in it that is not seen. */
export function shownText(text: string): string {
  const seen = text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (mark) => `\\u${(mark.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`);
  return seen.length > LONGEST_SHOWN ? `${seen.slice(0, LONGEST_SHOWN)}...` : seen;
}

/** A value of a stranger's as it may stand in a sentence. */
export function shownValue(value: unknown): string {
  if (typeof value === 'string') return `"${shownText(value)}"`;
  if (Array.isArray(value)) return 'A list';
  return typeof value === 'object' && value !== null ? 'An object' : String(value);
}

/** What to write where only some words will do. */
export function choiceProblem(input: unknown, values: readonly string[]): string {
  const choices = values.length === 1 ? `"${values[0] ?? ''}"` : `one of: ${values.join(', ')}`;
  return input === undefined ? `This is missing. Write ${choices}.` : `${shownValue(input)} is not known here. Write ${choices}.`;
}

const GRAMS_IN: ReadonlyMap<string, number> = new Map([
  ...['pounds', 'pound', 'lb', 'lbs'].map((unit): [string, number] => [unit, 453.592_37]),
  ...['kilograms', 'kilogram', 'kilos', 'kg', 'kgs'].map((unit): [string, number] => [unit, 1_000]),
]);

/** What a weight given in another unit is in grams: ' 105 lb are 47627 grams.' Empty where there is none. */
export function gramsHint(input: unknown): string {
  if (typeof input !== 'object' || input === null) return '';
  for (const [unit, value] of Object.entries(input)) {
    const each = GRAMS_IN.get(unit.toLowerCase());
    if (each === undefined) continue;
    const isWeight = typeof value === 'number' && value > 0 && value < 10_000;
    return isWeight ? ` Weights are in grams: ${value} ${unit.toLowerCase()} are ${Math.round(value * each)}.` : ' Weights are in grams.';
  }
  return '';
}

/** A dotted path: 'instructions.lines.0.cut'. */
export function dotted(path: readonly PropertyKey[]): string {
  return path.map((step) => shownText(String(step))).join('.');
}

/** The first mistake at each path of a zod error, in the order of the request. An unknown key is a mistake at that key. */
export function problemsOf(error: z.core.$ZodError): readonly PlanProblem[] {
  const problems = new Map<string, string>();
  for (const issue of error.issues) {
    const told: readonly PlanProblem[] =
      issue.code === 'unrecognized_keys'
        ? issue.keys.slice(0, MOST_PROBLEMS).map((key) => ({ path: dotted([...issue.path, key]), message: `"${shownText(key)}" is not known here. ${issue.message}` }))
        : [{ path: dotted(issue.path), message: issue.message }];
    for (const { path, message } of told) if (!problems.has(path)) problems.set(path, message);
  }
  return [...problems].slice(0, MOST_PROBLEMS).map(([path, message]) => ({ path, message }));
}

/** The sentence for what no field has its own for: something that is no object. */
export const anyProblem: z.core.$ZodErrorMap = ({ code, input }) =>
  code === 'invalid_type' ? (input === undefined ? 'This is missing. Write an object in { }.' : 'Write an object in { }.') : undefined;
