import { NextResponse, type NextRequest } from 'next/server';
import { isHttps } from '@/lib/auth/client-address';
import { isCrossSite } from '@/lib/auth/cross-site';
import { pathHeader } from '@/lib/auth/request-path';
import { contentPolicy, securityHeaders } from '@/lib/auth/security-headers';
import { statusOf } from '@/lib/auth/turned-away';

/** The framework's own limit for a form, in bytes; beyond it the answer would be a bare error without words. */
const LARGEST_BODY = 1_000_000;

/** For other programs: these compute from what they are sent, read no cookie, change nothing and limit their own bodies. */
const OPEN_PATHS: readonly string[] = ['/api/plan', '/api/openapi.json'];

/** Runs before every route, files included: refuses what another site sends or what is too large, and puts the security headers on the answer. */
export function proxy(request: NextRequest): NextResponse {
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(16))).toString('base64');
  const policy = contentPolicy(nonce, { development: process.env.NODE_ENV === 'development' });
  const https = isHttps(request.headers) || request.nextUrl.protocol === 'https:';
  const { pathname, search } = request.nextUrl;
  const headers = { 'Content-Security-Policy': policy, ...securityHeaders({ pathname, https }) };

  const isOpen = OPEN_PATHS.includes(pathname);
  if (!isOpen && isCrossSite(request.method, request.headers)) {
    return new NextResponse('This was sent from another site, so nothing was done. Open the page here and try again.\n', {
      status: 403,
      headers: { ...headers, 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'no-store' },
    });
  }

  if (!isOpen && Number(request.headers.get('content-length') ?? 0) > LARGEST_BODY) {
    return new NextResponse('That is more text than a form here can hold, so nothing was saved. Go back, shorten it, and send it again.\n', {
      status: 413,
      headers: { ...headers, 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'no-store' },
    });
  }

  const forPage = new Headers(request.headers);
  // Next reads the nonce from the request's policy and puts it on its own scripts.
  forPage.set('Content-Security-Policy', policy);
  forPage.set(pathHeader, pathname + search);
  const status = statusOf(pathname);
  const response =
    status === null
      ? NextResponse.next({ request: { headers: forPage } })
      : NextResponse.rewrite(request.nextUrl, { status, request: { headers: forPage } });
  for (const [name, value] of Object.entries(headers)) response.headers.set(name, value);
  return response;
}
