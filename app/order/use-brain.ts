'use client';

import { useCallback, useState } from 'react';

/** What the phone needs beyond drawing the form: the rules, the steps of the buttons, the check before sending. */
export type Brain = typeof import('./form-brain');

/** Loads it once it is wanted. Null where the signal was lost; then the server answers in its place. */
export function useBrain(): { readonly brain: Brain | null; readonly loadBrain: () => Promise<Brain | null> } {
  const [brain, setBrain] = useState<Brain | null>(null);
  const loadBrain = useCallback(async () => {
    const loaded = await import('./form-brain').catch(() => null);
    if (loaded) setBrain(loaded);
    return loaded;
  }, []);
  return { brain, loadBrain };
}
