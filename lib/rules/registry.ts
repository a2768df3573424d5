import { moreThanTheAnimalGives } from './all/more-than-the-animal-gives';
import { musclePromisedTwice } from './all/muscle-promised-twice';
import type { Rule } from './rule';

/** Every rule there is, in the order their findings are read when severity and part are the same. */
export const RULES: readonly Rule[] = [musclePromisedTwice, moreThanTheAnimalGives];
