import type { NameCountry } from '@/lib/cuts';

/** A hunter's licence as it is spelled in the country: 'license' in the United States. */
export function licenceWord(country: NameCountry): string {
  return country === 'us' ? 'license' : 'licence';
}
