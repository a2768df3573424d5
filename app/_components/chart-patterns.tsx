/** Engraver's patterns for the states of a part: hatched, cross-hatched, crossed. */
export function ChartPatterns({ id }: { readonly id: string }) {
  return (
    <defs>
      <pattern id={`${id}-decided`} width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path className="chart-weave" d="M0 0 L0 9" strokeWidth="1" strokeOpacity="0.55" />
      </pattern>
      <pattern id={`${id}-doubled`} width="11" height="11" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path className="chart-weave" d="M0 0 L0 11 M0 0 L11 0" strokeWidth="3" />
      </pattern>
      <pattern id={`${id}-wounded`} width="24" height="24" patternUnits="userSpaceOnUse">
        <path className="chart-weave" d="M3 3 L9 9 M9 3 L3 9 M15 15 L21 21 M21 15 L15 21" strokeWidth="1.8" />
      </pattern>
    </defs>
  );
}
