import { expect, test } from 'vitest';
import { COUNTER, PHONE, useBrowser } from './browser';
import { useShop } from './shop-server';
import { openTestShop, signInAs } from './test-shop';
import { type ToldOrder, broughtTo, buckForm, told } from './told-orders';

let booked: ToldOrder;
let onTheBench: ToldOrder;
const browser = useBrowser();

const shop = useShop(async () => {
  const { counter } = await openTestShop();
  booked = await told(buckForm('Ada Thorn'));
  onTheBench = await told(buckForm('Bo Lindqvist'));
  await broughtTo('bench', onTheBench, counter);
});

test('the counter finds an order, takes the animal in, has the hunter asked, and prints the sheet', async () => {
  const page = await browser.open({ viewport: COUNTER });
  await signInAs(page, shop.url, 'counter');
  await page.getByLabel('Find an order').first().fill(`${booked.number.slice(0, 5)} ${booked.number.slice(5)}`);
  await page.keyboard.press('Enter');
  await page.waitForURL(`**/staff/orders/${booked.number}`);

  await page.getByRole('link', { name: 'Take it in' }).click();
  await page.getByLabel('License number').fill('AL-44821');
  await page.getByLabel('Tag, seal or confirmation').fill('0093-771');
  await page.getByLabel('Day it was killed').fill('2026-11-20');
  await page.getByLabel('Where: county, unit or estate').fill('Alder County');
  await page.getByRole('group', { name: 'Disease sample' }).getByRole('radio').first().check();
  await page.getByLabel('Weight', { exact: true }).fill('92');
  await page.getByRole('group', { name: 'Weighed how' }).getByLabel('Gutted, hide on').check();
  await page.locator('select[name="spots.left-haunch"]').selectOption('heavy');
  await page.getByRole('button', { name: 'Save and check the cuts' }).click();
  await page.waitForURL(new RegExp(`/staff/orders/${booked.number}(\\?|$)`));
  // Lighter than told: the backstrap asked for is more than there is, and the leg kept whole is hit.
  await page.getByText('You asked for 8.5 lb').first().waitFor();

  await page.getByRole('button', { name: 'Start cutting' }).click();
  await page.getByText('The knife stays down').first().waitFor();

  const hunter = await browser.open({ viewport: PHONE });
  await hunter.goto(`${shop.url}/o/${booked.token}`);
  await hunter.getByText('You asked for 8.5 lb').first().waitFor();
  for (let left = 5; left > 0 && (await hunter.locator('form.mends').count()) > 0; left -= 1) {
    const before = await hunter.locator('form.mends').count();
    await hunter.locator('form.mends button').first().click();
    await expect.poll(() => hunter.locator('form.mends').count()).toBeLessThan(before);
  }
  expect(await hunter.locator('form.mends').count()).toBe(0);

  const sheet = await page.request.get(`${shop.url}/staff/orders/${booked.number}/sheet.pdf`);
  expect(sheet.status()).toBe(200);
  expect(sheet.headers()['content-type']).toContain('application/pdf');
  expect((await sheet.body()).subarray(0, 5).toString()).toBe('%PDF-');

  await page.goto(`${shop.url}/staff/orders/${booked.number}`);
  await page.getByRole('button', { name: 'Start cutting' }).click();
  await page.getByText('on the bench').first().waitFor();
  await page.getByRole('link', { name: 'Weigh and pack' }).first().waitFor();
});

test('what was cut is weighed, billed, paid and handed over', async () => {
  const page = await browser.open({ viewport: COUNTER });
  await signInAs(page, shop.url, 'counter');
  await page.goto(`${shop.url}/staff/orders/${onTheBench.number}`);
  await page.getByRole('link', { name: 'Weigh and pack' }).click();
  const weights = page.locator('input[name^="weight."]');
  const count = await weights.count();
  expect(count).toBeGreaterThanOrEqual(5);
  const packages = page.locator('input[name^="packages."]');
  for (let at = 0; at < count; at += 1) {
    await weights.nth(at).fill(at === 0 ? '7.85' : '3.10');
    await packages.nth(at).fill('2');
  }
  await page.getByRole('button', { name: 'Save the weights' }).click();
  // No animal gives the same of everything: it is asked back, once.
  await page.getByText(/Look again: .* was expected/).first().waitFor();
  await page.getByLabel('These weights are right').check();
  await page.getByRole('button', { name: 'Save the weights' }).click();
  await page.waitForURL(new RegExp(`/staff/orders/${onTheBench.number}(\\?|$)`));

  await page.getByRole('link', { name: 'Make the invoice' }).click();
  await page.getByRole('button', { name: 'Issue the invoice' }).click();
  await page.getByText(/Invoice \d{4}-0001/).first().waitFor();

  const paper = await page.request.get(`${shop.url}/staff/orders/${onTheBench.number}/invoice.pdf`);
  expect(paper.status()).toBe(200);
  expect((await paper.body()).subarray(0, 5).toString()).toBe('%PDF-');

  await page.goto(`${shop.url}/staff/orders/${onTheBench.number}/release`);
  expect(await page.getByText(/still due/i).count()).toBeGreaterThan(0);

  await page.goto(`${shop.url}/staff/orders/${onTheBench.number}/bill`);
  await page.getByRole('group', { name: 'Paid by' }).getByLabel('Card').check();
  await page.getByRole('button', { name: 'Save the payment' }).click();
  await page.getByText('The invoice is paid').first().waitFor();

  await page.getByRole('link', { name: 'Hand it over' }).first().click();
  await page.getByLabel('Boxes').fill('2');
  await page.getByLabel(/goes back with the meat/).check();
  await page.getByRole('button', { name: 'Hand it over' }).click();
  await page.waitForURL(new RegExp(`/staff/orders/${onTheBench.number}(\\?|$)`));
  await page.getByText('collected').first().waitFor();

  const hunter = await browser.open({ viewport: PHONE });
  await hunter.goto(`${shop.url}/o/${onTheBench.token}`);
  await hunter.getByRole('heading', { name: 'What it gave' }).waitFor();
});
