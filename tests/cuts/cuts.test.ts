import { describe, expect, it, test } from 'vitest';
import { ANATOMY, MUSCLES, PARTS, partsOf } from '@/lib/carcass';
import {
  CUTS, CUT_IDS, NAME_COUNTRIES, TARGETS, TARGET_IDS, cutName, cutsOf, gramsPerPerson, keepsBone, knifeOrder, minceName, partName, pluralOf,
  sidedName, targetName, targetsOfPart,
} from '@/lib/cuts';

describe.each(CUT_IDS)('the cut %s', (id) => {
  it('divides its meat into ten thousand parts, none negative', () => {
    const { packed, stewing, grinding, waste, whole = 0 } = CUTS[id].split;
    expect(packed + stewing + grinding + waste + whole).toBe(10_000);
    expect(Math.min(packed, stewing, grinding, waste, whole)).toBeGreaterThanOrEqual(0);
  });

  it('is filed under its own name, with targets, an action in capitals and a source', () => {
    expect(CUTS[id].id).toBe(id);
    expect(CUTS[id].targets.length).toBeGreaterThan(0);
    expect(new Set(CUTS[id].targets).size).toBe(CUTS[id].targets.length);
    expect(CUTS[id].action).toBe(CUTS[id].action.toUpperCase());
    expect(CUTS[id].source).not.toBe('');
  });

  it('keeps the bone only of targets that have one', () => {
    const boneless = CUTS[id].targets.filter((target) => TARGETS[target].bones.length === 0);
    expect(keepsBone(id) ? boneless : []).toEqual([]);
  });
});

describe.each(TARGET_IDS)('the target %s', (id) => {
  it('can be cut in some way', () => {
    expect(cutsOf(id).length).toBeGreaterThan(0);
  });

  it('names muscles, bones and covers that exist, its muscles those of its part', () => {
    const { muscles, bones, covers, part } = TARGETS[id];
    expect(muscles.length).toBeGreaterThan(0);
    const parts: readonly string[] = id === 'whole-bird' ? partsOf('bird') : [part, ...(id === 'saddle' ? ['fillet'] : [])];
    for (const muscle of muscles) {
      expect(ANATOMY[muscle].kind).toBe('muscle');
      expect(parts).toContain(ANATOMY[muscle].part);
    }
    for (const bone of bones) expect(ANATOMY[bone].kind).toBe('bone');
    for (const cover of covers) expect(ANATOMY[cover].kind).toBe('cover');
    for (const tissue of [...bones, ...covers]) expect(parts).toContain(ANATOMY[tissue].part);
  });

  it('reaches across the middle only where its muscles do', () => {
    for (const muscle of TARGETS[id].muscles) expect(ANATOMY[muscle].sided).toBe(TARGETS[id].reach !== 'middle');
  });

  it('has spine in it where its bone is spine or neck', () => {
    expect(TARGETS[id].spinal).toBe(TARGETS[id].bones.some((bone) => bone === 'spine' || bone === 'neck-bone'));
  });
});

describe('targets', () => {
  it('reach every muscle, so that nothing is beyond a wish', () => {
    for (const muscle of MUSCLES) expect(TARGET_IDS.some((id) => TARGETS[id].muscles.includes(muscle))).toBe(true);
  });

  it('lie on one card each, the whole part first', () => {
    expect(PARTS.flatMap((part) => targetsOfPart(part)).toSorted()).toEqual(TARGET_IDS.toSorted());
    expect(targetsOfPart('haunch')[0]).toBe('haunch');
    expect(targetsOfPart('loin')).toEqual(['saddle', 'loin']);
    expect(targetsOfPart('ribs')).toEqual(['ribs', 'rib-rack', 'flank']);
  });

  it('of the haunch come in knife order by their seams', () => {
    const seams = ['hind-shank', 'rump', 'topside', 'thick-flank', 'silverside', 'salmon-cut'] as const;
    expect(seams.toSorted((a, b) => knifeOrder(a) - knifeOrder(b))).toEqual(seams);
    expect(targetsOfPart('haunch').slice(1)).toEqual(seams);
    expect(TARGETS.haunch.muscles).toEqual(seams);
  });
});

describe('a person at table', () => {
  it('is reckoned at 200 g without bone and more with it', () => {
    expect(gramsPerPerson('joint')).toBe(200);
    expect(gramsPerPerson('on-the-bone')).toBeGreaterThan(200);
  });
});

describe('names', () => {
  test.each(NAME_COUNTRIES)('of the country %s exist for every target, part and cut', (country) => {
    for (const id of TARGET_IDS) expect(targetName(id, country)).toMatch(/^[a-z]/);
    for (const id of PARTS) expect(partName(id, country)).toMatch(/^[a-z]/);
    for (const id of CUT_IDS) expect(cutName(id, country)).toMatch(/^[a-z]/);
    expect(minceName(country)).toMatch(/^[a-z]/);
  });

  test.each(NAME_COUNTRIES)('of two muscles are never the same in the country %s', (country) => {
    const names = TARGET_IDS.map((id) => targetName(id, country));
    expect(new Set(names).size).toBe(names.length);
  });

  const muscles = [
    ['topside', 'topside', 'top round'],
    ['silverside', 'silverside', 'bottom round'],
    ['salmon-cut', 'salmon cut', 'eye of round'],
    ['thick-flank', 'thick flank', 'sirloin tip'],
    ['rump', 'rump', 'top sirloin'],
    ['fillet', 'fillet', 'tenderloin'],
  ] as const;
  test.each(muscles)('of %s are %s in the UK and %s in the US', (id, uk, us) => {
    expect(targetName(id, 'uk')).toBe(uk);
    expect(targetName(id, 'us')).toBe(us);
  });

  const plurals = [
    ['haunch', 'haunches'],
    ['hind leg', 'hind legs'],
    ['eye of round', 'eyes of round'],
    ['thick flank', 'thick flanks'],
    ['ribs and flank', 'ribs and flank'],
  ] as const;
  test.each(plurals)('of one %s and several: %s', (one, several) => {
    expect(pluralOf(one)).toBe(several);
  });

  it('carry their side', () => {
    expect(sidedName('haunch', 'left')).toBe('left haunch');
    expect(sidedName('haunch', 'both')).toBe('both haunches');
    expect(sidedName('neck', 'middle')).toBe('neck');
  });
});
