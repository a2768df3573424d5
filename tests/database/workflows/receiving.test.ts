import { expect, test } from 'vitest';
import { database } from '@/lib/db/client';
import { atMoment } from '@/lib/db/clock';
import { answerQuestion, readHunterOrder } from '@/lib/workflows/hunter-orders';
import { answerForHunter } from '@/lib/workflows/change-for-hunter';
import { receiveAnimal, recordHanging } from '@/lib/workflows/receive-animal';
import { takeStep } from '@/lib/workflows/take-step';
import { actionsOf, arrivalForm, counter, cutter, line, noon, open, orderForm, place, receive, useShop, versionOf } from './shop-at-work';

useShop();

const heavyGuess = () => ({
  animal: { ...orderForm().animal, weight: '320', weightBasis: 'live' },
  lines: [line('loin', 'chops', '15')],
});

test('an animal taken in is received, with what was found and who took it', async () => {
  const { number } = await place();
  expect(await receive(number, { temperature: '38', note: 'Clean shot', conditions: { wet: true } })).toEqual({ ok: true, openQuestions: 0 });
  const order = await open(number);
  expect(order).toMatchObject({ state: 'received', arrival: { weight: { grams: 54_431, basis: 'field-dressed' }, celsiusTenths: 33, conditions: ['wet'] } });
  expect(await database().arrival.findMany()).toMatchObject([{ receivedBy: 'Ilse', receivedAt: noon }]);
  expect(await actionsOf(number)).toEqual(['order-placed', 'animal-received']);
});

test('a tag that came in before is refused, however it is written, and names the other animal', async () => {
  const [one, two] = [await place(), await place()];
  await receive(one.number, { tag: 'WT-0042' });
  const again = await receive(two.number, { tag: 'wt 0042' });
  expect(again).toMatchObject({ ok: false, fieldErrors: { tag: expect.stringContaining('Animal 10001-') } });
  expect((await open(two.number)).state).toBe('booked');
});

test('of two counters with one tag at the same moment one is refused', async () => {
  const [one, two] = [await place(), await place()];
  const both = await Promise.all([receive(one.number, { tag: 'WT-7' }), receive(two.number, { tag: 'WT-7' })]);
  expect(both.filter((outcome) => outcome.ok)).toHaveLength(1);
});

test('a tag is not mistaken for the words of another hunter', async () => {
  const tricky = await place({ hunter: { name: '=wt7', phone: '555 0101', email: '' } });
  const { number } = await place();
  expect(await receive(number, { tag: 'WT-7' })).toMatchObject({ ok: true });
  expect(await receive(tricky.number, { tag: 'WT-8', licence: '=wt9' })).toMatchObject({ ok: true });
  const third = await place();
  expect(await receive(third.number, { tag: 'WT-9' })).toMatchObject({ ok: true });
});

test('a tag holds a letter or a digit', async () => {
  const { number } = await place();
  expect(await receive(number, { tag: ' -- ' })).toMatchObject({ ok: false, fieldErrors: { tag: expect.any(String) } });
});

test.each([
  ['a day that has not come', { killedOn: '2026-11-21' }, { killedOn: 'That day has not come yet. Check the date it was killed.' }],
  ['a day that is none', { killedOn: '2026-02-30' }, { killedOn: 'Write the day it was killed.' }],
  ['no licence', { licence: ' ' }, { licence: 'Write the license number. Without it the animal may not be taken in.' }],
  ['a weight no deer has', { weight: '900' }, { weight: expect.stringContaining('That would be a white-tailed deer of') }],
  ['a weight far too small', { weight: '9.0' }, { weight: expect.stringContaining('That would be a white-tailed deer of') }],
  ['no kind of weight', { weightBasis: '' }, { weightBasis: expect.stringContaining('Say which weight that is') }],
  ['a sample without its number', { test: 'pending' }, { sampleNumber: expect.stringContaining('Write the sample number') }],
  ['no word on a sample', { test: '' }, { test: 'Say whether a disease sample was taken.' }],
] as const)('with %s nothing is taken in', async (_, changes, fieldErrors) => {
  const { number } = await place();
  expect(await receive(number, changes)).toMatchObject({ ok: false, fieldErrors });
  expect(await open(number)).toMatchObject({ state: 'booked', version: 1, arrival: null });
});

test('the last minute of the day in the shop, not in Greenwich, is the day it was killed', async () => {
  const { number } = await place();
  const values = await arrivalForm(number, { killedOn: '2026-11-21' });
  // Half past ten in the evening of the 20th in Detroit.
  const evening = new Date('2026-11-21T03:30:00Z');
  expect(await atMoment(evening, () => receiveAnimal(counter, number, 1, values))).toMatchObject({ ok: false });
});

test('15 lb of chops asked on a guess become a question when the animal comes lighter, and one tap answers it', async () => {
  const { token, number } = await place(heavyGuess());
  expect(await receive(number, { weight: '96' })).toEqual({ ok: true, openQuestions: 1 });
  const [question] = (await readHunterOrder(token))?.questions ?? [];
  expect(question).toMatchObject({ answeredAt: null, message: expect.stringMatching(/^You asked for 15\.0 lb of backstrap bone-in chops; this animal gives about/) });
  expect(question?.options[0]?.consequence).not.toBe('');

  expect(await answerQuestion(token, question?.id ?? 0, 0)).toEqual({ ok: true });
  const order = await open(number);
  expect(order.instructionVersion).toBe(2);
  expect(order.instructions.lines[0]?.askedGrams).not.toBe(6_804);
  expect(order.versions[0]).toMatchObject({ by: 'The hunter', reason: `answer: ${question?.options[0]?.label}` });
  expect(order.questions).toMatchObject([{ answer: question?.options[0]?.label, answeredAt: expect.any(Date) }]);
  expect(order.assessment.findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
  expect(await actionsOf(number)).toEqual(['order-placed', 'animal-received', 'instructions-changed', 'question-answered']);
});

test('a question answered twice is answered once', async () => {
  const { token, number } = await place(heavyGuess());
  await receive(number, { weight: '96' });
  const id = (await open(number)).questions[0]?.id ?? 0;
  const both = await Promise.all([answerQuestion(token, id, 0), answerForHunter(counter, number, id, 0)]);
  expect(both.filter((one) => one.ok)).toHaveLength(1);
  expect((await open(number)).instructionVersion).toBe(2);
});

test('two names in a note are asked at the door, and answered one after the other both meanings stand', async () => {
  const { token, number } = await place({ note: 'Sirloin in steaks, tenderloin whole' });
  expect(await receive(number)).toEqual({ ok: true, openQuestions: 2 });
  const asked = async () => (await readHunterOrder(token))?.questions.filter(({ answeredAt }) => answeredAt === null) ?? [];
  const [first] = await asked();
  expect(first?.options[0]).toMatchObject({ figure: { target: 'loin', name: 'Backstrap' } });
  expect(await answerQuestion(token, first?.id ?? 0, 0)).toEqual({ ok: true });
  const [second, ...others] = await asked();
  expect(others).toEqual([]);
  expect(await answerQuestion(token, second?.id ?? 0, 0)).toEqual({ ok: true });
  expect((await open(number)).instructions.note).toBe(
    'Sirloin (backstrap: along the back, outside) in steaks, tenderloin (tenderloin: inside the body, under the spine) whole',
  );
  expect(await asked()).toEqual([]);
});

test('a question of another order is not answered through this link', async () => {
  const [mine, other] = [await place(heavyGuess()), await place(heavyGuess())];
  await receive(other.number, { weight: '96' });
  const id = (await open(other.number)).questions[0]?.id ?? 0;
  expect(await answerQuestion(mine.token, id, 0)).toMatchObject({ ok: false, message: 'That question is not open any more.' });
  expect((await open(other.number)).questions[0]?.answeredAt).toBeNull();
});

test.each([[-1], [99], [0.5], [Number.NaN]])('an option that is not there (%s) answers nothing', async (option) => {
  const { token, number } = await place(heavyGuess());
  await receive(number, { weight: '96' });
  const id = (await open(number)).questions[0]?.id ?? 0;
  expect(await answerQuestion(token, id, option)).toMatchObject({ ok: false });
});

test('a question is taken back when the weight at receiving is corrected', async () => {
  const { number } = await place(heavyGuess());
  await receive(number, { weight: '96' });
  expect(await receive(number, { weight: '251' })).toEqual({ ok: true, openQuestions: 0 });
  expect((await open(number)).questions).toEqual([]);
  expect(await database().question.findMany()).toMatchObject([{ withdrawnAt: noon, answeredAt: null }]);
  expect(await actionsOf(number)).toEqual(['order-placed', 'animal-received', 'receiving-corrected']);
});

test('a wound on a piece kept whole is asked about', async () => {
  const { number } = await place({ lines: [line('shoulder', 'boned-and-rolled')] });
  const values = await arrivalForm(number);
  expect(await receive(number, { wounds: { ...values.wounds, 'left-shoulder': 'heavy' } })).toEqual({ ok: true, openQuestions: 1 });
  expect((await open(number)).questions).toMatchObject([{ ruleId: 'wounded-part-kept-whole', message: expect.stringContaining('left shoulder') }]);
});

test('tenderloins that did not come are asked about', async () => {
  const { number } = await place({ lines: [line('fillet', 'whole')] });
  const values = await arrivalForm(number);
  await receive(number, { missing: { ...values.missing, 'left-fillet': true, 'right-fillet': true } });
  expect((await open(number)).questions).toMatchObject([{ ruleId: 'part-not-delivered' }]);
});

test('what was already plain when the order was sent is not asked again, but for meat without a destination', async () => {
  const { number } = await place({ rest: 'undecided', lines: [line('fillet', 'whole')], animal: { ...orderForm().animal, filletsOut: true } });
  await receive(number);
  expect((await open(number)).questions.map(({ ruleId }) => ruleId)).toEqual(['part-without-destination']);
});

test('the knife stays down while a question is open', async () => {
  const { token, number } = await place({ lines: [line('shoulder', 'boned-and-rolled')] });
  const values = await arrivalForm(number);
  await receive(number, { wounds: { ...values.wounds, 'left-shoulder': 'heavy' } });
  const refused = await takeStep(cutter, number, await versionOf(number), 'start-cutting');
  expect(refused).toMatchObject({ ok: false, message: 'The knife stays down: one question to the hunter is still open. Wait for the answer, or ask the counter.' });
  expect(await takeStep(counter, number, await versionOf(number), 'start-cutting')).toMatchObject({ ok: false, message: expect.stringContaining('or call and answer for them.') });
  await answerQuestion(token, (await open(number)).questions[0]?.id ?? 0, 0);
  expect(await takeStep(cutter, number, await versionOf(number), 'start-cutting')).toEqual({ ok: true });
});

test('the knife stays down while a disease test is out, and after a positive one', async () => {
  const { number } = await place();
  await receive(number, { test: 'pending', sampleNumber: 'S1' });
  expect(await takeStep(cutter, number, await versionOf(number), 'start-cutting')).toMatchObject({
    ok: false,
    message: 'The knife stays down. The disease test of this animal is not back, so it stays whole until it is.',
  });
  await receive(number, { test: 'positive', sampleNumber: 'S1' });
  expect(await takeStep(cutter, number, await versionOf(number), 'start-cutting')).toMatchObject({ ok: false, message: expect.stringContaining('came back positive') });
  await receive(number, { test: 'negative', sampleNumber: 'S1' });
  expect(await takeStep(cutter, number, await versionOf(number), 'start-cutting')).toEqual({ ok: true });
});

test('an animal killed in a zone by the name of the place is one from the zone', async () => {
  const { number } = await place({ lines: [line('loin', 'chops')] });
  await receive(number, { killedWhere: 'north of OSMER county line' });
  expect(await open(number)).toMatchObject({ fromZone: true, questions: [{ ruleId: 'no-sawn-bone-from-disease-zone' }] });
});

test('the weight on the rail makes it hang, and is not above what came in', async () => {
  const { number } = await place();
  expect(await recordHanging(counter, number, 1, '90')).toMatchObject({ ok: false, message: 'Take the animal in first, then weigh it on the rail.' });
  await receive(number);
  expect(await recordHanging(counter, number, await versionOf(number), '120.5')).toMatchObject({ ok: false, message: expect.stringMatching(/^120\.5 lb on the rail is more than the 120\.0 lb it came in with/) });
  expect(await recordHanging(counter, number, await versionOf(number), '0')).toMatchObject({ ok: false, fieldErrors: { weight: expect.any(String) } });
  expect(await recordHanging(counter, number, await versionOf(number), 'heavy')).toMatchObject({ ok: false, fieldErrors: { weight: expect.any(String) } });
  expect(await recordHanging(counter, number, await versionOf(number), '9.64')).toMatchObject({ ok: false, message: expect.stringMatching(/^9\.6 lb on the rail is less than half of what it should be, about 97\.2 lb/) });
  expect(await recordHanging(counter, number, await versionOf(number), '96.4')).toEqual({ ok: true });
  expect(await open(number)).toMatchObject({ state: 'hanging', hangingGrams: 43_726 });
  expect(await actionsOf(number)).toEqual(['order-placed', 'animal-received', 'weighed-hanging']);
});

test('a weight given as hanging by mistake is not kept as the weight on the rail', async () => {
  const { number } = await place();
  await receive(number, { weightBasis: 'hanging' });
  expect((await open(number)).hangingGrams).toBe(54_431);
  await receive(number, { weightBasis: 'field-dressed' });
  expect((await open(number)).hangingGrams).toBeNull();
});

test('a weight taken on the rail outlives a correction of the note', async () => {
  const { number } = await place();
  await receive(number);
  await recordHanging(counter, number, await versionOf(number), '96.4');
  await receive(number, { note: 'Came with the hide cut' });
  expect((await open(number)).hangingGrams).toBe(43_726);
});

test('an animal that came without hide and was weighed again keeps the second weight', async () => {
  const { number } = await place();
  await receive(number, { weightBasis: 'hanging', form: 'skinned', weight: '100' });
  await recordHanging(counter, number, await versionOf(number), '96.4');
  await receive(number, { weightBasis: 'hanging', form: 'skinned', weight: '100', note: 'Hide left at home' });
  expect((await open(number)).hangingGrams).toBe(43_726);
});

test('what came in is not corrected below what hangs', async () => {
  const { number } = await place();
  await receive(number);
  await recordHanging(counter, number, await versionOf(number), '96.4');
  expect(await receive(number, { weight: '90' })).toMatchObject({ ok: false, fieldErrors: { weight: expect.stringContaining('96.4 lb') } });
});

test('what was found is opened for correction as it was typed, to the gram and the tenth of a degree', async () => {
  const { number } = await place();
  await receive(number, { weight: '120.37 lb', temperature: '38.5' });
  const before = await open(number);
  expect(await receiveAnimal(counter, number, before.version, before.arrivalValues)).toMatchObject({ ok: true });
  expect((await open(number)).arrival).toEqual(before.arrival);
});

test('why an animal is held is kept in its history', async () => {
  const { number } = await place();
  await receive(number);
  expect(await takeStep(counter, number, await versionOf(number), 'hold', 'x'.repeat(201))).toMatchObject({ ok: false, fieldErrors: { reason: 'The reason has room for 200 characters.' } });
  expect(await takeStep(counter, number, await versionOf(number), 'hold', ' The tag  does not match ')).toEqual({ ok: true });
  expect((await open(number)).timeline.at(-1)).toMatchObject({ words: 'Put on hold: The tag does not match', who: 'Ilse' });
});

test('a lifted hold leads back to where the animal was: not weighed on the rail yet, or hanging', async () => {
  const { number } = await place();
  await receive(number);
  expect(await takeStep(counter, number, await versionOf(number), 'hold')).toEqual({ ok: true });
  expect(await takeStep(cutter, number, await versionOf(number), 'start-cutting')).toMatchObject({ ok: false, message: 'This animal is on hold; that step is not open from here.' });
  expect(await takeStep(counter, number, await versionOf(number), 'free')).toEqual({ ok: true });
  expect((await open(number)).state).toBe('received');
  await recordHanging(counter, number, await versionOf(number), '96.4');
  await takeStep(counter, number, await versionOf(number), 'hold');
  await takeStep(counter, number, await versionOf(number), 'free');
  expect((await open(number)).state).toBe('hanging');
});
