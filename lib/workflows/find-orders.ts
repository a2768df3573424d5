import { type StaffActor, requirePermission } from '@/lib/access';
import { database } from '@/lib/db/client';
import { countByState, listOrders, loadOrder } from '@/lib/db/orders';
import {
  type OrderState,
  animalWords,
  formatOrderNumber,
  parseOrderNumber,
  parseScanCode,
  searchTerms,
  stateWords,
  wholeNumberDigits,
} from '@/lib/orders';
import type { ShopSettings } from '@/lib/forms';
import { formatWeight } from '@/lib/units';
import { shopSettings } from './shop-settings';
import { speciesBook } from './species-book';

const PAGE_SIZE = 50;
const OPEN_STATES: readonly OrderState[] = ['booked', 'received', 'hanging', 'on-hold', 'on-the-bench', 'packed', 'ready'];

export type FoundOrder = {
  readonly number: string;
  readonly numberText: string;
  readonly hunterName: string;
  readonly animalWords: string;
  readonly state: OrderState;
  readonly stateWords: string;
  readonly createdAt: Date;
  readonly openQuestions: number;
  readonly weightText: string;
};

export type FoundOrders = {
  /** The one order meant by a number or a scanned code. */
  readonly exact: string | null;
  /** Set when a scanned sheet is older than the instructions. */
  readonly staleSheet: { readonly printed: number; readonly now: number } | null;
  readonly message: string | null;
  readonly rows: readonly FoundOrder[];
  readonly total: number;
  readonly pages: number;
  readonly counts: Readonly<Record<OrderState, number>>;
};

/** Finds orders by number, scanned code, name, phone or tag, or lists those in a state. 50 to a page. */
export async function findOrders(
  actor: StaffActor,
  query: { readonly text?: string; readonly state?: OrderState | 'open'; readonly page?: number },
): Promise<FoundOrders> {
  requirePermission(actor, 'order.find');
  const text = (query.text ?? '').trim();
  const settings = await shopSettings();
  const species = await speciesBook();
  const meant = text === '' ? null : await orderMeant(text);
  const page = Math.max(1, Math.min(10_000, Math.trunc(query.page ?? 1) || 1));
  const terms = searchTerms(text);
  // A search of which nothing is left to look for finds nobody, not everybody.
  const searched = terms.length > 0 ? null : [];
  const states = text !== '' ? searched : query.state === undefined || query.state === 'open' ? OPEN_STATES : [query.state];
  const newestFirst = text !== '' || query.state === 'collected' || query.state === 'cancelled';
  const paged = { newestFirst, skip: (page - 1) * PAGE_SIZE, take: PAGE_SIZE };
  const [listed, counts] = await Promise.all([listOrders(database(), { terms, states, ...paged }), countByState(database())]);
  const near = listed.total === 0 && meant?.firstDigits ? await listOrders(database(), { terms: [[` ${meant.firstDigits}`]], states: null, ...paged }) : null;
  const isNear = near !== null && near.total > 0;
  const { rows, total } = isNear ? near : listed;
  return {
    exact: meant?.number ?? null,
    staleSheet: meant?.staleSheet ?? null,
    // Digits that are no number of ours may well be a telephone.
    message: listed.total > 0 || !meant?.message ? null : isNear ? `${meant.message} ${nearWords(near.total)}` : meant.message,
    total,
    pages: Math.max(1, Math.ceil(total / PAGE_SIZE)),
    counts,
    rows: rows.map((row) => {
      return {
        number: row.number,
        numberText: formatOrderNumber(row.number),
        hunterName: row.hunterName,
        animalWords: animalWords({ ...row.animal, ...(row.arrival && { sex: row.arrival.sex, ageClass: row.arrival.ageClass }) }, species),
        state: row.state,
        stateWords: stateWords(row.state),
        createdAt: row.createdAt,
        openQuestions: row.openQuestions,
        weightText: weightText(row, settings),
      };
    }),
  };
}

/** The best weight there is, and which one that is: '96.0 lb rail', '430.0 lb told'; '' while there is none. */
function weightText({ hangingGrams, arrival, animal }: Awaited<ReturnType<typeof listOrders>>['rows'][number], { unit, locale }: ShopSettings): string {
  const words = (grams: number, which: string): string => `${formatWeight(grams, unit, locale)} ${which}`;
  if (hangingGrams !== null) return words(hangingGrams, 'rail');
  if (arrival) return words(arrival.weight.grams, 'came in');
  return animal.weight ? words(animal.weight.grams, 'told') : '';
}

function nearWords(total: number): string {
  return total === 1 ? 'This one begins with the same five digits.' : 'These begin with the same five digits.';
}

type Meant = {
  readonly number: string | null;
  readonly staleSheet: FoundOrders['staleSheet'];
  readonly message: string | null;
  /** Of a number that does not add up: what it may begin with all the same. */
  readonly firstDigits: string | null;
};

const NOTHING_MEANT: Meant = { number: null, staleSheet: null, message: null, firstDigits: null };

/** The order a number or a scanned code stands for; a sentence where the digits do not add up or nothing has that number. */
async function orderMeant(text: string): Promise<Meant> {
  const digits = wholeNumberDigits(text);
  if (digits === null) return NOTHING_MEANT;
  const parsed = parseOrderNumber(text);
  if (!parsed.ok) return { ...NOTHING_MEANT, message: parsed.message, firstDigits: digits.slice(0, 5) };
  const order = await loadOrder(database(), { number: parsed.value });
  if (!order) return { ...NOTHING_MEANT, message: `No animal here has the number ${formatOrderNumber(parsed.value)}.` };
  const scanned = parseScanCode(text);
  const isStale = scanned.ok && scanned.value.sheetVersion < order.instructionVersion;
  return {
    ...NOTHING_MEANT,
    number: order.number,
    staleSheet: isStale ? { printed: scanned.value.sheetVersion, now: order.instructionVersion } : null,
  };
}
