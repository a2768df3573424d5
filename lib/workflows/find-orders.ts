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
} from '@/lib/orders';
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
  const [{ rows, total }, counts] = await Promise.all([
    listOrders(database(), { terms, states, newestFirst, skip: (page - 1) * PAGE_SIZE, take: PAGE_SIZE }),
    countByState(database()),
  ]);
  return {
    exact: meant?.number ?? null,
    staleSheet: meant?.staleSheet ?? null,
    // Digits that are no number of ours may well be a telephone.
    message: total > 0 ? null : (meant?.message ?? null),
    total,
    pages: Math.max(1, Math.ceil(total / PAGE_SIZE)),
    counts,
    rows: rows.map((row) => {
      const grams = row.hangingGrams ?? row.arrival?.weight.grams ?? row.animal.weight?.grams ?? null;
      return {
        number: row.number,
        numberText: formatOrderNumber(row.number),
        hunterName: row.hunterName,
        animalWords: animalWords({ ...row.animal, ...(row.arrival && { sex: row.arrival.sex, ageClass: row.arrival.ageClass }) }, species),
        state: row.state,
        stateWords: stateWords(row.state),
        createdAt: row.createdAt,
        openQuestions: row.openQuestions,
        weightText: grams === null ? '' : formatWeight(grams, settings.unit, settings.locale),
      };
    }),
  };
}

/** The order a number or a scanned code stands for; a sentence where the digits do not add up or nothing has that number. */
async function orderMeant(text: string): Promise<{ number: string | null; staleSheet: FoundOrders['staleSheet']; message: string | null }> {
  const looksLikeNumber = /^#?[\d\s-]{6,8}(v\d{1,3})?$/i.test(text);
  if (!looksLikeNumber) return { number: null, staleSheet: null, message: null };
  const parsed = parseOrderNumber(text);
  if (!parsed.ok) return { number: null, staleSheet: null, message: parsed.message };
  const order = await loadOrder(database(), { number: parsed.value });
  if (!order) return { number: null, staleSheet: null, message: `No animal here has the number ${formatOrderNumber(parsed.value)}.` };
  const scanned = parseScanCode(text);
  const isStale = scanned.ok && scanned.value.sheetVersion < order.instructionVersion;
  return {
    number: order.number,
    staleSheet: isStale ? { printed: scanned.value.sheetVersion, now: order.instructionVersion } : null,
    message: null,
  };
}
