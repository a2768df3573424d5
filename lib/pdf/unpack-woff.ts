import { inflateSync } from 'node:zlib';

const SIGNATURE = 0x774f4646;
const HEADER_BYTES = 44;
const ENTRY_BYTES = 20;

/**
 * Unpacks a WOFF 1.0 file (W3C Recommendation, 2012) into the plain font it was made from. The renderer would otherwise
 * inflate a whole table for every glyph it draws. Throws a RangeError on anything else.
 */
export function unpackWoff(woff: Buffer): Buffer {
  if (woff.length < HEADER_BYTES || woff.readUInt32BE(0) !== SIGNATURE) throw new RangeError('Not a WOFF file');
  const count = woff.readUInt16BE(12);
  const tables = Array.from({ length: count }, (_, index) => {
    const at = HEADER_BYTES + index * ENTRY_BYTES;
    const [offset, packed, length] = [woff.readUInt32BE(at + 4), woff.readUInt32BE(at + 8), woff.readUInt32BE(at + 12)];
    const bytes = woff.subarray(offset, offset + packed);
    return { tag: woff.subarray(at, at + 4), sum: woff.readUInt32BE(at + 16), bytes: packed < length ? inflateSync(bytes) : bytes };
  });
  const halvings = Math.floor(Math.log2(count));
  const head = Buffer.alloc(12 + count * 16);
  woff.copy(head, 0, 4, 8);
  head.writeUInt16BE(count, 4);
  head.writeUInt16BE(16 * 2 ** halvings, 6);
  head.writeUInt16BE(halvings, 8);
  head.writeUInt16BE(16 * (count - 2 ** halvings), 10);
  const parts: Buffer[] = [head];
  let end = head.length;
  for (const [index, { tag, sum, bytes }] of tables.entries()) {
    const entry = 12 + index * 16;
    tag.copy(head, entry);
    head.writeUInt32BE(sum, entry + 4);
    head.writeUInt32BE(end, entry + 8);
    head.writeUInt32BE(bytes.length, entry + 12);
    const padding = (4 - (bytes.length % 4)) % 4;
    parts.push(bytes, Buffer.alloc(padding));
    end += bytes.length + padding;
  }
  return Buffer.concat(parts);
}
