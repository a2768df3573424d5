'use client';

import { useEffect, useRef, type RefObject } from 'react';
import type { OrderFormState } from '@/lib/forms';
import { readDraft } from './draft';

/** Puts back what was typed before the script ran: it starts from the form as the server drew it. */
export function useTypedBefore(typed: OrderFormState['values'] | null, put: (values: OrderFormState['values']) => void) {
  const isDone = useRef(false);
  useEffect(() => {
    if (isDone.current) return;
    isDone.current = true;
    if (typed) put(typed);
  });
}

/** Takes up the draft kept on the phone, unless the page already answers something. */
export function useDraftAtFirst(draftName: string, isUntouched: boolean, take: (values: OrderFormState['values']) => void) {
  const isLookedFor = useRef(false);
  useEffect(() => {
    if (isLookedFor.current) return;
    isLookedFor.current = true;
    const draft = isUntouched ? readDraft(draftName) : null;
    if (draft) take(draft);
  });
}

/** The browser's back button leaves the check page for the form, with everything still in it. */
export function useBackFromCheck(leave: () => void) {
  const latest = useRef(leave);
  useEffect(() => {
    latest.current = leave;
  });
  useEffect(() => {
    const onPopState = () => {
      if (window.location.hash !== '#check') latest.current();
    };
    window.addEventListener('popstate', onPopState);
    return () => window.removeEventListener('popstate', onPopState);
  }, []);
}

/** Brings the hunter to the place the last button was about. */
export function useStandAt(state: OrderFormState, turn: number) {
  useEffect(() => {
    if (turn === 0) return;
    const place = document.getElementById(state.step === 'check' ? 'check-heading' : (state.focus ?? ''));
    place?.scrollIntoView({ block: 'start' });
    place?.focus({ preventScroll: true });
  }, [state, turn]);
}

/** Does something once, as soon as the hunter begins to fill in the form. */
export function useOnFirstTouch(form: RefObject<HTMLFormElement | null>, act: () => unknown) {
  useEffect(() => {
    const { current } = form;
    if (!current) return;
    const onTouch = () => void act();
    current.addEventListener('focusin', onTouch, { once: true });
    return () => current.removeEventListener('focusin', onTouch);
  }, [form, act]);
}
