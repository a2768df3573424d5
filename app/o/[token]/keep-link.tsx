'use client';

import { useState } from 'react';

/** Ways to keep the private link: send it to oneself or copy it, print it. Without script the browser's own ways remain. */
export function KeepLink({ title }: { readonly title: string }) {
  const [said, setSaid] = useState('');

  async function keep() {
    const url = `${window.location.origin}${window.location.pathname}`;
    try {
      if (typeof navigator.share === 'function') await navigator.share({ title, url });
      else {
        await navigator.clipboard.writeText(url);
        setSaid('The link is copied.');
      }
    } catch (error) {
      // Closing the phone's own menu is no failure.
      if (!(error instanceof DOMException && error.name === 'AbortError')) setSaid('Keep the address from the top of the window.');
    }
  }

  return (
    <>
      <div className="buttons script-only">
        <button type="button" className="button" onClick={() => void keep()}>
          Send yourself the link, or copy it
        </button>
        <button type="button" className="button" onClick={() => window.print()}>
          Print this page
        </button>
      </div>
      <p className="without-script">Bookmark this page, or print it.</p>
      <p role="status">{said}</p>
    </>
  );
}
