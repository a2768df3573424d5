import { execFile, execFileSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';
import { COUNTER, PHONE, useBrowser } from './browser';
import { onForm } from './order-pages';
import { useShop } from './shop-server';

// The demonstration as a visitor meets it. It also takes the pictures of the README: GAMBREL_PICTURES=1 keeps them.
const PICTURES = 'tests/e2e/pictures';
const scratch = mkdtempSync(join(tmpdir(), 'gambrel-pictures-'));
const browser = useBrowser();
let said = '';

const shop = useShop(async () => {
  const { stdout } = await promisify(execFile)(process.execPath, ['--import', 'tsx', 'seed/demo.ts']);
  said = stdout;
}, 240_000);

test('the demonstration prints who can sign in, and its season stands in the order book', async () => {
  const owner = /^\s+(\S+)\s+(\S+)\s+owner/m.exec(said);
  expect(owner).not.toBeNull();
  const page = await browser.open({ viewport: COUNTER });
  await page.goto(`${shop.url}/sign-in`);
  await page.getByLabel('User name').fill(owner?.[1] ?? '');
  await page.locator('input[name=password]').fill(owner?.[2] ?? '');
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL('**/staff');
  expect(await page.locator('a[href^="/staff/orders/"]').count()).toBeGreaterThan(20);

  await page.goto(`${shop.url}/staff?state=hanging`);
  const wounded = await firstWith(page, '/sheet.pdf', 'HIT');
  writeFileSync(join(scratch, 'sheet.pdf'), wounded);
  await page.goto(`${shop.url}/staff?state=collected`);
  const billed = await firstWith(page, '/invoice.pdf', 'sausage');
  writeFileSync(join(scratch, 'invoice.pdf'), billed);
  for (const name of ['sheet', 'invoice']) {
    execFileSync('pdftoppm', ['-r', '70', '-png', '-singlefile', join(scratch, `${name}.pdf`), join(scratch, name)]);
    keep(name);
  }
});

test('a hunter sees what the carcass gives and what does not fit', async () => {
  const page = await browser.open({ viewport: PHONE });
  const form = onForm(page);
  await page.goto(`${shop.url}/order`);
  await form.choose('Which animal is it?', 'White-tailed deer');
  await form.choose('Is it male or female?', /^(Buck|Male)/);
  await form.add('hind leg, all of it');
  await form.line('Hind leg').getByLabel('left only').check();
  await form.line('Hind leg').getByLabel('Cut').selectOption('on-the-bone');
  await form.add('top round');
  const finding = page.locator('.finding.stop').first();
  await finding.waitFor();
  expect(await finding.textContent()).toContain('is promised twice: left hind leg whole on the bone, and top round roast.');
  await finding.evaluate((card) => card.scrollIntoView({ block: 'center' }));
  await page.screenshot({ path: join(scratch, 'form.png') });
  keep('form');
});

test('the pictures of the README are there', () => {
  for (const name of ['form', 'sheet', 'invoice']) {
    expect(existsSync(`${PICTURES}/${name}.png`) && readFileSync(`${PICTURES}/${name}.png`).subarray(1, 4).toString()).toBe('PNG');
    expect(readFileSync('README.md', 'utf8')).toContain(`${PICTURES}/${name}.png`);
  }
});

/** The first order of the list whose paper says a word. */
async function firstWith(page: Awaited<ReturnType<typeof browser.open>>, paper: string, word: string): Promise<Buffer> {
  const orders = await page.locator('a[href^="/staff/orders/1"]').evaluateAll((links) => links.map((link) => link.getAttribute('href')));
  for (const order of orders) {
    const answer = await page.request.get(`${shop.url}${order}${paper}`);
    expect(answer.status()).toBe(200);
    const file = join(scratch, 'paper.pdf');
    const body = await answer.body();
    writeFileSync(file, body);
    if (execFileSync('pdftotext', ['-layout', file, '-']).toString().includes(word)) return body;
  }
  throw new Error(`No order of this list has ${word} on its ${paper}`);
}

function keep(name: string): void {
  if (!process.env['GAMBREL_PICTURES']) return;
  mkdirSync(PICTURES, { recursive: true });
  copyFileSync(join(scratch, `${name}.png`), `${PICTURES}/${name}.png`);
}
