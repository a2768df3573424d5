import type { MisleadingTerm } from './misleading-names';

const PRACTICE = 'common practice, no source';
const UK_AND_US = 'public trade and standards text of the UK and the US, read side by side';

/** Where each misleading name is known from. Apart from the names, which a phone carries. */
export const MISLEADING_NAME_SOURCES: Readonly<Record<MisleadingTerm, string>> = {
  'sirloin tip': `${UK_AND_US}: IMPS beef item 167A is the knuckle; said of the rump by ${PRACTICE}`,
  sirloin: `${UK_AND_US}: in the UK the loin, in the US IMPS beef item 184, top sirloin butt`,
  'rump roast': `${UK_AND_US}: in the US of IMPS beef item 171B, outside round`,
  rump: `${UK_AND_US}: in the UK the gluteals`,
  backstrap: `${UK_AND_US}: the loin to hunters, the yellow ligament to the meat trade`,
  tenderloin: `${UK_AND_US}: IMPS beef item 189A; said of the loin by ${PRACTICE}`,
  ham: PRACTICE,
  cube: PRACTICE,
  burger: PRACTICE,
  chop: PRACTICE,
  quarter: PRACTICE,
  whole: PRACTICE,
  dressed: PRACTICE,
  'filet mignon': 'from memory: in France the psoas, in beef a slice of it',
  ribeye: `${UK_AND_US}: IMPS beef item 112A; not cut so from an animal the size of a deer by ${PRACTICE}`,
  bacon: PRACTICE,
  brisket: `${UK_AND_US}: IMPS beef item 120; a deer's breast is too thin for it by ${PRACTICE}`,
  hanger: PRACTICE,
  'tri-tip': `${PRACTICE}; goes with the rump on an animal smaller than an elk`,
  'flat iron': `${UK_AND_US}: IMPS beef item 114D; scrap on an animal smaller than an elk by ${PRACTICE}`,
  'T-bone': PRACTICE,
};
