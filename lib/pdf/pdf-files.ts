import { createHash } from 'node:crypto';
import type { PdfJob } from './job';
import { type PdfQueue, createPdfQueue } from './pdf-queue';

const KEPT_FILES = 24;
/** A larger file is drawn again rather than kept. */
const LARGEST_KEPT_BYTES = 8_000_000;

/** Files by what they were drawn from: the same words give the same file, and most reprints are the same. */
export function createPdfFiles(queue: Pick<PdfQueue, 'draw'>, kept = KEPT_FILES): (job: PdfJob) => Promise<Uint8Array<ArrayBuffer>> {
  const files = new Map<string, Promise<Uint8Array<ArrayBuffer>>>();
  return async (job) => {
    const key = createHash('sha256').update(JSON.stringify(job)).digest('base64');
    const drawing = files.get(key) ?? queue.draw(job);
    // Last asked for stands last; the first is the one to go.
    files.delete(key);
    files.set(key, drawing);
    const oldest = files.size > kept ? files.keys().next().value : undefined;
    if (oldest !== undefined) files.delete(oldest);
    try {
      const file = await drawing;
      if (file.byteLength > LARGEST_KEPT_BYTES) files.delete(key);
      return file;
    } catch (problem) {
      files.delete(key);
      throw problem;
    }
  };
}

type Shared = typeof globalThis & { gambrelPdfFiles?: (job: PdfJob) => Promise<Uint8Array<ArrayBuffer>> };

/** The finished file of a job, drawn in the program's one worker thread or kept from before. Rejects with `PdfFailed`. */
export function pdfFile(job: PdfJob): Promise<Uint8Array<ArrayBuffer>> {
  // One worker for the program: several bundles, and a reload while developing, load this module more than once.
  const shared: Shared = globalThis;
  shared.gambrelPdfFiles ??= createPdfFiles(createPdfQueue());
  return shared.gambrelPdfFiles(job);
}
