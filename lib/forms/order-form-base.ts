import { nextLineId } from '@/lib/instructions';
import { type Answer, type AnswerShop, orderAnswers } from './order-answers';
import { orderFormEntries } from './order-form-entries';
import { type FormBase, type OrderFormState, openedForm } from './order-form-state';
import { type LineValues, type OrderFormValues, readOrderForm } from './order-form-values';

/** What a form was opened on as the text of a hidden input; `readBase` gives it back. */
export function writtenBase({ values }: FormBase): string {
  return JSON.stringify(orderFormEntries(values));
}

/** Reads what a form was opened on; undefined where the text is not one that `writtenBase` gives. */
export function readBase(version: number, text: unknown): FormBase | undefined {
  if (typeof text !== 'string') return undefined;
  try {
    const entries: unknown = JSON.parse(text);
    return Array.isArray(entries) ? { version, values: readOrderForm(entries.filter(isEntry)) } : undefined;
  } catch {
    return undefined;
  }
}

/**
 * The form brought to the order as it stands now. What was typed since it was opened is kept, also where others changed
 * the same; all else is as they left it, and what they changed is listed. Without knowing what it was opened on nothing is kept.
 */
export function formAsItStands(typed: OrderFormValues, base: FormBase | undefined, now: FormBase, shop: AnswerShop): OrderFormState {
  const opened = base?.values ?? typed;
  return {
    ...openedForm(withTyped(typed, opened, now.values)),
    focus: 'as-it-stands',
    base: now,
    changedMeanwhile: changedAnswers(opened, now.values, shop),
  };
}

function withTyped(typed: OrderFormValues, opened: OrderFormValues, now: OrderFormValues): OrderFormValues {
  const mine = fieldsOf(typed);
  const before = fieldsOf(opened);
  const theirs = fieldsOf(now);
  const entries = [...new Set([...mine.keys(), ...theirs.keys()])].flatMap((path): [string, string][] => {
    const text = mine.get(path) === before.get(path) ? theirs.get(path) : mine.get(path);
    return text === undefined ? [] : [[path, text]];
  });
  return { ...readOrderForm(entries), formKey: typed.formKey, lines: linesWithTyped(typed.lines, opened.lines, now.lines) };
}

/** Every field but the lines, by its path. A browser sends the end of a line as two characters. */
function fieldsOf(values: OrderFormValues): ReadonlyMap<string, string> {
  return new Map(orderFormEntries({ ...values, lines: [] }).map(([path, text]) => [path, text.replaceAll('\r\n', '\n')]));
}

function linesWithTyped(typed: readonly LineValues[], opened: readonly LineValues[], now: readonly LineValues[]): LineValues[] {
  const before = byId(opened);
  const mine = byId(typed);
  const isMine = (line: LineValues): boolean => !isSame(line, before.get(line.id));
  const standing = now.flatMap((line) => {
    if (!before.has(line.id)) return [line];
    const own = mine.get(line.id);
    return own ? [isMine(own) ? own : line] : [];
  });
  const added = typed.filter((line) => isMine(line) && !(before.has(line.id) && now.some(({ id }) => id === line.id)));
  return added.reduce((lines, line) => {
    if (lines.some((other) => isSame({ ...other, id: line.id }, line))) return lines;
    // Both may have added one by the same id.
    const isTaken = lines.some(({ id }) => id === line.id);
    return [...lines, isTaken ? { ...line, id: nextLineId(lines) } : line];
  }, standing);
}

/** The answers that are others than before, and the lines that are gone. */
function changedAnswers(before: OrderFormValues, now: OrderFormValues, shop: AnswerShop): readonly Answer[] {
  const answersOf = (values: OrderFormValues): readonly Answer[] => orderAnswers(values, shop).flatMap(({ answers }) => answers);
  const [then, since] = [answersOf(before), answersOf(now)];
  const isIn = (answers: readonly Answer[], { label, answer }: Answer): boolean => answers.some((one) => one.label === label && one.answer === answer);
  const gone = then.filter(({ label }) => !since.some((one) => one.label === label));
  return [...since.filter((one) => !isIn(then, one)), ...gone.map(({ label }) => ({ label, answer: 'taken off' }))];
}

function byId(lines: readonly LineValues[]): ReadonlyMap<string, LineValues> {
  return new Map(lines.map((line) => [line.id, line]));
}

function isSame(one: LineValues, other: LineValues | undefined): boolean {
  const keys = ['id', 'target', 'side', 'cut', 'size', 'pack', 'asked'] as const;
  return other !== undefined && keys.every((key) => one[key] === other[key]);
}

function isEntry(entry: unknown): entry is readonly [string, string] {
  return Array.isArray(entry) && typeof entry[0] === 'string' && typeof entry[1] === 'string';
}
