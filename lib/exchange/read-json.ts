import { LARGEST_PLAN_BYTES, NOT_JSON, NOT_JSON_TYPE, TOO_LARGE } from '@/lib/forms';

type ReadJson = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly status: 400 | 413 | 415; readonly message: string };

/** Reads the body of a request as JSON: of the right type, no larger than an animal needs, in UTF-8. No more is read than that. */
export async function readJsonBody(request: Request): Promise<ReadJson> {
  if (!isJsonType(request.headers.get('content-type') ?? '')) return { ok: false, status: 415, message: NOT_JSON_TYPE };
  const bytes = await readUpTo(LARGEST_PLAN_BYTES, request);
  if (bytes === null) return { ok: false, status: 413, message: TOO_LARGE };
  const read = parseJson(bytes);
  return read.ok ? read : { ok: false, status: 400, message: NOT_JSON };
}

/** Bytes as JSON; not ok where they are no UTF-8 or no JSON. */
export function parseJson(bytes: Uint8Array): { readonly ok: true; readonly value: unknown } | { readonly ok: false } {
  try {
    return { ok: true, value: JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) };
  } catch {
    return { ok: false };
  }
}

function isJsonType(header: string): boolean {
  return /^application\/json\s*(;\s*charset\s*=\s*"?utf-8"?\s*)?;?$/i.test(header.trim());
}

async function readUpTo(most: number, request: Request): Promise<Uint8Array | null> {
  if (Number(request.headers.get('content-length') ?? 0) > most) return null;
  const reader = request.body?.getReader();
  if (!reader) return new Uint8Array();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return new Uint8Array(Buffer.concat(parts));
    length += value.byteLength;
    if (length > most) {
      await reader.cancel();
      return null;
    }
    parts.push(value);
  }
}
