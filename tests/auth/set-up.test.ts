import { beforeEach, describe, expect, test, vi } from 'vitest';
import { AccessRefused } from '@/lib/access';
import { isSetUpOpen, setUpShop } from '@/lib/workflows/set-up';
import { addPerson, givePassword, loadPeople, setPersonDisabled } from '@/lib/workflows/people';
import { saveShopSettings } from '@/lib/workflows/shop-settings';
import { database } from '@/lib/db/client';
import { readShop } from '@/lib/db/shop';
import { usePreparedDatabase } from '../database/prepared-database';
import { noon, password, saveStaff, secondsAfter, trySignIn } from './staff';

usePreparedDatabase();
beforeEach(() => {
  vi.spyOn(console, 'warn').mockImplementation(() => {});
});

const code = 'K7QM-03TX-9ZHB';
const filledIn = {
  code: 'k7qm o3tx 9zhb',
  shopName: 'Pine Ridge',
  unit: 'kg',
  currency: 'GBP',
  paper: 'a4',
  nameCountry: 'uk',
  timeZone: 'Europe/London',
  ownerName: 'Ada Lovett',
  userName: 'Ada',
  password,
};

describe('set-up', () => {
  test('makes the shop, its price list and its owner in one go, and closes for good', async () => {
    expect(await isSetUpOpen()).toBe(true);
    expect(await setUpShop(filledIn, { code, now: noon })).toMatchObject({ ok: true, value: { userName: 'ada', role: 'owner' } });
    expect(await isSetUpOpen()).toBe(false);
    expect(await readShop(database())).toMatchObject({
      version: 1,
      settings: { name: 'Pine Ridge', unit: 'kg', currency: 'GBP', locale: 'en-GB', timeZone: 'Europe/London' },
    });
    const [tariff] = await database().tariffVersion.findMany();
    expect(tariff).toMatchObject({ createdBy: 'Ada Lovett', tariff: { currency: 'GBP', weightUnit: 'kg' } });
    expect(await database().auditEntry.findMany()).toMatchObject([{ actorName: 'Ada Lovett', action: 'shop-set-up' }]);
    expect(await trySignIn()).toMatchObject({ ok: true });

    expect(await setUpShop({ ...filledIn, userName: 'eve' }, { code, now: noon })).toMatchObject({ ok: false });
    expect(await database().staffMember.count()).toBe(1);
  });

  test('sent twice at once makes one owner', async () => {
    const outcomes = await Promise.all(['ada', 'eve'].map((userName) => setUpShop({ ...filledIn, userName }, { code, now: noon })));
    expect(outcomes.filter((outcome) => outcome.ok)).toHaveLength(1);
    expect(await database().staffMember.count()).toBe(1);
    expect(await database().tariffVersion.count()).toBe(1);
  });

  test.each([['K7QM-03TX-9ZHC'], [''], ['undefined']])('the code %j opens nothing, and nothing else is said', async (wrong) => {
    expect(await setUpShop({ code: wrong }, { code, now: noon })).toEqual({
      ok: false,
      formErrors: [],
      fieldErrors: { code: 'Enter the code as the console shows it. It changes each time Gambrel is started' },
    });
  });

  test('is shut without a code on the console, also to an empty one', async () => {
    expect(await setUpShop({ ...filledIn, code: '' }, { code: '', now: noon })).toMatchObject({ ok: false });
    expect(await setUpShop({ ...filledIn, code: '---' }, { code: '', now: noon })).toMatchObject({ ok: false });
    expect(await isSetUpOpen()).toBe(true);
  });

  test('makes wrong codes wait', async () => {
    for (let tried = 0; tried < 5; tried += 1) await setUpShop({ code: 'wrong' }, { code, now: noon });
    expect(await setUpShop(filledIn, { code, now: noon })).toEqual({
      ok: false,
      formErrors: ['Too many wrong codes. Try again in 30 seconds.'],
      fieldErrors: {},
    });
    expect(await setUpShop(filledIn, { code, now: secondsAfter(noon, 30) })).toMatchObject({ ok: true });
  });

  test('names every field that is missing at once, the password too', async () => {
    const outcome = await setUpShop({ code }, { code, now: noon });
    expect(outcome.ok ? [] : Object.keys(outcome.fieldErrors)).toEqual([
      'shopName', 'unit', 'nameCountry', 'paper', 'currency', 'timeZone', 'ownerName', 'userName', 'password',
    ]);
  });
});

describe('people', () => {
  const signedIn = async (role: 'owner' | 'counter', userName: string) => {
    const member = await saveStaff(userName, role);
    return { kind: 'staff', id: member.id, name: member.name, role } as const;
  };
  const cal = { name: 'Cal', userName: 'cal', role: 'cutter', password: 'anvil puddle garnet thistle' };

  test('are added by an owner, each with a name of their own, and every change is on record without its password', async () => {
    const owner = await signedIn('owner', 'olga');
    const added = await addPerson(owner, cal);
    expect(added).toMatchObject({ ok: true, value: { userName: 'cal', role: 'cutter', disabledAt: null } });
    expect(await addPerson(owner, { ...cal, userName: 'CAL' })).toMatchObject({
      ok: false,
      fieldErrors: { userName: 'Choose another user name: somebody here has this one' },
    });
    const id = added.ok ? added.value.id : '';
    await setPersonDisabled(owner, id, true);
    await setPersonDisabled(owner, id, false);
    await givePassword(owner, id, 'thistle garnet puddle anvil');
    const record = await database().auditEntry.findMany({ orderBy: { id: 'asc' } });
    expect(record.map(({ actorName, action }) => `${actorName}: ${action}`)).toEqual([
      'OLGA: person-added', 'OLGA: person-disabled', 'OLGA: person-enabled', 'OLGA: password-replaced',
    ]);
    expect(JSON.stringify(record)).not.toMatch(/anvil|argon2/);
  });

  test('cannot be changed by anybody but an owner', async () => {
    const counter = await signedIn('counter', 'bo');
    await expect(loadPeople(counter)).rejects.toThrow(AccessRefused);
    await expect(addPerson(counter, cal)).rejects.toThrow(AccessRefused);
    await expect(setPersonDisabled(counter, counter.id, true)).rejects.toThrow(AccessRefused);
    await expect(givePassword(counter, counter.id, password)).rejects.toThrow(AccessRefused);
    await expect(saveShopSettings(counter, {}, 1)).rejects.toThrow(AccessRefused);
    expect(await database().staffMember.count()).toBe(1);
  });

  test('nobody shuts out themselves, and an owner who can sign in stays', async () => {
    const olga = await signedIn('owner', 'olga');
    const anna = await signedIn('owner', 'anna');
    expect(await setPersonDisabled(olga, olga.id, true)).toMatchObject({ ok: false, formErrors: ['You cannot shut out yourself. Another owner can'] });
    expect(await setPersonDisabled(olga, anna.id, true)).toMatchObject({ ok: true });
    expect(await setPersonDisabled(anna, olga.id, true)).toMatchObject({ ok: false, formErrors: ['The shop needs an owner who can sign in'] });
  });

  test('a new password has to pass the same check', async () => {
    const olga = await signedIn('owner', 'olga');
    expect(await givePassword(olga, olga.id, 'passwordpassword')).toMatchObject({ ok: false, fieldErrors: { password: expect.any(String) } });
    expect(await givePassword(olga, 'nobody', password)).toMatchObject({ ok: false });
  });
});

describe('shop settings', () => {
  test('of two people who save over the same state, the second is told and overwrites nothing', async () => {
    const outcome = await setUpShop(filledIn, { code, now: noon });
    const id = outcome.ok ? outcome.value.id : '';
    const owner = { kind: 'staff', id, name: 'Ada Lovett', role: 'owner' } as const;
    const shop = await readShop(database());
    const [first, second] = [{ ...shop?.settings, phone: '555 0100' }, { ...shop?.settings, phone: '555 0199' }];
    expect(await saveShopSettings(owner, first, 1)).toMatchObject({ ok: true });
    expect(await saveShopSettings(owner, second, 1)).toMatchObject({
      ok: false,
      formErrors: [expect.stringMatching(/^Somebody else saved the settings/)],
    });
    expect(await readShop(database())).toMatchObject({ version: 2, settings: { phone: '555 0100' } });
    expect(await database().auditEntry.count({ where: { action: 'settings-changed' } })).toBe(1);
  });
});
