/** Something the operator can mend. It is shown as its sentence, without a stack. */
export class Problem extends Error {}

/** Runs a start script: a Problem ends it with its sentence and exit code 1. */
export async function runScript(main) {
  try {
    await main();
  } catch (error) {
    console.error(error instanceof Problem ? `\n${error.message}` : error);
    process.exitCode = 1;
  }
}
