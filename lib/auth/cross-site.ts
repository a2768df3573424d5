const harmless = ['GET', 'HEAD', 'OPTIONS'];

/**
 * Tells whether a request that may change something was not sent by a page of ours: its Origin is another site's, is
 * `null` or is missing, or the browser says that it crosses sites. Reading is never refused.
 */
export function isCrossSite(method: string, headers: Headers): boolean {
  if (harmless.includes(method.toUpperCase())) return false;
  const origin = headers.get('origin');
  if (origin === null || !URL.canParse(origin)) return true;
  const host = headers.get('x-forwarded-host')?.split(',')[0]?.trim() || headers.get('host');
  if (new URL(origin).host !== host?.toLowerCase()) return true;
  const site = headers.get('sec-fetch-site');
  return site !== null && site !== 'same-origin';
}
