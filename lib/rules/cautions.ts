/** A short safety caution with its source. Every page, sheet and label that shows one adds `DEFERENCE`. */
export type Caution = { readonly id: string; readonly text: string; readonly source: string };

/** What every caution ends with. */
export const DEFERENCE = 'Your local code and the local authority decide; these are the usual figures, not legal advice.';

export const CAUTIONS = {
  'disease-zone': {
    id: 'disease-zone',
    text: 'From a disease zone: no bone is sawn, and spine, head and marrow stay out of the meat.',
    source: 'Michigan State University Extension, processor protocol, 2022',
  },
  'test-pending': {
    id: 'test-pending',
    text: 'Not cut while a disease test is pending. A negative test is not a guarantee.',
    source: 'Michigan State University Extension, 2022; CDC',
  },
  'wound-trim': {
    id: 'wound-trim',
    text: 'Meat around a wound is cut away wide and stays out of the grind: lead fragments travel up to 18 in. Children and pregnant women should not eat lead-shot trim.',
    source: 'Minnesota DNR 2008; UK FSA',
  },
  'cook-game': {
    id: 'cook-game',
    text: 'Cook game to 160 F (71 C) in the middle, ground or whole.',
    source: 'USDA FSIS game fact sheet; some codes ask 165 F (Food Code 3-401.11)',
  },
  'cook-bird-bear': {
    id: 'cook-bird-bear',
    text: 'Cook birds, bear and boar to 165 F (74 C). Freezing does not make bear or boar safe.',
    source: 'USDA FSIS; CDC MMWR 73(20), 2024',
  },
  'cured-and-dried': {
    id: 'cured-and-dried',
    text: 'Sticks, summer sausage and jerky are cured, heated and dried by the shop as its license allows. At home, heat meat to 160 F (71 C) before you dry it.',
    source: 'USDA FSIS, Jerky and Food Safety; 9 CFR 424.21(c) for cures',
  },
  'keep-cold': {
    id: 'keep-cold',
    text: 'Keep at 41 F (5 C) or colder until it is cooked or frozen.',
    source: 'FDA Food Code; USDA FSIS',
  },
} as const satisfies Record<string, Caution>;

export type CautionId = keyof typeof CAUTIONS;
