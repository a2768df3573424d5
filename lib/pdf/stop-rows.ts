import type { SheetStop } from '@/lib/documents';
import { GAP, type SheetSizes } from './sheet-sizes';
import { textWidth } from './text-width';

/** Width of a bar with its sign, in points. */
export function barWidth(stop: SheetStop, sizes: SheetSizes): number {
  return textWidth(stop.text, sizes.stop, 700) + sizes.stop * 1.7;
}

/** Puts bars side by side while they fit, in their order. */
export function stopRowsOf(stops: readonly SheetStop[], width: number, sizes: SheetSizes): readonly (readonly SheetStop[])[] {
  const rows: SheetStop[][] = [];
  for (const stop of stops.flatMap((one) => brokenBar(one, width, sizes))) {
    const row = rows.at(-1);
    const taken = (row ?? []).reduce((total, one) => total + barWidth(one, sizes) + GAP, 0);
    if (row && taken + barWidth(stop, sizes) <= width) row.push(stop);
    else rows.push([stop]);
  }
  return rows;
}

/** A bar as it is where it fits; else as many as its list of words takes, broken after a comma, so that no word is cut off. */
function brokenBar(stop: SheetStop, width: number, sizes: SheetSizes): readonly SheetStop[] {
  const bars: SheetStop[] = [];
  for (const word of stop.text.split(/(?<=,) /)) {
    const bar = bars.at(-1);
    const longer = { ...stop, text: bar ? `${bar.text} ${word}` : word };
    if (bar && barWidth(longer, sizes) <= width) bars[bars.length - 1] = longer;
    else bars.push({ ...stop, text: word });
  }
  return bars;
}
