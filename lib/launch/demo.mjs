import { join } from 'node:path';
import { runScript } from './problem.mjs';
import { serve } from './serve.mjs';
import { prepareShop } from './set-up.mjs';

// `npm run demo`: an invented season in a data folder of its own, beside the shop's and never in it.
await runScript(async () => {
  const fill = async (folder, environment) => (await import('./demo-season.mjs')).ensureSeason(folder, environment);
  const dataFolder = join(process.env.GAMBREL_DATA || 'data', 'demo');
  await serve('start', await prepareShop({ dataFolder, build: true, fill }));
});
