import { database } from '@/lib/db/client';
import { readShop } from '@/lib/db/shop';
import type { OrderFormShop, ShopSettings } from '@/lib/forms';

/** The shop's settings; throws before set-up, when no workflow can have been reached. */
export async function shopSettings(): Promise<ShopSettings> {
  const shop = await readShop(database());
  if (!shop) throw new Error('The shop has not been set up');
  return shop.settings;
}

/** What the core needs to know of the shop: units, words, zones. */
export function shopView(settings: ShopSettings): OrderFormShop {
  return {
    unit: settings.unit,
    locale: settings.locale,
    country: settings.nameCountry,
    diseaseZones: settings.diseaseZones,
  };
}
