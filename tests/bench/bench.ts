import { performance } from 'node:perf_hooks';
import { type AnimalFacts, SPECIES_IDS, forecastCarcass } from '@/lib/carcass';
import { TARGET_IDS, cutsOf } from '@/lib/cuts';
import { type InstructionLine, type Instructions, newLine } from '@/lib/instructions';
import { planOrder } from '@/lib/plan';
import { findAll } from '@/lib/rules';

// How long one order takes, in milliseconds and as a ratio: the same run also turns each plan into JSON and back, which
// a machine does at its own speed, so that the ratio can be compared where the milliseconds cannot.

const ORDERS = 2_000;

function facts(serial: number): AnimalFacts {
  return {
    speciesId: SPECIES_IDS[serial % SPECIES_IDS.length] ?? 'roe-deer',
    sex: serial % 2 ? 'male' : 'female',
    ageClass: 'adult',
    weight: null,
    form: 'hide-on',
    missing: [],
    wounds: serial % 3 ? [] : [{ part: 'shoulder', place: 'left', severity: 'heavy' }],
  };
}

function instructions(serial: number, lineCount: number): Instructions {
  const lines = Array.from({ length: lineCount }, (_, at): InstructionLine => {
    const target = TARGET_IDS[(serial * 7 + at * 5) % TARGET_IDS.length] ?? 'loin';
    const cuts = cutsOf(target);
    return newLine(`line-${at + 1}`, target, cuts[(serial + at) % cuts.length] ?? 'mince');
  });
  return {
    lines,
    rest: 'mince',
    squaredOff: 'stew',
    mince: { addedFat: 'none', fatPercent: 0, packGrams: 454 },
    stewPackGrams: 454,
    products: [{ productId: 'fresh-sausage', gameGrams: 2_000 }],
    keep: { heart: true, liver: false, bones: false, antlers: 'none', cape: false },
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

function run(lineCount: number): { readonly core: number; readonly rules: number; readonly json: number } {
  const core: number[] = [];
  const rules: number[] = [];
  const json: number[] = [];
  for (let serial = 0; serial < ORDERS; serial += 1) {
    const animal = facts(serial);
    const wish = instructions(serial, lineCount);
    const start = performance.now();
    const plan = planOrder(wish, forecastCarcass(animal));
    const planned = performance.now();
    findAll({
      stage: 'order',
      instructions: wish,
      plan,
      circumstances: { diseaseZone: serial % 5 === 0, test: 'none', sex: animal.sex, form: animal.form },
      words: { country: 'us', unit: 'lb' },
    });
    core.push(planned - start);
    rules.push(performance.now() - planned);
    json.push(timed(() => JSON.parse(JSON.stringify(plan))));
  }
  return { core: median(core), rules: median(rules), json: median(json) };
}

run(8);
console.log(`${ORDERS} orders each, median milliseconds an order`);
console.log('lines  forecast+plan  rules   together  JSON round trip  ratio');
for (const lineCount of [2, 4, 8, 16, 32]) {
  const { core, rules, json } = run(lineCount);
  const both = core + rules;
  console.log(
    `${String(lineCount).padStart(5)}  ${core.toFixed(3).padStart(13)}  ${rules.toFixed(3).padStart(6)}  ${both.toFixed(3).padStart(8)}  ${json.toFixed(3).padStart(15)}  ${(both / json).toFixed(2).padStart(5)}`,
  );
}
