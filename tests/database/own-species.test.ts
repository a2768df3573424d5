import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { publishedSpecies } from '@/lib/carcass';
import { ownSpecies } from '@/lib/workflows/own-species';

let folder: string;
beforeEach(() => { folder = mkdtempSync(join(tmpdir(), 'gambrel-species-')); });
afterEach(() => rmSync(folder, { recursive: true, force: true }));

test('sound files are taken by their id, and of the others the console says what is wrong', () => {
  writeFileSync(join(folder, 'axis.json'), JSON.stringify({ ...publishedSpecies('fallow-deer'), id: 'axis-deer', name: 'axis deer' }));
  writeFileSync(join(folder, 'broken.json'), '{');
  writeFileSync(join(folder, 'half.json'), JSON.stringify({ ...publishedSpecies('elk'), plan: 'fish' }));
  writeFileSync(join(folder, 'notes.txt'), 'not a species');
  const said: string[] = [];
  const book = ownSpecies(folder, (sentence) => said.push(sentence));
  expect(Object.keys(book)).toEqual(['axis-deer']);
  expect(book['axis-deer']?.name).toBe('axis deer');
  expect(said[0]).toMatch(/^species\/broken\.json is left out\. It cannot be read as JSON/);
  expect(said[1]).toBe('species/half.json is left out. plan: Write four-legged or bird.');
});

test('a shop without such a folder has none', () => {
  mkdirSync(join(folder, 'empty'));
  expect(ownSpecies(join(folder, 'empty'))).toEqual({});
  expect(ownSpecies(join(folder, 'nowhere'))).toEqual({});
});
