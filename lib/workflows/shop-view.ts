import type { OrderFormShop, ShopSettings } from '@/lib/forms';
import { lawInForce } from '@/lib/law';
import { speciesBook } from './species-book';

/** What the core needs to know of the shop: units, words, zones, the law in force, and the species as it knows them. */
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
  };
}
