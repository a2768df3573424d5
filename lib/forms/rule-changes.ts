import { z } from 'zod';
import { SOFTER_SEVERITIES } from '@/lib/rules';
import { lineOf } from './text-fields';

/** Why a shop softens a rule: said to whoever asks, so it has to be there. */
export const softeningReason = lineOf({
  missing: 'Say why you do it otherwise: hunters read it on the page of the rule',
  longest: 200,
});

/** The rules a shop has softened, as they are stored. */
export const ruleChangesSchema = z.record(z.string(), z.object({ severity: z.enum(SOFTER_SEVERITIES), reason: softeningReason }));
