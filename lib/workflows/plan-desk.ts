import type { PlanDesk } from '@/lib/forms';
import { shopView } from './shop-view';
import { currentShop } from './shop-settings';
import { speciesBook } from './species-book';

/** What answers other programs: the species, the ways and the words of this shop. Before set-up, the usual ones. */
export async function planDesk(): Promise<PlanDesk> {
  const shop = await currentShop();
  return shop ? shopView(shop.settings) : { species: await speciesBook(), country: 'us', unit: 'lb' };
}
