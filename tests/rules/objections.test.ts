import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { RULES } from '@/lib/rules';
import { BEYOND_THE_LIST, OBJECTIONS } from './objections';

const MAP = path.join(import.meta.dirname, '../../DEVELOPERS.md');
const [FROM, TO] = ['<!-- objections: made by tests/rules/objections.test.ts -->', '<!-- /objections -->'];

/** The table as DEVELOPERS.md holds it. */
function table(): string {
  const rows = OBJECTIONS.map(({ row, what, rules, because = '' }) =>
    `| ${row} | ${what} | ${rules.map((id) => `\`${id}\``).join(', ') || 'no rule'} | ${because} |`);
  return [FROM, '| # | objection | rule | remark |', '|---|---|---|---|', ...rows, TO].join('\n');
}

const ids = RULES.map(({ id }) => id);

describe('what a master cutter objects to', () => {
  it('is answered row by row, by a rule or with the reason why there is none', () => {
    expect(OBJECTIONS.map(({ row }) => row)).toEqual(Array.from({ length: 122 }, (_, at) => at + 1));
    for (const { rules, because } of OBJECTIONS) {
      expect(rules.length > 0 || Boolean(because)).toBe(true);
      for (const id of rules) expect(ids).toContain(id);
    }
  });

  it('holds every rule there is, but for those that say why they are there', () => {
    const answering = new Set(OBJECTIONS.flatMap(({ rules }) => rules));
    expect(ids.filter((id) => !answering.has(id)).toSorted()).toEqual(Object.keys(BEYOND_THE_LIST).toSorted());
  });

  it('stands in DEVELOPERS.md as it stands here; OBJECTIONS=write writes it', () => {
    const map = readFileSync(MAP, 'utf8');
    const [before = '', rest = ''] = map.split(FROM);
    const [, after = ''] = rest.split(TO);
    if (process.env['OBJECTIONS'] === 'write') writeFileSync(MAP, `${before}${table()}${after}`);
    expect(readFileSync(MAP, 'utf8').includes(table())).toBe(true);
  });
});
