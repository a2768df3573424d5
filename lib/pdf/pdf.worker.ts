import { parentPort } from 'node:worker_threads';
import { drawPdf } from './draw';
import type { WorkerAnswer, WorkerTask } from './pdf-queue';

/** Draws what it is sent, one job after another, and hands the finished file over without copying it. */
parentPort?.on('message', async ({ id, job }: WorkerTask) => {
  try {
    const file = await drawPdf(job);
    const answer: WorkerAnswer = { id, file };
    parentPort?.postMessage(answer, [file.buffer]);
  } catch (error) {
    const answer: WorkerAnswer = { id, problem: error instanceof Error ? (error.stack ?? error.message) : String(error) };
    parentPort?.postMessage(answer, []);
  }
});
