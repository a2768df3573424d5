import type { Currency, WeightUnit } from '@/lib/units';

/** What was done to one animal, as weighed or as forecast. Weights in integer grams, money in minor units. */
export type BillFacts = {
  readonly speciesId: string;
  readonly hangingGrams: number;
  readonly arrivedSkinned: boolean;
  readonly packed: readonly {
    readonly label: string;
    readonly cutId: string;
    readonly grams: number;
    readonly packages: number;
  }[];
  readonly extras: readonly { readonly extraId: string; readonly count: number }[];
  readonly products: readonly {
    readonly productId: string;
    readonly finishedGrams: number;
    readonly addedGrams: number;
  }[];
  /** Paid at drop-off, and not named again among the payments. */
  readonly depositMinor: number;
  /** A negative payment is money given back. */
  readonly payments: readonly { readonly amountMinor: number }[];
};

/** What an amount was worked out from, for the reader to check. */
export type LineBasis =
  | { readonly kind: 'flat'; readonly upToHundredths: number | null; readonly unit: WeightUnit }
  | {
      readonly kind: 'weight';
      readonly quantityHundredths: number;
      /** The quantity is what lies above this weight; zero where all of it is charged. */
      readonly aboveHundredths: number;
      readonly unit: WeightUnit;
      readonly ratePer10k: number;
    }
  | { readonly kind: 'count'; readonly count: number; readonly eachMinor: number };

export type BillLine = {
  /** Unique in the bill and the same for the estimate and the invoice, such as 'base:deer'. */
  readonly id: string;
  readonly label: string;
  readonly basis: LineBasis;
  readonly amountMinor: number;
  readonly taxId: string | null;
};

export type BillTax = {
  readonly taxId: string;
  readonly name: string;
  readonly ratePer100k: number;
  readonly taxableMinor: number;
  readonly amountMinor: number;
};

/** The priced order. Subtotal = sum of the lines; total = subtotal + taxes; due = total - paid. */
export type Bill = {
  readonly currency: Currency;
  readonly lines: readonly BillLine[];
  readonly subtotalMinor: number;
  readonly taxes: readonly BillTax[];
  readonly totalMinor: number;
  readonly paidMinor: number;
  /** Below zero where money is owed to the hunter. */
  readonly dueMinor: number;
  /** What the price list has no price for. An invoice is not issued while anything stands here. */
  readonly unpriced: readonly { readonly kind: 'base' | 'extra' | 'product'; readonly id: string }[];
};
