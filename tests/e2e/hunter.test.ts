import { describe, expect, test } from 'vitest';
import { COUNTER, PHONE, useBrowser } from './browser';
import { onForm, tellOfABuck, tellWhoYouAre } from './order-pages';
import { useShop } from './shop-server';
import { openTestShop } from './test-shop';

const browser = useBrowser();

const shop = useShop(async () => void (await openTestShop()));

// The whole way of a hunter, once with script and once without: the same buttons, the same words.
describe.each([
  { how: 'on a phone with script', script: true },
  { how: 'on a phone without script', script: false },
])('a hunter $how', ({ script }) => {
  test('orders a deer, mends a conflict with one tap, sends it and gets a number and a private link', async () => {
    const page = await browser.open({ viewport: PHONE, script });
    const form = onForm(page);
    await page.goto(shop.url);
    await page.getByRole('link', { name: 'Start an order' }).click();
    await tellOfABuck(page);
    await form.add('hind leg, all of it');
    await form.line('Hind leg').getByLabel('left only').check();
    await form.line('Hind leg').getByLabel('Cut').selectOption('on-the-bone');
    await form.add('top round');
    const finding = page.locator('.finding.stop').first();
    await finding.waitFor();
    expect(await finding.textContent()).toContain('The left top round is promised twice: left hind leg whole on the bone, and top round roast.');

    await page.getByRole('button', { name: 'One from each side' }).first().click();
    await expect.poll(() => page.locator('.finding.stop').count()).toBe(0);
    expect(await form.line('Top round').getByLabel('right only').isChecked()).toBe(true);

    await form.choose('What becomes of everything you have not named?', /^All of it to ground meat/);
    await tellWhoYouAre(page);
    await page.getByRole('button', { name: 'Check your answers' }).first().click();
    await page.getByRole('heading', { name: 'Check your answers' }).waitFor();
    expect(await page.locator('.finding.stop').count()).toBe(0);
    await page.getByRole('button', { name: 'Send the order' }).click();
    await page.waitForURL('**/o/*');
    expect(await page.locator('.order-number').first().textContent()).toMatch(/\d{5}-\d/);
    expect(new URL(page.url()).pathname).toMatch(/^\/o\/[A-Za-z0-9_-]{22}$/);

    await page.getByRole('link', { name: 'Change the order' }).click();
    await form.line('Top round').locator('summary').first().click();
    await form.line('Top round').getByLabel('Cut').selectOption('steaks');
    await page.getByRole('button', { name: 'Check your answers' }).first().click();
    await page.getByRole('heading', { name: 'Check your answers' }).waitFor();
    await page.getByRole('button', { name: /Send|Save/ }).first().click();
    await page.waitForURL(/\/o\/[A-Za-z0-9_-]{22}(\?|$)/);
    expect(await page.getByText('steaks').count()).toBeGreaterThan(0);
  });

  test('is told at the field what is wrong, and nothing typed is lost', async () => {
    const page = await browser.open({ viewport: PHONE, script });
    const form = onForm(page);
    await page.goto(`${shop.url}/order`);
    await form.choose('Which animal is it?', 'Pronghorn');
    await page.getByLabel('What does it weigh?').fill('900');
    await page.getByLabel('Which weight is that?').selectOption('hanging');
    await page.getByLabel('Where was it taken?').fill('<b>"Ødegård" & ‮søn</b> 🦌');
    await page.getByRole('button', { name: 'Check your answers' }).first().click();
    const summary = page.locator('.error-summary');
    await summary.waitFor();
    expect(await page.title()).toMatch(/^Error: /);
    expect(await summary.textContent()).toContain('That would be a pronghorn of 1,');
    expect(await page.getByLabel('What does it weigh?').inputValue()).toBe('900');
    expect(await page.getByLabel('Where was it taken?').inputValue()).toBe('<b>"Ødegård" & ‮søn</b> 🦌');
    expect(await page.locator('.error').first().isVisible()).toBe(true);
  });
});

describe.each([
  { how: 'with script', script: true },
  { how: 'without script', script: false },
])('a hunter who asks for what is rare, $how,', ({ script }) => {
  test('is told that shares do not make 100, and finds patties, shares and what is made first again', async () => {
    const page = await browser.open({ viewport: PHONE, script });
    const form = onForm(page);
    const workOut = async () => {
      if (!script) await page.getByRole('button', { name: 'Work out what I will get' }).click();
    };
    await page.goto(`${shop.url}/order`);
    await tellOfABuck(page);
    await form.choose('What becomes of everything you have not named?', /^All of it to ground meat/);
    await page.getByLabel('Loose or in patties').selectOption('patties');
    await page.getByLabel(/^Fresh sausage/).fill('10');
    await page.getByLabel(/^Snack sticks/).fill('10');
    await page.getByText('Share this animal, or give some of it away').click();
    for (const [at, percent] of ['50', '30', '30'].entries()) {
      const share = page.getByRole('group', { name: `Share ${at + 1}` });
      await share.getByLabel('Name on the label').fill(`Friend ${at + 1}`);
      await share.getByLabel('Share', { exact: true }).fill(percent);
    }
    await workOut();
    await page.getByText('50, 30 and 30 percent make 110, not 100.').first().waitFor();
    await page.getByRole('group', { name: 'Share 3' }).getByLabel('Share', { exact: true }).fill('20');
    await workOut();
    await page.getByRole('button', { name: 'Make snack sticks first' }).click();
    await page.getByText('They get their meat in the order you chose.').waitFor();
    await tellWhoYouAre(page);
    await page.getByRole('button', { name: 'Check your answers' }).first().click();
    await page.getByRole('heading', { name: 'Check your answers' }).waitFor();
    const answers = await page.locator('.check-answers').textContent();
    for (const answer of ['in patties', 'snack sticks, then fresh sausage', 'Friend 1 50%, Friend 2 30%, Friend 3 20%']) expect(answers).toContain(answer);

    await page.getByRole('button', { name: /^Change.*The rest/ }).click();
    await page.getByLabel('Loose or in patties').waitFor();
    expect(await page.getByLabel('Loose or in patties').inputValue()).toBe('patties');
    expect(await page.getByRole('group', { name: 'Share 3' }).getByLabel('Share', { exact: true }).inputValue()).toBe('20');
  });
});

test('what is asked beyond the carcass names what was asked and what there is', async () => {
  const page = await browser.open({ viewport: COUNTER });
  const form = onForm(page);
  await page.goto(`${shop.url}/order`);
  await tellOfABuck(page);
  await form.add('backstrap');
  const line = form.line('Backstrap');
  await line.getByLabel('I want this much of it').fill('30 lb');
  const finding = page.locator('.finding.stop').first();
  await finding.waitFor();
  expect(await finding.textContent()).toMatch(/You asked for 30\.0 lb of .*backstrap.*about \d+\.\d lb \(\d+\.\d to \d+\.\d\)/);
});

test('a draft survives a killed tab and says that it has not been sent', async () => {
  const page = await browser.open();
  await page.goto(`${shop.url}/order`);
  await tellOfABuck(page);
  await page.getByLabel('Your name').fill('Bo Lind');
  await page.waitForTimeout(1_200);
  await page.reload();
  await page.getByText('has not been sent yet').first().waitFor();
  await expect.poll(() => page.getByLabel('Your name').inputValue()).toBe('Bo Lind');
});

test('sending twice makes one order', async () => {
  const page = await browser.open();
  const form = onForm(page);
  await page.goto(`${shop.url}/order`);
  await tellOfABuck(page);
  await form.choose('What becomes of everything you have not named?', /^All of it to ground meat/);
  await tellWhoYouAre(page, 'Twice Taylor');
  await page.getByRole('button', { name: 'Check your answers' }).first().click();
  await page.getByRole('button', { name: 'Send the order' }).dblclick();
  await page.waitForURL('**/o/*');
  const first = page.url().split('?')[0];
  await page.goBack();
  await page.getByRole('heading', { name: 'Start an order' }).waitFor();
  await page.waitForLoadState('networkidle');
  await page.goForward();
  await page.waitForURL('**/o/*');
  expect(page.url().split('?')[0]).toBe(first);
});

test('a dead link and somebody else’s guess are a plain page that is not there', async () => {
  const page = await browser.open();
  const answer = await page.goto(`${shop.url}/o/AAAAAAAAAAAAAAAAAAAAAA`);
  expect(answer?.status()).toBe(404);
  const short = await page.goto(`${shop.url}/o/x`);
  expect(short?.status()).toBe(404);
});
