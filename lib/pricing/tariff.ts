import type { Currency, WeightUnit } from '@/lib/units';

/** A tax on some of the lines. The rate is in hundred-thousandths, so that 8.875% is 8875. */
export type Tax = { readonly id: string; readonly name: string; readonly ratePer100k: number };

/**
 * What processing one animal costs, by its hanging weight. Exactly one kind, so that a flat fee and a
 * price by weight for the same work cannot both be charged.
 * Amounts are in minor units, weights in hundredths of the tariff's unit, unit prices in ten-thousandths
 * of a major unit.
 */
export type BaseCharge =
  | { readonly kind: 'flat'; readonly amountMinor: number }
  | { readonly kind: 'per-weight'; readonly ratePer10k: number }
  | {
      readonly kind: 'steps';
      /** Rising: the first step that holds the weight is charged. */
      readonly steps: readonly { readonly upToHundredths: number; readonly amountMinor: number }[];
      /** For the weight above the last step, on top of the last step's amount. */
      readonly excessRatePer10k: number;
    };

/** The base price of a group of species, and the services it already contains. */
export type BasePrice = {
  readonly id: string;
  readonly name: string;
  readonly speciesIds: readonly string[];
  readonly charge: BaseCharge;
  /** Ids of the piece extras this price contains: they are not charged again. */
  readonly includes: readonly string[];
  readonly taxId: string | null;
};

/** Extra work on some cuts, by their packed weight. */
export type WeightExtra = {
  readonly id: string;
  readonly name: string;
  readonly cutIds: readonly string[];
  readonly ratePer10k: number;
  readonly taxId: string | null;
};

/** Extra work by the piece. */
export type PieceExtra = {
  readonly id: string;
  readonly name: string;
  readonly eachMinor: number;
  /** 'animal': charged once at most. 'piece': charged for each. */
  readonly per: 'animal' | 'piece';
  /** True for work on the hide: not charged when the animal arrived skinned. */
  readonly needsHide: boolean;
  readonly taxId: string | null;
};

/** A product by its finished weight, with the meat or fat the shop adds at cost. */
export type ProductPrice = {
  readonly id: string;
  readonly name: string;
  readonly ratePer10k: number;
  /** Zero where added meat is part of the price. */
  readonly addedRatePer10k: number;
  readonly taxId: string | null;
};

/** The price list of a shop. Prices are without tax. */
export type Tariff = {
  readonly currency: Currency;
  readonly weightUnit: WeightUnit;
  readonly taxes: readonly Tax[];
  readonly base: readonly BasePrice[];
  readonly perWeight: readonly WeightExtra[];
  readonly perPiece: readonly PieceExtra[];
  readonly products: readonly ProductPrice[];
};

/** Finds the one base price of a species, or null where the shop has none. */
export function findBasePrice(tariff: Tariff, speciesId: string): BasePrice | null {
  return tariff.base.find((base) => base.speciesIds.includes(speciesId)) ?? null;
}
