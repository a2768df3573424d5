import { describe, expect, test } from 'vitest';
import type { CuttingSheet, SheetLine } from '@/lib/documents';
import { heavySheet, makeLine, makeSheet, rareSheet, typicalSheet, usualSheet } from '../pdf/samples';

const linesOf = (sheet: CuttingSheet): readonly SheetLine[] => sheet.blocks.flatMap((block) => block.lines);
const told = (sheet: CuttingSheet): readonly string[] =>
  linesOf(sheet).map(({ side, name, make, manner, size, pack, isDeparture }) => `${isDeparture ? '! ' : ''}${side} ${name}: ${[make, manner, size, pack].filter((text) => text !== '').join(', ')}`);

test('a typical order names every part in knife order, and marks what is not usual', () => {
  expect(told(typicalSheet())).toEqual([
    'both TENDERLOIN: WHOLE, silverskin off',
    '! both BACKSTRAP: BUTTERFLY, cut double, 3/4 in open, 4/pack',
    '! both TOP SIRLOIN: STEAKS, TENDERIZE, 1/2 in, 4/pack',
    'both TOP ROUND: SEAM & TIE, square off, 3.0 lb each',
    'both SIRLOIN TIP: SEAM & TIE, square off, 3.0 lb each',
    'both BOTTOM ROUND: STEAKS, 3/4 in, 2/pack',
    'both THE REST: TO GRIND',
    'both SHOULDER: TO GRIND',
    '! middle NECK: ROLL & TIE, bone out, as you see fit',
    'both RIBS & FLANK: TO GRIND',
  ]);
});

test('where nothing is asked, everything goes the usual way, in the words of the country', () => {
  const sheet = usualSheet();
  expect(told(sheet).slice(2)).toEqual(['both HAUNCH: TO MINCE', 'both SHOULDER: TO MINCE', 'middle NECK: TO MINCE', 'both RIBS & FLANK: TO MINCE']);
  expect(sheet.grindTitle).toBe('MINCE');
  expect(sheet.strips.map(({ title }) => title)).toEqual(['LUG: MINCE', 'BOX 1', 'BOX 2']);
});

test('the side that no line speaks of is named whole, the other by what is left of it', () => {
  const sheet = makeSheet({ country: 'uk', instructions: { lines: [makeLine('topside', 'joint', { side: 'left' })] } });
  const haunch = sheet.blocks.find(({ title }) => title === 'HAUNCH');
  expect(haunch?.lines.map(({ part, name, side }) => [part, name, side])).toEqual([
    ['LEFT TOPSIDE', 'TOPSIDE', 'left'],
    ['LEFT REST OF HAUNCH', 'THE REST', 'left'],
    ['RIGHT HAUNCH', 'HAUNCH', 'right'],
  ]);
});

test('what is not decided says so, and is no usual line', () => {
  const [first] = linesOf(makeSheet({ instructions: { rest: 'undecided' } }));
  expect(first).toMatchObject({ action: 'ASK - NOT DECIDED', make: 'ASK', manner: 'NOT DECIDED', isDeparture: true });
});

describe('a heavy order', () => {
  const sheet = heavySheet();

  test('has its bars worst first, each with its kind', () => {
    expect(sheet.stops).toEqual([
      { kind: 'hold', text: 'HOLD - TEST PENDING' },
      { kind: 'hold', text: 'HOLD - QUESTION OPEN' },
      { kind: 'hazard', text: 'DISEASE ZONE - NO SAWN BONE' },
      { kind: 'hazard', text: 'GUT SHOT' },
      { kind: 'never', text: 'NO PORK' },
      { kind: 'save', text: 'CAPE KEPT' },
    ]);
  });

  test('says what was hit and what did not come, and notes it on the lines it touches', () => {
    expect(sheet.markWords).toBe('Hit: left hind leg (heavy), right shoulder (lost). Wound trim out of the grind. Did not come: both tenderloins.');
    expect(linesOf(sheet).filter(({ note }) => note !== '').map(({ part, note }) => `${part}: ${note}`)).toContain('RIGHT SHOULDER: LOST');
    expect(linesOf(sheet).filter(({ name, side }) => name === 'TOP ROUND' && side === 'left')[0]?.note).toBe('HIT: CUT WIDE');
  });

  test('says which version it replaces, and what goes home', () => {
    expect([sheet.number, sheet.code, sheet.replaces, sheet.surname]).toEqual(['10588-0', '105880V3', 'replaces version 2', 'Ørsted-Łukasz']);
    expect(sheet.keep).toEqual(['HEART', 'LIVER', 'LIMB BONES', 'SKULL PLATE', 'CAPE']);
  });
});

describe('what is rarely asked', () => {
  const sheet = rareSheet();

  test('stands in bars where it stops a hand', () => {
    expect(sheet.stops.map(({ kind, text }) => `${kind}: ${text}`)).toEqual([
      'never: ALLERGY: MILK, MUSTARD', 'never: NO PORK', 'never: NO BONE', 'hazard: OVER THE BORDER', 'save: CAPE KEPT',
    ]);
  });

  test('says of made things whose meat is in them, and which goes first where meat runs short', () => {
    expect(sheet.products.map(({ name, batch }) => `${name} ${batch}`)).toEqual(['JERKY MIXED BATCH', 'SNACK STICKS MIXED BATCH']);
    expect(sheet.ifShort).toBe('IF SHORT: 1 jerky, 2 snack sticks');
    expect(sheet.grind).toContainEqual({ label: 'Form', value: 'PATTIES' });
  });

  test('says by when, to whom, and who mounts the cape, apart from the words of the hunter', () => {
    expect(sheet.facts).toEqual([
      { tag: 'WANTED BY', words: 'Tue, Dec 1' },
      { tag: 'SHARED', words: 'Edda 50%, Jonas 30%, GIVEN 20%' },
    ]);
    expect(sheet.keep).toEqual(['HEART', 'CAPE (Ida Falk)', 'WHOLE HIDE']);
    expect(sheet.note).toBe('Jonas comes for his boxes himself.');
  });

  test('leaves no trace on the sheet of a plain order', () => {
    const { stops, ifShort, facts, products } = typicalSheet();
    expect([stops, ifShort, facts, products.map(({ batch }) => batch)]).toEqual([[], '', [], ['OWN MEAT']]);
  });
});

test('a line of both sides says which of them was hit', () => {
  const sheet = makeSheet({ arrival: { wounds: [{ part: 'loin', place: 'left', severity: 'light' }] }, instructions: { lines: [makeLine('loin', 'medallions')] } });
  expect(linesOf(sheet).find(({ name }) => name === 'BACKSTRAP')?.note).toBe('LEFT HIT: CUT WIDE');
});

test('a part that a wound has spoiled is thrown away, whatever was ordered of it', () => {
  const wounds = [{ part: 'loin', place: 'left', severity: 'lost' }, { part: 'shoulder', place: 'right', severity: 'lost' }, { part: 'haunch', place: 'left', severity: 'heavy' }] as const;
  const sheet = makeSheet({ arrival: { wounds }, instructions: { lines: [makeLine('loin', 'medallions')] } });
  const back = told(sheet).filter((line) => /BACK|SHOULDER|HIND LEG/.test(line));
  expect(back).toEqual([
    'right BACKSTRAP: MEDALLIONS, as you see fit, as you see fit',
    '! left BACK: DISCARD',
    'both HIND LEG: TO GRIND',
    'left SHOULDER: TO GRIND',
    '! right SHOULDER: DISCARD',
  ]);
  const notes = linesOf(sheet).filter(({ note }) => note !== '');
  expect(notes.map(({ part, note }) => `${part}: ${note}`)).toEqual(['LEFT BACK: LOST', 'HIND LEG L + R: LEFT HIT: CUT WIDE', 'RIGHT SHOULDER: LOST']);
});

test('a part that did not come has no line, though one was ordered', () => {
  const missing = [{ part: 'loin', place: 'left' }, { part: 'neck', place: 'middle' }] as const;
  const sheet = makeSheet({ arrival: { missing }, instructions: { lines: [makeLine('loin', 'medallions'), makeLine('neck', 'boned-and-rolled')] } });
  expect(told(sheet).filter((line) => /BACK|NECK/.test(line))).toEqual(['right BACKSTRAP: MEDALLIONS, as you see fit, as you see fit']);
  expect(sheet.markWords).toBe('Did not come: left back, neck.');
});

test('the hanging weight is asked for only while it is not known', () => {
  expect(makeSheet({ hangingGrams: null }).writeIns[0]).toBe('Hanging weight');
  const weighed = makeSheet({ hangingGrams: 41_912 });
  expect(weighed.writeIns[0]).toBe('Meat out');
  expect(weighed.weight).toBe('Hanging: 92.4 lb');
});
