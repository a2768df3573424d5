import type { Condition, DeliveryForm, Flesh, ShotWith, WeightBasis } from '@/lib/carcass';
import type { TestState } from '@/lib/rules';

export const TEST_WORDS: Readonly<Record<TestState, string>> = {
  none: 'None taken',
  pending: 'Result awaited',
  negative: 'Negative',
  positive: 'Positive',
};

export const FLESH_WORDS: Readonly<Record<Flesh, string>> = { lean: 'lean', usual: 'as usual', fat: 'fat' };

export const CONDITION_WORDS: Readonly<Record<Condition, string>> = {
  clean: 'Clean',
  dirty: 'Hair or dirt',
  wet: 'Wet',
  warm: 'Warm',
  frozen: 'Frozen through',
  'gut-shot': 'Gut shot',
  rutting: 'Smells of rut',
  sour: 'Sour or fly-blown',
};

export const SHOT_WORDS: Readonly<Record<ShotWith, string>> = { bullet: 'Bullet', pellets: 'Shot or buckshot', arrow: 'Arrow', unknown: 'Not known' };

/** Which weight the scale showed, in the counter's short words. */
export const BASIS_WORDS: readonly { readonly value: WeightBasis; readonly label: string }[] = [
  { value: 'field-dressed', label: 'Gutted, hide on' },
  { value: 'legs-off', label: 'Gutted, lower legs off' },
  { value: 'hide-on', label: 'Head and legs off, hide on' },
  { value: 'hanging', label: 'Hanging, hide off' },
  { value: 'quarters', label: 'The quarters' },
  { value: 'live', label: 'Alive' },
  { value: 'boneless', label: 'Meat only' },
];

/** How it came in, in the counter's short words. */
export const FORM_WORDS: readonly { readonly value: DeliveryForm; readonly label: string }[] = [
  { value: 'hide-on', label: 'Hide on' },
  { value: 'skinned', label: 'Skinned' },
  { value: 'quartered', label: 'In quarters' },
  { value: 'boned-out', label: 'Boned out' },
];
