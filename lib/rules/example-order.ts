import { type AnimalFacts, forecastCarcass } from '@/lib/carcass';
import type { CutId, TargetId } from '@/lib/cuts';
import { type InstructionLine, type Instructions, type LineSide, PLAIN_INSTRUCTIONS, newLine, usualSide } from '@/lib/instructions';
import { planOrder } from '@/lib/plan';
import { PLAIN_CIRCUMSTANCES, type Circumstances, type ExampleOrder, type RuledOrder, type Stage } from './rule';

/** What an example changes of the plain order: an adult white-tailed doe of 100 lb field-dressed, everything minced. */
export type ExampleChanges = {
  readonly lines?: readonly InstructionLine[];
  readonly instructions?: Partial<Instructions>;
  readonly facts?: Partial<AnimalFacts>;
  readonly circumstances?: Partial<Omit<Circumstances, 'sex' | 'form'>>;
  readonly stage?: Stage;
  readonly words?: RuledOrder['words'];
};

const PLAIN_FACTS: AnimalFacts = {
  speciesId: 'white-tailed-deer',
  sex: 'female',
  ageClass: 'adult',
  weight: { grams: 45_359, basis: 'field-dressed' },
  form: 'hide-on',
  missing: [],
  wounds: [],
};

/** An order for a rule's examples and tests: the plain one with changes, planned with the species of a book. */
export function exampleOrder(changes: ExampleChanges = {}): ExampleOrder {
  return (book) => {
    const facts = { ...PLAIN_FACTS, ...changes.facts };
    const instructions = { ...PLAIN_INSTRUCTIONS, ...changes.instructions, lines: changes.lines ?? [] };
    return {
      stage: changes.stage ?? 'order',
      instructions,
      plan: planOrder(instructions, forecastCarcass(facts, book)),
      circumstances: { ...PLAIN_CIRCUMSTANCES, ...changes.circumstances, sex: facts.sex, form: facts.form },
      words: changes.words ?? { country: 'uk', unit: 'lb' },
    };
  };
}

/** A line for an example. */
export function exampleLine(
  id: string,
  target: TargetId,
  cut: CutId,
  rest: Partial<Omit<InstructionLine, 'id' | 'target' | 'cut'>> & { readonly side?: LineSide } = {},
): InstructionLine {
  return { ...newLine(id, target, cut, usualSide(target)), ...rest };
}
