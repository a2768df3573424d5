'use client';

import { useEffect, useRef, useState } from 'react';
import type { OrderFormValues } from '@/lib/forms';
import { saveDraft } from './draft';
import { useLiveForm } from './form-context';

/** Keeps what is typed on the phone, half a second after the last letter, and says so. */
export function DraftKeeper({ name, opened }: { readonly name: string; readonly opened: OrderFormValues }) {
  const { values } = useLiveForm();
  const [isSaved, setIsSaved] = useState(false);
  const first = useRef(values);

  useEffect(() => {
    // A form nobody has touched is not worth a draft; one drawn afresh by a button of the form is.
    const isTouched = values !== first.current || opened.lines.length > 0;
    if (!isTouched) return;
    const timer = window.setTimeout(() => setIsSaved(saveDraft(name, values)), 500);
    return () => window.clearTimeout(timer);
  }, [name, values, opened]);

  return (
    <p className="quiet-text script-only" role="status">
      {isSaved && 'Saved on this phone, not sent yet.'}
    </p>
  );
}
