import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { COUNTER, useBrowser } from './browser';
import { useShop } from './shop-server';
import { openTestShop, signInAs } from './test-shop';

const browser = useBrowser();

const shop = useShop(async () => void (await openTestShop()));

const place = (page: Page): Locator => page.getByLabel('Place', { exact: true });
const point = (page: Page, name: string): Locator => page.getByRole('listitem').filter({ has: page.getByRole('heading', { name }) });
const save = (page: Page): Promise<void> => page.getByRole('button', { name: 'Save', exact: true }).first().click();
const saved = (page: Page): Promise<void> => page.getByText('Saved. This holds from now on.').waitFor();

async function ownerAt(path: string, script: boolean): Promise<Page> {
  const page = await browser.open({ viewport: COUNTER, script });
  await signInAs(page, shop.url, 'owner');
  await page.goto(`${shop.url}${path}`);
  return page;
}

test.each([
  ['with script', true],
  ['without script', false],
])('%s, the owner chooses a place, changes a point with a reason, and goes back to the place', async (_, script) => {
  const page = await ownerAt('/staff/law', script);
  await page.getByText('This is not legal advice.').waitFor();
  await place(page).selectOption('us-michigan');
  await save(page);
  await saved(page);
  const keeping = point(page, 'Days an entry of the book is kept');
  expect(await keeping.textContent()).toContain('Wildlife Conservation Order 4.4(1)');

  await keeping.getByText('Change', { exact: false }).first().click();
  await keeping.getByLabel('What holds here').fill('730');
  await keeping.getByLabel('What holds here').press('Enter');
  await page.getByRole('link', { name: 'Days an entry of the book is kept: say why this differs' }).waitFor();
  expect(await page.title()).toBe('Error: Law · Gambrel');
  expect(await keeping.getByLabel('What holds here').inputValue()).toBe('730');
  await keeping.getByLabel('Why it differs').fill('our accountant asks two years');
  await save(page);
  await keeping.getByText('changed by you').waitFor();
  expect(await keeping.textContent()).toContain('730 days');

  await keeping.getByRole('button', { name: 'Back to what the place has' }).click();
  await keeping.getByText('changed by you').waitFor({ state: 'detached' });
  expect(await keeping.textContent()).toContain('90 days');
});

test.each([
  ['with script', true],
  ['without script', false],
])('%s, whoever is second with the law or the settings is told so twice, and what they chose stays', async (_, script) => {
  const late = await ownerAt('/staff/law', script);
  const lateToo = await ownerAt('/staff/settings', script);
  const quick = await ownerAt('/staff/law', true);
  await place(quick).selectOption('eu');
  await save(quick);
  await saved(quick);

  for (const _time of [1, 2]) {
    await place(late).selectOption('us-ohio');
    await save(late);
    await late.getByText('Somebody else saved the settings').waitFor();
    expect(await place(late).inputValue()).toBe('us-ohio');
    await lateToo.getByLabel('Name of the shop').fill('Fernhill and Daughters');
    await lateToo.getByRole('button', { name: 'Save the settings' }).click();
    await lateToo.getByText('Somebody else saved the settings').waitFor();
    expect(await lateToo.getByLabel('Name of the shop').inputValue()).toBe('Fernhill and Daughters');
  }
  await quick.goto(`${shop.url}/staff/law`);
  expect(await place(quick).inputValue()).toBe('eu');
});

test('a save of the settings in the browser leaves the law, twice over', async () => {
  const page = await ownerAt('/staff/law', true);
  await place(page).selectOption('us-wisconsin');
  await save(page);
  await saved(page);
  await page.goto(`${shop.url}/staff/settings`);
  for (const name of ['Fernhill Game', 'Fernhill Game Room']) {
    const version = Number(await page.locator('input[name=baseVersion]').inputValue());
    await page.getByLabel('Name of the shop').fill(name);
    await page.getByRole('button', { name: 'Save the settings' }).click();
    await page.waitForURL(`**/staff/settings?done=saved&version=${version + 1}`);
  }
  await page.goto(`${shop.url}/staff/law`);
  expect(await place(page).inputValue()).toBe('us-wisconsin');
});
