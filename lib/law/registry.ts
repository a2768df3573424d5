import type { LawPack } from './law-pack';
import { anotherState } from './packs/another-state';
import { CAREFUL } from './packs/careful';
import { colorado } from './packs/colorado';
import { europeanUnion } from './packs/european-union';
import { indiana } from './packs/indiana';
import { michigan } from './packs/michigan';
import { missouri } from './packs/missouri';
import { ohio } from './packs/ohio';
import { southDakota } from './packs/south-dakota';
import { texas } from './packs/texas';
import { unitedKingdom } from './packs/united-kingdom';
import { wisconsin } from './packs/wisconsin';
import { wyoming } from './packs/wyoming';

/** Every pack, in menu order: none chosen, the states by name, any other, then the rest of the world. */
export const LAW_PACKS: readonly LawPack[] = [
  CAREFUL,
  colorado, indiana, michigan, missouri, ohio, southDakota, texas, wisconsin, wyoming,
  anotherState,
  europeanUnion, unitedKingdom,
];

/** The pack of an id; the careful one where there is none of that id. */
export function lawPack(id: string): LawPack {
  return LAW_PACKS.find((pack) => pack.id === id) ?? CAREFUL;
}
