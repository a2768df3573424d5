'use client';

import { useMemo } from 'react';
import { WhereItGoesFigure } from '@/app/_components/where-it-goes';
import { threeSentences, whereItGoes } from '@/lib/documents';
import { useFormWorld, useLiveForm } from './form-context';

/** Where the animal on the form goes. Loaded once there is an animal: the form itself is ready before. */
export function WhereItGoesLive() {
  const { shop } = useFormWorld();
  const { planned } = useLiveForm();
  const shown = useMemo(() => {
    const goes = planned && whereItGoes({ plan: planned.plan, told: [shop.found?.arrival.weight] }, shop);
    return goes && { goes, sentences: threeSentences(goes, shop) };
  }, [planned, shop]);
  return shown && <WhereItGoesFigure {...shown} />;
}
