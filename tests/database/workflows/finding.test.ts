import { expect, test } from 'vitest';
import { formatOrderNumber, isOrderNumber, scanCode } from '@/lib/orders';
import { changeOrder } from '@/lib/workflows/hunter-orders';
import { findOrders } from '@/lib/workflows/find-orders';
import { recordHanging } from '@/lib/workflows/receive-animal';
import { takeStep } from '@/lib/workflows/take-step';
import { counter, cutter, open, orderForm, place, receive, useShop } from './shop-at-work';

useShop();

const hunter = (name: string, phone: string) => ({ hunter: { name, phone, email: '' } });

async function names(text: string): Promise<readonly string[]> {
  return (await findOrders(cutter, { text })).rows.map((row) => row.hunterName).toSorted();
}

test('an animal is found by its number, however it is read out', async () => {
  const { number } = await place();
  await place();
  for (const text of [number, formatOrderNumber(number), ` ${number.slice(0, 5)} ${number.slice(5)} `, `${number.slice(0, 5)} - ${number.slice(5)}`, `#${number}`]) {
    expect(await findOrders(cutter, { text })).toMatchObject({ exact: number, staleSheet: null, message: null });
  }
});

test('a number that does not add up says so, and one that nobody has too', async () => {
  const { number } = await place();
  const wrong = `${number.slice(0, 5)}${(Number(number.slice(5)) + 1) % 10}`;
  expect(await findOrders(counter, { text: wrong })).toMatchObject({
    exact: null,
    message: 'That number does not add up: one digit is wrong or two are swapped. This one begins with the same five digits.',
    rows: [{ number }],
  });
  expect(await findOrders(counter, { text: number.slice(0, 5) })).toMatchObject({ exact: null, message: null, rows: [{ number }] });
  const farOff = `9${wrong.slice(1)}`;
  const message = 'That number does not add up: one digit is wrong or two are swapped.';
  expect(await findOrders(counter, { text: isOrderNumber(farOff) ? `8${wrong.slice(1)}` : farOff })).toMatchObject({ exact: null, message, rows: [] });
  expect(await findOrders(counter, { text: '104277' })).toMatchObject({ exact: null, message: 'No animal here has the number 10427-7.' });
});

test('the list says which weight it shows: told, come in, or on the rail', async () => {
  const { number } = await place({ animal: { ...orderForm().animal, weight: '130', weightBasis: 'field-dressed' } });
  const shown = async () => (await findOrders(cutter, {})).rows.map((row) => row.weightText);
  expect(await shown()).toEqual(['130.0 lb told']);
  await receive(number);
  expect(await shown()).toEqual(['120.0 lb came in']);
  await recordHanging(counter, number, (await open(number)).version, '96');
  expect(await shown()).toEqual(['96.0 lb rail']);
});

test('a scanned sheet finds its animal, and an old one is called old', async () => {
  const { token, number } = await place();
  expect(await findOrders(cutter, { text: scanCode(number, 1) })).toMatchObject({ exact: number, staleSheet: null });
  const { version, formValues } = await open(number);
  await changeOrder(token, version, { ...formValues, rest: 'stew' });
  expect(await findOrders(cutter, { text: scanCode(number, 1).toLowerCase() })).toMatchObject({ exact: number, staleSheet: { printed: 1, now: 2 } });
  expect(await findOrders(cutter, { text: scanCode(number, 2) })).toMatchObject({ exact: number, staleSheet: null });
});

test('a name is found with and without its marks, in any case, by any of its words', async () => {
  await place(hunter('Jörg Müller', '555 0101'));
  await place(hunter('Anneliese Schäfer-Großmann', '555 0102'));
  await place(hunter('Łukasz Żabiński', '555 0103'));
  await place(hunter('Siobhán O’Dowd', '555 0104'));
  expect(await names('MULLER')).toEqual(['Jörg Müller']);
  expect(await names('müller jörg')).toEqual(['Jörg Müller']);
  expect(await names('grossmann')).toEqual(['Anneliese Schäfer-Großmann']);
  expect(await names('Großm')).toEqual(['Anneliese Schäfer-Großmann']);
  expect(await names('zabinski')).toEqual(['Łukasz Żabiński']);
  expect(await names("o'dowd")).toEqual(['Siobhán O’Dowd']);
  expect(await names('muller schafer')).toEqual([]);
});

test.each([
  ['Jörg Müller', ['mueller', 'muller', 'müller', 'MUELLER', 'Mu\u0308ller', 'joerg muller', 'jorg mueller', 'uell']],
  ['Änne Schäfer-Böhm', ['schaefer-boehm', 'schafer-bohm', 'schaefer-bohm', 'aenne', 'anne', 'ÄNNE']],
  ['Ulla Weiß', ['weiss', 'weiß', 'WEISS']],
  ['Samuel Joergensen', ['samuel', 'joergensen', 'jörgensen', 'el']],
  ['Bauer-Böhm-Müller-Schröer', ['bauer-boehm', 'böhm-müller', 'schroeer']],
])('%s is found as other keyboards spell it', async (name, typed) => {
  await place(hunter(name, '555 0101'));
  for (const text of typed) expect([text, await names(text)]).toEqual([text, [name]]);
  expect(await names('maeller')).toEqual([]);
});

test('a telephone is found by its digits, as it is written or not, without a word about numbers', async () => {
  await place(hunter('Bo Brandt', '+1 (231) 555-0142'));
  await place(hunter('Ada Li', '555 0199'));
  for (const text of ['555-0142', '5550142', '0142', '+1 231 555 0142', '(231) 555 0142']) {
    expect(await findOrders(counter, { text })).toMatchObject({ exact: null, message: null, rows: [{ hunterName: 'Bo Brandt' }] });
  }
});

test('a tag and a licence find the animal', async () => {
  const { number } = await place();
  await place();
  await receive(number, { tag: 'WT-0042/B', licence: 'MI 7781' });
  for (const text of ['wt-0042/b', 'WT0042B', 'MI 7781', '7781']) {
    expect((await findOrders(counter, { text })).rows.map((row) => row.number)).toEqual([number]);
  }
});

test.each(['%', '_', '__________', "' OR '1'='1", '\\', '*', '"', '=', 'tag', '\u0000', 'x'.repeat(10_000), '💥'])('the search %j finds nobody who is not called so', async (text) => {
  await place();
  expect(await names(text)).toEqual([]);
});

test('nothing asked lists what is open, oldest first; the cancelled stand by themselves', async () => {
  const [one, two, three] = [await place(hunter('One', '555 0101')), await place(hunter('Two', '555 0102')), await place(hunter('Three', '555 0103'))];
  await takeStep(counter, two.number, 1, 'cancel');
  await receive(three.number);
  const openOnes = await findOrders(cutter, { state: 'open' });
  expect(openOnes.rows.map((row) => row.number)).toEqual([one.number, three.number]);
  expect(openOnes.counts).toMatchObject({ booked: 1, received: 1, cancelled: 1, collected: 0 });
  expect((await findOrders(cutter, { state: 'cancelled' })).rows.map((row) => row.hunterName)).toEqual(['Two']);
  expect((await findOrders(cutter, { text: 'two' })).rows).toMatchObject([{ state: 'cancelled' }]);
});

test.each([[0], [-3], [1.5], [Number.NaN], [1e9]])('page %s is answered without a fault', async (page) => {
  await place();
  await expect(findOrders(cutter, { page })).resolves.toMatchObject({ total: 1, pages: 1 });
});
