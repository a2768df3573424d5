import { Document, renderToBuffer } from '@react-pdf/renderer';
import { CuttingSheetPages } from './cutting-sheet';
import { registerFonts } from './fonts';
import { InvoicePages } from './invoice';
import type { PdfJob } from './job';
import { readableData } from './readable-text';

let isReady = false;

/** Draws a job as one PDF file. Runs where it is called: from the server, go through the queue. */
export async function drawPdf(job: PdfJob): Promise<Uint8Array<ArrayBuffer>> {
  if (!isReady) registerFonts();
  isReady = true;
  const buffer = await renderToBuffer(drawing(readableData(job)));
  return new Uint8Array(buffer);
}

function drawing(job: PdfJob) {
  switch (job.kind) {
    case 'sheets':
      return (
        <Document title={`Cutting sheets ${job.sheets.map((sheet) => sheet.number).join(', ')}`} language="en">
          {job.sheets.map((sheet) => (
            <CuttingSheetPages key={sheet.code} sheet={sheet} paper={job.paper} />
          ))}
        </Document>
      );
    case 'invoice':
      return (
        <Document title={`${job.document.title}, ${job.document.order}`} author={job.document.shop.name} language="en">
          <InvoicePages {...job} />
        </Document>
      );
  }
}
