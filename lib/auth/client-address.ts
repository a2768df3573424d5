import { subscribe } from 'node:diagnostics_channel';
import type { IncomingMessage } from 'node:http';

const keeper = globalThis as typeof globalThis & { gambrelAddressesChecked?: true };

/**
 * Makes X-Forwarded-For tell the truth: unless a proxy of ours is in front (TRUST_PROXY=1), what a client wrote there is
 * dropped before the server reads it, and the server then fills in the address of the connection. Called once at start.
 */
export function dropForgedAddresses(): void {
  if (keeper.gambrelAddressesChecked) return;
  keeper.gambrelAddressesChecked = true;
  subscribe('http.server.request.start', (message) => {
    if (process.env['TRUST_PROXY'] !== '1') delete (message as { request: IncomingMessage }).request.headers['x-forwarded-for'];
  });
}

/**
 * Where a request comes from, or null when that is not known for sure. Behind a proxy it is the last entry, which the
 * proxy itself wrote. Of an IPv6 address the network counts, since one household holds more addresses than can be counted.
 */
export function clientAddress(headers: Headers): string | null {
  if (process.env['TRUST_PROXY'] !== '1' && !keeper.gambrelAddressesChecked) return null;
  const last = headers.get('x-forwarded-for')?.split(',').at(-1)?.trim().replace(/^::ffff:/i, '');
  if (!last) return null;
  return last.includes('.') ? last : last.split(':').slice(0, 4).join(':');
}

/** Tells whether the browser speaks https, by itself or to the proxy in front. */
export function isHttps(headers: Headers): boolean {
  return headers.get('x-forwarded-proto')?.split(',')[0]?.trim() === 'https';
}
