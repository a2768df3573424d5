import { CUT_IDS } from '@/lib/cuts';
import { type BaseCharge, type BasePrice, type Tariff, type Tax, type WeightExtra, checkTariff } from '@/lib/pricing';
import { type Result, minorDigits, parseMoney, parseRate, parseWeight, weighedQuantity } from '@/lib/units';
import { type FormEntries, type FormTree, nestEntries, rowsAt, textAt } from './form-entries';
import { figureText as figure } from './figure-text';
import type { FieldErrors } from './order-form-schema';

export const CHARGE_KINDS = ['flat', 'steps', 'per-weight'] as const;
export type ChargeKind = (typeof CHARGE_KINDS)[number];

export type StepValues = { upTo: string; amount: string };

/** One base price as its inputs hold it. The figures of every kind stay; only those of the chosen kind count. */
export type BaseValues = {
  id: string;
  name: string;
  species: Record<string, boolean>;
  kind: string;
  flat: string;
  rate: string;
  steps: StepValues[];
  excess: string;
  includes: Record<string, boolean>;
  tax: string;
};

/** The price list as its inputs hold it: text as typed. What the form does not ask stays as it is in the tariff. */
export type TariffFormValues = {
  taxes: { id: string; name: string; rate: string }[];
  base: BaseValues[];
  perWeight: { id: string; name: string; cuts: Record<string, boolean>; rate: string; tax: string }[];
  perPiece: { id: string; name: string; each: string; tax: string }[];
  products: { id: string; name: string; rate: string; added: string; tax: string }[];
};

/** Lists whose rows the owner may add and take away. */
export const GROWING_LISTS = ['taxes', 'base', 'perWeight'] as const;
export type GrowingList = (typeof GROWING_LISTS)[number];

const PRICE_LISTS = ['taxes', 'base', 'perWeight', 'perPiece', 'products'] as const satisfies readonly (keyof TariffFormValues)[];

const MOST_ROWS = 40;

/** A price list as its form shows it, figures written in the manner of the locale, without signs. */
export function tariffFormValues(tariff: Tariff, locale: string): TariffFormValues {
  const digits = minorDigits(tariff.currency);
  const money = (minor: number): string => figure(minor, { scale: digits, least: digits, locale });
  const rate = (per10k: number): string => figure(per10k, { scale: 4, least: digits, locale });
  const weight = (hundredths: number): string => figure(hundredths, { scale: 2, least: 0, locale });
  return {
    taxes: tariff.taxes.map(({ id, name, ratePer100k }) => ({ id, name, rate: figure(ratePer100k, { scale: 3, least: 0, locale }) })),
    base: tariff.base.map(({ id, name, speciesIds, charge, includes, taxId }) => ({
      id,
      name,
      species: ticks(speciesIds, speciesIds),
      kind: charge.kind,
      flat: charge.kind === 'flat' ? money(charge.amountMinor) : '',
      rate: charge.kind === 'per-weight' ? rate(charge.ratePer10k) : '',
      steps:
        charge.kind === 'steps'
          ? charge.steps.map((step) => ({ upTo: weight(step.upToHundredths), amount: money(step.amountMinor) }))
          : [],
      excess: charge.kind === 'steps' ? rate(charge.excessRatePer10k) : '',
      includes: ticks(tariff.perPiece.map((extra) => extra.id), includes),
      tax: taxId ?? '',
    })),
    perWeight: tariff.perWeight.map(({ id, name, cutIds, ratePer10k, taxId }) => ({
      id,
      name,
      cuts: ticks(CUT_IDS, cutIds),
      rate: rate(ratePer10k),
      tax: taxId ?? '',
    })),
    perPiece: tariff.perPiece.map(({ id, name, eachMinor, taxId }) => ({ id, name, each: money(eachMinor), tax: taxId ?? '' })),
    products: tariff.products.map(({ id, name, ratePer10k, addedRatePer10k, taxId }) => ({
      id,
      name,
      rate: rate(ratePer10k),
      added: rate(addedRatePer10k),
      tax: taxId ?? '',
    })),
  };
}

/** Reads what the browser sent; anything unknown is left out, nothing typed is changed. */
export function readTariffForm(entries: FormEntries): TariffFormValues {
  const tree = nestEntries(entries);
  const rows = (name: string): readonly FormTree[] => rowsAt(tree, name).slice(0, MOST_ROWS);
  const texts = <Name extends string>(row: FormTree, ...names: readonly Name[]): Record<Name, string> =>
    Object.fromEntries(names.map((name) => [name, textAt(row, name)])) as Record<Name, string>;
  return {
    taxes: rows('taxes').map((row) => texts(row, 'id', 'name', 'rate')),
    base: rows('base').map((row) => ({
      ...texts(row, 'id', 'name', 'kind', 'flat', 'rate', 'excess', 'tax'),
      species: tickedAt(row, 'species'),
      includes: tickedAt(row, 'includes'),
      steps: rowsAt(row, 'steps').slice(0, MOST_ROWS).map((step) => texts(step, 'upTo', 'amount')),
    })),
    perWeight: rows('perWeight').map((row) => ({ ...texts(row, 'id', 'name', 'rate', 'tax'), cuts: tickedAt(row, 'cuts') })),
    perPiece: rows('perPiece').map((row) => texts(row, 'id', 'name', 'each', 'tax')),
    products: rows('products').map((row) => texts(row, 'id', 'name', 'rate', 'added', 'tax')),
  };
}

/** The form's fields as a browser would send them: every text, and the boxes that are ticked. */
export function tariffFormEntries(values: TariffFormValues): readonly (readonly [string, string])[] {
  const flat = (prefix: string, value: unknown): readonly (readonly [string, string])[] => {
    if (typeof value === 'string') return [[prefix, value]];
    if (typeof value === 'boolean') return value ? [[prefix, 'on']] : [];
    if (typeof value !== 'object' || value === null) return [];
    return Object.entries(value).flatMap(([name, inner]) => flat(prefix === '' ? name : `${prefix}.${name}`, inner));
  };
  return flat('', values);
}

/**
 * What a button of the form asks for: 'add:perWeight', 'remove:perWeight.2', 'add:base.0.steps', 'remove:base.0.steps.1'.
 * Gives null for anything else, such as 'save'. The same on the page and on the server.
 */
export function applyTariffIntent(values: TariffFormValues, intent: string): TariffFormValues | null {
  const step = /^(add|remove):base\.(\d{1,3})\.steps(?:\.(\d{1,3}))?$/.exec(intent);
  if (step) {
    const at = Number(step[2]);
    const change = (steps: readonly StepValues[]): StepValues[] =>
      step[1] === 'add' ? [...steps, { upTo: '', amount: '' }] : steps.filter((_, index) => index !== Number(step[3] ?? -1));
    return { ...values, base: values.base.map((row, index) => (index === at ? { ...row, steps: change(row.steps) } : row)) };
  }
  const row = /^(add|remove):(taxes|base|perWeight)(?:\.(\d{1,3}))?$/.exec(intent);
  if (!row) return null;
  const isKept = (_: unknown, index: number): boolean => row[1] === 'add' || index !== Number(row[3] ?? -1);
  const isNew = row[1] === 'add';
  switch (row[2]) {
    case 'taxes':
      return { ...values, taxes: [...values.taxes.filter(isKept), ...(isNew ? [{ id: '', name: '', rate: '' }] : [])] };
    case 'base':
      return { ...values, base: [...values.base.filter(isKept), ...(isNew ? [blankBase()] : [])] };
    default:
      return {
        ...values,
        perWeight: [...values.perWeight.filter(isKept), ...(isNew ? [{ id: '', name: '', cuts: {}, rate: '', tax: '' }] : [])],
      };
  }
}

/**
 * Checks the form over the price list it was opened on. Either the whole new price list, or every error with the name
 * of its field. Currency, unit, and which extras need a hide stay as they are in `current`.
 */
export function parseTariffForm(
  values: TariffFormValues,
  { current, locale }: { readonly current: Tariff; readonly locale: string },
): { readonly ok: true; readonly value: Tariff } | { readonly ok: false; readonly fieldErrors: FieldErrors } {
  const fieldErrors: Record<string, string> = {};
  const { currency, weightUnit } = current;
  const read = (path: string, result: Result<number>): number => {
    if (!result.ok) fieldErrors[path] ??= result.message;
    return result.ok ? result.value : 0;
  };
  const money = (path: string, text: string): number => read(path, parseMoney(text, currency, locale));
  const rate = (path: string, text: string): number => read(path, parseRate(text, currency, locale));
  const weight = (path: string, text: string): number => {
    const grams = parseWeight(text, { unit: weightUnit, locale });
    return weighedQuantity(read(path, grams), weightUnit);
  };
  const name = (path: string, text: string): string => {
    const trimmed = text.trim();
    if (trimmed === '') fieldErrors[`${path}.name`] ??= 'Give this price a name.';
    else if (trimmed.length > 80) fieldErrors[`${path}.name`] ??= 'The name has room for 80 characters.';
    return trimmed;
  };
  const taken = { taxes: namesGiven(values.taxes), base: namesGiven(values.base), perWeight: namesGiven(values.perWeight) };

  const taxes = values.taxes.map((row, at): Tax => {
    const path = `taxes.${at}`;
    return { id: idOf(row, taken.taxes), name: name(path, row.name), ratePer100k: read(`${path}.rate`, percent(row.rate, current, locale)) };
  });
  const taxOf = (id: string): string | null => (id === '' ? null : id);
  const stepRows: number[][] = [];
  const charge = (row: BaseValues, path: string): BaseCharge => {
    stepRows.push([]);
    switch (row.kind) {
      case 'flat':
        return { kind: 'flat', amountMinor: money(`${path}.flat`, row.flat) };
      case 'per-weight':
        return { kind: 'per-weight', ratePer10k: rate(`${path}.rate`, row.rate) };
      case 'steps': {
        const filled = row.steps.map((step, at) => ({ ...step, at })).filter(({ upTo, amount }) => `${upTo}${amount}`.trim() !== '');
        stepRows.splice(-1, 1, filled.map(({ at }) => at));
        return {
          kind: 'steps',
          steps: filled.map(({ upTo, amount, at }) => ({
            upToHundredths: weight(`${path}.steps.${at}.upTo`, upTo),
            amountMinor: money(`${path}.steps.${at}.amount`, amount),
          })),
          excessRatePer10k: row.excess.trim() === '' ? 0 : rate(`${path}.excess`, row.excess),
        };
      }
      default:
        fieldErrors[`${path}.kind`] ??= 'Choose how this price is worked out.';
        return { kind: 'flat', amountMinor: 0 };
    }
  };
  const base = values.base.map((row, at): BasePrice => {
    const path = `base.${at}`;
    return {
      id: idOf(row, taken.base),
      name: name(path, row.name),
      speciesIds: Object.keys(row.species).filter((id) => row.species[id]),
      charge: charge(row, path),
      includes: current.perPiece.map((extra) => extra.id).filter((id) => row.includes[id]),
      taxId: taxOf(row.tax),
    };
  });
  const perWeight = values.perWeight.map((row, at): WeightExtra => {
    const path = `perWeight.${at}`;
    return {
      id: idOf(row, taken.perWeight),
      name: name(path, row.name),
      cutIds: CUT_IDS.filter((id) => row.cuts[id]),
      ratePer10k: rate(`${path}.rate`, row.rate),
      taxId: taxOf(row.tax),
    };
  });
  const perPiece = current.perPiece.map((extra) => {
    const at = values.perPiece.findIndex(({ id }) => id === extra.id);
    const row = values.perPiece[at];
    if (!row) return extra;
    return { ...extra, name: name(`perPiece.${at}`, row.name), eachMinor: money(`perPiece.${at}.each`, row.each), taxId: taxOf(row.tax) };
  });
  const products = current.products.map((product) => {
    const at = values.products.findIndex(({ id }) => id === product.id);
    const row = values.products[at];
    if (!row) return product;
    return {
      ...product,
      name: name(`products.${at}`, row.name),
      ratePer10k: rate(`products.${at}.rate`, row.rate),
      addedRatePer10k: rate(`products.${at}.added`, row.added),
      taxId: taxOf(row.tax),
    };
  });
  const tariff: Tariff = { currency, weightUnit, taxes, base, perWeight, perPiece, products };
  for (const { path, message } of checkTariff(withNames(tariff))) fieldErrors[fieldOf(path, stepRows)] ??= message;
  return Object.keys(fieldErrors).length > 0 ? { ok: false, fieldErrors } : { ok: true, value: tariff };
}

/**
 * Which price a field of the form belongs to, and which figure of it where there are several of a kind; '' where the
 * field is no price's.
 *
 * @example priceOfField(values, 'base.0.steps.1.amount') // 'Deer, step 2'
 */
export function priceOfField(values: TariffFormValues, field: string): string {
  const [list = '', at = '', figure = '', step = ''] = field.split('.');
  if (!(PRICE_LISTS as readonly string[]).includes(list)) return '';
  const row = values[list as (typeof PRICE_LISTS)[number]][Number(at)];
  if (!row) return '';
  const name = row.name.trim() || 'A price without a name';
  if (figure === 'steps') return `${name}, step ${Number(step) + 1}`;
  return figure === 'added' ? `${name}, added meat` : name;
}

/** A row without a name is told of as 'this price'; that it needs one has been said. */
function withNames(tariff: Tariff): Tariff {
  const named = <Row extends { readonly name: string }>(rows: readonly Row[]): readonly Row[] =>
    rows.map((row) => (row.name === '' ? { ...row, name: 'this price' } : row));
  return { ...tariff, taxes: named(tariff.taxes), base: named(tariff.base), perWeight: named(tariff.perWeight) };
}

function blankBase(): BaseValues {
  return { id: '', name: '', species: {}, kind: 'flat', flat: '', rate: '', steps: [], excess: '', includes: {}, tax: '' };
}

/** The form's field for a place in the tariff: 'base.0.charge.steps.1.amountMinor' is 'base.0.steps.1.amount'. */
function fieldOf(path: string, stepRows: readonly (readonly number[])[]): string {
  const [list = '', at = '', ...rest] = path.split('.');
  const row = `${list}.${at}`;
  const last = rest.at(-1) ?? '';
  if (rest[0] === 'charge' && rest[1] === 'steps' && rest[2] !== undefined) {
    const typedAt = stepRows[Number(at)]?.[Number(rest[2])] ?? Number(rest[2]);
    return `${row}.steps.${typedAt}.${last === 'upToHundredths' ? 'upTo' : 'amount'}`;
  }
  return `${row}.${FIELDS[last] ?? last}`;
}

const FIELDS: Readonly<Record<string, string>> = {
  id: 'name',
  speciesIds: 'species',
  cutIds: 'cuts',
  taxId: 'tax',
  ratePer100k: 'rate',
  ratePer10k: 'rate',
  addedRatePer10k: 'added',
  eachMinor: 'each',
  excessRatePer10k: 'excess',
  amountMinor: 'flat',
};

function percent(text: string, { currency }: Tariff, locale: string): Result<number> {
  const read = parseRate(text.replace(/\s*%\s*$/, ''), currency, locale);
  if (read.ok && read.value % 10 === 0) return { ok: true, value: read.value / 10 };
  return { ok: false, message: 'Write the tax as a percentage with up to three decimals, for example 6.' };
}

function namesGiven(rows: readonly { readonly id: string }[]): Set<string> {
  return new Set(rows.map(({ id }) => id).filter((id) => id !== ''));
}

/** A new row is called after its first name; a row that is there keeps its id, whatever its name becomes. */
function idOf({ id, name }: { readonly id: string; readonly name: string }, taken: Set<string>): string {
  if (id !== '') return id;
  const stem = name.toLowerCase().normalize('NFKD').replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '').slice(0, 40) || 'price';
  let made = stem;
  for (let count = 2; taken.has(made); count += 1) made = `${stem}-${count}`;
  taken.add(made);
  return made;
}

function ticks(all: readonly string[], ticked: readonly string[]): Record<string, boolean> {
  return Object.fromEntries(all.map((id) => [id, ticked.includes(id)]));
}

function tickedAt(row: FormTree, name: string): Record<string, boolean> {
  const box = row[name];
  return typeof box === 'object' ? Object.fromEntries(Object.keys(box).map((id) => [id, textAt(box, id) !== ''])) : {};
}
