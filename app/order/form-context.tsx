'use client';

import { createContext, useContext, useDeferredValue, useEffect, useMemo, type ReactNode } from 'react';
import { useFormContext, useWatch } from 'react-hook-form';
import type { DrawnShapes } from '@/app/_components/carcass-drawing';
import { planForm, type OrderFormState, type OrderFormValues } from '@/lib/forms';
import type { Finding } from '@/lib/rules';
import type { HunterShop } from '@/lib/workflows/hunter-orders';
import type { Brain } from './use-brain';

/** What every field of the form reads: the shop, and the form as it was last drawn. */
type FormWorld = {
  readonly shop: HunterShop;
  readonly shapes: DrawnShapes;
  readonly state: OrderFormState;
  /** The rules, once the phone has them. */
  readonly brain: Brain | null;
  readonly loadBrain: () => Promise<Brain | null>;
};

/** The form as it stands at this moment, and what comes of it. */
export type LiveForm = {
  readonly values: OrderFormValues;
  /** Null until a species is chosen. */
  readonly planned: ReturnType<typeof planForm>;
  readonly findings: readonly Finding[];
};

const WorldContext = createContext<FormWorld | null>(null);
const LiveContext = createContext<LiveForm | null>(null);

export const FormWorldProvider = WorldContext.Provider;

export function useFormWorld(): FormWorld {
  const world = useContext(WorldContext);
  if (!world) throw new Error('A field of the order form stands outside of it');
  return world;
}

/** Forecast and findings of the form; the findings are the server's until the phone has the rules, which it fetches for them. */
export function useOutlook(values: OrderFormValues): LiveForm {
  const { shop, state, brain, loadBrain } = useFormWorld();
  const live = useMemo(() => {
    const planned = planForm(values, shop);
    return { values, planned, findings: brain?.findingsOf(values, shop, planned) ?? state.findings ?? [] };
  }, [values, shop, brain, state.findings]);
  const isWanted = brain === null && live.planned !== null;
  useEffect(() => {
    if (isWanted) void loadBrain();
  }, [isWanted, loadBrain]);
  return live;
}

/** Works the forecast and the findings out anew at each change, after the letter typed is on the screen. */
export function LiveFormProvider({ children }: { readonly children: ReactNode }) {
  const { control } = useFormContext<OrderFormValues>();
  // The form has a default for every field, so nothing of it is missing.
  const values = useDeferredValue(useWatch({ control }) as OrderFormValues);
  return <LiveContext.Provider value={useOutlook(values)}>{children}</LiveContext.Provider>;
}

export function useLiveForm(): LiveForm {
  const live = useContext(LiveContext);
  if (!live) throw new Error('No live form around this part of the page');
  return live;
}

/** Makes an element a place a button can bring the hunter to. Without script the browser goes there by itself. */
export function useStand(id: string) {
  const { state } = useFormWorld();
  return { id, tabIndex: -1, autoFocus: state.focus === id } as const;
}
