export { claimsOf, settleClaims, type DoubleClaim } from './claims';
export { largestPiece } from './pieces';
export {
  POOLS,
  planOrder,
  type LedgerRow,
  type Plan,
  type PlannedLine,
  type PoolId,
} from './plan-order';
export { PRODUCTS, addedFatGrams, isProductId, planProducts, type PlannedProduct, type ProductRecipe } from './products';
