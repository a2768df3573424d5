import { LAW_POINTS, type LawPoint, type LawPoints } from './law-points';
import { lawPack } from './registry';

/** What a shop says of a point against its pack, and why. */
export type LawChange<P extends LawPoint = LawPoint> = { readonly value: LawPoints[P]; readonly reason: string };

/** A shop's own changes: only the points it changed. */
export type LawChanges = { readonly [P in LawPoint]?: LawChange<P> };

/** The place a shop chose, and what it changed of it. */
export type ShopLaw = { readonly packId: string; readonly changes: LawChanges };

/** What a shop has until it chooses. */
export const NO_PLACE: ShopLaw = { packId: 'careful', changes: {} };

/**
 * The law the rules go by: the pack of the place, and over it what the shop changed. A pack nobody ships any more
 * counts as no place chosen.
 *
 * @example lawInForce({ packId: 'eu', changes: {} }).coldCelsiusTenths // 70
 */
export function lawInForce({ packId, changes }: ShopLaw): LawPoints {
  const changed = LAW_POINTS.flatMap((point) => {
    const change = changes[point];
    return change === undefined ? [] : [[point, change.value] as const];
  });
  return { ...lawPack(packId).points, ...Object.fromEntries(changed) };
}
