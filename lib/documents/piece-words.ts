import type { PieceForecast } from '@/lib/plan';
import type { Range } from '@/lib/units';

/**
 * What a line comes to on the table, in words; '' where nothing tells.
 *
 * @example pieceWords({ pieces: { low: 13, likely: 14, high: 15 }, packets: null, people: { low: 5, likely: 6, high: 6 } })
 * // '13 to 15 pieces, feeds about 6'
 */
export function pieceWords({ pieces, packets, people }: PieceForecast): string {
  return [
    ...(pieces && pieces.high > 0 ? [counted(pieces, 'piece')] : []),
    ...(packets && packets.high > 0 && packets.likely !== pieces?.likely ? [counted(packets, 'packet')] : []),
    ...(people ? [`feeds about ${people.likely}`] : []),
  ].join(', ');
}

function counted({ low, likely, high }: Range, noun: string): string {
  const nouns = high === 1 ? noun : `${noun}s`;
  return low === high ? `${likely} ${nouns}` : `${low} to ${high} ${nouns}`;
}
