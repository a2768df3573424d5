import { type AnimalFacts, type SpeciesFigures, type WeightBasis, buildShareTree, forecastCarcass, readTissueKey } from '@/lib/carcass';
import { PLAIN_INSTRUCTIONS, type InstructionLine, type Instructions, newLine } from '@/lib/instructions';
import type { Weighed } from '@/lib/learning';
import { type Plan, planOrder } from '@/lib/plan';
import type { Range } from '@/lib/units';
import { drawBeta, drawLeaves, drawWeight, uniforms } from '../carcass/dirichlet-sampler';

/** How a shop's animals truly are, against the published figures: factors on shares and on how firmly they are known. */
export type Difference = {
  readonly hanging?: number;
  readonly meat?: number;
  readonly haunch?: number;
  readonly loin?: number;
  /** Above one: its animals are more alike than the published ones. */
  readonly firmness?: number;
};

/** A species as it truly is in one shop. */
export function trueSpecies(published: SpeciesFigures, { hanging = 1, meat = 1, haunch = 1, loin = 1, firmness = 1 }: Difference): SpeciesFigures {
  const { fieldDressed, composition } = published;
  const rescaled = <Shares extends object>(per10k: Shares, factors: Partial<Record<keyof Shares, number>>): Shares => {
    const raw = Object.entries(per10k).map(([name, share]): [string, number] => [name, share * (factors[name as keyof Shares] ?? 1)]);
    const fixed = raw.filter(([name]) => name in factors).reduce((sum, [, share]) => sum + share, 0);
    const loose = raw.filter(([name]) => !(name in factors)).reduce((sum, [, share]) => sum + share, 0);
    return Object.fromEntries(raw.map(([name, share]) => [name, name in factors ? share : (share * (10_000 - fixed)) / loose])) as Shares;
  };
  return {
    ...published,
    fieldDressed: { per10k: rescaled(fieldDressed.per10k, { hanging }), concentration: fieldDressed.concentration * firmness },
    composition: {
      ...composition,
      carcass: { per10k: rescaled(composition.carcass.per10k, { meat }), concentration: composition.carcass.concentration * firmness },
      meat: { per10k: rescaled(composition.meat.per10k, { haunch, loin }), concentration: composition.meat.concentration * firmness },
    },
  };
}

/** One animal through the shop: as it came, as it truly was, and how it was wished cut. */
export type Animal = { readonly fieldDressedGrams: number; readonly hangingGrams: number; readonly grams: ReadonlyMap<string, number>; readonly instructions: Instructions };

const WISHES: readonly (readonly InstructionLine[])[] = [
  [newLine('a', 'loin', 'medallions'), newLine('b', 'topside', 'joint'), newLine('c', 'thick-flank', 'joint'), newLine('d', 'silverside', 'steaks'), newLine('e', 'rump', 'steaks'), newLine('f', 'salmon-cut', 'whole')],
  [newLine('a', 'loin', 'whole'), newLine('b', 'shoulder', 'diced'), newLine('c', 'fillet', 'whole')],
  [newLine('a', 'haunch', 'steaks'), newLine('b', 'loin', 'medallions')],
  [newLine('a', 'neck', 'diced'), newLine('b', 'haunch', 'diced'), newLine('c', 'shoulder', 'boned-and-rolled')],
];

export function animals(truth: SpeciesFigures, count: number, seed: number): readonly Animal[] {
  const next = uniforms(seed);
  const tree = buildShareTree(truth.composition);
  return Array.from({ length: count }, (_, serial): Animal => {
    const fieldDressedGrams = Math.round(drawWeight(50_000, 0.2, next));
    const hangingGrams = Math.round(fieldDressedGrams * drawBeta(truth.fieldDressed.per10k.hanging / 10_000, truth.fieldDressed.concentration, next));
    const grams = new Map([...drawLeaves(tree, next)].map(([key, share]): [string, number] => [key, share * hangingGrams]));
    return { fieldDressedGrams, hangingGrams, grams, instructions: { ...PLAIN_INSTRUCTIONS, lines: WISHES[serial % WISHES.length] ?? [] } };
  });
}

function factsOf(truth: SpeciesFigures, weight: AnimalFacts['weight']): AnimalFacts {
  return { speciesId: truth.id, sex: 'male', ageClass: 'adult', weight, form: 'hide-on', missing: [], wounds: [] };
}

/** The plan of an animal that hangs, by these figures. */
export function planOf(figures: SpeciesFigures, { hangingGrams, instructions }: Pick<Animal, 'hangingGrams' | 'instructions'>): Plan {
  return planOrder(instructions, forecastCarcass(factsOf(figures, { grams: hangingGrams, basis: 'hanging' }), { [figures.id]: figures }));
}

/** The plan of an animal of which nothing is named. */
export function planHanging(figures: SpeciesFigures, hangingGrams: number): Plan {
  return planOf(figures, { hangingGrams, instructions: PLAIN_INSTRUCTIONS });
}

/** The plan of an animal as it comes in, by these figures. */
export function planAtDoorOf(figures: SpeciesFigures, { fieldDressedGrams, instructions }: Animal): Plan {
  return planOrder(instructions, forecastCarcass(factsOf(figures, { grams: fieldDressedGrams, basis: 'field-dressed' }), { [figures.id]: figures }));
}

/** The forecast of what hangs, from a weight it came in at. */
export function hangingFrom(figures: SpeciesFigures, grams: number, basis: WeightBasis): Range {
  return forecastCarcass(factsOf(figures, { grams, basis }), { [figures.id]: figures }).hanging;
}

/** The forecast of what hangs, from the weight it came in at. */
export function hangingOf(figures: SpeciesFigures, { fieldDressedGrams }: Animal): Range {
  return hangingFrom(figures, fieldDressedGrams, 'field-dressed');
}

/** Animals as they came in and as they hung, weighed at the door on one basis. */
export function arrivals(truth: SpeciesFigures, basis: WeightBasis, count: number, seed: number): readonly { readonly grams: number; readonly hangingGrams: number }[] {
  const next = uniforms(seed);
  const { per10k, concentration } = truth.fieldDressed;
  const { mean, sd } = truth.fieldDressedPerLive;
  return Array.from({ length: count }, () => {
    const live = drawWeight(25_000, 0.15, next);
    const gutted = live * drawBeta(mean, (mean * (1 - mean)) / sd ** 2 - 1, next);
    // Head and legs come off first, then the hide: shares of a Dirichlet are Beta shares of what is left.
    const withoutLegs = drawBeta(1 - per10k['lower-legs'] / 10_000, concentration, next);
    const headless = drawBeta((per10k.hide + per10k.hanging) / (10_000 - per10k['lower-legs']), concentration * (1 - per10k['lower-legs'] / 10_000), next);
    const skinned = drawBeta(per10k.hanging / (per10k.hide + per10k.hanging), (concentration * (per10k.hide + per10k.hanging)) / 10_000, next);
    const at: Partial<Record<WeightBasis, number>> = { live, 'field-dressed': gutted, 'legs-off': gutted * withoutLegs, 'hide-on': gutted * withoutLegs * headless };
    return { grams: Math.round(at[basis] ?? 0), hangingGrams: Math.round(gutted * withoutLegs * headless * skinned) };
  });
}

/** What the shop's scales show of it: each tissue goes where the plan sends it, in the plan's proportions. */
export function weighedOf(plan: Plan, animal: Animal): Weighed & { readonly totalGrams: number } {
  const lines = new Map<string, number>();
  let pooledGrams = 0;
  for (const row of plan.ledger) {
    const truly = (animal.grams.get(row.key) ?? 0) / Math.max(1, row.grams);
    if (row.lineId && row.packed > 0) lines.set(row.lineId, (lines.get(row.lineId) ?? 0) + row.packed * truly);
    if (readTissueKey(row.key).kind === 'muscle') pooledGrams += (row.pools.stewing + row.pools.grinding + row.pools['whole-muscle']) * truly;
  }
  const totalGrams = [...lines.values()].reduce((sum, grams) => sum + grams, 0) + pooledGrams;
  return { arrived: { grams: animal.fieldDressedGrams, basis: 'field-dressed' }, railGrams: animal.hangingGrams, lines, pooledGrams, totalGrams };
}
