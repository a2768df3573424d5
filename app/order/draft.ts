import { orderFormEntries, readOrderForm, type OrderFormValues } from '@/lib/forms';

const DRAFT_DAYS = 7;

// A phone may refuse to store anything, or have no room left. Then there is no draft, and the form works all the same.

export function saveDraft(name: string, values: OrderFormValues): boolean {
  try {
    localStorage.setItem(name, JSON.stringify({ at: Date.now(), entries: orderFormEntries(values) }));
    return true;
  } catch {
    return false;
  }
}

export function readDraft(name: string): OrderFormValues | null {
  try {
    const draft = JSON.parse(localStorage.getItem(name) ?? 'null') as { at?: unknown; entries?: unknown } | null;
    if (typeof draft?.at !== 'number' || !Array.isArray(draft.entries)) return null;
    if (Date.now() - draft.at > DRAFT_DAYS * 86_400_000) return null;
    const values = readOrderForm(draft.entries.filter(isEntry));
    return values.formKey === '' ? null : values;
  } catch {
    return null;
  }
}

export function dropDraft(name: string): void {
  try {
    localStorage.removeItem(name);
  } catch {
    // Nothing was stored.
  }
}

function isEntry(entry: unknown): entry is readonly [string, string] {
  return Array.isArray(entry) && typeof entry[0] === 'string' && typeof entry[1] === 'string';
}

/** A key for a form begun afresh in the browser: 16 random bytes, as the server makes them. */
export function freshFormKey(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
