/** A forecast weight in integer grams: the 10th, 50th and 90th percentile, so low <= likely <= high. */
export type Range = { readonly low: number; readonly likely: number; readonly high: number };
