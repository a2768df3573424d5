import { describe, expect, test } from 'vitest';
import type { InvoiceDocument } from '@/lib/documents';
import { drawPdf } from '@/lib/pdf/draw';
import { fontSizes, hasPoppler, pageCount, textOf } from './read-pdf';
import { makeInvoice } from './samples';

const payments = [{ label: 'Paid cash, Nov 20, 2026, 08:12', amount: '$60.00' }];
const draw = (document: InvoiceDocument, paper: 'letter' | 'a4' = 'letter') =>
  drawPdf({ kind: 'invoice', paper, document, payments: document.isEstimate ? [] : payments, due: document.isEstimate ? '' : '$105.95' });

const wordsToFind = (document: InvoiceDocument): readonly string[] => [
  document.shop.name,
  document.shop.address,
  document.shop.phone,
  document.issued,
  document.order,
  document.hunter,
  document.animal,
  document.origin,
  ...document.rows.flatMap((row) => [row.label, row.basis, row.amount]),
  document.subtotal,
  ...document.taxes.flatMap((tax) => [tax.label, tax.amount]),
  document.total,
  ...document.packed.flatMap((row) => [row.label, row.packages, row.weight]),
  document.yieldLine,
  ...document.cautions,
  'NOT FOR SALE',
];

test.each(['letter', 'a4'] as const)('an invoice stands on one page of %s, nothing below 9 points', async (paper) => {
  const pdf = await draw(makeInvoice(), paper);
  expect(pageCount(pdf)).toBe(1);
  expect(fontSizes(pdf)[0]).toBeGreaterThanOrEqual(9);
});

test('where the picture would start another page, the words stand alone', async () => {
  const document = makeInvoice();
  const row = { label: 'Box', basis: '3 at $1.50', amount: '$4.50' };
  const filled = (count: number): InvoiceDocument => ({ ...document, rows: Array.from({ length: count }, () => row), taxes: [] });
  const pagesWith = await Promise.all([6, 8, 9, 10].map(async (count) => pageCount(await draw(filled(count)))));
  const pagesWithout = await Promise.all([6, 8, 9, 10].map(async (count) => pageCount(await draw({ ...filled(count), goes: null }))));
  expect(pagesWith).toEqual(pagesWithout);
});

describe.skipIf(!hasPoppler)('read back', () => {
  test.each([false, true])('every row, tax, weight and total is there (estimate: %s)', async (isEstimate) => {
    const document = makeInvoice(isEstimate);
    const text = textOf(await draw(document)).replace(/\s/g, '');
    expect(wordsToFind(document).filter((words) => !text.includes(words.replace(/\s/g, '')))).toEqual([]);
  });

  test('an invoice names its number, the payments and what is left to pay', async () => {
    const text = textOf(await draw(makeInvoice()));
    expect(text).toContain('Invoice 2026-0042');
    expect(text).toContain('Paid cash, Nov 20, 2026, 08:12 $60.00');
    expect(text).toContain('To pay $105.95');
  });

  test('the picture names its bars and their weights', async () => {
    const document = makeInvoice();
    const text = textOf(await draw(document));
    expect(document.goes?.map(({ label }) => label)).toEqual(['Alive', 'Gutted, in the hide', 'On the rail', 'To take home']);
    expect((document.goes ?? []).filter(({ label, weight, less }) => !text.includes(label) || !text.includes(weight) || !text.includes(less))).toEqual([]);
  });

  test('an estimate says in capitals that it is none', async () => {
    const text = textOf(await draw(makeInvoice(true)));
    expect(text).toContain('ESTIMATE, NOT AN INVOICE');
    expect(text).not.toContain('To pay');
  });

  test('a long invoice goes on to numbered pages and loses nothing', async () => {
    const document = makeInvoice();
    const rows = Array.from({ length: 60 }, (_, index) => ({ label: `Row ${index + 1} of many, with words`, basis: '1 at $1.00', amount: '$1.00' }));
    const pdf = await draw({ ...document, rows });
    expect(pageCount(pdf)).toBeGreaterThan(1);
    const text = textOf(pdf);
    expect(rows.filter(({ label }) => !text.includes(label))).toEqual([]);
    expect(text).toContain(`1 of ${pageCount(pdf)}`);
  });

  test('an address typed in lines stands on one, its lines apart', async () => {
    const document = makeInvoice();
    const text = textOf(await draw({ ...document, shop: { ...document.shop, address: '14 Mill Road,\r\nAlder Creek\n' } }));
    expect(text).toContain('14 Mill Road, Alder Creek 555 0142');
  });

  test('names no font can draw are made readable', async () => {
    const text = textOf(await draw({ ...makeInvoice(), hunter: 'Ørsted-Łukasz 鹿' }));
    expect(text).toContain('Ørsted-Łukasz ?');
  });
});
