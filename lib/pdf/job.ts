import type { CuttingSheet, InvoiceDocument } from '@/lib/documents';

export type Paper = 'letter' | 'a4';

/** The day's sheets, one animal after another, in one file. */
export type SheetsJob = { readonly kind: 'sheets'; readonly paper: Paper; readonly sheets: readonly CuttingSheet[] };

/** One invoice as it was issued, and the payments made since, as ready words. */
export type InvoiceJob = {
  readonly kind: 'invoice';
  readonly paper: Paper;
  readonly document: InvoiceDocument;
  readonly payments: readonly { readonly label: string; readonly amount: string }[];
  readonly due: string;
};

/** What a file is drawn from: plain data, so that it can cross to the worker. */
export type PdfJob = SheetsJob | InvoiceJob;

/** Width and height of a page, in points. */
export const PAGE_SIZES: Readonly<Record<Paper, readonly [number, number]>> = { letter: [612, 792], a4: [595.28, 841.89] };
