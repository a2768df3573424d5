import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { clientAddress } from '@/lib/auth/client-address';
import { accountPolicy, knownBrowserPolicy, waitAfter } from '@/lib/auth/throttle';
import { waitWords } from '@/lib/auth/wait-words';
import { throttledAccount } from '@/lib/auth/sign-in';
import { givePassword } from '@/lib/workflows/people';
import { database, withTransaction } from '@/lib/db/client';
import { saveThrottle } from '@/lib/db/sign-in-throttle';
import { usePreparedDatabase } from '../database/prepared-database';
import { noon, saveStaff, secondsAfter, trySignIn } from './staff';

usePreparedDatabase();
beforeEach(() => {
  vi.spyOn(console, 'warn').mockImplementation(() => {});
});
afterEach(() => {
  vi.unstubAllEnvs();
});

/** Puts an account after so many failures in a row, the last of them long ago. */
async function standAfter(failures: number, userName = 'ada'): Promise<void> {
  const { key } = throttledAccount(userName);
  await withTransaction((transaction) => saveThrottle(transaction, key, { failures, blockedUntil: null, now: noon }));
}

/** Fails in a row, each as soon as it is let. Gives when, and what the last answer was. */
async function failInARow(times: number, given: Parameters<typeof trySignIn>[0] = {}) {
  let now = given.now ?? noon;
  let answer = await trySignIn({ ...given, password: 'wrong', now });
  let failures = 1;
  while (failures < times && !(!answer.ok && answer.reason === 'closed')) {
    answer = await trySignIn({ ...given, password: 'wrong', now });
    if (!answer.ok && answer.reason === 'wait') now = answer.until;
    else failures += 1;
  }
  return { now, answer, failures };
}

describe('waits', () => {
  test('start at 30 s after four free failures and double up to a quarter of an hour', () => {
    const seconds = (failures: number) => {
      const until = waitAfter(failures, accountPolicy, noon);
      return until === null ? 0 : (until.getTime() - noon.getTime()) / 1000;
    };
    expect([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 90].map(seconds)).toEqual([0, 0, 0, 0, 30, 60, 120, 240, 480, 900, 900, 900]);
  });

  test('are kept: within one even the right password is not tried, after it it is', async () => {
    await saveStaff();
    for (let failures = 0; failures < 5; failures += 1) {
      expect(await trySignIn({ password: 'wrong' })).toEqual({ ok: false, reason: 'wrong' });
    }
    expect(await trySignIn()).toEqual({ ok: false, reason: 'wait', until: secondsAfter(noon, 30) });
    expect(await trySignIn({ now: secondsAfter(noon, 29) })).toMatchObject({ reason: 'wait' });
    expect(await trySignIn({ now: secondsAfter(noon, 30) })).toMatchObject({ ok: true });
  });

  test('are the same for a name that is nobody’s', async () => {
    for (let failures = 0; failures < 5; failures += 1) await trySignIn({ userName: 'eve' });
    expect(await trySignIn({ userName: 'eve' })).toMatchObject({ reason: 'wait' });
  });

  test('start anew after the right password', async () => {
    await saveStaff();
    await failInARow(4);
    expect(await trySignIn()).toMatchObject({ ok: true });
    await failInARow(4);
    expect(await trySignIn()).toMatchObject({ ok: true });
  });

  test('count tries made at the same moment one by one', async () => {
    await saveStaff();
    const answers = await Promise.all(Array.from({ length: 20 }, () => trySignIn({ password: 'wrong' })));
    expect(answers.filter((answer) => !answer.ok && answer.reason === 'wrong')).toHaveLength(5);
  });

  test('do not keep the typed name: it may be a password in the wrong field', async () => {
    await trySignIn({ userName: 'kettle orbit lantern moss' });
    expect(JSON.stringify(await database().signInThrottle.findMany())).not.toContain('kettle');
  });

  test('are said in words', () => {
    expect(waitWords(secondsAfter(noon, 30), noon)).toBe('Try again in 30 seconds.');
    expect(waitWords(secondsAfter(noon, 61), noon)).toBe('Try again in 70 seconds.');
    expect(waitWords(secondsAfter(noon, 240), noon)).toBe('Try again in 4 minutes.');
  });
});

describe('a hundred failures in a row', () => {
  test('are never reached: strangers are refused after 90, a known browser after ten more', () => {
    expect((accountPolicy.closedAfter ?? Infinity) + (knownBrowserPolicy.closedAfter ?? Infinity)).toBeLessThanOrEqual(100);
  });

  test('by a stranger close the account to strangers, while the person signs in from a browser used before', async () => {
    await saveStaff();
    const before = await trySignIn();
    const knownBrowser = before.ok ? before.knownBrowser : '';
    await standAfter(80);
    const { now, answer, failures } = await failInARow(200);
    expect(answer).toEqual({ ok: false, reason: 'closed' });
    // The one that was refused unheard is counted by the helper only.
    expect(80 + failures - 1).toBe(90);
    expect(await trySignIn({ now })).toEqual({ ok: false, reason: 'closed' });
    expect(await trySignIn({ now: secondsAfter(now, 86_400) })).toEqual({ ok: false, reason: 'closed' });
    expect(await trySignIn({ now, knownBrowser })).toMatchObject({ ok: true });
    // Which ends the row of failures for everybody.
    expect(await trySignIn({ now })).toMatchObject({ ok: true });
  });

  test('are undone by a new password from the owner', async () => {
    const olga = await saveStaff('olga');
    const ada = await saveStaff();
    await standAfter(90);
    const now = noon;
    expect(await trySignIn({ now })).toEqual({ ok: false, reason: 'closed' });
    await givePassword({ kind: 'staff', id: olga.id, name: olga.name, role: 'owner' }, ada.id, 'anvil puddle garnet thistle');
    expect(await trySignIn({ now, password: 'anvil puddle garnet thistle' })).toMatchObject({ ok: true });
  });

  test('from a stolen known browser end that browser’s privilege after ten', async () => {
    await saveStaff();
    const before = await trySignIn();
    const knownBrowser = before.ok ? before.knownBrowser : '';
    const { now } = await failInARow(10, { knownBrowser });
    // From here on it is a stranger: five more, then the account's own wait.
    const after = await failInARow(5, { knownBrowser, now });
    expect(await trySignIn({ knownBrowser, now: after.now, password: 'wrong' })).toMatchObject({ reason: 'wait' });
  });

  test('a mark made for one account is none for another, and none when touched', async () => {
    await saveStaff();
    await saveStaff('bo');
    const before = await trySignIn();
    const knownBrowser = before.ok ? before.knownBrowser : '';
    for (const cookie of [knownBrowser, `${knownBrowser}x`]) {
      const userName = cookie === knownBrowser ? 'bo' : 'ada';
      await failInARow(5, { userName, knownBrowser: cookie });
      expect(await trySignIn({ userName })).toMatchObject({ reason: 'wait' });
    }
  });
});

describe('an address', () => {
  const from = (forwarded: string) => ({ 'x-forwarded-for': forwarded });

  test('is taken from X-Forwarded-For only behind a proxy of ours, and then from its last entry', () => {
    const headers = new Headers(from('6.6.6.6, 203.0.113.7'));
    expect(clientAddress(headers)).toBeNull();
    vi.stubEnv('TRUST_PROXY', '1');
    expect(clientAddress(headers)).toBe('203.0.113.7');
    expect(clientAddress(new Headers(from('::ffff:203.0.113.7')))).toBe('203.0.113.7');
    expect(clientAddress(new Headers(from('2001:db8:1:2:3:4:5:6')))).toBe('2001:db8:1:2');
    expect(clientAddress(new Headers())).toBeNull();
  });

  test('that tries name after name has to wait, whatever it writes in front; another does not', async () => {
    vi.stubEnv('TRUST_PROXY', '1');
    await saveStaff();
    for (let tried = 0; tried < 21; tried += 1) {
      await trySignIn({ userName: `name${tried}`, headers: from(`10.0.0.${tried}, 203.0.113.7`) });
    }
    expect(await trySignIn({ headers: from('203.0.113.7') })).toMatchObject({ reason: 'wait' });
    expect(await trySignIn({ headers: from('203.0.113.8') })).toMatchObject({ ok: true });
    expect(await trySignIn({ headers: from('203.0.113.7'), now: secondsAfter(noon, 30) })).toMatchObject({ ok: true });
  });
});
