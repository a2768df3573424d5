import { expect, test } from 'vitest';
import { pdfAnswer, safeFileName } from '@/lib/pdf/pdf-answer';

test.each([
  ['Invoice 2026-0042 / Ørsted', 'invoice-2026-0042-orsted'],
  ['"; filename=evil.exe\r\nX: y', 'filename-evil-exe-x-y'],
  ['鹿', 'document'],
  ['a'.repeat(200), 'a'.repeat(80)],
])('%j makes the file name %s', (name, safe) => {
  expect(safeFileName(name)).toBe(safe);
});

test('a file is shown in the browser, kept by nobody, and not guessed at', () => {
  const { headers } = pdfAnswer(new Uint8Array(new ArrayBuffer(4)), 'Sheet 10427-7');
  expect(Object.fromEntries(headers)).toEqual({
    'content-type': 'application/pdf',
    'content-length': '4',
    'content-disposition': 'inline; filename="sheet-10427-7.pdf"',
    'cache-control': 'private, no-store',
    'x-content-type-options': 'nosniff',
  });
});
