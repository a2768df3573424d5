import { Text } from '@react-pdf/renderer';
import type { Style } from '@react-pdf/types';
import { familyOf } from './fonts';
import { INK } from './styles';
import type { Weight } from './text-width';

type WordsProps = {
  readonly size: number;
  readonly weight?: Weight;
  readonly leading?: number;
  readonly color?: string;
  readonly style?: Style;
  /** The most lines it may take; what is over ends in dots. */
  readonly lines?: number;
  readonly children: string;
};

/**
 * A run of text in the embedded face. Line height is set here, on the text itself, and nowhere above it. Mind that the
 * renderer leaves out a line of words for which its box is too low, if only by a hair.
 */
export function Words({ size, weight = 400, leading = 1.27, color = INK, style = {}, lines, children }: WordsProps) {
  const limit = lines === undefined ? {} : { maxLines: lines, textOverflow: 'ellipsis' as const };
  return (
    <Text style={{ fontFamily: familyOf(children), fontSize: size, fontWeight: weight, lineHeight: leading, color, ...limit, ...style }}>{children}</Text>
  );
}

type Run = { readonly text: string; readonly size: number; readonly weight: Weight };

/** Two runs of different size on one base line, a blank between them. */
export function WordsPair({ first, second }: { readonly first: Run; readonly second: Run }) {
  const face = ({ text, size, weight }: Run): Style => ({ fontFamily: familyOf(text), fontSize: size, fontWeight: weight });
  return (
    <Text style={{ ...face(first.size > second.size ? first : second), lineHeight: 1.27, color: INK }}>
      <Text style={face(first)}>{first.text}</Text>
      {second.text !== '' && <Text style={face(second)}>{` ${second.text}`}</Text>}
    </Text>
  );
}
