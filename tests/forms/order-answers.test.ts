import { describe, expect, test } from 'vitest';
import { PUBLISHED_SPECIES } from '@/lib/carcass';
import { type OrderFormValues, type OrderSection, SHARE_ROWS, applyIntent, blankOrderForm, describedInstructions, orderAnswers, orderFormEntries, parseOrderForm, readOrderForm, stepOrderForm } from '@/lib/forms';
import { CAREFUL } from '@/lib/law';
import { defaultTariff } from '@/seed/default-tariff';

const shop = { unit: 'lb', locale: 'en-US', country: 'us', diseaseZones: [], law: CAREFUL.points, species: PUBLISHED_SPECIES, tariff: defaultTariff } as const;

function filled(more: Readonly<Record<string, string>> = {}): OrderFormValues {
  const entries = new Map(orderFormEntries(blankOrderForm('form-key-1')));
  const told = {
    'animal.speciesId': 'white-tailed-deer', 'animal.sex': 'female', 'animal.ageClass': 'adult', 'animal.diseaseZone': 'no', 'animal.form': 'hide-on',
    rest: 'mince', 'hunter.name': 'Bo Brandt', 'hunter.phone': '555 0100', ...more,
  };
  for (const [name, text] of Object.entries(told)) entries.set(name, text);
  return readOrderForm([...entries]);
}

const answersOf = (values: OrderFormValues, section: OrderSection): Readonly<Record<string, string>> =>
  Object.fromEntries(orderAnswers(values, shop).filter((group) => group.section === section).flatMap(({ answers }) => answers.map(({ label, answer }) => [label, answer])));

describe('the answers', () => {
  test('of a plain order say nothing of what is rare', () => {
    expect(answersOf(filled(), 'rest')).toEqual({
      'Everything you have not named': 'All of it to ground meat',
      'Pieces squared off joints and steaks': 'to stew meat',
      'Fat in the ground meat': 'no fat added',
      'Packs of ground meat': 'the usual, 1.0 lb',
      'Packs of stewing meat': 'the usual, 1.0 lb',
      'Made things': 'none',
      Pork: 'pork is no trouble',
    });
    expect(answersOf(filled(), 'keep')).toEqual({ 'Besides the meat': 'nothing', Antlers: 'no antlers back', 'Cape for a mount': 'no' });
    expect(answersOf(filled(), 'who')).toEqual({ Name: 'Bo Brandt', Phone: '555 0100', 'E-mail': 'none', 'Note to the shop': 'none' });
  });

  test('name patties, no bone, the order of made things, their batch, and what nobody may eat', () => {
    const values = filled({
      boneless: 'on', 'mince.shape': 'patties', 'products.jerky': '5', 'products.snack-sticks': '10', served: 'jerky', mixing: 'may-be-mixed', 'avoid.milk': 'on', 'avoid.mustard': 'on',
    });
    expect(answersOf(values, 'rest')).toMatchObject({
      Bone: 'nothing on the bone',
      'Packs of ground meat': 'the usual, 1.0 lb, in patties',
      'If meat runs short': 'jerky, then snack sticks',
      Batches: 'may be mixed with other hunters’ meat',
      Allergies: 'nobody eats milk, mustard',
    });
  });

  test('name the hide, and who mounts the cape only where there is one', () => {
    expect(answersOf(filled({ 'keep.hide': 'on', 'keep.cape': 'on', 'keep.taxidermist': ' Ida Falk ' }), 'keep')).toMatchObject({ 'Besides the meat': 'hide', 'Cape for a mount': 'yes, Ida Falk' });
    expect(answersOf(filled({ 'keep.taxidermist': 'Ida Falk' }), 'keep')).toMatchObject({ 'Cape for a mount': 'no' });
  });

  test('name the day, the border and everyone who shares', () => {
    const values = filled({ wantedBy: '2026-12-01', overBorder: 'on', 'shares.0.name': 'Edda', 'shares.0.percent': '50', 'shares.1.percent': '50', 'shares.1.isGiven': 'on' });
    expect(answersOf(values, 'who')).toMatchObject({ 'Needed by': 'Dec 1, 2026', 'Over a border': 'yes', Shared: 'Edda 50%, no name 50%, given' });
  });
});

describe('what is made first', () => {
  const two = filled({ 'products.fresh-sausage': '10', 'products.jerky': '5' });

  test('is put before the others by its button, and stays where the hunter stands', () => {
    const next = stepOrderForm(two, 'first:jerky', 'edit', shop);
    expect(next).toMatchObject({ step: 'edit', focus: 'served-first', values: { products: two.products } });
    expect(describedInstructions(next.values, shop)).toMatchObject({ isPriorityStated: true, products: [{ productId: 'jerky' }, { productId: 'fresh-sausage' }] });
    const back = applyIntent(next.values, 'first:fresh-sausage', shop);
    expect(describedInstructions(back, shop)).toMatchObject({ isPriorityStated: true, products: [{ productId: 'fresh-sausage' }, { productId: 'jerky' }] });
  });

  test.each(['first:', 'first:cheese', 'first:__proto__', 'first'])('is not changed by the intent %j', (intent) => {
    expect(applyIntent(two, intent, shop)).toEqual(two);
  });

  test('is the order of the menu where nobody said', () => {
    expect(describedInstructions(two, shop)).toMatchObject({ isPriorityStated: false, products: [{ productId: 'fresh-sausage' }, { productId: 'jerky' }] });
  });
});

describe('a form that is wrong in what is rare', () => {
  test.each([
    ['shares.1.percent', 'half', 'Write a whole number of percent, from 1 to 100.'],
    ['shares.0.percent', '33.3', 'Write a whole number of percent, from 1 to 100.'],
    ['shares.0.percent', '101', 'Write a whole number of percent, from 1 to 100.'],
    ['shares.3.name', 'x'.repeat(41), 'The name has room for 40 characters.'],
    ['wantedBy', '2027-02-29', 'Choose a day, or leave it empty.'],
    ['wantedBy', 'soon', 'Choose a day, or leave it empty.'],
    ['keep.taxidermist', 'x'.repeat(81), 'The name has room for 80 characters.'],
  ])('says at %s, with %j in it, what is wrong', (field, typed, sentence) => {
    const parsed = parseOrderForm(filled({ [field]: typed }), shop);
    expect(parsed.ok ? {} : parsed.fieldErrors).toEqual({ [field]: sentence });
  });

  test('has as many rows to share as it always has, whatever was sent', () => {
    expect(filled({ 'shares.7.name': 'Edda', 'shares.9.percent': '5' }).shares).toHaveLength(SHARE_ROWS);
  });
});
