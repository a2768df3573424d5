import { readdirSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { CUTS, targetsOfPlan } from '@/lib/cuts';
import { type Finding, RULES, RULE_EXAMPLES, RULE_REASONS, type RuleExamples, type Rule, type RuledOrder, afterEdits, findAll, hasStop } from '@/lib/rules';
import { anyOrder } from './any-order';

const FOLDER = path.join(import.meta.dirname, '../../lib/rules/all');
const fileNames = readdirSync(FOLDER).map((file) => file.replace(/\.ts$/, ''));

const NEVER_SAID = /\b(please|sorry|valid|invalid|forbidden|required)\b/i;
const UNFINISHED = /undefined|NaN|null|Infinity|\[object| {2}|\?|^\s|\s$/;

function textsOf(finding: Finding): readonly string[] {
  return [finding.message, finding.title, ...finding.suggestions.flatMap(({ label, consequence }) => [label, consequence])];
}

function stopKeys(order: RuledOrder): readonly string[] {
  return findAll(order).filter(({ severity }) => severity === 'stop').map(({ key }) => key);
}

function camelCased(id: string): string {
  return id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
}

describe('the registry', () => {
  it('holds exactly the rules that have a file, each under the name of its file', () => {
    expect(RULES.map(({ id }) => id).sort()).toEqual(fileNames.toSorted());
  });

  it('holds what each file exports under the name of its rule', async () => {
    for (const id of fileNames) {
      const exported = (await import(path.join(FOLDER, `${id}.ts`))) as Record<string, Rule>;
      expect(RULES).toContain(exported[camelCased(id)]);
    }
  });
});

function examplesOf(id: string): RuleExamples {
  const examples = RULE_EXAMPLES[id];
  if (!examples) throw new Error(`${id} has no examples in lib/rules/examples.ts`);
  return examples();
}

describe.each(RULES.map((rule) => [rule.id, rule] as const))('%s', (id, rule) => {
  const examples = examplesOf(id);
  const findings = examples.invalid.flatMap(({ order }) => rule.find(order(PUBLISHED_SPECIES)).map((finding) => ({ finding, order: order(PUBLISHED_SPECIES) })));

  it('says in plain words why, from where and of what it is', () => {
    const { why, source } = RULE_REASONS[id] ?? { why: '', source: '' };
    expect(why.length).toBeGreaterThan(80);
    expect(source).not.toBe('');
    expect(rule.stages.length).toBeGreaterThan(0);
    for (const text of [rule.title, why]) {
      expect(text).not.toMatch(NEVER_SAID);
      expect(text).not.toMatch(UNFINISHED);
    }
  });

  it('has examples of both kinds, each at a stage it runs at', () => {
    expect(examples.valid.length).toBeGreaterThan(0);
    expect(examples.invalid.length).toBeGreaterThan(0);
    for (const { order } of examples.invalid) expect(rule.stages).toContain(order(PUBLISHED_SPECIES).stage);
  });

  it('finds nothing in its good examples', () => {
    for (const order of examples.valid) expect(rule.find(order(PUBLISHED_SPECIES))).toEqual([]);
  });

  it('says exactly this of its bad examples', () => {
    for (const { order, messages } of examples.invalid) {
      expect(messages.length).toBeGreaterThan(0);
      expect(rule.find(order(PUBLISHED_SPECIES)).map(({ message }) => message)).toEqual(messages);
    }
  });

  it('speaks in one finished sentence, without blame', () => {
    for (const { finding } of findings) {
      expect(finding.message).toMatch(/^[A-Z0-9].*\.$/);
      for (const text of textsOf(finding)) {
        expect(text).not.toMatch(UNFINISHED);
        expect(text).not.toMatch(NEVER_SAID);
      }
    }
  });

  it('gives each finding its own key', () => {
    for (const { order } of examples.invalid) {
      const keys = rule.find(order(PUBLISHED_SPECIES)).map(({ key }) => key);
      expect(new Set(keys).size).toBe(keys.length);
      for (const key of keys) expect(key.startsWith(`${id}|`)).toBe(true);
    }
  });

  it('suggests something for every finding, or says why it never does', () => {
    for (const { finding } of findings) {
      if (rule.noSuggestionBecause === null) expect(finding.suggestions.length).toBeGreaterThan(0);
      else expect(finding.suggestions).toEqual([]);
    }
    expect(rule.noSuggestionBecause).not.toBe('');
  });

  it('is cleared by each of its suggestions, none of which raises a stop', () => {
    for (const { finding, order } of findings) {
      const before = stopKeys(order);
      for (const { edits } of finding.suggestions) {
        const after = afterEdits(order, edits);
        expect(rule.find(after).map(({ key }) => key)).not.toContain(finding.key);
        expect(stopKeys(after).filter((key) => !before.includes(key))).toEqual([]);
      }
    }
  });
});

describe('rules on any order', { timeout: 60_000 }, () => {
  it('answer without throwing, in finished text, each finding under its own key', () => {
    fc.assert(fc.property(anyOrder, (order) => {
      const findings = findAll(order);
      expect(new Set(findings.map(({ key }) => key)).size).toBe(findings.length);
      for (const text of findings.flatMap(textsOf)) {
        expect(text).not.toMatch(UNFINISHED);
        expect(text).not.toMatch(NEVER_SAID);
      }
    }), { numRuns: 100 });
  });

  it('carry a suggestion unless the rule says why not', () => {
    const never = new Set(RULES.filter(({ noSuggestionBecause }) => noSuggestionBecause !== null).map(({ id }) => id));
    fc.assert(fc.property(anyOrder, (order) => {
      for (const { ruleId, suggestions } of findAll(order)) expect(suggestions.length > 0).toBe(!never.has(ruleId));
    }), { numRuns: 100 });
  });

  it('suggest nothing that leaves the finding standing or raises a stop that was not there', () => {
    fc.assert(fc.property(anyOrder, (order) => {
      const before = stopKeys(order);
      for (const { key, suggestions } of findAll(order)) {
        for (const { edits } of suggestions) {
          const after = findAll(afterEdits(order, edits));
          expect(after.map((finding) => finding.key)).not.toContain(key);
          expect(after.filter((one) => one.severity === 'stop' && !before.includes(one.key))).toEqual([]);
        }
      }
    }), { numRuns: 80 });
  });

  it('find the same whatever the order of the lines', () => {
    const shuffled = anyOrder.chain((order) =>
      fc.shuffledSubarray([...order.instructions.lines], { minLength: order.instructions.lines.length }).map((lines) => ({ order, lines })),
    );
    fc.assert(fc.property(shuffled, ({ order, lines }) => {
      const edited = afterEdits({ ...order, instructions: { ...order.instructions, lines } }, []);
      const keys = (one: RuledOrder): readonly string[] => findAll(one).map(({ key }) => key).sort();
      expect(keys(edited)).toEqual(keys(order));
    }), { numRuns: 100 });
  });

  it('come to an end of stops when their first suggestions are tapped one after another', () => {
    fc.assert(fc.property(anyOrder, (start) => {
      let order = start;
      for (let step = 0; step < 60; step += 1) {
        const stop = findAll(order).find(({ severity, suggestions }) => severity === 'stop' && suggestions.length > 0);
        if (!stop) break;
        order = afterEdits(order, stop.suggestions[0]?.edits ?? []);
      }
      const left = findAll(order).filter(({ severity }) => severity === 'stop');
      // What stays is what no hunter can mend.
      const never = new Set(RULES.filter(({ noSuggestionBecause }) => noSuggestionBecause !== null).map(({ id }) => id));
      expect(left.filter(({ ruleId }) => !never.has(ruleId))).toEqual([]);
      expect(hasStop(findAll(order))).toBe(left.length > 0);
    }), { numRuns: 100 });
  });

  it('come to an end of questions too', () => {
    fc.assert(fc.property(anyOrder, (start) => {
      let order = start;
      for (let step = 0; step < 120; step += 1) {
        const finding = findAll(order).find(({ suggestions }) => suggestions.length > 0);
        if (!finding) break;
        order = afterEdits(order, finding.suggestions[0]?.edits ?? []);
      }
      expect(findAll(order).filter(({ suggestions }) => suggestions.length > 0)).toEqual([]);
    }), { numRuns: 60 });
  });
});

it('ten thousand random orders are read without an exception, and nothing said is unfinished', { timeout: 300_000 }, () => {
  let read = 0;
  fc.assert(fc.property(anyOrder, (order) => {
    read += 1;
    // Ten thousand times an assertion of the library would take as long as the rules.
    const unfinished = findAll(order).find(({ message }) => UNFINISHED.test(message));
    if (unfinished) expect(unfinished.message).not.toMatch(UNFINISHED);
  }), { numRuns: 10_000 });
  expect(read).toBe(10_000);
});

it('an order of which nothing is said loses no gram, and promises nothing of which there may be none', { timeout: 60_000 }, () => {
  let silent = 0;
  fc.assert(fc.property(anyOrder, (random) => {
    // The form offers only what the body has.
    const targets = targetsOfPlan(random.plan.forecast.species.plan);
    const possible = random.instructions.lines.filter(({ target }) => targets.includes(target));
    const order = afterEdits({ ...random, stage: 'order', instructions: { ...random.instructions, lines: possible } }, []);
    // Most random orders have some trouble: what is mended is looked at as well.
    let mended = order;
    for (let step = 0; step < 120; step += 1) {
      const finding = findAll(mended).find(({ suggestions }) => suggestions.length > 0);
      if (!finding) break;
      mended = afterEdits(mended, finding.suggestions[0]?.edits ?? []);
    }
    if (findAll(mended).some(({ severity }) => severity !== 'note')) return;
    silent += 1;
    const { ledger, forecast, lines } = mended.plan;
    for (const { grams, packed, pools } of ledger) expect(packed + Object.values(pools).reduce((sum, pool) => sum + pool, 0)).toBe(grams);
    expect(ledger.reduce((sum, { grams }) => sum + grams, 0)).toBe(forecast.hanging.likely);
    for (const { line, packed } of lines) if (CUTS[line.cut].split.packed > 0) expect(packed.low).toBeGreaterThan(0);
  }), { numRuns: 60 });
  expect(silent).toBeGreaterThan(10);
});

it('a hunter can say yes only to a question that is theirs: no stop is silenced, and nothing the shop has to settle', { timeout: 60_000 }, () => {
  fc.assert(fc.property(anyOrder, (order) => {
    const before = findAll(order);
    const after = findAll({ ...order, instructions: { ...order.instructions, agreed: before.map(({ key }) => key) } });
    const theirs = before.filter(({ severity, whom }) => severity !== 'stop' && whom === 'hunter').map(({ key }) => key);
    const left = after.map(({ key }) => key);
    for (const { key } of before) expect(left.includes(key)).toBe(!theirs.includes(key));
  }), { numRuns: 100 });
});

describe('findAll', () => {
  it('puts stops before questions and questions before notes', () => {
    fc.assert(fc.property(anyOrder, (order) => {
      const ranks = findAll(order).map(({ severity }) => ['stop', 'ask', 'note'].indexOf(severity));
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    }), { numRuns: 100 });
  });
});
