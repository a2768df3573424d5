import type { OrderFormShop, ShopSettings } from '@/lib/forms';

/** What the core needs to know of the shop: units, words, zones. */
export function shopView(settings: ShopSettings): OrderFormShop {
  return {
    unit: settings.unit,
    locale: settings.locale,
    country: settings.nameCountry,
    diseaseZones: settings.diseaseZones,
  };
}
