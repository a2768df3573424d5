import type { Role, StaffActor } from '@/lib/access';
import { addPerson } from '@/lib/workflows/people';
import { setUpShop } from '@/lib/workflows/set-up';
import { currentShop, saveShopSettings } from '@/lib/workflows/shop-settings';
import type { Page } from 'playwright-core';

/** The people of the journeys' shop: one a role, the same password for all. */
export const PASSWORD = 'amber lantern over the ford';
export const USER_NAMES: Readonly<Record<Role, string>> = { owner: 'olga', counter: 'carl', cutter: 'cleo' };

/** Sets up a shop with an owner, a counter and a cutter, through the workflows. Words and paper as in the United States. */
export async function openTestShop(changes: Readonly<Record<string, unknown>> = {}): Promise<Readonly<Record<Role, StaffActor>>> {
  const code = 'journeys-code-0000';
  const typed = {
    code,
    shopName: 'Fernhill Game Room',
    unit: 'lb',
    currency: 'USD',
    paper: 'letter',
    nameCountry: 'us',
    timeZone: 'America/Chicago',
    ownerName: 'Olga Ferris',
    userName: USER_NAMES.owner,
    password: PASSWORD,
  };
  const set = await setUpShop(typed, { code, now: new Date() });
  if (!set.ok) throw new Error(JSON.stringify(set));
  const owner: StaffActor = { kind: 'staff', id: set.value.id, name: set.value.name, role: 'owner' };
  const shop = await currentShop();
  if (!shop) throw new Error('No shop after set-up');
  const settings = { ...shop.settings, phone: '555 0177', diseaseZones: ['Marsh County'], ...changes };
  const saved = await saveShopSettings(owner, settings, shop.version);
  if (!saved.ok) throw new Error(JSON.stringify(saved));
  const counter = await person(owner, 'Carl Odum', 'counter');
  const cutter = await person(owner, 'Cleo Banks', 'cutter');
  return { owner, counter, cutter };
}

async function person(owner: StaffActor, name: string, role: Role): Promise<StaffActor> {
  const added = await addPerson(owner, { name, userName: USER_NAMES[role], role, password: PASSWORD });
  if (!added.ok) throw new Error(JSON.stringify(added));
  return { kind: 'staff', id: added.value.id, name: added.value.name, role };
}

/** Signs somebody in and waits for the day's page. */
export async function signInAs(page: Page, url: string, role: Role): Promise<void> {
  await page.goto(`${url}/sign-in`);
  await page.getByLabel('User name').fill(USER_NAMES[role]);
  await page.locator('input[name=password]').fill(PASSWORD);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL('**/staff');
}
