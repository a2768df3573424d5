import type { Condition } from '@/lib/orders';
import type { TestState } from '@/lib/rules';

export const TEST_WORDS: Readonly<Record<TestState, string>> = {
  none: 'No sample taken',
  pending: 'Taken, result awaited',
  negative: 'Negative',
  positive: 'Positive',
};

export const CONDITION_WORDS: Readonly<Record<Condition, string>> = {
  clean: 'Clean',
  dirty: 'Hair or dirt',
  wet: 'Wet',
  warm: 'Warm',
  'gut-shot': 'Gut shot',
  sour: 'Smells sour',
};
