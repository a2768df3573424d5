/** The content policy of one answer. Its scripts carry the nonce; nothing is loaded from, sent to or framed by another site. */
export function contentPolicy(nonce: string, { development }: { readonly development: boolean }): string {
  const evaluate = development ? " 'unsafe-eval'" : '';
  return [
    "default-src 'none'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${evaluate}`,
    `style-src 'self' 'nonce-${nonce}'`,
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join('; ');
}

// Documents that belong to one person or one order: no copy stays in the browser or on the way.
const privatePaths = /^\/(?:o|staff|setup|sign-in)(?:\/|$)/;

/** The headers besides the content policy. `same-origin` and not `no-referrer`: forms without script need their Origin. */
export function securityHeaders({ pathname, https }: { readonly pathname: string; readonly https: boolean }): Readonly<Record<string, string>> {
  return {
    'X-Content-Type-Options': 'nosniff',
    'X-Frame-Options': 'DENY',
    'Referrer-Policy': 'same-origin',
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'Permissions-Policy': 'camera=(), display-capture=(), geolocation=(), microphone=(), payment=(), usb=()',
    ...(privatePaths.test(pathname) && { 'Cache-Control': 'no-store' }),
    ...(https && { 'Strict-Transport-Security': 'max-age=63072000' }),
  };
}
