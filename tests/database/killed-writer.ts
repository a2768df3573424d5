import { openDatabase } from '@/lib/db/client';

// Run by crash.test.ts, which kills it. A number is printed only once the database has acknowledged its row.
const client = openDatabase(String(process.argv[2]));
const write = async (name: string): Promise<void> => {
  for (let value = 0; ; value += 1) {
    await client.counter.create({ data: { name: `${name}-${value}`, value } });
    process.stdout.write(`${name}-${value}\n`);
  }
};
await Promise.all(['a', 'b', 'c', 'd'].map(write));
