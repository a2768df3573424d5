import { expect, test } from 'vitest';
import { COUNTER, PHONE, useBrowser } from './browser';
import { useShop } from './shop-server';
import { openTestShop, signInAs } from './test-shop';
import { type ToldOrder, buckForm, told } from './told-orders';

let orders: ToldOrder[];
const browser = useBrowser();

const shop = useShop(async () => {
  await openTestShop();
  orders = [await told(buckForm('Cy Aubrey')), await told(buckForm('Dot Aubrey'))];
});

test.each([
  { how: 'with script', script: true, at: 0 },
  { how: 'without script', script: false, at: 1 },
])('whoever changes an order that somebody else changed meanwhile sees it as it stands and keeps what they typed, $how', async ({ script, at }) => {
  const order = orders[at];
  if (!order) throw new Error('No such order');
  const page = await browser.open({ viewport: COUNTER, script });
  await signInAs(page, shop.url, 'counter');
  await page.goto(`${shop.url}/staff/orders/${order.number}/change`);

  const hunter = await browser.open({ viewport: PHONE, script });
  await hunter.goto(`${shop.url}/o/${order.token}/change`);
  await hunter.getByLabel('To stew meat').check();
  await hunter.getByRole('button', { name: 'Check your answers' }).click();
  await hunter.getByRole('button', { name: 'Send the change' }).click();
  await hunter.getByText('These are instructions number 2').waitFor();

  await page.getByLabel('Why it is changed').fill('called, no pork');
  await page.getByLabel('No pork').check();
  await page.getByLabel('Fat to add').selectOption('none');
  await page.locator('input[name="products.fresh-sausage"]').fill('');
  for (let tries = 0; tries < 2; tries += 1) {
    await page.getByRole('button', { name: 'Check your answers' }).click();
    await page.getByRole('button', { name: 'Save as version' }).click();
    await page.getByText('This order was changed while you had it open. The hunter did').waitFor();
  }
  await page.getByRole('button', { name: 'Show the order as it stands now' }).click();
  await page.getByRole('heading', { name: 'The order as it stands now' }).waitFor();
  expect(await page.getByLabel('To stew meat').isChecked()).toBe(true);
  expect(await page.getByLabel('No pork').isChecked()).toBe(true);
  expect(await page.getByLabel('Why it is changed').inputValue()).toBe('called, no pork');
  await page.getByRole('button', { name: 'Check your answers' }).click();
  await page.getByRole('button', { name: 'Save as version 3' }).click();
  await page.getByText('The cuts are changed.').waitFor();
  await hunter.reload();
  await hunter.goto(`${shop.url}/o/${order.token}/change`);
  expect(await hunter.getByLabel('To stew meat').isChecked()).toBe(true);
  expect(await hunter.getByLabel('No pork').isChecked()).toBe(true);

  // Sent as it was opened, it is no change.
  await hunter.getByRole('button', { name: 'Check your answers' }).click();
  await hunter.getByRole('button', { name: 'Send the change' }).click();
  await hunter.getByText('Nothing was different, so nothing was changed.').waitFor();
});
