export { NO_PLACE, lawInForce, type LawChange, type LawChanges, type ShopLaw } from './law-in-force';
export { NOT_READ, READ_ON, type LawBasis, type LawEvidence, type LawPack } from './law-pack';
export { LAW_CHOICES, LAW_LIMITS, LAW_POINTS, isChoicePoint, type LawChoicePoint, type LawPoint, type LawPoints } from './law-points';
export { NOT_ADVICE, evidenceWords, pointWords, valueWords, type LawReader } from './law-words';
export { CAREFUL } from './packs/careful';
export { LAW_PACKS, lawPack } from './registry';
