import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { RULES, RULE_EXAMPLES, type RuleChanges, SEVERITIES, SOFTER_SEVERITIES, findAll, hasStop, softenedTo, softerChoices } from '@/lib/rules';
import { anyOrder } from './any-order';

const rankOf = (severity: string): number => [...SEVERITIES, 'off'].indexOf(severity);

function ruleOf(id: string): (typeof RULES)[number] {
  const rule = RULES.find((one) => one.id === id);
  if (!rule) throw new Error(`No rule ${id}`);
  return rule;
}

/** Any changes at all, also of rules that cannot be softened and of rules nobody knows. */
const anyChanges: fc.Arbitrary<RuleChanges> = fc.dictionary(
  fc.constantFrom(...RULES.map(({ id }) => id), 'no-such-rule', 'toString'),
  fc.record({ severity: fc.constantFrom(...SOFTER_SEVERITIES), reason: fc.constant('we do it otherwise') }),
);

describe('what a shop may make of a rule', () => {
  it('is anything softer than the rule, and nothing where safety or law speaks', () => {
    const trade = { id: 'some-rule', ground: 'trade' } as const;
    expect(softerChoices({ ...trade, severity: 'stop' })).toEqual(['ask', 'note', 'off']);
    expect(softerChoices({ ...trade, severity: 'ask' })).toEqual(['note', 'off']);
    expect(softerChoices({ ...trade, severity: 'note' })).toEqual(['off']);
    for (const ground of ['safety', 'law'] as const) expect(softerChoices({ ...trade, ground, severity: 'stop' })).toEqual([]);
  });

  it('counts only where it is softer', () => {
    const change = { severity: 'ask', reason: 'we call' } as const;
    expect(softenedTo({ id: 'a', severity: 'stop', ground: 'trade' }, { a: change })).toBe(change);
    expect(softenedTo({ id: 'a', severity: 'ask', ground: 'trade' }, { a: change })).toBeNull();
    expect(softenedTo({ id: 'a', severity: 'note', ground: 'trade' }, { a: change })).toBeNull();
    expect(softenedTo({ id: 'a', severity: 'stop', ground: 'law' }, { a: change })).toBeNull();
    expect(softenedTo({ id: 'toString', severity: 'stop', ground: 'trade' }, {})).toBeNull();
  });
});

describe('the findings of any order under any changes', { timeout: 60_000 }, () => {
  it('say what the rules say, none harder than its rule, and all of safety and law that was said before', () => {
    fc.assert(fc.property(anyOrder, anyChanges, (order, changes) => {
      const after = findAll(order, changes);
      const asFound = RULES.flatMap((rule) => rule.find(order));
      for (const finding of after) {
        const { cause: _cause, ...own } = asFound.find(({ key }) => key === finding.key) ?? { cause: '' };
        expect({ ...finding, severity: null }).toEqual({ ...own, severity: null });
        expect(rankOf(finding.severity)).toBeGreaterThanOrEqual(rankOf(ruleOf(finding.ruleId).severity));
      }
      for (const finding of findAll(order)) {
        if (ruleOf(finding.ruleId).ground !== 'trade' || !Object.hasOwn(changes, finding.ruleId)) expect(after).toContainEqual(finding);
      }
    }));
  });

  it('hold no stop that was none before, and none of a rule that is off', () => {
    fc.assert(fc.property(anyOrder, anyChanges, (order, changes) => {
      const after = findAll(order, changes);
      expect(hasStop(after) && !hasStop(findAll(order))).toBe(false);
      expect(after.filter(({ ruleId }) => ruleOf(ruleId).ground === 'trade' && changes[ruleId]?.severity === 'off')).toEqual([]);
    }));
  });

  it('are read worst first, by the severity the shop gives them', () => {
    fc.assert(fc.property(anyOrder, anyChanges, (order, changes) => {
      const ranks = findAll(order, changes).map(({ severity }) => rankOf(severity));
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    }));
  });
});

it('lets an order go whose only stop the shop has softened, and still says it', () => {
  const [example] = RULE_EXAMPLES['below-batch-minimum']?.().invalid ?? [];
  if (!example) throw new Error('below-batch-minimum has no example');
  const order = example.order(PUBLISHED_SPECIES);
  expect(hasStop(findAll(order))).toBe(true);
  const softened = findAll(order, { 'below-batch-minimum': { severity: 'note', reason: 'our machine is small' } });
  expect(hasStop(softened)).toBe(false);
  expect(softened.map(({ message }) => message)).toContain(example.messages[0]);
});
