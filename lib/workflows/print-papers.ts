import { type StaffActor, requirePermission } from '@/lib/access';
import { database } from '@/lib/db/client';
import { now } from '@/lib/db/clock';
import { type StoredOrder, loadOrder } from '@/lib/db/orders';
import { type CuttingSheet, buildCuttingSheet } from '@/lib/documents';
import type { OrderFormShop, ShopSettings } from '@/lib/forms';
import { assessOrder, isFromZone } from '@/lib/orders';
import { momentWords } from './clock';
import { type InvoicePapers, invoicePapersOf } from './invoice-papers';
import { shopSettings } from './shop-settings';
import { shopView } from './shop-view';

/** The cutting sheets of some orders, in the order asked, ready to be drawn. Numbers that are not here are passed over. */
export async function cuttingSheets(
  actor: StaffActor,
  numbers: readonly string[],
): Promise<{ readonly paper: ShopSettings['paper']; readonly sheets: readonly CuttingSheet[] }> {
  requirePermission(actor, 'sheet.print');
  const settings = await shopSettings();
  const shop = await shopView(settings);
  const printed = momentWords(now(), settings);
  const orders = await Promise.all(numbers.slice(0, 500).map((number) => loadOrder(database(), { number })));
  return {
    paper: settings.paper,
    sheets: orders.flatMap((order) => (order ? [sheetOf(order, { shop, settings, printed })] : [])),
  };
}

function sheetOf(
  order: StoredOrder,
  { shop, settings, printed }: { readonly shop: OrderFormShop; readonly settings: ShopSettings; readonly printed: string },
): CuttingSheet {
  const { plan } = assessOrder({ stage: 'cutting', animal: order.animal, arrival: order.arrival, hangingGrams: order.hangingGrams, instructions: order.instructions }, shop);
  return buildCuttingSheet({
    number: order.number,
    version: order.instructionVersion,
    printed,
    shop: { ...shop, name: settings.name },
    hunterName: order.hunter.name,
    animal: order.animal,
    arrival: order.arrival,
    hangingGrams: order.hangingGrams,
    fromZone: isFromZone(order, shop),
    instructions: order.instructions,
    plan,
    openQuestions: order.questions.filter((question) => question.answeredAt === null).length,
  });
}

/** The papers of an order's invoice, or null while none is issued. */
export async function invoicePapers(actor: StaffActor, number: string): Promise<InvoicePapers | null> {
  requirePermission(actor, 'prices.read');
  const order = await loadOrder(database(), { number });
  return order ? invoicePapersOf(order, await shopSettings()) : null;
}
