import { describe, expect, test } from 'vitest';
import { PHONE, useBrowser } from './browser';
import { onForm, tellOfABuck, tellWhoYouAre } from './order-pages';
import { useShop } from './shop-server';
import { openTestShop } from './test-shop';

const browser = useBrowser();

const shop = useShop(async () => void (await openTestShop()));

describe.each([
  { how: 'with script', script: true },
  { how: 'without script', script: false },
])('a hunter $how who writes "sirloin"', ({ script }) => {
  test('sees both muscles, taps one, and the note says which', async () => {
    const page = await browser.open({ viewport: PHONE, script });
    await page.goto(`${shop.url}/order`);
    await tellOfABuck(page);
    await onForm(page).choose('What becomes of everything you have not named?', /^All of it to ground meat/);
    await tellWhoYouAre(page);
    const note = page.getByLabel('Anything else the cutter should know?');
    await note.fill('Sirloin in steaks');
    if (!script) await page.getByRole('button', { name: 'Check your answers' }).first().click();
    const finding = page.locator('.finding').filter({ hasText: 'The note says "sirloin"' }).first();
    await finding.waitFor();
    const pictures = finding.locator('.muscle-figure');
    expect(await pictures.allTextContents()).toEqual(['Backstrap', 'Top sirloin']);
    await pictures.first().scrollIntoViewIfNeeded();
    await expect.poll(() => pictures.first().locator('img').evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(0);

    await finding.getByRole('button', { name: 'Top sirloin' }).click();
    await expect.poll(() => page.getByText('The note says "sirloin"').count()).toBe(0);
    const written = 'Sirloin (top sirloin: top of the hind leg, behind the loin) in steaks';
    if (script) expect(await note.inputValue()).toBe(written);
    else expect(await page.getByText(written).count()).toBe(1);
  });
});

test('a name that means another muscle elsewhere shows where it is', async () => {
  const page = await browser.open({ viewport: PHONE });
  const form = onForm(page);
  await page.goto(`${shop.url}/order`);
  await tellOfABuck(page);
  await form.add('sirloin tip');
  await form.line('Sirloin tip').getByText('Where is this?').click();
  expect(await form.line('Sirloin tip').locator('.muscle-figure').textContent()).toContain('front of the thigh, above the knee');
});
