import { describe, expect, test } from 'vitest';
import { isCrossSite } from '@/lib/auth/cross-site';
import { nextPath } from '@/lib/auth/request-path';
import { contentPolicy, securityHeaders } from '@/lib/auth/security-headers';

describe('a request that may change something', () => {
  const host = 'shop.example:3000';
  const own = 'http://shop.example:3000';

  test.each([
    ['from a page of ours', { host, origin: own }, false],
    ['from a page of ours, and the browser says so', { host, origin: own, 'sec-fetch-site': 'same-origin' }, false],
    ['through a proxy that passes the host on', { host: '127.0.0.1:3000', 'x-forwarded-host': host, origin: own }, false],
    ['from another site', { host, origin: 'https://evil.example' }, true],
    ['from another port', { host, origin: 'http://shop.example:4000' }, true],
    ['from a name that only starts like ours', { host, origin: 'http://shop.example:3000.evil.example' }, true],
    ['without Origin', { host }, true],
    ['with Origin null', { host, origin: 'null' }, true],
    ['with our Origin, though the browser says it crosses sites', { host, origin: own, 'sec-fetch-site': 'cross-site' }, true],
    ['with our Origin from a neighbouring site', { host, origin: own, 'sec-fetch-site': 'same-site' }, true],
    ['to no host', { origin: own }, true],
  ])('%s: refused is %o', (_what, headers, refused) => {
    for (const method of ['POST', 'PUT', 'PATCH', 'DELETE', 'post']) expect(isCrossSite(method, new Headers(headers as HeadersInit))).toBe(refused);
    for (const method of ['GET', 'HEAD', 'OPTIONS']) expect(isCrossSite(method, new Headers(headers as HeadersInit))).toBe(false);
  });
});

describe('where sign-in leads to', () => {
  test.each([
    ['/staff/orders/12?tab=bill', '/staff/orders/12?tab=bill'],
    ['/staff', '/staff'],
    [null, '/staff'],
    ['', '/staff'],
    ['staff', '/staff'],
    ['https://evil.example/', '/staff'],
    ['//evil.example/', '/staff'],
    ['/\\evil.example/', '/staff'],
    ['/\t/evil.example/', '/staff'],
    ['/staff\\..\\..', '/staff'],
    ['/staff\r\nSet-Cookie: a=b', '/staff'],
    ['javascript:alert(1)', '/staff'],
    ['/sign-in?next=/sign-in', '/staff'],
    ['/a/../../b', '/b'],
  ])('%j is %j', (asked, path) => {
    expect(nextPath(asked)).toBe(path);
  });
});

describe('the headers of every answer', () => {
  test('let only our own scripts with the nonce run, nothing be embedded and nothing sent elsewhere', () => {
    expect(contentPolicy('abc', { development: false })).toBe(
      "default-src 'none'; script-src 'self' 'nonce-abc' 'strict-dynamic'; style-src 'self' 'nonce-abc'; img-src 'self' data:; " +
        "font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; object-src 'none'; base-uri 'none'; " +
        "form-action 'self'; frame-ancestors 'none'",
    );
  });

  test('promise https only on https, and forbid copies of private pages only', () => {
    expect(securityHeaders({ pathname: '/', https: false })).not.toHaveProperty('Strict-Transport-Security');
    expect(securityHeaders({ pathname: '/', https: true })).toHaveProperty('Strict-Transport-Security');
    const stored = (pathname: string) => securityHeaders({ pathname, https: false })['Cache-Control'];
    expect(['/staff', '/staff/people', '/o/abc', '/sign-in', '/setup'].map(stored)).toEqual(Array(5).fill('no-store'));
    expect(['/', '/order', '/staffordshire', '/_next/static/a.js'].map(stored)).toEqual(Array(4).fill(undefined));
  });
});
