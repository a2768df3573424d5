type WordmarkProps = {
  readonly href?: string;
  /** The shop's own name, beside the program's. */
  readonly shop?: string;
};

/** A gambrel: the bar a carcass hangs from, its eye in the middle, a hook at each end. */
export function GambrelMark() {
  return (
    <svg viewBox="0 0 48 32" width="48" height="32" aria-hidden="true" focusable="false">
      <g fill="none" stroke="currentColor" strokeLinecap="round" strokeLinejoin="round">
        <path d="M24 8 L24 5" strokeWidth="3" />
        <path d="M24 2 C27 2 27 6 24 6 C21 6 21 2 24 2 Z" strokeWidth="1.6" />
        <path d="M7 15 L19 9 Q24 6.8 29 9 L41 15" strokeWidth="4" />
        <path d="M7 15 L7 22 C7 29 16 29 16 23" strokeWidth="3" />
        <path d="M41 15 L41 22 C41 29 32 29 32 23" strokeWidth="3" />
      </g>
    </svg>
  );
}

export function Wordmark({ href, shop }: WordmarkProps) {
  const words = (
    <>
      <GambrelMark />
      <span>
        Gambrel {shop && <small>{shop}</small>}
      </span>
    </>
  );
  return href ? (
    <a className="wordmark" href={href}>
      {words}
    </a>
  ) : (
    <span className="wordmark">{words}</span>
  );
}
