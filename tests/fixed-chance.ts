import fc from 'fast-check';

/**
 * Property tests draw the same cases in every run, so that a red run is about the change and not about luck.
 * CHANCE=anything draws others, a number draws that seed again: `CHANCE=new npx vitest run --project unit`.
 */
const { CHANCE } = process.env;
const seed = CHANCE === undefined ? 20_261_125 : Number(CHANCE);
const times = Number(process.env['CHANCE_TIMES'] ?? 1);

fc.configureGlobal({
  ...(Number.isInteger(seed) ? { seed } : {}),
  ...(times > 1 ? { numRuns: 100 * times } : {}),
});
