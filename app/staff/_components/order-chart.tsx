import { CarcassChart, type ChartPartState } from '@/app/_components/carcass-chart';
import { carcassChart, type PlanView } from '@/lib/documents';
import { capital } from '@/lib/forms';

type Standing = PlanView['parts'][number];

/** How every part of one animal stands, and the same as a list: both sides, or one where they are alike. */
export function OrderChart({ parts }: { readonly parts: PlanView['parts'] }) {
  const alike = parts.filter(({ place }) => place === 'left').every((left) => {
    const right = parts.find(({ part, place }) => part === left.part && place === 'right');
    return right?.state === left.state && right.detail === left.detail;
  });
  return alike ? (
    <CarcassChart shapes={carcassChart} side="left" parts={parts.filter(({ place }) => place !== 'right').map(bothSides)} caption="Both sides alike" />
  ) : (
    <CarcassChart shapes={carcassChart} side="both" parts={parts.map(oneSide)} caption="Left side and right side" />
  );
}

function oneSide({ part, place, state, name, detail }: Standing): ChartPartState {
  return { part, side: place, state, name: capital(name), label: capital(bareName(name, place)), detail: state === 'absent' ? undefined : detail };
}

function bothSides(standing: Standing): ChartPartState {
  const name = capital(bareName(standing.name, standing.place));
  return { ...oneSide(standing), side: standing.place === 'middle' ? 'middle' : 'both', name };
}

/** 'left hind leg' is 'hind leg' on its own side's drawing. */
function bareName(name: string, place: Standing['place']): string {
  return place === 'middle' ? name : name.slice(place.length + 1);
}
