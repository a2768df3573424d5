import type { Role, StaffActor } from '@/lib/access';
import { makePassword } from '@/lib/auth/password-hash';
import { atMoment } from '@/lib/db/clock';
import { closeDatabase } from '@/lib/db/client';
import { addPerson } from '@/lib/workflows/people';
import { readTariff, saveTariff } from '@/lib/workflows/prices';
import { isSetUpOpen, setUpShop } from '@/lib/workflows/set-up';
import { currentShop, saveShopSettings } from '@/lib/workflows/shop-settings';
import { chanceFrom } from './season/chance';
import { hunters } from './season/hunters';
import { type Played, play } from './season/play';
import { tariffFor } from './default-tariff';
import { demoMenu, demoShop, demoShopDetails, demoStaff } from './season/shop';
import { ordinaryStories, toldStories } from './season/stories';

// Fills an empty database with an invented season, every row of it written by the program's own workflows. The same
// season every time, but for its dates, which lie before today, and its passwords and links, which nobody can know.

/** Behind the shop's zone: its hours are the clock of the season. */
const zoneHours = 5;
const opening = 46;

type Account = { readonly name: string; readonly userName: string; readonly role: Role; readonly password: string };

async function openShop(): Promise<{ accounts: readonly Account[]; counter: StaffActor; cutter: StaffActor }> {
  if (!(await isSetUpOpen())) throw new Error('This database is in use: the demonstration fills an empty one only.');
  const accounts = (['owner', 'counter', 'cutter'] as const).map((role): Account => ({ ...demoStaff[role], role, password: makePassword() }));
  const [owner, ...others] = accounts;
  if (!owner) throw new Error('Nobody owns the shop');
  const code = makePassword();
  const typed = { ...demoShop, code, ownerName: owner.name, userName: owner.userName, password: owner.password };
  const set = done(await setUpShop(typed, { code, now: new Date() }));
  const asOwner: StaffActor = { kind: 'staff', id: set.id, name: set.name, role: 'owner' };
  const shop = await currentShop();
  if (!shop) throw new Error('The shop has not been set up');
  done(await saveShopSettings(asOwner, { ...shop.settings, ...demoShopDetails }, shop.version));
  const { versionId } = await readTariff(asOwner);
  const priced = await saveTariff(asOwner, versionId, tariffFor(demoMenu));
  if (!priced.ok) throw new Error(`The prices could not be set: ${priced.message}`);
  const [counter, cutter] = await Promise.all(others.map(async (person) => done(await addPerson(asOwner, person))));
  if (!counter || !cutter) throw new Error('Nobody works in the shop');
  return {
    accounts,
    counter: { kind: 'staff', id: counter.id, name: counter.name, role: 'counter' },
    cutter: { kind: 'staff', id: cutter.id, name: cutter.name, role: 'cutter' },
  };
}

/** Plays every happening of the season in the order of its time, none of it in the future. */
async function playSeason(animals: readonly Played[], today: Date): Promise<void> {
  const midnight = Date.UTC(today.getUTCFullYear(), today.getUTCMonth(), today.getUTCDate());
  const all = animals.flatMap(({ happenings }) => happenings.map((one) => ({ one, time: midnight - one.daysAgo * 86_400_000 + (one.hour + zoneHours) * 3_600_000 })));
  for (const { one, time } of all.toSorted((a, b) => a.time - b.time)) {
    const at = new Date(Math.min(time, Date.now()));
    await atMoment(at, () => one.run(at));
  }
}

function done<Value>(outcome: { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly fieldErrors: unknown; readonly formErrors: unknown }): Value {
  if (!outcome.ok) throw new Error(`The shop could not be set up: ${JSON.stringify(outcome)}`);
  return outcome.value;
}

const today = new Date();
const { accounts, counter, cutter } = await atMoment(new Date(today.getTime() - opening * 86_400_000), openShop);
const chance = chanceFrom(20_261_125);
const stories = [...toldStories, ...ordinaryStories(chance)];
const animals = stories.map((story, serial) => {
  const hunter = hunters[serial % hunters.length];
  if (!hunter) throw new Error('No hunters');
  return play(story, hunter, { crew: { counter, cutter }, chance, serial });
});
await playSeason(animals, today);
await closeDatabase();

const address = `http://localhost:${process.env['PORT'] || '3000'}`;
const linked = animals.filter(({ story }) => story.wish === 'chopsByTheBoxful' || (story.until === 'ready' && story.paid === 'part')).slice(0, 2);
const words = [
  `${demoShop.shopName}: an invented season of ${animals.length} orders. Sign in at ${address}/sign-in`,
  ...accounts.map(({ userName, password, role, name }) => `  ${userName.padEnd(8)} ${password}   ${role}, ${name}`),
  'Links of hunters, as their phones have them:',
  ...linked.map(({ hunter, link, number }) => `  ${address}/o/${link()}   ${number()}, ${hunter.name}`),
];
process.stdout.write(`${words.join('\n')}\n`);
