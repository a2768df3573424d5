export { claimsOf, settleClaims, type DoubleClaim } from './claims';
export { chanceOfWishes, type WishChance } from './fit/chance-of-wishes';
export { fitWishes, type Fit, type FitWhy, type FittedWish } from './fit/fit-wishes';
export { addedToOwn, leastOwnGrams, type FitPoolId, type PoolSupply, type ProductWish } from './fit/wishes';
export { largestPiece } from './pieces';
export {
  POOLS,
  planOrder,
  type LedgerRow,
  type Plan,
  type PlannedLine,
  type PoolId,
} from './plan-order';
export { forecastPieces, type PackedMuscle, type PieceForecast } from './piece-forecast';
export {
  PRODUCTS,
  PRODUCT_POOLS,
  addedFatGrams,
  addedToFinished,
  isProductId,
  planProducts,
  type PlannedProduct,
  type ProductPool,
  type ProductRecipe,
} from './products';
