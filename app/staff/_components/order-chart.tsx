import { CarcassChart, type ChartPartState } from '@/app/_components/carcass-chart';
import type { PlanView } from '@/lib/documents';

/** How every part of one animal stands, both sides, and the same as a list. */
export function OrderChart({ parts, caption }: { readonly parts: PlanView['parts']; readonly caption: string }) {
  return <CarcassChart side="both" parts={parts.map(chartPart)} caption={caption} />;
}

function chartPart({ part, place, state, name, detail }: PlanView['parts'][number]): ChartPartState {
  const label = place === 'middle' ? name : name.slice(place.length + 1);
  return { part, side: place, state, name: capital(name), label: capital(label), detail: state === 'absent' ? undefined : detail };
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
