import { createHmac, randomBytes, timingSafeEqual } from 'node:crypto';

// A cookie that a browser earns by signing in: it is no key to anything, it only sets the browser's failures apart from
// those of strangers at the same account. One browser may be known to several people of the shop.
const mostMarks = 6;

/** The mark in a cookie that belongs to an account, or null when the browser has none. */
export function knownBrowserMark(cookie: string, userName: string, secret: string): string | null {
  return cookie.split('~').find((mark) => isMarkOf(mark, userName, secret)) ?? null;
}

/** The cookie with a mark for the account in it. The oldest mark goes when there are too many. */
export function withKnownBrowserMark(cookie: string, userName: string, secret: string): string {
  if (knownBrowserMark(cookie, userName, secret) !== null) return cookie;
  const nonce = randomBytes(16).toString('base64url');
  const marks = cookie.split('~').filter((mark) => mark !== '');
  return [...marks.slice(1 - mostMarks), `${nonce}.${sign(nonce, userName, secret)}`].join('~');
}

function isMarkOf(mark: string, userName: string, secret: string): boolean {
  const [nonce = '', signature = ''] = mark.split('.');
  const wanted = Buffer.from(sign(nonce, userName, secret));
  const given = Buffer.from(signature);
  return given.length === wanted.length && timingSafeEqual(given, wanted);
}

function sign(nonce: string, userName: string, secret: string): string {
  return createHmac('sha256', secret).update(`known browser\n${userName}\n${nonce}`).digest('base64url');
}

/** The cookie's name and attributes. 400 days is the longest a browser keeps one. */
export function knownBrowserCookie(secure: boolean) {
  const name = secure ? '__Host-gambrel-known' : 'gambrel-known';
  return { name, httpOnly: true, sameSite: 'lax', secure, path: '/', maxAge: 400 * 86_400 } as const;
}
