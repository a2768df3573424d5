import type { SpeciesBook } from '@/lib/carcass';
import { type ShopView, assessAnimal } from '@/lib/orders';
import { type PlanAnswer, planAnswer } from './plan-answer';
import { type PlanRequest, instructionsOf, planRequestSchema } from './plan-request';
import { misfitsOf } from './plan-request-fit';
import { MOST_PROBLEMS, type PlanProblem, anyProblem, problemsOf } from './plan-request-words';

/** Whose species answer, and how that shop hangs, trims and speaks where the request does not say. */
export type PlanDesk = Pick<ShopView, 'species' | 'country' | 'unit' | 'ways' | 'terms' | 'ruleChanges'> & Partial<Pick<ShopView, 'law'>>;

/** A checked request, or its mistakes with their paths: first those of shape, then what does not fit together. */
export function parsePlanRequest(
  asked: unknown,
  book: SpeciesBook,
): { readonly ok: true; readonly value: PlanRequest } | { readonly ok: false; readonly errors: readonly PlanProblem[] } {
  const read = planRequestSchema.safeParse(asked, { error: anyProblem, reportInput: true });
  if (!read.success) return { ok: false, errors: problemsOf(read.error) };
  const misfits = misfitsOf(read.data, book);
  return misfits.length > 0 ? { ok: false, errors: misfits.slice(0, MOST_PROBLEMS) } : { ok: true, value: read.data };
}

/** Forecast, plan and findings for another program: the computation behind the form, from a request as JSON. Pure. */
export function answerPlanRequest(
  asked: unknown,
  desk: PlanDesk,
): { readonly ok: true; readonly value: PlanAnswer } | { readonly ok: false; readonly errors: readonly PlanProblem[] } {
  const read = parsePlanRequest(asked, desk.species);
  if (!read.ok) return read;
  const { stage, words, animal } = read.value;
  const { diseaseZone, test, ...told } = animal;
  const { hung = desk.ways?.hung ?? null, closeTrim = desk.ways?.closeTrim ?? false } = told;
  const facts = { ...told, hung, closeTrim };
  const instructions = instructionsOf(read.value);
  const assessed = assessAnimal(
    { stage, facts, instructions, diseaseZone, test },
    { ...desk, country: words.country ?? desk.country, unit: words.unit ?? desk.unit },
  );
  return { ok: true, value: planAnswer(assessed, instructions) };
}
