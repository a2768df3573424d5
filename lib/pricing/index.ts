export { amountAtRate } from './amount-at-rate';
export { type Bill, type BillFacts, type BillLine, type BillTax, type LineBasis } from './bill';
export { checkTariff, type TariffMessage } from './check-tariff';
export { estimateOrder } from './estimate-order';
export { formatBasis } from './format-basis';
export { priceOrder } from './price-order';
export {
  findBasePrice,
  type BaseCharge,
  type BasePrice,
  type PieceExtra,
  type ProductPrice,
  type Tariff,
  type Tax,
  type WeightExtra,
} from './tariff';
