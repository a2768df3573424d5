import type { ReactNode } from 'react';

type RangeBarProps = {
  readonly label: ReactNode;
  /** Low, likely and high, in any one unit, the same as `max`. */
  readonly low: number;
  readonly likely: number;
  readonly high: number;
  readonly max: number;
  /** The same in words: "18 to 24 lb, likely 21 lb". */
  readonly text: ReactNode;
  /** What was asked for, drawn as a broken line across the bar. */
  readonly wanted?: number;
  readonly wantedText?: ReactNode;
};

/** A forecast as a bar: solid up to the low, pale from low to high, a bar at the likely. The words say it all again. */
export function RangeBar({ label, low, likely, high, max, text, wanted, wantedText }: RangeBarProps) {
  const share = (value: number) => `${max > 0 ? Math.min(100, Math.max(0, (100 * value) / max)).toFixed(2) : '0'}%`;
  const spread = Math.max(0, high - low);
  return (
    <div className="range-bar">
      <p>
        <b>{label}</b> <span className="number">{text}</span>
      </p>
      <svg width="100%" height="28" aria-hidden="true" focusable="false">
        <rect className="range-track" x="0" y="6" width="100%" height="16" />
        <rect className="range-spread" x={share(low)} y="6" width={share(spread)} height="16" />
        <rect className="range-sure" x="0" y="6" width={share(low)} height="16" />
        <svg x={share(likely)} y="0" overflow="visible">
          <rect className="range-likely" x="-3" y="1" width="6" height="26" strokeWidth="1.5" />
        </svg>
        {wanted !== undefined && <line className="range-wanted" x1={share(wanted)} x2={share(wanted)} y1="-2" y2="30" />}
      </svg>
      {wantedText && <p className="quiet-text">{wantedText}</p>}
    </div>
  );
}
