import type { ReactNode } from 'react';
import { Wordmark } from './wordmark';

/** A page outside the shop's own navigation: the mark at the top, one column under it. */
export function PlainPage({ children }: { readonly children: ReactNode }) {
  return (
    <>
      <header className="masthead">
        <Wordmark href="/" />
      </header>
      <main className="page" id="main">
        {children}
      </main>
    </>
  );
}
