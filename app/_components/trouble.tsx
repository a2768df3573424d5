'use client';

import { unstable_isUnrecognizedActionError as isFromOlderProgram } from 'next/navigation';

type TroubleProps = {
  /** What was thrown. Its details stay in the server's log; only their number is shown. */
  readonly error: unknown;
  readonly retry: () => void;
};

/** What to read and do when a page failed. */
export function Trouble({ error, retry }: TroubleProps) {
  if (isFromOlderProgram(error)) {
    return (
      <>
        <title>Reload the page · Gambrel</title>
        <h1>The program was updated while this page was open</h1>
        <p className="lede">Nothing was saved. Reload the page, then enter the last change again.</p>
        <p className="buttons">
          <button className="button primary" type="button" onClick={() => window.location.reload()}>
            Reload the page
          </button>
        </p>
      </>
    );
  }
  const number = error instanceof Error && 'digest' in error ? String(error.digest) : null;
  return (
    <>
      <title>Something went wrong · Gambrel</title>
      <h1>Something went wrong here</h1>
      <p className="lede">It is not your doing. What you last saw as saved is safe; the last step may not have been done.</p>
      <p>Try again. If it stays like this, tell the shop what you were doing{number && ` and this number: ${number}`}.</p>
      <p className="buttons">
        <button className="button primary" type="button" onClick={() => retry()}>
          Try again
        </button>
        {/* oxlint-disable-next-line nextjs/no-html-link-for-pages -- loads the program afresh, which a link within it does not */}
        <a className="button plain" href="/">
          Go to the front page
        </a>
      </p>
    </>
  );
}
