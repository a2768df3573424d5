import type { Style } from '@react-pdf/types';

export const INK = '#000000';
export const PAPER = '#ffffff';
/** Rules and the quieter shapes: still plain on a poor printer. */
export const GREY = '#6b6b6b';
export const PALE = '#e9e9e9';
export const BARK = '#33241a';

export const row: Style = { flexDirection: 'row', alignItems: 'center' };
export const grow: Style = { flexGrow: 1, flexShrink: 1, flexBasis: 0 };
