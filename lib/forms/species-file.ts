import { z } from 'zod';
import {
  AGE_CLASSES, ANATOMY, BODY_PLANS, type BodyPlan, DRESSING_PARTS, type PartId, SEXES, type SpeciesFigures, WEIGHT_BASES, figuresOf, partsOf,
} from '@/lib/carcass';

/** A mistake in a species file: where, and a sentence with the way out. */
export type SpeciesFileProblem = { readonly path: string; readonly message: string };

const evidence = {
  n: z.int('Write how many animals stand behind it, 0 where it is judgement.').min(0),
  source: z.string('Write where it is from: a title, or JUDGEMENT.').min(1, 'Write where it is from: a title, or JUDGEMENT.'),
  why: z.string('Write in a sentence why it is so.').min(1, 'Write in a sentence why it is so.'),
};
const figure = (what: string) =>
  z.strictObject({ mean: z.number(`Write the mean ${what}.`).positive(), sd: z.number(`Write the standard deviation ${what}.`).positive(), ...evidence });
const share = z.number('Write ten-thousandths, a number from 0 to 10000.').min(0).max(10_000);
const shares = z.strictObject({
  per10k: z.record(z.string(), share).refine((per10k) => Math.abs(Object.values(per10k).reduce((sum, one) => sum + one, 0) - 10_000) < 0.01, 'These shares must sum to 10000.'),
  concentration: z.number('Write how firmly the shares are known: a share m varies by m(1-m)/(concentration+1).').min(2),
  ...evidence,
});
const word = z.string('Write a word people use.').min(1).max(40);
const grams = z.number('Write grams.').positive();

const speciesFile = z
  .strictObject({
    id: z.string().regex(/^[a-z][a-z0-9-]{1,40}$/, 'Use small letters, digits and hyphens, such as axis-deer.'),
    plan: z.enum(BODY_PLANS, 'Write four-legged or bird.'),
    name: word,
    maleName: word,
    femaleName: word,
    youngName: word,
    trophy: z.strictObject({ name: z.enum(['antlers', 'horns', 'tusks']), on: z.enum(['male', 'both']) }).nullable(),
    cooking: z.enum(['game', 'birds-bear-boar'], 'Write game, or birds-bear-boar for what must reach 165 F (74 C).'),
    plausibleLiveGrams: z.object({ from: grams, to: grams }),
    fieldDressedPerLive: figure('share of the live weight'),
    fieldDressed: shares,
    girth: z.array(
      z.strictObject({
        ageClasses: z.array(z.enum(AGE_CLASSES)).min(1),
        basis: z.enum(['live', 'field-dressed']),
        points: z.array(z.strictObject({ girthMm: grams, grams })).min(2, 'A line takes two points or more.'),
        cv: z.number().positive().max(1),
        ...evidence,
      }),
    ).default([]),
    typicalWeights: z.array(
      z.strictObject({ sex: z.enum(SEXES).exclude(['unknown']), ageClass: z.enum(AGE_CLASSES).exclude(['unknown']), basis: z.enum(WEIGHT_BASES), grams: figure('in grams') }),
    ),
    composition: z.strictObject({
      carcass: shares,
      meat: shares,
      muscles: z.record(z.string(), shares),
      bone: shares,
      cover: shares,
      sideConcentration: z.number().min(2),
    }),
  })
  .superRefine((file, context) => {
    const wrong = (path: readonly (string | number)[], message: string): void => context.addIssue({ code: 'custom', path: [...path], message });
    const names = (path: readonly string[], per10k: object, wanted: readonly string[]): void => {
      for (const name of wanted) if (!Object.hasOwn(per10k, name)) wrong(path, `${name} is missing here.`);
      for (const name of Object.keys(per10k)) if (!wanted.includes(name)) wrong([...path, name], `There is no ${name} here; there is ${wanted.join(', ')}.`);
    };
    names(['fieldDressed', 'per10k'], file.fieldDressed.per10k, DRESSING_PARTS);
    names(['composition', 'carcass', 'per10k'], file.composition.carcass.per10k, ['meat', 'bone', 'cover', 'drying']);
    names(['composition', 'meat', 'per10k'], file.composition.meat.per10k, partsWithMeat(file.plan));
    names(['composition', 'bone', 'per10k'], file.composition.bone.per10k, tissuesOf(file.plan, 'bone'));
    names(['composition', 'cover', 'per10k'], file.composition.cover.per10k, tissuesOf(file.plan, 'cover'));
    for (const part of partsWithMeat(file.plan)) {
      const muscles = musclesOf(part);
      const split = file.composition.muscles[part];
      if (muscles.length > 1 && !split) wrong(['composition', 'muscles'], `${part} is missing here.`);
      else if (split) names(['composition', 'muscles', part, 'per10k'], split.per10k, muscles);
    }
    for (const sex of ['male', 'female'] as const) {
      for (const ageClass of ['young', 'yearling', 'adult'] as const) {
        if (!file.typicalWeights.some((row) => row.sex === sex && row.ageClass === ageClass)) wrong(['typicalWeights'], `What a ${ageClass} ${sex} weighs is missing.`);
      }
    }
  });

/**
 * Reads a shop's own species: the shape of a published one, every number with its evidence. Either its figures, or every mistake
 * with its path.
 */
export function parseSpeciesFile(file: unknown): { readonly ok: true; readonly value: SpeciesFigures } | { readonly ok: false; readonly problems: readonly SpeciesFileProblem[] } {
  const checked = speciesFile.safeParse(file);
  if (!checked.success) return { ok: false, problems: checked.error.issues.map(({ path, message }) => ({ path: path.map(String).join('.'), message })) };
  // The names of parts and tissues were held against the body above; zod sees them as texts.
  return { ok: true, value: figuresOf(checked.data as unknown as SpeciesFigures) };
}

function tissuesOf(plan: BodyPlan, kind: 'muscle' | 'bone' | 'cover'): readonly string[] {
  return Object.entries(ANATOMY).filter(([, one]) => one.kind === kind && partsOf(plan).includes(one.part)).map(([id]) => id);
}

function musclesOf(part: PartId): readonly string[] {
  return Object.entries(ANATOMY).filter(([, one]) => one.kind === 'muscle' && one.part === part).map(([id]) => id);
}

function partsWithMeat(plan: BodyPlan): readonly PartId[] {
  return partsOf(plan).filter((part) => musclesOf(part).length > 0);
}
