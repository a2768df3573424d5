import { describe, expect, it, test } from 'vitest';
import { checkTariff, type Tariff } from '@/lib/pricing';
import { defaultTariff } from '@/seed/default-tariff';
import { sampleTariff } from './sample';

const [deer, roe] = sampleTariff.base;
const [rolled] = sampleTariff.perWeight;
const [skinning] = sampleTariff.perPiece;
if (!deer || !roe || !rolled || !skinning) throw new Error('The sample tariff lost a row');

const steps = (...rows: [number, number][]): Tariff => ({
  ...sampleTariff,
  base: [{
    ...deer,
    charge: {
      kind: 'steps', excessRatePer10k: 0, steps: rows.map(([upToHundredths, amountMinor]) => ({ upToHundredths, amountMinor })),
    },
  }],
});

describe('checkTariff', () => {
  it('has nothing to say about the price list a shop starts from', () => {
    expect(checkTariff(defaultTariff)).toEqual([]);
    expect(checkTariff(sampleTariff)).toEqual([]);
  });

  const unsound: [string, Tariff, string, string][] = [
    ['an animal with two base prices', { ...sampleTariff, base: [deer, { ...roe, speciesIds: ['white-tailed-deer'] }] },
      'base.1.speciesIds', 'The same animal has two base prices, Deer and Roe deer. Leave it in one.'],
    ['a base price for no animal', { ...sampleTariff, base: [{ ...deer, speciesIds: [] }] },
      'base.0.speciesIds', 'Choose the animals Deer is for.'],
    ['an included service nobody offers', { ...sampleTariff, base: [{ ...deer, includes: ['massage'] }] },
      'base.0.includes', 'Deer includes a service that is not in the list.'],
    ['no steps', steps(), 'base.0.charge.steps', 'Give Deer at least one step.'],
    ['steps out of order', steps([6000, 100], [6000, 200]),
      'base.0.charge.steps.1.upToHundredths', 'Each step of Deer goes to a higher weight than the one before.'],
    ['a heavier step that costs less', steps([6000, 200], [7000, 100]),
      'base.0.charge.steps.1.amountMinor', 'A heavier animal costs less than a lighter one in Deer. Raise this step.'],
    ['a negative price', { ...sampleTariff, perPiece: [skinning, { ...skinning, id: 'b', eachMinor: -1 }] },
      'perPiece.1.eachMinor', 'Write this figure as a number, zero or more.'],
    ['a fraction of a cent', { ...sampleTariff, perPiece: [skinning, { ...skinning, id: 'b', eachMinor: 0.5 }] },
      'perPiece.1.eachMinor', 'Write this figure as a number, zero or more.'],
    ['a tax above the whole', { ...sampleTariff, taxes: [...sampleTariff.taxes, { id: 'x', name: 'Tax', ratePer100k: 600_000 }] },
      'taxes.2.ratePer100k', 'Tax is more than 100%. Write 6 for 6%.'],
    ['a tax nobody levies', { ...sampleTariff, perWeight: [{ ...rolled, taxId: 'moon' }] },
      'perWeight.0.taxId', 'Boning and rolling names a tax that is not in the list.'],
    ['a price for no cut', { ...sampleTariff, perWeight: [{ ...rolled, cutIds: [] }] },
      'perWeight.0.cutIds', 'Choose the cuts Boning and rolling is for.'],
    ['the same price twice', { ...sampleTariff, perWeight: [rolled, rolled] },
      'perWeight.1.id', 'Boning and rolling is in the list twice. Take one away.'],
    ['a price without a name', { ...sampleTariff, perWeight: [{ ...rolled, name: ' ' }] },
      'perWeight.0.name', 'Give this price a name.'],
  ];
  test.each(unsound)('tells of %s', (_what, tariff, path, message) => {
    expect(checkTariff(tariff)).toEqual([{ path, message }]);
  });
});
