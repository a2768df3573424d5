import { carcassChart } from '@/lib/documents';

const { muscles: _, ...shapes } = carcassChart;

/** The carcass without its muscles: hunters tap whole parts. Only a page imports it, so that the lines stay out of the script. */
export const hunterShapes = shapes;
