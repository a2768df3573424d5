import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { CUTS, CUT_IDS, TARGET_IDS, cutsOf } from '@/lib/cuts';
import { PLAIN_INSTRUCTIONS, type Edit, type Instructions, applyEdits, newLine, nextLineId, placesOfLine, usualSide } from '@/lib/instructions';
import { anyInstructions, anyLine } from './any-instructions';

const joint = { ...newLine('line-1', 'topside', 'joint'), size: { kind: 'people', people: 4 } as const, askedGrams: 900 };
const medallions = { ...newLine('line-2', 'loin', 'medallions'), size: { kind: 'thickness', thicknessMm: 25 } as const, pack: { kind: 'pieces', pieces: 2 } as const };

const start: Instructions = {
  ...PLAIN_INSTRUCTIONS,
  lines: [joint, medallions],
  rest: 'undecided',
  squaredOff: 'stew',
  mince: { addedFat: 'pork', fatPercent: 15, packGrams: 454, shape: 'bulk' },
  stewPackGrams: 454,
  products: [{ productId: 'fresh-sausage', gameGrams: 2_000 }],
  keep: { heart: true, liver: false, bones: true, antlers: 'whole-head', cape: false, hide: false, taxidermist: '' },
  noPork: false,
  note: 'by Friday',
};

function after(...edits: readonly Edit[]): Instructions {
  return applyEdits(start, edits);
}

describe('an edit', () => {
  it('takes a line off', () => {
    expect(after({ kind: 'remove-line', lineId: 'line-1' }).lines).toEqual([medallions]);
  });

  it('moves a line to another side', () => {
    expect(after({ kind: 'set-side', lineId: 'line-1', side: 'left' }).lines[0]).toEqual({ ...joint, side: 'left' });
  });

  it('changes a cut and keeps the size and pack that still fit', () => {
    expect(after({ kind: 'set-cut', lineId: 'line-2', cut: 'chops' }).lines[1]).toEqual({ ...medallions, cut: 'chops' });
  });

  it('lets go of a size and pack that the new cut cannot have', () => {
    expect(after({ kind: 'set-cut', lineId: 'line-1', cut: 'diced' }).lines[0]).toEqual({ ...joint, cut: 'diced', size: { kind: 'as-seen-fit' } });
    expect(after({ kind: 'set-cut', lineId: 'line-2', cut: 'portions' }).lines[1]).toEqual({
      ...medallions, cut: 'portions', size: { kind: 'as-seen-fit' }, pack: { kind: 'as-seen-fit' },
    });
  });

  it('sets and lifts an amount', () => {
    expect(after({ kind: 'set-asked', lineId: 'line-1', askedGrams: null }).lines[0]?.askedGrams).toBeNull();
    expect(after({ kind: 'set-asked', lineId: 'line-2', askedGrams: 500 }).lines[1]?.askedGrams).toBe(500);
  });

  it('sets a size that the cut can have, and leaves the line alone where it cannot', () => {
    expect(after({ kind: 'set-size', lineId: 'line-2', size: { kind: 'thickness', thicknessMm: 10 } }).lines[1]?.size).toEqual({ kind: 'thickness', thicknessMm: 10 });
    expect(after({ kind: 'set-size', lineId: 'line-1', size: { kind: 'as-seen-fit' } }).lines[0]?.size).toEqual({ kind: 'as-seen-fit' });
    expect(after({ kind: 'set-size', lineId: 'line-2', size: { kind: 'people', people: 4 } })).toEqual(start);
  });

  it('adds a line with an id that is free', () => {
    const { lines } = after({ kind: 'remove-line', lineId: 'line-1' }, { kind: 'add-line', target: 'neck', side: 'middle', cut: 'diced' });
    expect(lines.map(({ id }) => id)).toEqual(['line-2', 'line-3']);
    expect(lines[1]).toEqual(newLine('line-3', 'neck', 'diced'));
  });

  it('changes what becomes of the rest, the fat, the products, what is kept, pork, and the note', () => {
    expect(
      after(
        { kind: 'set-rest', rest: 'mince' },
        { kind: 'set-fat', addedFat: 'beef', fatPercent: 20 },
        { kind: 'set-product', productId: 'fresh-sausage', gameGrams: 900 },
        { kind: 'set-antlers', antlers: 'none' },
        { kind: 'set-keep', item: 'bones', keep: false },
        { kind: 'set-no-pork', noPork: true },
        { kind: 'set-note', note: 'by Monday' },
      ),
    ).toEqual({
      ...start,
      rest: 'mince',
      mince: { addedFat: 'beef', fatPercent: 20, packGrams: 454, shape: 'bulk' },
      products: [{ productId: 'fresh-sausage', gameGrams: 900 }],
      keep: { ...start.keep, antlers: 'none', bones: false },
      noPork: true,
      note: 'by Monday',
    });
  });

  it('of a product to nothing takes it off', () => {
    expect(after({ kind: 'set-product', productId: 'fresh-sausage', gameGrams: 0 }).products).toEqual([]);
  });

  it('leaves what it was given untouched', () => {
    const frozen = structuredClone(start);
    after({ kind: 'remove-line', lineId: 'line-1' }, { kind: 'set-rest', rest: 'stew' });
    expect(start).toEqual(frozen);
  });

  const toLines: readonly ((lineId: string) => Edit)[] = [
    (lineId) => ({ kind: 'remove-line', lineId }),
    (lineId) => ({ kind: 'set-cut', lineId, cut: 'mince' }),
    (lineId) => ({ kind: 'set-side', lineId, side: 'left' }),
    (lineId) => ({ kind: 'set-asked', lineId, askedGrams: 1 }),
    (lineId) => ({ kind: 'set-size', lineId, size: { kind: 'as-seen-fit' } }),
  ];
  it('of a line that is gone changes nothing', () => {
    fc.assert(fc.property(anyInstructions, fc.constantFrom(...toLines), (instructions, toLine) => {
      expect(applyEdits(instructions, [toLine('gone')])).toEqual(instructions);
    }));
  });

  it('never leaves a size or pack that its cut cannot have', () => {
    const line = anyLine('line-1').chain((one) => fc.record({ one: fc.constant(one), cut: fc.constantFrom(...cutsOf(one.target)) }));
    fc.assert(fc.property(line, ({ one, cut }) => {
      const [changed] = applyEdits({ ...start, lines: [one] }, [{ kind: 'set-cut', lineId: 'line-1', cut }]).lines;
      const sizes = { none: ['as-seen-fit'], thickness: ['as-seen-fit', 'thickness'], joint: ['as-seen-fit', 'weight', 'people'] };
      const packs = { each: ['as-seen-fit'], pieces: ['as-seen-fit', 'pieces'], weight: ['as-seen-fit', 'weight'] };
      expect(sizes[CUTS[cut].sizing]).toContain(changed?.size.kind);
      expect(packs[CUTS[cut].packing]).toContain(changed?.pack.kind);
    }));
  });
});

describe('a line', () => {
  it('starts as the butcher sees fit, on both sides or in the middle', () => {
    expect(newLine('line-1', 'neck', 'diced')).toEqual({
      id: 'line-1', target: 'neck', side: 'middle', cut: 'diced', size: { kind: 'as-seen-fit' }, pack: { kind: 'as-seen-fit' }, askedGrams: null,
    });
    expect(usualSide('topside')).toBe('both');
    expect(usualSide('saddle')).toBe('both');
  });

  const ids = [
    [[], 'line-1'],
    [['line-1'], 'line-2'],
    [['line-2'], 'line-3'],
    [['line-1', 'line-3'], 'line-4'],
    [['a', 'b'], 'line-3'],
  ] as const;
  test.each(ids)('after %j is %s', (taken, next) => {
    expect(nextLineId(taken.map((id) => ({ id })))).toBe(next);
  });

  it('never gets an id that is taken', () => {
    fc.assert(fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 20 })), (numbers) => {
      const lines = numbers.map((n) => ({ id: `line-${n}` }));
      expect(lines.map(({ id }) => id)).not.toContain(nextLineId(lines));
    }));
  });

  const places = [
    ['topside', 'left', ['left']],
    ['topside', 'both', ['left', 'right']],
    ['saddle', 'left', ['left', 'right']],
    ['neck', 'both', ['middle']],
  ] as const;
  test.each(places)('for the %s, %s, speaks of %j', (target, side, spoken) => {
    expect(placesOfLine({ target, side })).toEqual(spoken);
  });

  it('can be started for every target and cut of the menu', () => {
    for (const cut of CUT_IDS) for (const target of TARGET_IDS) expect(newLine('line-1', target, cut).side).toBe(usualSide(target));
  });
});
