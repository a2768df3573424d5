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
  const drawn = await draw(job);
  const plain = withoutPicture(job);
  if (!plain || pagesOf(drawn) === 1) return drawn;
  const withWordsAlone = await draw(plain);
  return pagesOf(withWordsAlone) < pagesOf(drawn) ? withWordsAlone : drawn;
}

async function draw(job: PdfJob): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await renderToBuffer(drawing(readableData(withAddressInOneLine(job)))));
}

/** The picture of where the animal went gives way where it alone would start another page: its words stay. */
function withoutPicture(job: PdfJob): PdfJob | null {
  return job.kind === 'invoice' && job.document.goes ? { ...job, document: { ...job.document, goes: null } } : null;
}

function pagesOf(pdf: Uint8Array): number {
  return [...Buffer.from(pdf).toString('latin1').matchAll(/\/Type \/Page\b/g)].length;
}

/** An address is typed in lines; every text is drawn as one. */
function withAddressInOneLine(job: PdfJob): PdfJob {
  if (job.kind !== 'invoice') return job;
  const { shop } = job.document;
  return { ...job, document: { ...job.document, shop: { ...shop, address: shop.address.trim().replace(/,?\s*[\r\n]+\s*/g, ', ') } } };
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
