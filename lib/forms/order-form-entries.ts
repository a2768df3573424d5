import type { OrderFormValues } from './order-form-values';

/**
 * The form's values as the names and texts a browser would send, ticked boxes as 'on': what the check page carries
 * in hidden inputs. `readOrderForm` of the result gives the same values.
 *
 * @example orderFormEntries(values) // [['formKey', 'k7q...'], ['animal.speciesId', 'roe-deer'], ...]
 */
export function orderFormEntries(values: OrderFormValues): readonly (readonly [string, string])[] {
  return flatten('', values);
}

function flatten(path: string, value: unknown): readonly (readonly [string, string])[] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value === 'boolean') return value ? [[path, 'on']] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([step, inner]) => flatten(path === '' ? step : `${path}.${step}`, inner));
}
