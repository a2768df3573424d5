/** The request header in which proxy.ts tells a page its own path and query. A client's own value is overwritten. */
export const pathHeader = 'x-gambrel-path';

/**
 * Where to go after signing in: the path asked for when it lies on this site, else the orders.
 *
 * @example nextPath('//evil.example/') // '/staff'
 */
export function nextPath(asked: string | null | undefined): string {
  const home = '/staff';
  if (!asked?.startsWith('/') || /^\/[/\\]|[\u005C\s]|\p{Cc}/u.test(asked)) return home;
  const base = 'https://gambrel.invalid';
  const url = URL.canParse(asked, base) ? new URL(asked, base) : null;
  if (url === null || url.origin !== base || url.pathname.startsWith('/sign-in')) return home;
  return url.pathname + url.search;
}
