/** What a browser sends: names with their text, in order. */
export type FormEntries = Iterable<readonly [string, unknown]>;

type Tree = { [name: string]: Tree | string };

const UNSAFE = new Set(['__proto__', 'prototype', 'constructor']);
const LONGEST_TEXT = 10_000;
const MOST_ENTRIES = 2_000;

/**
 * Turns dotted names into nested values: 'lines.0.cut' -> { lines: { 0: { cut } } }. Names of the framework
 * ('$ACTION...') and files are passed over, a text over 10,000 characters is cut there, and a name that would
 * reach into a prototype is dropped.
 *
 * @example nestEntries([['animal.sex', 'male']]) // { animal: { sex: 'male' } }
 */
export function nestEntries(entries: FormEntries): Tree {
  const root: Tree = Object.create(null) as Tree;
  let count = 0;
  for (const [name, value] of entries) {
    if (typeof value !== 'string' || name.startsWith('$')) continue;
    const steps = name.split('.');
    count += 1;
    if (count > MOST_ENTRIES || steps.length > 6 || steps.some((step) => step === '' || UNSAFE.has(step))) continue;
    let at = root;
    for (const step of steps.slice(0, -1)) {
      const next = at[step];
      if (typeof next === 'object') at = next;
      else at = at[step] = Object.create(null) as Tree;
    }
    const last = steps.at(-1) ?? '';
    if (typeof at[last] !== 'object') at[last] = value.slice(0, LONGEST_TEXT);
  }
  return root;
}

/** The text at a dotted path, or '' where there is none. */
export function textAt(tree: Tree, path: string): string {
  let at: Tree | string | undefined = tree;
  for (const step of path.split('.')) {
    if (typeof at !== 'object') return '';
    at = at[step];
  }
  return typeof at === 'string' ? at : '';
}

/** The rows of a list, by rising index: 'lines.0', 'lines.3' -> two rows. */
export function rowsAt(tree: Tree, name: string): readonly Tree[] {
  const list = tree[name];
  if (typeof list !== 'object') return [];
  return Object.keys(list)
    .filter((index) => /^\d{1,4}$/.test(index))
    .sort((a, b) => Number(a) - Number(b))
    .flatMap((index) => {
      const row = list[index];
      return typeof row === 'object' ? [row] : [];
    });
}

/** The value a text names, or null where it is none of them. */
export function oneOf<const Value extends string>(text: string, values: readonly Value[]): Value | null {
  return values.find((value) => value === text) ?? null;
}

export type { Tree as FormTree };
