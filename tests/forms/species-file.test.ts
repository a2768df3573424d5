import { describe, expect, it, test } from 'vitest';
import { PUBLISHED_IDS, figuresOf, forecastCarcass, publishedSpecies } from '@/lib/carcass';
import { parseSpeciesFile } from '@/lib/forms';

// Species files are what people edit: made of JSON, with whatever a hand may do to it.
type Json = { [name: string]: Json } & Record<string, unknown>;

function file(id: string): Json {
  return structuredClone(publishedSpecies(id)) as unknown as Json;
}

test.each(PUBLISHED_IDS)('the published %s written as a file is read back as its figures', (id) => {
  const read = parseSpeciesFile(JSON.parse(JSON.stringify(publishedSpecies(id))));
  const { plausibleLiveGrams, ...figures } = figuresOf(publishedSpecies(id));
  expect(read).toMatchObject({ ok: true, value: figures });
  expect(read.ok && read.value.plausibleLiveGrams.to).toBe(plausibleLiveGrams.to);
});

test('a species of the shop’s own is forecast like any other', () => {
  const read = parseSpeciesFile({ ...file('fallow-deer'), id: 'axis-deer', name: 'axis deer' });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const facts = { speciesId: 'axis-deer', sex: 'male', ageClass: 'adult', weight: null, form: 'hide-on', missing: [], wounds: [] } as const;
  expect(forecastCarcass(facts, { 'axis-deer': read.value }).hanging.likely).toBeGreaterThan(20_000);
});

describe('a file that is not sound says where and how to mend it:', () => {
  const cases: readonly (readonly [string, (json: Json) => void, string, RegExp])[] = [
    ['an id with blanks', (json) => Object.assign(json, { id: 'Axis deer' }), 'id', /small letters/],
    ['shares that do not sum', (json) => Object.assign(json['composition']?.['carcass']?.['per10k'] ?? {}, { meat: 9_000 }), 'composition.carcass.per10k', /sum to 10000/],
    ['a part of another body', (json) => Object.assign(json['composition']?.['meat']?.['per10k'] ?? {}, { 'bird-leg': 0 }), 'composition.meat.per10k.bird-leg', /There is no bird-leg here/],
    ['a muscle left out', (json) => { delete json['composition']?.['muscles']?.['haunch']; }, 'composition.muscles', /haunch is missing here/],
    ['no reason given', (json) => { delete json['fieldDressed']?.['why']; }, 'fieldDressed.why', /why it is so/],
    ['nothing said of cubs', (json) => Object.assign(json, { typicalWeights: [] }), 'typicalWeights', /young male weighs is missing/],
    ['a key nobody knows', (json) => Object.assign(json, { colour: 'brown' }), '', /colour/],
  ];
  it.each(cases)('%s', (_, spoil, path, sentence) => {
    const json = file('roe-deer');
    spoil(json);
    const read = parseSpeciesFile(json);
    expect(read.ok ? [] : read.problems.filter((one) => one.path === path).map(({ message }) => message)).toEqual(expect.arrayContaining([expect.stringMatching(sentence)]));
  });

  it.each([null, 7, 'roe', [], { id: 'x' }])('%j, which is no species at all', (json) => {
    expect(parseSpeciesFile(json).ok).toBe(false);
  });
});
