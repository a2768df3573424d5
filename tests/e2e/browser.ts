import { type Browser, type BrowserContext, type Page, chromium } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';

/** The two sizes every page is looked at in: a phone in the hand, a screen on the counter. */
export const PHONE = { width: 390, height: 844 } as const;
export const COUNTER = { width: 1280, height: 800 } as const;

export type Visit = { readonly viewport?: { width: number; height: number }; readonly script?: boolean };

/**
 * One browser for the tests of a file. Every page of it is watched: an error in its console, a refused policy or a thrown
 * script fails the test that opened it.
 */
export function useBrowser(): { readonly open: (visit?: Visit) => Promise<Page> } {
  let browser: Browser;
  const contexts: BrowserContext[] = [];
  const troubles: string[] = [];
  beforeAll(async () => {
    browser = await chromium.launch({
      executablePath: process.env['CHROMIUM_PATH'] || '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-dev-shm-usage', '--disable-quic', '--disable-background-networking'],
    });
  });
  afterEach(async () => {
    await Promise.all(contexts.splice(0).map((context) => context.close()));
    expect(troubles.splice(0)).toEqual([]);
  });
  afterAll(() => browser.close());
  return {
    open: async ({ viewport = PHONE, script = true } = {}) => {
      const context = await browser.newContext({ viewport, javaScriptEnabled: script, locale: 'en-US' });
      contexts.push(context);
      const page = await context.newPage();
      page.setDefaultTimeout(15_000);
      page.on('pageerror', (error) => troubles.push(String(error)));
      page.on('console', (message) => {
        // A page that is not there is what some tests ask for; the browser reports its status as an error.
        if (message.type() === 'error' && !/Failed to load resource: .* (404|403)/.test(message.text())) troubles.push(message.text());
      });
      return page;
    },
  };
}
