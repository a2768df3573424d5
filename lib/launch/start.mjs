import { runScript } from './problem.mjs';
import { serve } from './serve.mjs';
import { prepareShop } from './set-up.mjs';

// `npm start`: from a clean clone to an open shop. Whatever is done already is not done again.
await runScript(async () => {
  await serve('start', await prepareShop({ dataFolder: process.env.GAMBREL_DATA || 'data', build: true }));
});
