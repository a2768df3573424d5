export {
  carcassChart,
  type CarcassChart,
  type ChartMuscle,
  type ChartMuscleId,
  type ChartPart,
  type ChartPartId,
} from './carcass-chart';
export { buildCuttingSheet, type CuttingSheet, type SheetBlock, type SheetInput, type SheetLine, type SheetMark } from './cutting-sheet';
export { buildInvoice, yieldLine, type InvoiceDocument, type InvoiceInput, type InvoiceRow } from './invoice';
export { likelyText, partStandings, planView, type ForecastRow, type PartStanding, type PartState, type PlanView } from './plan-view';
