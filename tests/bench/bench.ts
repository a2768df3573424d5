import { performance } from 'node:perf_hooks';
import fc from 'fast-check';
import loadHighs, { type Highs } from 'highs';
import { partsOf, type AnimalFacts, PUBLISHED_IDS, PUBLISHED_SPECIES, forecastCarcass, publishedSpecies } from '@/lib/carcass';
import { USUAL_CUTS, cutsOf, targetsOfPlan } from '@/lib/cuts';
import { PLAIN_INSTRUCTIONS, type InstructionLine, type Instructions, newLine } from '@/lib/instructions';
import { fitWishes, planOrder } from '@/lib/plan';
import { PLAIN_CIRCUMSTANCES, findAll } from '@/lib/rules';
import { anyFit } from '../plan/any-fit';
import { solveWithHighs } from '../plan/highs-fit';

// How long one order takes, in milliseconds and as a ratio: the same run also turns each plan into JSON and back, which
// a machine does at its own speed, so that the ratio can be compared where the milliseconds cannot.

const ORDERS = 10_000;
/** Rules are run on these many of them: thirty-two lines that clash at random are slow, and no form holds them. */
const RULED_ORDERS = 1_000;

function facts(serial: number): AnimalFacts {
  return {
    speciesId: PUBLISHED_IDS[serial % PUBLISHED_IDS.length] ?? 'roe-deer',
    sex: serial % 2 ? 'male' : 'female',
    ageClass: 'adult',
    weight: serial % 4 ? { grams: 20_000 + (serial % 50) * 1_000, basis: 'field-dressed' } : null,
    form: 'hide-on',
    missing: [],
    wounds: serial % 3 ? [] : [{ part: 'shoulder', place: 'left', severity: 'heavy' }],
  };
}

function instructions(serial: number, lineCount: number): Instructions {
  const targets = targetsOfPlan(publishedSpecies(facts(serial).speciesId).plan);
  const lines = Array.from({ length: lineCount }, (_, at): InstructionLine => {
    const target = targets[(serial * 7 + at * 5) % targets.length] ?? 'loin';
    const cuts = cutsOf(target);
    return newLine(`line-${at + 1}`, target, cuts[(serial + at) % cuts.length] ?? 'mince');
  });
  return {
    ...PLAIN_INSTRUCTIONS,
    lines,
    rest: 'mince',
    squaredOff: 'stew',
    mince: { addedFat: 'none', fatPercent: 0, packGrams: 454, shape: 'bulk' },
    stewPackGrams: 454,
    products: [
      { productId: 'fresh-sausage', gameGrams: 2_000 },
      { productId: 'snack-sticks', gameGrams: 4_000 },
    ],
    keep: { heart: true, liver: false, bones: false, antlers: 'none', cape: false, hide: false, taxidermist: '' },
    noPork: false,
    note: '',
  };
}

function median(times: number[]): number {
  return times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
}

function timed(work: () => void): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

/** The wish as most write it: every usual cut, and two made things; no meat is promised twice. */
function usual(serial: number): Instructions {
  const { plan } = publishedSpecies(facts(serial).speciesId);
  const wanted = partsOf(plan).flatMap((part) => USUAL_CUTS[part]).filter(({ cut, target }) => cut !== 'mince' && targetsOfPlan(plan).includes(target));
  return { ...instructions(serial, 0), lines: wanted.map(({ target, cut }, at) => newLine(`line-${at + 1}`, target, cut)) };
}

function run(lineCount: number, wishOf: (serial: number) => Instructions = (serial) => instructions(serial, lineCount)): { readonly core: number; readonly rules: number; readonly json: number } {
  const core: number[] = [];
  const rules: number[] = [];
  const json: number[] = [];
  for (let serial = 0; serial < ORDERS; serial += 1) {
    const animal = facts(serial);
    const wish = wishOf(serial);
    const start = performance.now();
    const plan = planOrder(wish, forecastCarcass(animal, PUBLISHED_SPECIES));
    const planned = performance.now();
    core.push(planned - start);
    if (serial >= RULED_ORDERS) continue;
    findAll({
      stage: 'order',
      instructions: wish,
      plan,
      circumstances: {
        ...PLAIN_CIRCUMSTANCES, diseaseZone: serial % 5 === 0, test: 'none', sex: animal.sex, form: animal.form },
      words: { country: 'us', unit: 'lb' },
    });
    rules.push(performance.now() - planned);
    json.push(timed(() => JSON.parse(JSON.stringify(plan))));
  }
  return { core: median(core), rules: median(rules), json: median(json) };
}

run(8);
console.log(`${ORDERS} orders each (rules on ${RULED_ORDERS}), median milliseconds an order`);
console.log('lines  forecast+plan+fit  rules   together  JSON round trip  ratio');
for (const lineCount of [0, 2, 4, 8, 16, 32]) {
  // Random lines promise much meat twice, which is the dear case; the first row is what people write.
  const { core, rules, json } = lineCount === 0 ? run(0, usual) : run(lineCount);
  const both = core + rules;
  console.log(
    `${(lineCount === 0 ? 'usual' : String(lineCount)).padStart(5)}  ${core.toFixed(3).padStart(17)}  ${rules.toFixed(3).padStart(6)}  ${both.toFixed(3).padStart(8)}  ${json.toFixed(3).padStart(15)}  ${(both / json).toFixed(2).padStart(5)}`,
  );
}

// How long one fit of made things to pools takes, in microseconds and as a ratio: the same run gives some of the same
// fits, amounts and draws, to HiGHS.

const FITS = 10_000;
const FITS_BY_HIGHS = 200;

function runFits(wishCount: number, highs: Highs): { readonly fit: number; readonly byHighs: number } {
  const size = { pools: { min: 4, max: 4 }, wishes: { min: wishCount, max: wishCount }, mostGrams: 60_000 };
  const cases = fc.sample(anyFit(size), { seed: wishCount, numRuns: FITS });
  const fit = cases.map(({ supplies, wishes }) => timed(() => fitWishes(supplies, wishes)));
  const byHighs = cases.slice(0, FITS_BY_HIGHS).map((one) => timed(() => solveWithHighs(highs, one, { withDraws: true })));
  return { fit: median(fit) * 1_000, byHighs: median(byHighs) * 1_000 };
}

const highs = await loadHighs();
runFits(6, highs);
console.log(`\n${FITS} fits to 4 pools each, ${FITS_BY_HIGHS} of them by HiGHS as well, median microseconds a fit`);
console.log('wishes    fit    HiGHS  HiGHS/fit');
for (const wishCount of [2, 4, 6, 8, 12]) {
  const { fit, byHighs } = runFits(wishCount, highs);
  console.log(
    `${String(wishCount).padStart(6)}  ${fit.toFixed(1).padStart(5)}  ${byHighs.toFixed(0).padStart(7)}  ${(byHighs / fit).toFixed(0).padStart(9)}`,
  );
}
