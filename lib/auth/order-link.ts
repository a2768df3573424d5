import { createHash, createHmac, randomBytes } from 'node:crypto';

/** The secret of a hunter's link, 16 random bytes in base64url, and the SHA-256 of it, which alone is stored. */
export type OrderLink = { readonly token: string; readonly hash: string };

export function makeOrderLink(): OrderLink {
  const token = randomBytes(16).toString('base64url');
  return { token, hash: sha256(token) };
}

/** A form's own key, 16 random bytes in base64url: made when a form is opened, never shown to anyone else. */
export function makeFormKey(): string {
  return randomBytes(16).toString('base64url');
}

/**
 * The link of the order that a form makes: the first 16 bytes of HMAC-SHA256 over its key. The same form sent again
 * gives the same link, so that a lost answer can be given a second time though only the hash is stored.
 */
export function orderLinkFor(formKey: string, secret: string): OrderLink {
  const token = createHmac('sha256', secret).update(`order-link:${formKey}`).digest().subarray(0, 16).toString('base64url');
  return { token, hash: sha256(token) };
}

/** What to look an order up by, from the secret in an address; null when that cannot be one of ours. */
export function orderLinkHash(token: string): string | null {
  return /^[A-Za-z0-9_-]{22}$/.test(token) ? sha256(token) : null;
}

function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
