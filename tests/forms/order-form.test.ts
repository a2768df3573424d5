import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type OrderFormShop,
  type OrderFormValues,
  applyIntent,
  assessForm,
  blankOrderForm,
  describedAnimal,
  describedInstructions,
  findingsOf,
  formValuesOf,
  implausibleWeight,
  orderFormEntries,
  parseOrderForm,
  readOrderForm,
  storedAnimal,
  storedInstructions,
  withInstructions,
} from '@/lib/forms';
import { PUBLISHED_IDS, PUBLISHED_SPECIES } from '@/lib/carcass';
import { CAREFUL } from '@/lib/law';
import { anyFormShop, anyOrderForm, formShops, hostileTexts } from './any-form';

const [shop = { unit: 'lb', locale: 'en-US', country: 'us', diseaseZones: [], law: CAREFUL.points, species: PUBLISHED_SPECIES } satisfies OrderFormShop] = formShops;

function filled(changes: Partial<OrderFormValues> = {}): OrderFormValues {
  return {
    ...blankOrderForm('form-key-1'),
    animal: { speciesId: 'white-tailed-deer', sex: 'female', ageClass: 'adult', weight: '', weightBasis: '', girth: '', takenWhere: '', diseaseZone: 'no', form: 'hide-on', filletsOut: false },
    rest: 'mince',
    hunter: { name: 'Bo Brandt', phone: '555 0100', email: '' },
    ...changes,
  };
}

function described(values: OrderFormValues, shop: OrderFormShop) {
  return { animal: describedAnimal(values, shop), instructions: describedInstructions(values, shop) };
}

function withAnimal(changes: Partial<OrderFormValues['animal']>): OrderFormValues {
  const values = filled();
  return { ...values, animal: { ...values.animal, ...changes } };
}

describe('whatever a browser sends', () => {
  test('opens again as the same order, to the gram', () => {
    fc.assert(
      fc.property(anyOrderForm, anyFormShop, (values, shop) => {
        const { animal, instructions } = described(values, shop);
        fc.pre(animal !== null);
        const again = formValuesOf({ formKey: values.formKey, animal, instructions, hunter: values.hunter }, shop);
        expect(described(again, shop)).toEqual({ animal, instructions });
      }),
      { numRuns: 400 },
    );
  });

  test('keeps its order when its own instructions are put back into it', () => {
    fc.assert(
      fc.property(anyOrderForm, anyFormShop, (values, shop) => {
        const { instructions } = described(values, shop);
        expect(describedInstructions(withInstructions(values, instructions, shop), shop)).toEqual(instructions);
      }),
    );
  });

  test('comes out of the hidden fields of the check page as it went in', () => {
    fc.assert(
      fc.property(anyOrderForm, (values) => {
        expect(readOrderForm(orderFormEntries(values))).toEqual(values);
      }),
    );
  });

  test('is read without a fault, and what passes can be stored', () => {
    fc.assert(
      fc.property(anyOrderForm, anyFormShop, (values, shop) => {
        const parsed = parseOrderForm(values, shop);
        if (!parsed.ok) {
          for (const message of Object.values(parsed.fieldErrors)) expect(message).toMatch(/^[A-Z].*\.$/s);
          return;
        }
        const { animal, instructions, hunter } = parsed.value;
        expect(storedAnimal.parse(JSON.parse(JSON.stringify(animal)))).toEqual(animal);
        expect(storedInstructions.parse(JSON.parse(JSON.stringify(instructions)))).toEqual(instructions);
        expect(`${hunter.name}${hunter.phone}${hunter.email}${animal.takenWhere}`).not.toMatch(/[\p{Cc}\u202A-\u202E\u2066-\u2069]/u);
      }),
      { numRuns: 300 },
    );
  });

  test('is forecast and found fault with without a fault, and the first way out of a finding clears it', () => {
    fc.assert(
      fc.property(anyOrderForm, anyFormShop, (values, shop) => {
        for (const finding of findingsOf(values, shop)) {
          if (finding.suggestions.length === 0) continue;
          const mended = applyIntent(values, `mend:${finding.key}#0`, shop);
          expect(findingsOf(mended, shop).map(({ key }) => key)).not.toContain(finding.key);
        }
      }),
      { numRuns: 60 },
    );
  }, 60_000);

  test('is not forecast before a species is chosen', () => {
    expect(assessForm(blankOrderForm('k'), shop)).toBeNull();
    expect(assessForm(withAnimal({ speciesId: 'unicorn' }), shop)).toBeNull();
    expect(assessForm(withAnimal({ speciesId: '__proto__' }), shop)).toBeNull();
  });
});

describe('a form that is', () => {
  test('empty says of each field what is wanted', () => {
    const parsed = parseOrderForm(blankOrderForm(''), shop);
    expect(parsed.ok ? {} : parsed.fieldErrors).toEqual({
      formKey: 'This page has lost its place. Load it again; what you typed is kept on this phone.',
      'animal.speciesId': 'Choose which animal it is.',
      'animal.sex': 'Choose male, female or not known.',
      'animal.ageClass': 'Choose its age, or not known.',
      'animal.diseaseZone': 'Say whether it is from a disease zone, or that you are not sure.',
      'animal.form': 'Choose how you will bring it in.',
      rest: 'Choose what becomes of everything you have not named.',
      'hunter.name': 'Write your name, so that the shop can find your animal.',
      'hunter.phone': 'Write a phone number the shop can call, such as 555 010 0147.',
    });
  });

  test('filled in passes, in any order of its fields', () => {
    const entries = orderFormEntries(filled()).toReversed();
    expect(parseOrderForm(readOrderForm(entries), shop)).toMatchObject({ ok: true, value: { hunter: { name: 'Bo Brandt' } } });
  });

  test.each([
    ['roe-deer', '900', 'live', 'That would be a roe deer of 900.0 lb alive; they run from 13.2 lb to 99.2 lb. Check the number, the kind of weight and the species.'],
    ['elk', '40', 'field-dressed', 'That would be an elk of 57.1 lb alive; they run from 132.3 lb to 1,212.5 lb. Check the number, the kind of weight and the species.'],
    ['white-tailed-deer', '1e9', 'live', 'Write the weight as a number, for example 12.5 lb.'],
    ['white-tailed-deer', '-120', 'live', 'Write the weight as a number, for example 12.5 lb.'],
    ['white-tailed-deer', 'NaN', 'live', 'Write the weight as a number, for example 12.5 lb.'],
    ['white-tailed-deer', 'Infinity', 'live', 'Write the weight as a number, for example 12.5 lb.'],
    ['white-tailed-deer', '0', 'live', 'Write a weight above nothing, or leave it empty.'],
    ['white-tailed-deer', '99999', 'live', 'Write a weight of 4,409 lb or less.'],
    ['white-tailed-deer', '9'.repeat(10_000), 'live', 'Write the weight as a number, for example 12.5 lb.'],
  ] as const)('of the species %s and the weight %s (%s) is not taken', (speciesId, weight, weightBasis, sentence) => {
    const parsed = parseOrderForm(withAnimal({ speciesId, weight, weightBasis }), shop);
    expect(parsed.ok ? {} : parsed.fieldErrors).toEqual({ 'animal.weight': sentence });
  });

  test.each(['140 lb dressed', 'Dressed 140', '18 kg gralloched'])('weighed as %j is asked which weight is meant', (weight) => {
    const parsed = parseOrderForm(withAnimal({ weight, weightBasis: 'field-dressed' }), shop);
    expect(parsed.ok ? {} : parsed.fieldErrors).toEqual({
      'animal.weight':
        '“Dressed” is used for three different weights. Write the number alone, and choose beside it which weight it is: gutted with the hide on, head and legs off, or skinned.',
    });
  });

  test('measured round the chest is read where nothing was weighed, and asked again where it cannot be', () => {
    const parsed = parseOrderForm(withAnimal({ girth: '36' }), shop);
    expect(parsed.ok && parsed.value.animal.girthMm).toBe(914);
    for (const [girth, sentence] of [
      ['3 feet', 'Write the length as a number, for example 3/4 in or 1.5 in.'],
      ['5', 'That is no chest of a deer or bear. Measure round it, just behind the forelegs.'],
    ] as const) {
      const refused = parseOrderForm(withAnimal({ girth }), shop);
      expect(refused.ok ? {} : refused.fieldErrors).toEqual({ 'animal.girth': sentence });
    }
  });

  test('weighed without a word on which weight asks for it', () => {
    const parsed = parseOrderForm(withAnimal({ weight: '120' }), shop);
    expect(parsed.ok ? {} : parsed.fieldErrors).toEqual({
      'animal.weightBasis': 'Say which weight that is: alive, gutted with the hide on, hanging without hide, or boned.',
    });
  });

  test.each([
    ['name', '', 'Write your name, so that the shop can find your animal.'],
    ['name', '\u202E\u0000 ', 'Write your name, so that the shop can find your animal.'],
    ['name', 'x'.repeat(81), 'The name has room for 80 characters.'],
    ['phone', '12345', 'Write a phone number the shop can call, such as 555 010 0147.'],
    ['phone', 'call me 555 0100', 'Write a phone number the shop can call, such as 555 010 0147.'],
    ['phone', '1'.repeat(31), 'The phone number has room for 30 characters.'],
    ['email', 'bo', 'Write an e-mail address like name@example.org, or leave it empty.'],
    ['email', 'a@b@c.d', 'Write an e-mail address like name@example.org, or leave it empty.'],
  ] as const)('of a hunter whose %s is %j says so', (field, typed, sentence) => {
    const values = filled();
    const parsed = parseOrderForm({ ...values, hunter: { ...values.hunter, [field]: typed } }, shop);
    expect(parsed.ok ? {} : parsed.fieldErrors).toEqual({ [`hunter.${field}`]: sentence });
  });

  test.each(['Nguyễn Thị Hồng Nhung', 'Siobhán O’Dowd', 'Jörg 🦌 Müller', 'عبد الله', '李小龍', "O'Brien-Großmann, Jr.", 'Bo <b>Brandt</b>'])('of a hunter called %s keeps the name', (name) => {
    const values = filled();
    const parsed = parseOrderForm({ ...values, hunter: { ...values.hunter, name: `  ${name} ` } }, shop);
    expect(parsed.ok && parsed.value.hunter.name).toBe(name);
  });

  test('too long for its note or its lines says so', () => {
    const line = { id: 'line-1', target: 'loin', side: 'both', cut: 'whole', size: 'fit', pack: 'fit', asked: '' } as const;
    const lines = Array.from({ length: 61 }, (_, at) => ({ ...line, id: `line-${at + 1}` }));
    const parsed = parseOrderForm(filled({ note: 'x'.repeat(1_001), lines }), shop);
    expect(parsed.ok ? {} : parsed.fieldErrors).toEqual({ note: 'The note has room for 1000 characters.', lines: 'One animal has room for 40 lines.' });
  });
});

describe('a line', () => {
  const sent = (...lines: readonly Readonly<Record<string, string>>[]): OrderFormValues =>
    readOrderForm(lines.flatMap((line, at) => Object.entries({ id: `line-${at + 1}`, ...line }).map(([name, value]): [string, string] => [`lines.${at}.${name}`, value])));

  test('of a target or cut nobody has is left out; one that does not go together gets the first cut that does', () => {
    expect(sent({ target: 'tail', cut: 'steaks' }, { target: 'loin', cut: 'fried' }, { target: '__proto__', cut: 'steaks' }).lines).toEqual([]);
    const [line] = describedInstructions(sent({ target: 'fillet', cut: 'chops', size: 't:25' }), shop).lines;
    expect(line).toMatchObject({ target: 'fillet', cut: 'whole', size: { kind: 'as-seen-fit' } });
  });

  test('with the id of another is left out, so that no meat is priced twice', () => {
    expect(sent({ target: 'loin', cut: 'whole' }, { id: 'line-1', target: 'fillet', cut: 'whole' }).lines.map(({ target }) => target)).toEqual(['loin']);
  });

  test('gets an id that is free, and goes when it is taken off', () => {
    const one = applyIntent(filled(), 'add:loin', shop);
    const two = applyIntent(one, 'add:fillet', shop);
    expect(two.lines.map(({ id, target, cut }) => [id, target, cut])).toEqual([['line-1', 'loin', 'medallions'], ['line-2', 'fillet', 'whole']]);
    const three = applyIntent(applyIntent(two, 'remove:line-1', shop), 'add:neck', shop);
    expect(three.lines.map(({ id }) => id)).toEqual(['line-2', 'line-3']);
    expect(new Set(three.lines.map(({ id }) => id)).size).toBe(2);
  });

  test.each(['', 'add', 'add:', 'add:tail', 'add:__proto__', 'remove:', 'remove:line-99', 'mend', 'mend:', 'mend:x#0', 'mend:#', 'mend:more-than-the-animal-gives:line-1#99', 'fly:away', 'add:loin:loin'])(
    'is neither added nor lost by the intent %j',
    (intent) => {
      const values = applyIntent(filled(), 'add:loin', shop);
      expect(applyIntent(values, intent, shop)).toEqual(values);
    },
  );
});

test.each(PUBLISHED_IDS)('a weight no %s has is called out with the right article', (speciesId) => {
  const said = implausibleWeight(withAnimal({ speciesId, weight: '1', weightBasis: 'live' }), shop);
  expect(said).toMatch(/^That would be (an [aeiou]|a [^aeiou]).* of 1\.0 lb/);
});

test('an amount in the hunter’s own words stays in them when something else is mended', () => {
  const values = filled({
    lines: [
      { id: 'line-1', target: 'loin', side: 'both', cut: 'chops', size: 'fit', pack: 'fit', asked: '90' },
      { id: 'line-2', target: 'topside', side: 'both', cut: 'joint', size: 'fit', pack: 'fit', asked: '1 lb 8 oz' },
    ],
  });
  const [stop] = findingsOf(values, shop);
  const mended = applyIntent(values, `mend:${stop?.key}#0`, shop);
  expect(mended.lines.map(({ asked }) => asked)).toEqual(['', '1 lb 8 oz']);
});

test.each(hostileTexts.map((text) => [text.slice(0, 20), text]))('the text %j in every field is kept as typed and does no harm', (_, text) => {
  const names = orderFormEntries({ ...filled(), keep: { heart: true, liver: true, bones: true, antlers: 'none', cape: true, hide: false, taxidermist: '' }, noPork: true }).map(([name]) => name);
  const values = readOrderForm(names.map((name): [string, string] => [name, text]));
  expect(values.note).toBe(text.slice(0, 10_000));
  expect(() => parseOrderForm(values, shop)).not.toThrow();
  expect(() => assessForm({ ...values, animal: { ...values.animal, speciesId: 'elk' } }, shop)).not.toThrow();
});
