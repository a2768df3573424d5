'use client';

import { PlainPage } from './_components/plain-page';
import { Trouble } from './_components/trouble';

export default function ErrorPage({ error, retry }: { readonly error: unknown; readonly retry: () => void }) {
  return (
    <PlainPage>
      <Trouble error={error} retry={retry} />
    </PlainPage>
  );
}
