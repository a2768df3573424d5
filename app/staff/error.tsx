'use client';

import { Trouble } from '../_components/trouble';

export default function StaffErrorPage({ error, retry }: { readonly error: unknown; readonly retry: () => void }) {
  return (
    <main className="page wide" id="main">
      <Trouble error={error} retry={retry} />
    </main>
  );
}
