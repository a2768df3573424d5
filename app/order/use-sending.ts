'use client';

import { unstable_isUnrecognizedActionError as isFromOlderProgram } from 'next/navigation';
import { startTransition, useEffect, useRef, useState } from 'react';
import type { OrderFormState } from '@/lib/forms';
import type { Sending } from './send-bar';

export type OrderFormAction = (state: OrderFormState, data: FormData) => Promise<OrderFormState>;

const WAITS_MS = [2_000, 5_000, 10_000, 20_000];

/**
 * Sends the form and stays with it: a second tap while it is on its way does nothing, and where no answer comes it is
 * sent again by itself, later and later. The form's key makes any number of sendings one order.
 */
export function useSending(action: OrderFormAction, onAnswer: (answer: OrderFormState) => void) {
  const [sending, setSending] = useState<Sending>({ kind: 'idle' });
  const isUnderWay = useRef(false);
  const timer = useRef<number | undefined>(undefined);
  const again = useRef<(() => void) | null>(null);

  function stop() {
    window.clearTimeout(timer.current);
    again.current = null;
  }

  function send(state: OrderFormState, data: FormData, tries = 0) {
    if (isUnderWay.current) return;
    stop();
    isUnderWay.current = true;
    setSending({ kind: 'sending' });
    startTransition(async () => {
      try {
        const answer = await action(state, data);
        // Stays under way when it was sent: the browser is leaving the page.
        if (answer.sentTo === null) {
          isUnderWay.current = false;
          setSending({ kind: 'idle' });
        }
        onAnswer(answer);
      } catch (error) {
        isUnderWay.current = false;
        if (isFromOlderProgram(error)) {
          setSending({ kind: 'outdated' });
          return;
        }
        setSending({ kind: 'waiting' });
        again.current = () => send(state, data, tries + 1);
        timer.current = window.setTimeout(() => again.current?.(), WAITS_MS[tries] ?? 30_000);
      }
    });
  }

  useEffect(() => {
    const onSignal = () => again.current?.();
    window.addEventListener('online', onSignal);
    return () => {
      window.removeEventListener('online', onSignal);
      window.clearTimeout(timer.current);
    };
  }, []);

  return { sending, send, stop };
}
