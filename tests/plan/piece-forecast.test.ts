import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type AnimalFacts, PUBLISHED_SPECIES, forecastCarcass } from '@/lib/carcass';
import { muscleLengthMm, muscleThicknessMm } from '@/lib/cuts';
import { PLAIN_INSTRUCTIONS, type InstructionLine, newLine } from '@/lib/instructions';
import { type PieceForecast, planOrder } from '@/lib/plan';
import { anyFacts } from '../carcass/any-facts';
import { anyLine } from '../instructions/any-instructions';

const roe: AnimalFacts = { speciesId: 'roe-deer', sex: 'male', ageClass: 'adult', weight: null, form: 'hide-on', missing: [], wounds: [] };
const doe: AnimalFacts = { ...roe, speciesId: 'white-tailed-deer', sex: 'female', weight: { grams: 45_359, basis: 'field-dressed' } };

function piecesOf(facts: AnimalFacts, line: InstructionLine): PieceForecast {
  const [planned] = planOrder({ ...PLAIN_INSTRUCTIONS, lines: [line] }, forecastCarcass(facts, PUBLISHED_SPECIES)).lines;
  if (!planned) throw new Error('No line was planned');
  return planned.pieces;
}

const thick = (mm: number) => ({ size: { kind: 'thickness', thicknessMm: mm } }) as const;

describe('the shape of a muscle', () => {
  // Common practice, no source: the backstrap of a small deer is about 2 ft. Same source: the loin's shape was set from it.
  it('makes a loin of 1 kg about 2 ft long and as thick as a wrist', () => {
    expect(muscleLengthMm('loin', 1_000) / 304.8).toBeGreaterThan(1.8);
    expect(muscleLengthMm('loin', 1_000) / 304.8).toBeLessThan(2.2);
    expect(muscleThicknessMm('loin', 1_000)).toBeGreaterThan(40);
    expect(muscleThicknessMm('loin', 1_000)).toBeLessThan(60);
  });

  it('is a cylinder of its own weight', () => {
    const [long, wide] = [muscleLengthMm('topside', 900), muscleThicknessMm('topside', 900)];
    // 1.06 g in a cubic centimetre of muscle: from memory.
    expect((Math.PI / 4) * wide ** 2 * long * 0.001_06).toBeCloseTo(900, 6);
  });
});

describe('pieces, packets and people', () => {
  // Common practice, no source: the rump of a small deer gives two or three steaks. Independent of the shape's own judgement.
  it('of a roe rump are two or three steaks of 3/4 to 1 in', () => {
    for (const mm of [20, 25]) {
      const { pieces } = piecesOf(roe, { ...newLine('a', 'rump', 'steaks', 'left'), ...thick(mm) });
      expect(pieces?.likely).toBeGreaterThanOrEqual(2);
      expect(pieces?.likely).toBeLessThanOrEqual(3);
    }
  });

  // Common practice, no source: a seamed joint off a small deer suits about two people.
  it('of a roe topside joint feed about two', () => {
    const { people, pieces } = piecesOf(roe, { ...newLine('a', 'topside', 'joint', 'left'), size: { kind: 'people', people: 2 } });
    expect(people?.likely).toBe(2);
    expect(pieces?.likely).toBe(1);
  });

  it('of a loin are fewer the thicker they are cut, and half as many butterflied', () => {
    const count = (cut: 'medallions' | 'butterfly', mm: number) => piecesOf(doe, { ...newLine('a', 'loin', cut), ...thick(mm) }).pieces?.likely ?? 0;
    expect(count('medallions', 13)).toBeGreaterThan(count('medallions', 25));
    expect(Math.abs(count('butterfly', 20) * 2 - count('medallions', 20))).toBeLessThanOrEqual(2);
  });

  test.each([
    ['a thickness nobody named', newLine('a', 'loin', 'medallions'), null],
    ['mince', newLine('a', 'neck', 'mince'), null],
    ['two haunches on the bone', newLine('a', 'haunch', 'on-the-bone'), 2],
    ['a saddle, one piece', newLine('a', 'saddle', 'on-the-bone'), 1],
    ['one shank', newLine('a', 'hind-shank', 'shank-on-bone', 'left'), 1],
  ])('of %s', (_, line, pieces) => {
    expect(piecesOf(doe, line).pieces?.likely ?? null).toBe(pieces);
  });

  it('are packed by pieces or by weight', () => {
    const steaks = piecesOf(doe, { ...newLine('a', 'loin', 'medallions'), ...thick(25), pack: { kind: 'pieces', pieces: 4 } });
    expect(steaks.packets?.likely).toBe(Math.ceil((steaks.pieces?.likely ?? 0) / 4));
    const diced = piecesOf(doe, { ...newLine('a', 'shoulder', 'diced'), pack: { kind: 'weight', grams: 454 } });
    expect(diced.packets?.likely).toBeGreaterThan(3);
  });

  it('never fall as the animal gets heavier, and are whole numbers', () => {
    fc.assert(fc.property(anyLine('a'), anyFacts, (line, facts) => {
      const { pieces, packets, people } = piecesOf(facts, line);
      for (const range of [pieces, packets, people]) {
        if (range === null) continue;
        expect(Object.values(range).every((count) => Number.isSafeInteger(count) && count >= 0)).toBe(true);
        expect(range.low <= range.likely && range.likely <= range.high).toBe(true);
      }
    }));
  });
});
