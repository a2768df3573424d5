import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { expect, test } from 'vitest';

// From left to right: each imports only those before it.
const pure = ['units', 'access', 'carcass', 'cuts', 'instructions', 'plan', 'learning', 'law', 'rules', 'pricing', 'orders', 'documents', 'forms'];

const files = ['app', 'lib', 'seed']
  .filter((folder) => existsSync(folder))
  .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => posix.join(folder, name)))
  .filter((path) => /\.(tsx?|mjs)$/.test(path) && !path.startsWith('lib/db/generated/'));

const textOf = (path: string): string => readFileSync(join(process.cwd(), path), 'utf8');

/** The place of a pure folder in the order, of the file that `path` names or lies in; -1 for any other. */
const rankOf = (path: string): number => pure.indexOf(/^lib\/([^/]+)(\/|$)/.exec(path)?.[1] ?? '');

/** What each file imports: packages by name, our own files by their path from the checkout. */
const imports = files.flatMap((from) =>
  [...textOf(from).matchAll(/^(?:import|export)\b[^'"=;]*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]/gm)].map((found) => {
    const name = found[1] ?? found[2] ?? '';
    return { from, to: name.startsWith('.') ? posix.join(posix.dirname(from), name) : name.replace(/^@\//, '') };
  }),
);

const breaches = (isBreach: (link: { readonly from: string; readonly to: string }) => boolean): readonly string[] =>
  imports.filter(isBreach).map(({ from, to }) => `${from} imports ${to}`);

test('the scan sees the imports', () => {
  expect(imports).toContainEqual({ from: 'lib/db/client.ts', to: 'lib/db/generated/sqlite/client' });
});

test('a pure folder imports only pure folders to its left, and nothing of the world outside', () => {
  const outside = /^(app|lib|seed|tests)(\/|$)|^(node:|next|react|@react-|@prisma|prisma|better-)/;
  expect(
    breaches(({ from, to }) => rankOf(from) >= 0 && (rankOf(to) >= 0 ? rankOf(to) > rankOf(from) : outside.test(to))),
  ).toEqual([]);
});

test('a pure folder reads no clock, chance, environment or network', () => {
  const world = /\bDate\.now\(|\bnew Date\(\)|\bMath\.random\(|\bprocess\.|\bcrypto\.|\bfetch\(|\bperformance\.now\(/;
  const code = (path: string): string => textOf(path).replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
  expect(files.filter((path) => rankOf(path) >= 0 && world.test(code(path)))).toEqual([]);
});

test('a pure folder is entered by its index only', () => {
  const inside = ({ from, to }: { readonly from: string; readonly to: string }): boolean =>
    rankOf(to) >= 0 && rankOf(to) !== rankOf(from) && to.split('/').length > 2 && !to.endsWith('/index');
  expect(breaches(inside)).toEqual([]);
});

test('only lib/db knows Prisma and the database driver', () => {
  expect(
    breaches(({ from, to }) => !from.startsWith('lib/db/') && /^(@prisma|prisma|better-sqlite3)\b|^lib\/db\/generated/.test(to)),
  ).toEqual([]);
});

test('a screen never goes to the database by itself', () => {
  expect(breaches(({ from, to }) => from.startsWith('app/') && /^lib\/db(\/|$)/.test(to))).toEqual([]);
});
