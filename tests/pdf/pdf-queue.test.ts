import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import { afterEach, describe, expect, test } from 'vitest';
import type { PdfJob } from '@/lib/pdf/job';
import { createPdfFiles } from '@/lib/pdf/pdf-files';
import { type PdfQueue, createPdfQueue } from '@/lib/pdf/pdf-queue';
import { pageCount } from './read-pdf';
import { typicalSheet } from './samples';

const limits = { jobMs: 60_000, jobsPerWorker: 20, documentsPerWorker: 300, megabytes: 512 };
const jobOf = (...sequences: readonly number[]): PdfJob => ({ kind: 'sheets', paper: 'letter', sheets: sequences.map((sequence) => typicalSheet(sequence)) });

/** The real worker, its TypeScript loaded as it is. */
const realWorker = (): Worker =>
  new Worker(`import('tsx/esm/api').then(({ tsImport }) => tsImport('@/lib/pdf/pdf.worker.ts', ${JSON.stringify(import.meta.url)}));`, { eval: true });

/** A worker of a few lines that answers with the number of the sheet, once it has done what its name says. */
const smallWorker = (before: string) => (): Worker =>
  new Worker(
    `const { parentPort } = require('node:worker_threads');
     parentPort.on('message', ({ id, job }) => {
       const number = job.sheets[0].number;
       ${before}
       const file = new TextEncoder().encode(number);
       parentPort.postMessage({ id, file }, [file.buffer]);
     });`,
    { eval: true },
  );

const text = (file: Uint8Array): string => new TextDecoder().decode(file);
const open: PdfQueue[] = [];
const queueOf = (options: Parameters<typeof createPdfQueue>[0]): PdfQueue => {
  const queue = createPdfQueue(options);
  open.push(queue);
  return queue;
};
afterEach(async () => {
  await Promise.all(open.splice(0).map((queue) => queue.close()));
});

test('the worker draws a real file while this thread goes on', async () => {
  const queue = queueOf({ start: realWorker });
  let ticks = 0;
  const ticking = setInterval(() => (ticks += 1), 10);
  const file = await queue.draw(jobOf(1, 2));
  clearInterval(ticking);
  expect(pageCount(file)).toBe(2);
  expect(ticks).toBeGreaterThan(10);
}, 30_000);

describe('the queue', () => {
  test('answers in the order asked, by one worker', async () => {
    let started = 0;
    const start = smallWorker('');
    const queue = queueOf({ limits, start: () => ((started += 1), start()) });
    const done: string[] = [];
    await Promise.all([3, 1, 2].map(async (sequence) => done.push(text(await queue.draw(jobOf(sequence))))));
    expect(done.map((number) => number.slice(0, 5))).toEqual(['00003', '00001', '00002']);
    expect(started).toBe(1);
  });

  test.each([
    ['jobs', { jobsPerWorker: 2, documentsPerWorker: 300 }, 3],
    ['documents', { jobsPerWorker: 20, documentsPerWorker: 2 }, 3],
  ])('takes a new worker after so many %s', async (_, some, expected) => {
    let started = 0;
    const start = smallWorker('');
    const queue = queueOf({ limits: { ...limits, ...some }, start: () => ((started += 1), start()) });
    for (const sequence of [1, 2, 3, 4]) await queue.draw(jobOf(sequence));
    expect(started).toBe(expected);
  });

  test('ends a job that takes too long, and draws the next one', async () => {
    const queue = queueOf({ limits: { ...limits, jobMs: 300 }, start: smallWorker(`if (number.startsWith('00001')) for (;;);`) });
    const [first, second] = await Promise.allSettled([queue.draw(jobOf(1)), queue.draw(jobOf(2))]);
    expect(first).toMatchObject({ status: 'rejected', reason: { name: 'PdfFailed', message: 'Not drawn within 300 ms.' } });
    expect(second.status === 'fulfilled' ? text(second.value) : second.reason).toMatch(/^00002/);
  });

  test('outlives a worker that dies, in a job and between two', async () => {
    const start = smallWorker(`if (number.startsWith('00001')) process.exit(3); if (number.startsWith('00002')) setTimeout(() => process.exit(4), 20);`);
    const ends: Promise<unknown>[] = [];
    const queue = queueOf({
      limits,
      start: () => {
        const worker = start();
        ends.push(once(worker, 'exit'));
        return worker;
      },
    });
    await expect(queue.draw(jobOf(1))).rejects.toMatchObject({ name: 'PdfFailed', message: 'The worker ended with code 3.' });
    expect(text(await queue.draw(jobOf(2)))).toMatch(/^00002/);
    await Promise.all(ends);
    expect(text(await queue.draw(jobOf(3)))).toMatch(/^00003/);
  });

  test('refuses what still waits when it is closed', async () => {
    const queue = queueOf({ limits, start: smallWorker('for (;;);') });
    const jobs = Promise.allSettled([queue.draw(jobOf(1)), queue.draw(jobOf(2))]);
    await queue.close();
    expect((await jobs).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
  });
});

describe('kept files', () => {
  const counting = () => {
    const drawn: PdfJob[] = [];
    return { drawn, draw: async (job: PdfJob) => (drawn.push(job), new Uint8Array(new ArrayBuffer(3))) };
  };

  test('the same words are drawn once, even when asked for at the same time', async () => {
    const queue = counting();
    const file = createPdfFiles(queue);
    await Promise.all([file(jobOf(1)), file(jobOf(1))]);
    await file(jobOf(1));
    await file(jobOf(2));
    expect(queue.drawn).toHaveLength(2);
  });

  test('the one not asked for longest is forgotten first', async () => {
    const queue = counting();
    const file = createPdfFiles(queue, 2);
    for (const sequence of [1, 2, 1, 3, 1, 2]) await file(jobOf(sequence));
    expect(queue.drawn).toHaveLength(4);
  });

  test('a failure is not kept', async () => {
    let calls = 0;
    const file = createPdfFiles({ draw: () => ((calls += 1), Promise.reject(new Error('no'))) });
    await expect(file(jobOf(1))).rejects.toThrow('no');
    await expect(file(jobOf(1))).rejects.toThrow('no');
    expect(calls).toBe(2);
  });
});
