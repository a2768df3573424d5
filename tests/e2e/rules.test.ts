import { expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { COUNTER, PHONE, useBrowser } from './browser';
import { onForm, tellOfABuck, tellWhoYouAre } from './order-pages';
import { useShop } from './shop-server';
import { openTestShop, signInAs } from './test-shop';

const browser = useBrowser();

const shop = useShop(async () => void (await openTestShop()));

/** A leg on the bone and a roast of the same leg, which is a stop. */
async function askTwiceForTheTopRound(page: Page): Promise<void> {
  const form = onForm(page);
  await page.goto(`${shop.url}/order`);
  await tellOfABuck(page);
  await form.choose('What becomes of everything you have not named?', /^All of it to ground meat/);
  await form.add('hind leg, all of it');
  await form.line('Hind leg').getByLabel('Cut').selectOption('on-the-bone');
  await form.add('top round');
  await tellWhoYouAre(page);
}

test('a finding on the form opens the page of its rule beside it, and nothing typed is lost', async () => {
  const page = await browser.open({ viewport: PHONE });
  await askTwiceForTheTopRound(page);
  const finding = page.locator('.finding.stop').first();
  await finding.waitFor();
  const link = finding.getByRole('link', { name: /^Why\? \(opens a new tab\)/ });
  expect(await link.getAttribute('rel')).toBe('noopener');
  const [opened] = await Promise.all([page.context().waitForEvent('page'), link.click()]);
  await opened.getByRole('heading', { level: 1, name: 'The same meat is promised twice' }).waitFor();
  expect(new URL(opened.url()).pathname).toBe('/rules/muscle-promised-twice');
  const text = await opened.locator('main').textContent();
  expect(text).toContain('Without a choice the cutter has to guess');
  expect(text).toContain('Source: Common practice, no source.');
  expect(text).toContain('One from each side');
  await opened.getByRole('link', { name: 'All we look for' }).click();
  await opened.getByRole('heading', { level: 1, name: 'What we look for in an order' }).waitFor();
  await opened.close();
  expect(await page.getByLabel('Your name').inputValue()).toBe('Ada Thorn');
});

test('the owner softens a stop, without script too, and then the order can be sent', async () => {
  const office = await browser.open({ viewport: COUNTER, script: false });
  await signInAs(office, shop.url, 'owner');
  await office.getByRole('link', { name: 'Settings' }).click();
  await office.getByRole('main').getByRole('link', { name: 'Rules' }).click();
  const rule = office.getByRole('group', { name: 'The same meat is promised twice' });
  await rule.getByLabel('In your shop').selectOption('ask');
  await office.getByRole('button', { name: 'Save the rules' }).click();
  expect(await office.title()).toMatch(/^Error: /);
  expect(await rule.locator('.error').textContent()).toContain('Say why you do it otherwise');
  expect(await rule.getByLabel('In your shop').inputValue()).toBe('ask');
  await rule.getByLabel('Why, if you change it').fill('We call whoever sends it');
  await office.getByRole('button', { name: 'Save the rules' }).click();
  await office.getByText('Saved. Forms, status pages').waitFor();
  expect(await rule.getByLabel('Why, if you change it').inputValue()).toBe('We call whoever sends it');
  // Safety has no choice to make.
  expect(await office.getByRole('group', { name: 'Not cut before the test is back' }).count()).toBe(0);

  const page = await browser.open({ viewport: PHONE });
  await askTwiceForTheTopRound(page);
  await page.locator('.finding.ask').filter({ hasText: 'promised twice' }).first().waitFor();
  expect(await page.locator('.finding.stop').count()).toBe(0);
  await page.getByRole('button', { name: 'Check your answers' }).first().click();
  await page.getByRole('button', { name: 'Send the order' }).click();
  await page.waitForURL('**/o/*');
  await page.goto(`${shop.url}/rules/muscle-promised-twice`);
  expect(await page.locator('.notice').textContent()).toContain('“We call whoever sends it”');
});
