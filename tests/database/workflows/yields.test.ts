import { expect, test } from 'vitest';
import { publishedSpecies } from '@/lib/carcass';
import { database } from '@/lib/db/client';
import { savePacking } from '@/lib/workflows/pack-order';
import { speciesBook } from '@/lib/workflows/species-book';
import { judgeYield, readYields, switchLearning } from '@/lib/workflows/yields';
import { counter, cutter, forecastWeights, line, open, owner, packed, useShop, versionOf } from './shop-at-work';

useShop();

const DEER = 'white-tailed-deer';

async function meatShare(): Promise<number> {
  return (await speciesBook())[DEER]?.composition.carcass.per10k.meat ?? 0;
}

const published = publishedSpecies(DEER).composition.carcass.per10k.meat;

/** Weighs an animal out again, everything by a factor of what was forecast of it. */
async function weighedOut(number: string, factor: number): Promise<{ ok: boolean }> {
  const weights = (await forecastWeights(number)).map(([name, value]): [string, string] => [
    name,
    name.startsWith('weight.') ? `${Math.round(Number.parseInt(value, 10) * factor)} g` : value,
  ]);
  return savePacking(cutter, number, await versionOf(number), [...weights, ['weightsAreRight', 'on']]);
}

async function verdicts(): Promise<readonly string[]> {
  return (await database().yieldRecord.findMany({ orderBy: { id: 'asc' } })).map(({ verdict }) => verdict);
}

test('a packed animal teaches the forecast of its kind, and teaches it anew when it is weighed again', async () => {
  expect(await meatShare()).toBe(published);
  const { number } = await packed({ lines: [line('loin', 'medallions')] });
  expect(await verdicts()).toEqual(['counted']);
  expect(await meatShare()).toBeCloseTo(published, -1);
  expect(await weighedOut(number, 0.85)).toEqual({ ok: true });
  expect(await verdicts()).toEqual(['counted']);
  // One animal of 85% beside ten that count as published.
  expect((await meatShare()) / published).toBeGreaterThan(0.98);
  expect((await meatShare()) / published).toBeLessThan(0.99);
  const { species } = await readYields(counter);
  expect(species).toMatchObject([{ speciesId: DEER, learning: { isOn: true } }]);
  expect(species[0]?.learned.shares.find(({ of }) => of === 'hanging')?.own).toEqual({ animals: 1, mean: expect.closeTo(0.8, 3), sd: null });
});

test('what the plan of the next order says follows what was learned', async () => {
  const { number } = await packed();
  const before = (await open(number)).assessment.plan.packedTotal.likely;
  for (let more = 0; more < 3; more += 1) await weighedOut((await packed()).number, 0.8);
  expect((await open((await packed()).number)).assessment.plan.packedTotal.likely).toBeLessThan(before * 0.97);
});

test('an animal too odd to learn from waits for the owner’s word', async () => {
  const { number } = await packed();
  expect(await weighedOut(number, 1 / 2.2)).toEqual({ ok: true });
  expect(await verdicts()).toEqual(['doubtful']);
  expect(await meatShare()).toBe(published);
  const [doubted] = (await readYields(owner)).doubted;
  expect(doubted).toMatchObject({ orderNumber: number, hunterName: 'Bo Brandt', animal: 'white-tailed deer', doubt: { of: 'meat' } });
  await expect(judgeYield(counter, doubted?.id ?? 0, 'confirmed')).rejects.toThrow('Your account cannot say what the forecast learns from. Ask the owner.');
  expect(await judgeYield(owner, doubted?.id ?? 0, 'confirmed')).toEqual({ ok: true });
  expect(await meatShare()).toBeLessThan(published * 0.97);
  expect(await judgeYield(owner, doubted?.id ?? 0, 'left-out')).toEqual({ ok: true });
  expect(await meatShare()).toBe(published);
  expect(await judgeYield(owner, 999, 'confirmed')).toMatchObject({ ok: false });
});

test('a line in the wrong unit is told by its name, and a word on it stands until other weights are saved', async () => {
  const { number } = await packed({ lines: [line('loin', 'medallions')] });
  const slip = (await forecastWeights(number)).map(([name, value]): [string, string] => [name, name === 'weight.line-1' ? `${Math.round(Number.parseInt(value, 10) * 2.2)} g` : value]);
  const right: [string, string] = ['weightsAreRight', 'on'];
  const save = async (weights: [string, string][]) => savePacking(cutter, number, await versionOf(number), [...weights, right]);
  expect(await save(slip)).toEqual({ ok: true });
  const [doubted] = (await readYields(owner)).doubted;
  expect(doubted).toMatchObject({ doubt: { of: 'line', label: 'Both backstraps, medallions' }, verdict: 'doubtful', judgedBy: null });

  expect(await judgeYield(owner, doubted?.id ?? 0, 'left-out')).toEqual({ ok: true });
  expect((await readYields(owner)).judged).toMatchObject([{ orderNumber: number, verdict: 'left-out', judgedBy: 'Ruth' }]);
  const [entry] = await database().auditEntry.findMany({ where: { action: 'yield-judged' }, include: { order: true } });
  expect(entry).toMatchObject({ order: { number }, before: { verdict: 'doubtful' }, after: { verdict: 'left-out' } });

  expect(await save(slip)).toEqual({ ok: true });
  expect(await verdicts()).toEqual(['left-out']);
  expect(await save(await forecastWeights(number))).toEqual({ ok: true });
  expect(await verdicts()).toEqual(['counted']);
  // The page was open meanwhile: nothing is odd about this animal any more.
  expect(await judgeYield(owner, doubted?.id ?? 0, 'left-out')).toMatchObject({ ok: false });
  expect(await verdicts()).toEqual(['counted']);
});

test('what is doubted depends on how many of one’s own were learned from', async () => {
  // The meat of this one came to a quarter less: a stranger's knife may do that, but not that of a shop one knows.
  const { number } = await packed();
  expect(await weighedOut(number, 0.75)).toEqual({ ok: true });
  expect(await verdicts()).toEqual(['counted']);
  for (let more = 0; more < 12; more += 1) await packed();
  const last = await packed();
  expect(await weighedOut(last.number, 0.75)).toEqual({ ok: true });
  expect((await verdicts()).at(-1)).toBe('doubtful');
});

test('an animal weighed in its hide teaches what hangs, too', async () => {
  await packed({}, { weight: '105', weightBasis: 'hide-on' });
  const [{ learned } = expect.fail('no species')] = (await readYields(owner)).species;
  expect(learned.shares.find(({ of }) => of === 'hanging')?.own.animals).toBe(1);
  const [record] = await database().yieldRecord.findMany();
  expect(record?.told).toMatchObject({ observation: { hanging: { basis: 'hide-on', share: expect.closeTo(96 / 105, 3) } } });
});

test('learning is switched off, on and begun anew, and each is in the record', async () => {
  await weighedOut((await packed()).number, 0.8);
  const learned = await meatShare();
  expect(learned).toBeLessThan(published);
  expect(await switchLearning(owner, DEER, 'off')).toEqual({ ok: true });
  expect(await meatShare()).toBe(published);
  expect(await switchLearning(owner, DEER, 'on')).toEqual({ ok: true });
  expect(await meatShare()).toBe(learned);
  expect(await switchLearning(owner, DEER, 'anew')).toEqual({ ok: true });
  expect(await meatShare()).toBe(published);
  expect(await switchLearning(owner, 'unicorn', 'off')).toMatchObject({ ok: false });
  await expect(switchLearning(counter, DEER, 'off')).rejects.toThrow('Ask the owner');
  const audit = await database().auditEntry.findMany({ where: { action: 'learning-switched' } });
  expect(audit).toHaveLength(3);
});

test('a pool that was not weighed leaves the meat untold, and a carcass that was not weighed on the rail tells nothing', async () => {
  const { number } = await packed({ lines: [line('loin', 'medallions')] });
  expect(await savePacking(cutter, number, await versionOf(number), [['weight.line-1', '7 lb'], ['packages.line-1', '2'], ['weightsAreRight', 'on']])).toEqual({ ok: true });
  const [record] = await database().yieldRecord.findMany();
  expect(record?.told).toMatchObject({ observation: { meatOfHanging: null, partOfMeat: {} }, doubt: null });
});
