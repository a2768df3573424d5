import { runScript } from './problem.mjs';
import { serve } from './serve.mjs';
import { prepareShop } from './set-up.mjs';

// `npm run dev`: the shop, rebuilt at every change of a source file.
await runScript(async () => {
  await serve('dev', await prepareShop({ dataFolder: process.env.GAMBREL_DATA || 'data', build: false }));
});
