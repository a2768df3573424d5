import { beforeEach, describe, expect, test, vi } from 'vitest';
import { makePassword, verifyPassword } from '@/lib/auth/password-hash';
import { signOut } from '@/lib/auth/sign-in';
import { staffOf } from '@/lib/auth/current-staff';
import { addPerson, givePassword, setPersonDisabled } from '@/lib/workflows/people';
import { database } from '@/lib/db/client';
import { usePreparedDatabase } from '../database/prepared-database';
import { password, saveStaff, signedInHeaders, trySignIn } from './staff';

usePreparedDatabase();
beforeEach(() => {
  vi.spyOn(console, 'warn').mockImplementation(() => {});
});

const owner = async () => {
  const member = await saveStaff('olga', 'owner');
  return { kind: 'staff', id: member.id, name: member.name, role: member.role } as const;
};

describe('signing in', () => {
  test('the right password opens a session that names the person and the role', async () => {
    const ada = await saveStaff('ada', 'counter');
    const headers = await signedInHeaders({ userName: ' Ada ' });
    expect(await staffOf(headers)).toEqual({ kind: 'staff', id: ada.id, name: 'ADA', role: 'counter' });
  });

  test.each([
    ['a wrong password', { password: 'kettle orbit lantern mos' }],
    ['an unknown name', { userName: 'eve' }],
    ['a name that cannot be one', { userName: "a'; --" }],
    ['no name', { userName: '' }],
    ['no password', { password: '' }],
    ['an endless password', { password: 'x'.repeat(100_000) }],
  ])('%s is refused with the same answer', async (_what, given) => {
    await saveStaff();
    expect(await trySignIn(given)).toEqual({ ok: false, reason: 'wrong' });
    expect(await database().staffSession.count()).toBe(0);
  });

  test('a disabled account is refused with the same answer, the right password or not', async () => {
    const actor = await owner();
    const ada = await saveStaff();
    await setPersonDisabled(actor, ada.id, true);
    expect(await trySignIn()).toEqual({ ok: false, reason: 'wrong' });
    expect(await trySignIn({ password: 'wrong' })).toEqual({ ok: false, reason: 'wrong' });
  });

  test('an unknown name costs as much time as a wrong password', async () => {
    await saveStaff();
    const quickest = async (userName: string): Promise<number> => {
      const times = [];
      for (let tried = 0; tried < 4; tried += 1) {
        const started = performance.now();
        await trySignIn({ userName, password: 'wrong' });
        times.push(performance.now() - started);
      }
      return Math.min(...times);
    };
    const wrong = await quickest('ada');
    expect(await quickest('eve')).toBeGreaterThan(wrong / 4);
  });

  test('two keyboards that compose letters differently type the same password', async () => {
    const actor = await owner();
    await addPerson(actor, { name: 'Bo', userName: 'bo', role: 'cutter', password: 'caf\u00E9 lantern orbit' });
    expect(await trySignIn({ userName: 'bo', password: 'cafe\u0301 lantern orbit' })).toMatchObject({ ok: true });
  });

  test('the cookie is for this site only and out of reach of scripts; on https it is secure and bound to the host', async () => {
    await saveStaff();
    const plain = await trySignIn();
    const secure = await trySignIn({ headers: { 'x-forwarded-proto': 'https' } });
    expect(plain).toMatchObject({ setCookie: [expect.stringMatching(/^gambrel=.+; Max-Age=1209600; Path=\/; HttpOnly; SameSite=Lax$/)] });
    expect(secure).toMatchObject({
      setCookie: [expect.stringMatching(/^__Host-gambrel=.+; Max-Age=1209600; Path=\/; HttpOnly; Secure; SameSite=Lax$/)],
    });
  });

  test('neither password nor session appears in the log or the record of changes', async () => {
    await saveStaff();
    await trySignIn({ userName: 'kettle orbit lantern moss', password: 'ada' });
    await trySignIn({ password: 'not this either' });
    const headers = await signedInHeaders();
    const said = JSON.stringify(vi.mocked(console.warn).mock.calls) + JSON.stringify(await database().auditEntry.findMany());
    expect(said).toContain('sign-in refused');
    expect(said).toContain('signed-in');
    const token = headers.get('cookie')?.split('=')[1]?.split('.')[0] ?? 'missing';
    for (const secret of [password, 'not this either', token]) expect(said).not.toContain(secret);
  });
});

describe('a session', () => {
  test('is a new one at each sign-in, of more than 128 bits, and the one the browser held before ends', async () => {
    await saveStaff();
    const first = await signedInHeaders();
    const second = await signedInHeaders({ headers: { cookie: first.get('cookie') ?? '' } });
    expect(second.get('cookie')).not.toBe(first.get('cookie'));
    expect(await staffOf(first)).toBeNull();
    expect(await staffOf(second)).not.toBeNull();
    const [row] = await database().staffSession.findMany();
    // 32 characters of 62.
    expect(row?.token).toMatch(/^[A-Za-z0-9]{32}$/);
  });

  test('cannot be made from the table alone: the cookie is signed', async () => {
    await saveStaff();
    await signedInHeaders();
    const [row] = await database().staffSession.findMany();
    expect(await staffOf(new Headers({ cookie: `gambrel=${row?.token}` }))).toBeNull();
    expect(await staffOf(new Headers({ cookie: `gambrel=${row?.token}.${'A'.repeat(43)}%3D` }))).toBeNull();
  });

  test('is dead after signing out, also for who kept the cookie', async () => {
    await saveStaff();
    const headers = await signedInHeaders();
    await signOut(headers);
    expect(await staffOf(headers)).toBeNull();
    expect(await database().staffSession.count()).toBe(0);
  });

  test('is dead everywhere once the account is disabled, and stays dead when it is enabled again', async () => {
    const actor = await owner();
    const ada = await saveStaff();
    const tablet = await signedInHeaders();
    const phone = await signedInHeaders();
    await setPersonDisabled(actor, ada.id, true);
    expect([await staffOf(tablet), await staffOf(phone)]).toEqual([null, null]);
    await setPersonDisabled(actor, ada.id, false);
    expect([await staffOf(tablet), await staffOf(phone)]).toEqual([null, null]);
    expect(await trySignIn()).toMatchObject({ ok: true });
  });

  test('of a disabled account is no session even while its row is there', async () => {
    const ada = await saveStaff();
    const headers = await signedInHeaders();
    await database().staffMember.update({ where: { id: ada.id }, data: { disabledAt: new Date() } });
    expect(await staffOf(headers)).toBeNull();
  });

  test('is dead once the password is replaced, and the old password with it', async () => {
    const actor = await owner();
    const ada = await saveStaff();
    const headers = await signedInHeaders();
    expect(await givePassword(actor, ada.id, 'anvil puddle garnet thistle')).toMatchObject({ ok: true });
    expect(await staffOf(headers)).toBeNull();
    expect(await trySignIn()).toEqual({ ok: false, reason: 'wrong' });
    expect(await trySignIn({ password: 'anvil puddle garnet thistle' })).toMatchObject({ ok: true });
  });

  test('ends for good when its time has run out', async () => {
    await saveStaff();
    const headers = await signedInHeaders();
    await database().staffSession.updateMany({ data: { expiresAt: new Date(Date.now() - 1000) } });
    expect(await staffOf(headers)).toBeNull();
  });

  test('follows a changed role at the next request', async () => {
    const ada = await saveStaff('ada', 'owner');
    const headers = await signedInHeaders();
    await database().staffMember.update({ where: { id: ada.id }, data: { role: 'cutter' } });
    expect(await staffOf(headers)).toMatchObject({ role: 'cutter' });
  });
});

describe('a stored password', () => {
  test('is an Argon2id hash of 19 MiB, two passes, one lane, salted', async () => {
    await saveStaff('ada');
    const [account] = await database().staffAccount.findMany();
    expect(account?.password).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    expect(await verifyPassword(account?.password ?? null, password)).toBe(true);
    expect(await verifyPassword(null, password)).toBe(false);
    expect(await verifyPassword(null, 'the password of nobody')).toBe(false);
  });

  test('made by the program is long, and another one each time', () => {
    const made = new Set(Array.from({ length: 200 }, makePassword));
    expect(made.size).toBe(200);
    for (const one of made) expect(one).toMatch(/^([a-hjkmnp-z2-9]{4}-){4}[a-hjkmnp-z2-9]{4}$/);
  });
});
