import { type StaffActor, can, requirePermission } from '@/lib/access';
import { database } from '@/lib/db/client';
import { type StoredOrder, listAudit, loadOrder } from '@/lib/db/orders';
import { type PlanView, planView } from '@/lib/documents';
import { type ArrivalFormValues, type OrderFormShop, type OrderFormValues, type ShopSettings, arrivalValuesOf, formValuesOf, paymentWord } from '@/lib/forms';
import {
  type Assessment,
  type OrderState,
  type OrderStep,
  type PackRow,
  animalWords,
  formatOrderNumber,
  isFromZone,
  packRows,
  stateWords,
  stepsFrom,
  timelineWords,
} from '@/lib/orders';
import type { Bill } from '@/lib/pricing';
import type { Stage } from '@/lib/rules';
import { assessStored } from './assess-stored';
import { billOf } from './bill-order';
import { invoicePapersOf, paidMinor } from './invoice-papers';
import { shopSettings } from './shop-settings';
import { shopView } from './shop-view';
import { type WhereItWent, whereItWent } from './where-it-went';

/** One order as the shop sees it. */
export type StaffOrder = {
  readonly number: string;
  readonly numberText: string;
  readonly version: number;
  readonly state: OrderState;
  readonly stateWords: string;
  /** Steps that may be taken from here. */
  readonly steps: readonly OrderStep[];
  readonly hunter: StoredOrder['hunter'];
  readonly animal: StoredOrder['animal'];
  readonly animalWords: string;
  readonly arrival: StoredOrder['arrival'];
  readonly arrivalValues: ArrivalFormValues;
  readonly hangingGrams: number | null;
  readonly instructions: StoredOrder['instructions'];
  readonly instructionVersion: number;
  readonly versions: StoredOrder['versions'];
  readonly assessment: Assessment;
  readonly planView: PlanView;
  readonly went: WhereItWent | null;
  readonly fromZone: boolean;
  readonly questions: StoredOrder['questions'];
  readonly formValues: OrderFormValues;
  readonly packRows: readonly PackRow[];
  readonly weighings: StoredOrder['weighings'];
  /** Priced on the weighings once packed, on the likely forecast before. Null for who may not read prices. */
  readonly bill: Bill | null;
  readonly invoice: {
    readonly title: string;
    readonly totalMinor: number;
    readonly paidMinor: number;
    readonly dueMinor: number;
    readonly payments: readonly { readonly label: string; readonly amountMinor: number; readonly at: Date; readonly by: string }[];
  } | null;
  readonly handover: { readonly collectedBy: string; readonly at: Date; readonly by: string } | null;
  readonly timeline: readonly { readonly at: Date; readonly words: string; readonly who: string }[];
  readonly shop: ShopSettings;
};

/** One order by its number, or null; what the rules say of it is of the stage it stands at, or of the one it is opened for. */
export async function readOrder(actor: StaffActor, number: string, stage?: Stage): Promise<StaffOrder | null> {
  requirePermission(actor, 'order.read');
  const order = await loadOrder(database(), { number });
  if (!order) return null;
  const settings = await shopSettings();
  const shop = await shopView(settings);
  const assessment = assessStored(order, shop, stage);
  const papers = invoicePapersOf(order, settings);
  const seesMoney = can(actor, 'prices.read');
  return {
    number: order.number,
    numberText: formatOrderNumber(order.number),
    version: order.version,
    state: order.state,
    stateWords: stateWords(order.state),
    steps: stepsFrom(order.state),
    hunter: order.hunter,
    animal: order.animal,
    animalWords: animalWords({ ...order.animal, ...(order.arrival && { sex: order.arrival.sex, ageClass: order.arrival.ageClass }) }, shop.species),
    arrival: order.arrival,
    arrivalValues: arrivalValuesOf(order.animal, order.arrival, shop),
    hangingGrams: order.hangingGrams,
    instructions: order.instructions,
    instructionVersion: order.instructionVersion,
    versions: order.versions,
    assessment,
    planView: planView(assessment.plan, shop),
    went: whereItWent(order, assessment, shop),
    fromZone: isFromZone(order, shop),
    questions: order.questions,
    formValues: formValuesOf(order, shop),
    packRows: packRows(order.instructions, assessment.plan, shop.country),
    weighings: order.weighings,
    bill: seesMoney ? billOf(order, assessment, shop) : null,
    invoice:
      seesMoney && order.invoice && papers
        ? {
            title: papers.document.title,
            totalMinor: order.invoice.totalMinor,
            paidMinor: paidMinor(order),
            dueMinor: papers.dueMinor,
            payments: order.invoice.payments.map((payment) => ({
              label: paymentWord(payment.method, settings.nameCountry),
              amountMinor: payment.amountMinor,
              at: payment.paidAt,
              by: payment.takenBy,
            })),
          }
        : null,
    handover: order.handover
      ? { collectedBy: order.handover.collectedBy, at: order.handover.handedOverAt, by: order.handover.handedOverBy }
      : null,
    timeline: (await listAudit(database(), order.id)).map((entry) => ({
      at: entry.at,
      words: entry.action === 'hold' && entry.reason !== '' ? `${timelineWords('hold')}: ${entry.reason}` : timelineWords(entry.action),
      who: entry.actorName,
    })),
    shop: settings,
  };
}

/** What was found of an order that came in, for a form that forecasts by it. */
export function foundOf(order: Pick<StaffOrder, 'arrival' | 'hangingGrams'>): OrderFormShop['found'] {
  return order.arrival ? { arrival: order.arrival, hangingGrams: order.hangingGrams } : undefined;
}
