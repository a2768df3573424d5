import { AxeBuilder } from '@axe-core/playwright';
import { describe, expect, test } from 'vitest';
import type { Role } from '@/lib/access';
import { PLAN_EXAMPLES } from '@/lib/forms';
import { problemsBy } from '../forms/described-schemas';
import { COUNTER, PHONE, useBrowser } from './browser';
import { useShop } from './shop-server';
import { openTestShop, signInAs } from './test-shop';
import { type ToldOrder, broughtTo, buckForm, told } from './told-orders';

let booked: ToldOrder;
let bench: ToldOrder;
let billed: ToldOrder;
let cutterId: string;
const browser = useBrowser();

const shop = useShop(async () => {
  const { counter, cutter } = await openTestShop();
  cutterId = cutter.id;
  booked = await told(buckForm('Ada Thorn'));
  bench = await told(buckForm('Bo Lindqvist'));
  await broughtTo('bench', bench, counter);
  billed = await told(buckForm('Marisol Etxeberria-Winterbottom'));
  await broughtTo('invoice', billed, counter);
});

/** Every page: its route as the folders of app/ spell it, where to find one, and who may open it. */
const STAFF: readonly Role[] = ['owner', 'counter', 'cutter'];
const FRONT: readonly Role[] = ['owner', 'counter'];
const PAGES: readonly { readonly route: string; readonly path: () => string; readonly roles: readonly Role[] | 'everyone' }[] = [
  { route: '/', path: () => '/', roles: 'everyone' },
  { route: '/order', path: () => '/order', roles: 'everyone' },
  { route: '/o/[token]', path: () => `/o/${booked.token}`, roles: 'everyone' },
  { route: '/o/[token]/change', path: () => `/o/${booked.token}/change`, roles: 'everyone' },
  { route: '/rules', path: () => '/rules', roles: 'everyone' },
  { route: '/rules/[id]', path: () => '/rules/muscle-promised-twice', roles: 'everyone' },
  { route: '/sign-in', path: () => '/sign-in', roles: 'everyone' },
  { route: '/staff', path: () => '/staff', roles: STAFF },
  { route: '/staff/orders/[number]', path: () => `/staff/orders/${billed.number}`, roles: STAFF },
  { route: '/staff/orders/[number]/receive', path: () => `/staff/orders/${booked.number}/receive`, roles: FRONT },
  { route: '/staff/orders/[number]/hang', path: () => `/staff/orders/${booked.number}/hang`, roles: FRONT },
  { route: '/staff/orders/[number]/change', path: () => `/staff/orders/${booked.number}/change`, roles: FRONT },
  { route: '/staff/orders/[number]/pack', path: () => `/staff/orders/${bench.number}/pack`, roles: STAFF },
  { route: '/staff/orders/[number]/bill', path: () => `/staff/orders/${billed.number}/bill`, roles: FRONT },
  { route: '/staff/orders/[number]/release', path: () => `/staff/orders/${billed.number}/release`, roles: FRONT },
  { route: '/staff/prices', path: () => '/staff/prices', roles: FRONT },
  { route: '/staff/yields', path: () => '/staff/yields', roles: FRONT },
  { route: '/staff/people', path: () => '/staff/people', roles: ['owner'] },
  { route: '/staff/people/add', path: () => '/staff/people/add', roles: ['owner'] },
  { route: '/staff/people/[id]', path: () => `/staff/people/${cutterId}`, roles: ['owner'] },
  { route: '/staff/law', path: () => '/staff/law', roles: ['owner'] },
  { route: '/staff/rules', path: () => '/staff/rules', roles: ['owner'] },
  { route: '/staff/settings', path: () => '/staff/settings', roles: ['owner'] },
];

/** Every file that is handed out. */
const FILES: typeof PAGES = [
  { route: '/staff/orders/[number]/sheet.pdf', path: () => `/staff/orders/${bench.number}/sheet.pdf`, roles: STAFF },
  { route: '/staff/orders/[number]/invoice.pdf', path: () => `/staff/orders/${billed.number}/invoice.pdf`, roles: FRONT },
  { route: '/staff/sheets.pdf', path: () => `/staff/sheets.pdf?numbers=${bench.number}`, roles: STAFF },
  { route: '/o/[token]/invoice.pdf', path: () => `/o/${billed.token}/invoice.pdf`, roles: 'everyone' },
];

/** Where a reader is sent who finds nothing or may see nothing: what is said there, and with which status. */
const TURNED_AWAY = [
  { route: '/nothing-here', status: 404, says: 'There is nothing at this address' },
  { route: '/staff/nothing-here', status: 404, says: 'There is nothing at this address' },
  { route: '/staff/refused', status: 403, says: 'Your account cannot open' },
];

/** What other programs ask, and pictures: by GET as here, and how that is answered. Everyone may, and a sign-in makes no difference. */
const FOR_PROGRAMS: readonly { readonly route: string; readonly path?: string; readonly status: number }[] = [
  { route: '/api/plan', status: 405 },
  { route: '/api/openapi.json', status: 200 },
  { route: '/muscle/[picture]', path: '/muscle/topside.svg', status: 200 },
];

test('every route of the program has a row in this table', async () => {
  const { readdirSync } = await import('node:fs');
  const routes = readdirSync('app', { recursive: true, encoding: 'utf8' })
    .filter((file) => /(^|\/)(page\.tsx|route\.ts)$/.test(file))
    .map((file) => `/${file.replace(/(^|\/)(page\.tsx|route\.ts)$/, '')}`.replace(/\/$/, '') || '/');
  // Set-up is there only while nobody works here; it has a journey of its own.
  expect(routes.filter((route) => route !== '/setup').toSorted()).toEqual([...PAGES, ...FILES, ...FOR_PROGRAMS, ...TURNED_AWAY].map((page) => page.route).toSorted());
});

describe('who may open what', () => {
  test('nobody without signing in, except the public pages', async () => {
    const page = await browser.open();
    for (const { path, roles, route } of PAGES) {
      const answer = await page.goto(`${shop.url}${path()}`);
      if (roles === 'everyone') expect([route, answer?.status()]).toEqual([route, 200]);
      else expect([route, new URL(page.url()).pathname]).toEqual([route, '/sign-in']);
    }
    for (const { path, roles, route } of FILES) {
      const answer = await page.request.get(`${shop.url}${path()}`, { maxRedirects: 0 });
      expect([route, answer.headers()['content-type']?.includes('pdf') ?? false]).toEqual([route, roles === 'everyone']);
    }
    for (const { route, path = route, status } of FOR_PROGRAMS) expect([route, (await page.request.get(`${shop.url}${path}`)).status()]).toEqual([route, status]);
  });

  test.each<Role>(['owner', 'counter', 'cutter'])('%s: the pages of their work, and a plain refusal of the rest', async (role) => {
    const page = await browser.open({ viewport: COUNTER });
    await signInAs(page, shop.url, role);
    for (const { path, roles, route } of PAGES) {
      const answer = await page.goto(`${shop.url}${path()}`);
      const allowed = roles === 'everyone' || roles.includes(role);
      // Somebody signed in needs no sign-in page.
      if (route === '/sign-in') continue;
      expect([route, answer?.status()]).toEqual([route, allowed ? 200 : 403]);
      if (!allowed) expect(await page.locator('body').textContent()).toMatch(/Your account cannot .*Ask the owner/);
    }
    for (const { path, roles, route } of FILES) {
      const answer = await page.request.get(`${shop.url}${path()}`);
      const allowed = roles === 'everyone' || roles.includes(role);
      expect([route, answer.headers()['content-type']?.includes('pdf') ?? false]).toEqual([route, allowed]);
    }
    for (const { route, path = route, status } of FOR_PROGRAMS) expect([route, (await page.request.get(`${shop.url}${path}`)).status()]).toEqual([route, status]);
  });
});

test('without script, a page that is not there and a page one may not see say so, with their status', async () => {
  const page = await browser.open({ viewport: COUNTER, script: false });
  for (const path of ['/o/AAAAAAAAAAAAAAAAAAAAAA', '/o/x', '/o/AAAAAAAAAAAAAAAAAAAAAA/change', '/rules/no-such-rule', '/nonsense']) {
    const answer = await page.goto(`${shop.url}${path}`);
    expect([path, answer?.status(), await page.getByRole('heading', { level: 1 }).textContent()]).toEqual([path, 404, 'There is nothing at this address']);
  }
  const file = await page.request.get(`${shop.url}/o/AAAAAAAAAAAAAAAAAAAAAA/invoice.pdf`);
  expect([file.status(), await file.text()]).toEqual([404, 'There is nothing at this address. The link may have been cut short or have run out.\n']);

  await signInAs(page, shop.url, 'cutter');
  for (const { path, status, says } of [
    { path: '/staff/prices', status: 403, says: 'Your account cannot open prices. Ask the owner.' },
    { path: '/staff/orders/999999', status: 404, says: 'There is nothing at this address' },
    ...TURNED_AWAY.map(({ route, ...rest }) => ({ path: route, ...rest })),
  ]) {
    const answer = await page.goto(`${shop.url}${path}`);
    expect([path, answer?.status(), await page.getByRole('heading', { level: 1 }).textContent()]).toEqual([path, status, expect.stringContaining(says)]);
    expect(answer?.headers()['content-security-policy']).toContain("object-src 'none'");
  }
});

/** A scan takes seconds a page: a few at a time, so that a slow machine is slow and not a failure. */
const HANDFUL = 6;
const HANDFULS = Array.from({ length: Math.ceil(PAGES.length / HANDFUL) }, (_, at) => {
  const pages = PAGES.slice(at * HANDFUL, (at + 1) * HANDFUL);
  return { name: `${pages[0]?.route} to ${pages.at(-1)?.route}`, pages };
});

describe.each([
  { size: 'phone', viewport: PHONE },
  { size: 'counter', viewport: COUNTER },
])('on a $size', ({ viewport }) => {
  test.each(HANDFULS)('$name pass the accessibility scan, target sizes included, and do not scroll sideways', async ({ pages }) => {
    const page = await browser.open({ viewport });
    await signInAs(page, shop.url, 'owner');
    const found: string[] = [];
    for (const { path, route } of pages) {
      await page.setViewportSize(viewport);
      await page.goto(`${shop.url}${path()}`);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      if (wide > 0) found.push(`${route}: ${wide} px too wide`);
      // All of the page at once: what the forecast panel covers for the moment would count as a target too small.
      await page.setViewportSize({ width: viewport.width, height: await page.evaluate(() => document.documentElement.scrollHeight) });
      const scan = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
        .options({ rules: { 'target-size': { enabled: true } } })
        .analyze();
      found.push(...scan.violations.map(({ id, nodes }) => `${route}: ${id} at ${nodes.map((node) => node.target.join(' ')).slice(0, 3).join(', ')}`));
    }
    expect(found).toEqual([]);
  });
});

test('no page asks anything of another host, and every answer carries the security headers', async () => {
  const page = await browser.open();
  const foreign: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(shop.url) && !request.url().startsWith('data:')) foreign.push(request.url());
  });
  for (const path of ['/', '/order', `/o/${booked.token}`, '/not-there', '/sign-in']) {
    const answer = await page.goto(`${shop.url}${path}`);
    const headers = answer?.headers() ?? {};
    const policy = headers['content-security-policy'] ?? '';
    expect(policy).toMatch(/script-src[^;]*'nonce-/);
    expect(policy.match(/script-src[^;]*/)?.[0]).not.toContain("'unsafe-inline'");
    expect(policy).toContain("object-src 'none'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['x-powered-by']).toBeUndefined();
  }
  expect(foreign).toEqual([]);
});

test('ten megabytes of text are refused in a sentence, and nothing breaks', async () => {
  const page = await browser.open();
  const answer = await page.request.post(`${shop.url}/order`, {
    headers: { Origin: shop.url, 'Content-Type': 'application/x-www-form-urlencoded' },
    data: `note=${'x'.repeat(10_000_000)}`,
  });
  expect(answer.status()).toBe(413);
  expect(await answer.text()).toContain('more text than a form here can hold');
  expect((await page.goto(`${shop.url}/order`))?.status()).toBe(200);
});

test('another program asks for a plan without a page of ours, and is answered as the served description says', async () => {
  const send = (init: RequestInit): Promise<Response> => fetch(`${shop.url}/api/plan`, { method: 'POST', headers: { 'Content-Type': 'application/json' }, ...init });
  const description = await (await fetch(`${shop.url}/api/openapi.json`)).json();
  const { answerProblems, problemsProblems } = problemsBy(description);
  for (const asked of Object.values(PLAN_EXAMPLES)) {
    const answer = await send({ body: JSON.stringify(asked) });
    expect(answer.status).toBe(200);
    expect(answerProblems(await answer.json())).toBeNull();
    expect(Object.fromEntries(answer.headers)).toMatchObject({
      'content-type': 'application/json; charset=utf-8',
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
      'x-frame-options': 'DENY',
      'content-security-policy': expect.stringContaining("default-src 'none'"),
    });
    expect(answer.headers.has('set-cookie')).toBe(false);
  }
  const refusals: readonly (readonly [number, RequestInit])[] = [
    [400, { body: '{"animal":{"speciesId":"roe-deer","weight":{"grams":16000,"basis":"dressed"}}}' }],
    [413, { body: 'x'.repeat(11_000_000) }],
    [413, { body: new Blob(['x'.repeat(1_000_000)]).stream(), duplex: 'half' } as RequestInit],
    [415, { body: '{}', headers: { 'Content-Type': 'text/plain' } }],
    [405, { method: 'PUT', body: '{}' }],
    [405, { method: 'OPTIONS' }],
  ];
  for (const [status, init] of refusals) {
    const answer = await send(init);
    expect(answer.status).toBe(status);
    expect(problemsProblems(await answer.json())).toBeNull();
  }
});
