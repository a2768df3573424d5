import { describe, expect, it, test } from 'vitest';
import { type NameCountry, type TargetId, nameBook } from '@/lib/cuts';

// What the trade confuses: public trade and standards text of the UK and the US read side by side, the rest common practice,
// no source. Written out here by themselves, so that a trap that is lost from the names is missed.

type Trap = {
  readonly trap: string;
  readonly term: string;
  readonly country: NameCountry;
  /** Muscles it is said of. */
  readonly targets?: readonly TargetId[];
  /** Other things it is said of, each as it is in the meanings. */
  readonly things?: readonly RegExp[];
};

const TRAPS: readonly Trap[] = [
  { trap: 'sirloin is the loin in the UK and the rump muscle in the US', term: 'sirloin', country: 'us', targets: ['loin', 'rump'] },
  { trap: 'sirloin tip is the thick flank, and often said of the rump', term: 'sirloin tip', country: 'us', targets: ['thick-flank', 'rump'] },
  { trap: 'rump is the gluteals in the UK', term: 'rump', country: 'us', targets: ['rump', 'silverside'] },
  { trap: 'a US rump roast is the bottom round', term: 'rump roast', country: 'uk', targets: ['silverside', 'rump'] },
  { trap: 'backstrap is the loin to a hunter and the neck ligament to the meat trade', term: 'backstrap', country: 'uk', targets: ['loin'], things: [/neck ligament/] },
  { trap: 'tenderloin is the psoas, and many hunters call the loin so', term: 'tenderloin', country: 'us', targets: ['fillet', 'loin'] },
  { trap: 'ham is the hind leg, or a cured product', term: 'ham', country: 'us', targets: ['haunch', 'haunch'], things: [/fresh/, /cured/] },
  { trap: 'cube is a tenderised steak, or stewing dice', term: 'cube', country: 'uk', things: [/tenderised steaks/, /stewing/] },
  { trap: 'burger is pure, or with fat, or patties', term: 'burger', country: 'us', things: [/without fat/, /with fat/, /patties/] },
  { trap: 'chop is a slice on the bone, or a medallion', term: 'chop', country: 'uk', things: [/on the bone/, /medallions/] },
  { trap: 'quarter is a limb, or a fourth of the meat', term: 'quarter', country: 'us', things: [/limb/, /fourth/] },
  { trap: 'whole needs a noun', term: 'whole', country: 'us', things: [/on the bone/, /in one piece/] },
  { trap: 'dressed is several weights', term: 'dressed', country: 'us', things: [/field-dressed/, /hanging/, /boneless/, /finished/] },
];

describe.each(['us', 'uk'] as const)('in the words of the country %s', (country) => {
  test.each(TRAPS.filter((one) => one.country === country))('$trap', ({ term, targets = [], things = [] }) => {
    const meanings = nameBook(country).names.find((name) => name.term === term)?.meanings ?? [];
    for (const target of targets) expect(meanings.map((meaning) => meaning.target)).toContain(target);
    for (const thing of things) expect(meanings.filter(({ words }) => thing.test(words))).toHaveLength(1);
  });
});

describe('beef words', () => {
  // A deer is too small for them; the last two are scrap on anything smaller than an elk. Common practice, no source.
  const words = ['filet mignon', 'ribeye', 'bacon', 'brisket', 'hanger', 'T-bone', 'tri-tip', 'flat iron'];

  it('are known as such, with what comes closest', () => {
    for (const word of words) {
      const name = nameBook('us').names.find(({ term }) => term === word);
      expect(name?.notOn).toBeDefined();
      expect(name?.meanings.length).toBeGreaterThan(0);
    }
  });
});
