export {
  carcassChart,
  type CarcassChart,
  type ChartMuscle,
  type ChartMuscleId,
  type ChartPart,
  type ChartPartId,
} from './carcass-chart';
export { chartRows, type ChartRow } from './chart-rows';
export { cookingCaution } from './cooking-caution';
export { buildCuttingSheet, type CuttingSheet, type SheetBlock, type SheetInput, type SheetLine, type SheetMark, type SheetStop } from './cutting-sheet';
export { estimateView, type EstimateView } from './estimate-view';
export { type DrawnPart, type DrawnStage, type GoesDrawing } from './goes-drawing';
export { type GonePartId } from './gone-parts';
export { buildInvoice, yieldLine, type InvoiceDocument, type InvoiceInput, type InvoiceRow } from './invoice';
export { DRAWN_TARGETS, MUSCLE_DRAWING, muscleDrawing, type DrawingScheme } from './muscle-drawing';
export { pieceWords } from './piece-words';
export { likelyText, partStandings, chanceWords, planView, type ForecastRow, type PartStanding, type PartState, type PlanView } from './plan-view';
export { priceWords, type PriceWords } from './price-words';
export { ruleIndex, rulePage, type RuleExample, type RuleGroup, type RuleLine, type RulePage } from './rule-view';
export { severityWords } from './rule-words';
export { threeSentences } from './three-sentences';
export { whereItGoes, type GoneAmount, type GonePart, type GoneStage, type WhereItGoes, type WhereItGoesInput } from './where-it-goes';
export { oddYieldWords, yieldRows, type OddYield, type YieldMark, type YieldRow } from './yield-view';
