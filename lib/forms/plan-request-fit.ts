import {
  type PartPlace,
  type SpeciesBook,
  type SpeciesFigures,
  buildShareTree,
  findSpecies,
  impliedLiveGrams,
  isDelivered,
  isSidedPart,
  meanShares,
  partsOf,
  placesOf,
  weightFromGirth,
} from '@/lib/carcass';
import { CUTS, type Cut, type CutId, TARGETS, type Target, type TargetId, cutsOf, targetsOfPlan } from '@/lib/cuts';
import type { LineSide } from '@/lib/instructions';
import { withArticle } from './order-form-schema';
import type { PlanRequest } from './plan-request';
import { type PlanProblem, choiceProblem, shownText } from './plan-request-words';

type Line = PlanRequest['instructions']['lines'][number];

/** What does not fit together in a request whose shape is right: with the book, with the body, or with itself. */
export function misfitsOf({ animal, instructions }: PlanRequest, book: SpeciesBook): readonly PlanProblem[] {
  const species = findSpecies(book, animal.speciesId);
  if (!species) return [{ path: 'animal.speciesId', message: choiceProblem(animal.speciesId, Object.keys(book)) }];
  const { lines, products } = instructions;
  return [
    ...weightMisfits(animal, species),
    ...placeMisfits('animal.missing', animal.missing, species),
    ...placeMisfits('animal.wounds', animal.wounds, species),
    ...nothingThere(animal, species),
    ...lines.flatMap((line, at) => lineMisfits(line, species).map(({ path, message }) => ({ path: `instructions.lines.${at}.${path}`, message }))),
    ...repeated('instructions.lines', 'id', lines.map(({ id }) => id)),
    ...repeated('instructions.products', 'productId', products.map(({ productId }) => productId)),
  ];
}

function weightMisfits({ weight, girthMm, ageClass }: PlanRequest['animal'], species: SpeciesFigures): readonly PlanProblem[] {
  const kind = withArticle(species.name);
  const path = weight ? 'animal.weight.grams' : 'animal.girthMm';
  const told = weight ?? (girthMm === null ? null : weightFromGirth(species, { ageClass, girthMm }));
  if (!told) {
    const message = `Nothing here tells the weight of ${kind} of that age from this girth. Write a weight, or leave the girth out.`;
    return girthMm === null ? [] : [{ path, message }];
  }
  const live = impliedLiveGrams(species, told.grams, told.basis);
  const { from, to } = species.plausibleLiveGrams;
  if (live >= from && live <= to) return [];
  const message = `That would be ${kind} of ${live} grams alive; they run from ${from} to ${to}. Check the ${weight ? 'grams, the basis' : 'millimetres'} and the species.`;
  return [{ path, message }];
}

function placeMisfits(path: string, places: readonly PartPlace[], species: SpeciesFigures): readonly PlanProblem[] {
  const parts = partsOf(species.plan);
  return places.flatMap(({ part, place }, at): PlanProblem[] => {
    if (!parts.includes(part)) return [{ path: `${path}.${at}.part`, message: hasNo(species, part, parts) }];
    if (placesOf(isSidedPart(part)).includes(place)) return [];
    const message = isSidedPart(part) ? `The ${part} comes in two halves. Write left or right, one entry each.` : `The ${part} lies in the middle. Write middle.`;
    return [{ path: `${path}.${at}.place`, message }];
  });
}

function hasNo(species: SpeciesFigures, asked: string, there: readonly string[]): string {
  const kind = withArticle(species.name);
  return `${kind.charAt(0).toUpperCase()}${kind.slice(1)} has no ${asked}. It has: ${there.join(', ')}.`;
}

function nothingThere({ form, missing }: PlanRequest['animal'], { composition }: SpeciesFigures): readonly PlanProblem[] {
  const came = meanShares(buildShareTree(composition)).some(({ key, share }) => share > 0 && isDelivered({ form, missing }, key));
  return came ? [] : [{ path: 'animal.missing', message: 'Nothing is left of the animal then. Leave out of this list what does come.' }];
}

function lineMisfits({ target, side, cut, size, pack }: Line, species: SpeciesFigures): readonly PlanProblem[] {
  const targets = targetsOfPlan(species.plan);
  if (!targets.includes(target)) return [{ path: 'target', message: hasNo(species, target, targets) }];
  const problems: PlanProblem[] = [];
  const sides = SIDES_OF[TARGETS[target].reach];
  if (side !== undefined && !sides.includes(side)) {
    problems.push({ path: 'side', message: `${target} is not there as ${side}. Write ${sides.join(' or ')}, or leave the side out.` });
  }
  if (!CUTS[cut].targets.includes(target)) problems.push({ path: 'cut', message: cutProblem(target, cut) });
  const { sizing, packing } = CUTS[cut];
  if (size.kind !== 'as-seen-fit' && !SIZES_OF[sizing].includes(size.kind)) {
    problems.push({ path: 'size.kind', message: `The size of ${cut} is not told by ${size.kind}. ${writeKind(SIZES_OF[sizing])}` });
  }
  if (pack.kind !== 'as-seen-fit' && pack.kind !== packing) {
    problems.push({ path: 'pack.kind', message: `${cut} is not packed by ${pack.kind}. ${writeKind(packing === 'each' ? [] : [packing])}` });
  }
  return problems;
}

const SIDES_OF: Readonly<Record<Target['reach'], readonly LineSide[]>> = { sided: ['left', 'right', 'both'], middle: ['middle'], 'both-as-one': ['both'] };
const SIZES_OF: Readonly<Record<Cut['sizing'], readonly string[]>> = { none: [], thickness: ['thickness'], joint: ['weight', 'people'] };

function cutProblem(target: TargetId, cut: CutId): string {
  return `${cut} cannot be made from ${target}. There can be: ${cutsOf(target).join(', ')}.`;
}

function writeKind(there: readonly string[]): string {
  return `Write ${[...there, 'as-seen-fit'].join(' or ')}.`;
}

function repeated(path: string, key: string, values: readonly (string | undefined)[]): readonly PlanProblem[] {
  return values.flatMap((value, at): PlanProblem[] =>
    value !== undefined && values.indexOf(value) < at
      ? [{ path: `${path}.${at}.${key}`, message: `"${shownText(value)}" is there already. Write it once.` }]
      : [],
  );
}
