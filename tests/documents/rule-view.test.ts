import { describe, expect, test } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { NAME_COUNTRIES } from '@/lib/cuts';
import { type RulePage, ruleIndex, rulePage } from '@/lib/documents';
import { RULES, RULE_TOPICS } from '@/lib/rules';

const american = { country: 'us', unit: 'lb' } as const;

function pageOf(id: string, changes = {}, words: { country: 'us' | 'uk'; unit: 'lb' | 'kg' } = american): RulePage {
  const page = rulePage(id, { changes, words, book: PUBLISHED_SPECIES });
  if (!page) throw new Error(`No page of ${id}`);
  return page;
}

describe('the index of rules', () => {
  test('names every rule once, under what it is about', () => {
    const groups = ruleIndex({}, 'uk');
    expect(groups.flatMap(({ rules }) => rules.map(({ id }) => id)).toSorted()).toEqual(RULES.map(({ id }) => id).toSorted());
    expect(groups.map(({ topic }) => topic)).toEqual(RULE_TOPICS.filter((topic) => groups.some((group) => group.topic === topic)));
  });

  test('says of each in one sentence why it is there', () => {
    for (const { line } of ruleIndex({}, 'uk').flatMap(({ rules }) => rules)) expect(line).toMatch(/^[A-Z].{15,230}\.$/);
  });

  test('tells what the shop has made of a rule', () => {
    const softened = ruleIndex({ 'below-batch-minimum': { severity: 'off', reason: 'We run them together' } }, 'uk')
      .flatMap(({ rules }) => rules)
      .find(({ id }) => id === 'below-batch-minimum');
    expect(softened).toMatchObject({ severity: 'off', severityWords: 'This shop leaves it out' });
  });
});

test('reasons are told in the words of the shop’s country', () => {
  for (const { id } of RULES) {
    const { why } = pageOf(id, {}, { country: 'us', unit: 'lb' });
    expect(why).not.toMatch(/\b(mince|minced|fillets?|haunch|haunches|topside|joints?|tenderised)\b/);
  }
});

describe('the page of a rule', () => {
  test.each(RULES.map(({ id }) => id))('%s: why, from where, when, and examples in the words of any shop, none twice', (id) => {
    for (const country of NAME_COUNTRIES) {
      for (const unit of ['lb', 'kg'] as const) {
        const { why, source, askedWhen, examples, noWayBecause } = pageOf(id, {}, { country, unit });
        for (const text of [why, source, askedWhen]) expect(text).toMatch(/^.{10,}\.$/);
        expect(examples.length).toBeGreaterThan(0);
        expect(new Set(examples.map(({ message }) => message)).size).toBe(examples.length);
        for (const { ways } of examples) expect(ways.length > 0).toBe(noWayBecause === null);
      }
    }
  });

  test('speaks in the shop’s words and units', () => {
    expect(pageOf('more-than-the-animal-gives').examples[0]?.message).toMatch(/^You asked for 30\.0 lb of backstrap bone-in chops;/);
    expect(pageOf('more-than-the-animal-gives', {}, { country: 'uk', unit: 'kg' }).examples[0]?.message).toMatch(/^You asked for 13\.61 kg of loin chops on the bone;/);
    expect(pageOf('muscle-promised-twice').examples[0]?.animal).toBe('white-tailed deer, doe, 100.0 lb field-dressed');
  });

  test('says when it is looked at, and whether it may be softened', () => {
    expect(pageOf('wait-for-test-result')).toMatchObject({
      askedWhen: 'We look at it before the knife starts and when it is handed over.',
      ground: 'This is about safety, so no shop can soften it or switch it off.',
    });
    expect(pageOf('muscle-promised-twice')).toMatchObject({
      askedWhen: 'We look at it while the order is written, when the animal comes in and before the knife starts.',
      ground: null,
    });
  });

  test('says what the shop made of it and why, but not of a rule that cannot be softened', () => {
    const change = { severity: 'ask', reason: 'We call whoever sends it' } as const;
    expect(pageOf('muscle-promised-twice', { 'muscle-promised-twice': change })).toMatchObject({
      severity: 'ask',
      severityWords: 'We ask you',
      softened: { sentence: 'Elsewhere it has to be mended before it can be cut; this shop has softened that.', reason: 'We call whoever sends it' },
    });
    expect(pageOf('wait-for-test-result', { 'wait-for-test-result': change })).toMatchObject({ severity: 'stop', softened: null });
  });

  test('is not there for a rule nobody knows', () => {
    expect(rulePage('no-such-rule', { changes: {}, words: american, book: PUBLISHED_SPECIES })).toBeNull();
  });
});
