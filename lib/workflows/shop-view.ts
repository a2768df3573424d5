import { now } from '@/lib/db/clock';
import { type OrderFormShop, type ShopSettings, termsOf } from '@/lib/forms';
import { lawInForce } from '@/lib/law';
import { dayIn } from './clock';
import { speciesBook } from './species-book';

/** What the core needs to know of the shop: units, words, zones, its terms, the law in force, the day, and the species as it knows them. */
export async function shopView(settings: ShopSettings): Promise<OrderFormShop> {
  return {
    unit: settings.unit,
    locale: settings.locale,
    country: settings.nameCountry,
    diseaseZones: settings.diseaseZones,
    law: lawInForce(settings.law),
    species: await speciesBook(),
    ruleChanges: settings.ruleChanges,
    ways: {
      hung: settings.hangDays === null ? null : { days: settings.hangDays, hide: settings.hangHide },
      closeTrim: settings.closeTrim,
    },
    terms: termsOf(settings),
    today: dayIn(settings.timeZone, now()),
  };
}
