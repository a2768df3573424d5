/**
 * Answers a request with a file to look at in the browser, kept by nobody. The name holds only letters, digits and
 * dashes, whatever was asked for.
 */
export function pdfAnswer(file: Uint8Array<ArrayBuffer>, name: string): Response {
  return new Response(file, {
    headers: {
      'content-type': 'application/pdf',
      'content-length': String(file.byteLength),
      'content-disposition': `inline; filename="${safeFileName(name)}.pdf"`,
      'cache-control': 'private, no-store',
      'x-content-type-options': 'nosniff',
    },
  });
}

/**
 * A name for a file that every system takes.
 *
 * @example safeFileName('Invoice 2026-0042 / Ørsted') // 'invoice-2026-0042-orsted'
 */
export function safeFileName(name: string): string {
  const plain = name.replace(/ø/gi, 'o').replace(/ł/gi, 'l').normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  return plain.replace(/[^a-z0-9]+/g, '-').slice(0, 80).replace(/^-|-$/g, '') || 'document';
}
