'use client';

import { createContext, useContext, useDeferredValue, useMemo, type ReactNode } from 'react';
import { useFormContext, useWatch } from 'react-hook-form';
import type { DrawnShapes } from '@/app/_components/carcass-drawing';
import { assessForm, type OrderFormState, type OrderFormValues } from '@/lib/forms';
import type { HunterShop } from '@/lib/workflows/hunter-orders';

/** What every field of the form reads: the shop, and the form as it was last drawn. */
type FormWorld = { readonly shop: HunterShop; readonly shapes: DrawnShapes; readonly state: OrderFormState };

/** The form as it stands at this moment, and what comes of it. */
export type LiveForm = { readonly values: OrderFormValues; readonly assessment: ReturnType<typeof assessForm> };

const WorldContext = createContext<FormWorld | null>(null);
const LiveContext = createContext<LiveForm | null>(null);

export const FormWorldProvider = WorldContext.Provider;

export function useFormWorld(): FormWorld {
  const world = useContext(WorldContext);
  if (!world) throw new Error('A field of the order form stands outside of it');
  return world;
}

/** Works the forecast and the findings out anew at each change, after the letter typed is on the screen. */
export function LiveFormProvider({ children }: { readonly children: ReactNode }) {
  const { shop } = useFormWorld();
  const { control } = useFormContext<OrderFormValues>();
  // The form has a default for every field, so nothing of it is missing.
  const values = useDeferredValue(useWatch({ control }) as OrderFormValues);
  const live = useMemo(() => ({ values, assessment: assessForm(values, shop) }), [values, shop]);
  return <LiveContext.Provider value={live}>{children}</LiveContext.Provider>;
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
