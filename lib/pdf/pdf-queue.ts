import { Worker } from 'node:worker_threads';
import type { PdfJob } from './job';

export type WorkerTask = { readonly id: number; readonly job: PdfJob };
export type WorkerAnswer =
  | { readonly id: number; readonly file: Uint8Array<ArrayBuffer> }
  | { readonly id: number; readonly problem: string };

/** A file could not be drawn in the time allowed, or the drawing failed. */
export class PdfFailed extends Error {
  override readonly name = 'PdfFailed';
}

export type QueueLimits = {
  /** Longest that one job may take, in milliseconds. */
  readonly jobMs: number;
  /** After so many jobs or documents a worker gives way to a new one: the renderer keeps some memory of each. */
  readonly jobsPerWorker: number;
  readonly documentsPerWorker: number;
  readonly megabytes: number;
};

const LIMITS: QueueLimits = { jobMs: 90_000, jobsPerWorker: 20, documentsPerWorker: 300, megabytes: 512 };

type Waiting = { readonly job: PdfJob; readonly resolve: (file: Uint8Array<ArrayBuffer>) => void; readonly reject: (problem: Error) => void };
type Running = { readonly worker: Worker; jobs: number; documents: number };

export type PdfQueue = {
  /** Draws a job after those that were asked for earlier. Rejects with `PdfFailed`. */
  readonly draw: (job: PdfJob) => Promise<Uint8Array<ArrayBuffer>>;
  /** Starts the worker ahead of the first job. */
  readonly warm: () => void;
  /** Ends the worker; what still waits is refused. */
  readonly close: () => Promise<void>;
};

/** Starts the thread that draws. The bundler finds the worker by this very expression. */
function startWorker(megabytes: number): Worker {
  return new Worker(new URL('./pdf.worker.ts', import.meta.url), {
    // Drawing makes much short-lived rubbish: with room for it, a fifth of the time is saved.
    resourceLimits: { maxOldGenerationSizeMb: megabytes, maxYoungGenerationSizeMb: 128 },
  });
}

/**
 * A queue before one worker thread that lives on: first come, first served, one job at a time, so that no page of the
 * program waits while a hundred sheets are drawn. A job that takes too long or too much memory fails alone; the next
 * one finds a new worker.
 */
export function createPdfQueue({ limits = LIMITS, start = startWorker }: { readonly limits?: QueueLimits; readonly start?: (megabytes: number) => Worker } = {}): PdfQueue {
  const waiting: Waiting[] = [];
  let running: Running | null = null;
  let isBusy = false;
  let lastId = 0;

  const newRunning = (): Running => {
    const worker = start(limits.megabytes);
    // An idle worker does not keep the program alive, and one that dies idle is replaced at the next job.
    worker.unref();
    const forget = (): void => {
      if (running?.worker === worker) running = null;
    };
    worker.on('error', forget).on('exit', forget);
    return { worker, jobs: 0, documents: 0 };
  };

  const retireWorn = (): void => {
    if (running === null || (running.jobs < limits.jobsPerWorker && running.documents < limits.documentsPerWorker)) return;
    const worn = running.worker;
    running = newRunning();
    void worn.terminate();
  };

  const next = async (): Promise<void> => {
    if (isBusy) return;
    isBusy = true;
    for (let one = waiting.shift(); one; one = waiting.shift()) {
      running ??= newRunning();
      running.jobs += 1;
      running.documents += one.job.kind === 'sheets' ? one.job.sheets.length : 1;
      lastId += 1;
      try {
        one.resolve(await runJob(running.worker, { id: lastId, job: one.job }, limits.jobMs));
      } catch (problem) {
        void running?.worker.terminate();
        running = null;
        one.reject(problem instanceof Error ? problem : new PdfFailed(String(problem)));
      }
      retireWorn();
    }
    isBusy = false;
  };

  return {
    draw: (job) =>
      new Promise((resolve, reject) => {
        waiting.push({ job, resolve, reject });
        void next();
      }),
    warm: () => {
      running ??= newRunning();
    },
    close: async () => {
      for (const one of waiting.splice(0)) one.reject(new PdfFailed('The program is closing.'));
      const worker = running?.worker;
      running = null;
      await worker?.terminate();
    },
  };
}

function runJob(worker: Worker, task: WorkerTask, jobMs: number): Promise<Uint8Array<ArrayBuffer>> {
  return new Promise((resolve, reject) => {
    const settle = (end: () => void): void => {
      clearTimeout(timer);
      worker.off('message', onMessage).off('error', onError).off('exit', onExit);
      worker.unref();
      end();
    };
    const onMessage = (answer: WorkerAnswer): void => {
      if (answer.id !== task.id) return;
      settle(() => ('file' in answer ? resolve(answer.file) : reject(new PdfFailed(answer.problem))));
    };
    const onError = (error: Error): void => settle(() => reject(new PdfFailed(error.message, { cause: error })));
    const onExit = (code: number): void => settle(() => reject(new PdfFailed(`The worker ended with code ${code}.`)));
    const timer = setTimeout(() => settle(() => reject(new PdfFailed(`Not drawn within ${jobMs} ms.`))), jobMs);
    worker.on('message', onMessage).on('error', onError).on('exit', onExit);
    worker.ref();
    worker.postMessage(task, []);
  });
}
