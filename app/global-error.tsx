'use client';

import './_look/look.css';
import { Trouble } from './_components/trouble';

/** Stands in for the whole document when even the outermost layout failed. */
export default function GlobalErrorPage({ error, retry }: { readonly error: unknown; readonly retry: () => void }) {
  return (
    <html lang="en">
      <body>
        <main className="page" id="main">
          <Trouble error={error} retry={retry} />
        </main>
      </body>
    </html>
  );
}
