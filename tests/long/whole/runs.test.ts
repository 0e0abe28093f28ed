import { evaluate } from '../../../shared/catalogue/calculation';
import { isGrid } from '../../../shared/base/values';
import { PREPARATION_NAMES } from '../../../shared/families/preparations';
import { rngOf } from '../../../shared/maths/rng';
import { planBatches } from '../../../shared/season/batches';
import { readOneOrder } from '../../../shared/season/one';
import { readOrderBook } from '../../../shared/season/book/orderBook';
import { BACKYARD, COMMERCIAL } from '../../../templates/season.template';
import { SEASON_PLAN_FORM } from '../../../templates/season-plan.template';
import { ORDER } from '../../run/support';
import { contradictions } from '../../whole/contradictions';

/** One order of an invented hatchery drawn at random: size, product, day, fish, vats, water, hours, hormone. */
function randomForm(seed: number): object {
  const rng = rngOf(seed);
  const between = (low: number, high: number): number => low + (high - low) * rng.even();
  const whole = (low: number, high: number): number => Math.floor(between(low, high + 1));
  const pick = <T>(list: readonly T[]): T => list[whole(0, list.length - 1)] as T;
  return {
    ...ORDER,
    product: pick(['fry', 'fingerlings']),
    wanted: Math.round(10 ** between(0, 5.2)),
    wantedOn: 46_480 + whole(0, 250),
    females: whole(1, 14),
    femaleWeight: Number(between(0.5, 3).toFixed(2)),
    males: whole(1, 12),
    vats: whole(1, 12),
    vatLitres: whole(150, 3000),
    temperature: Number(between(22, 32).toFixed(1)),
    ph: rng.even() < 0.3 ? undefined : Number(between(5.2, 7.8).toFixed(1)),
    alkalinity: rng.even() < 0.4 ? undefined : Number(between(0.05, 0.8).toFixed(2)),
    phWanted: pick([6.8, 7, 7.2]),
    material: pick(['soda ash', 'baking soda']),
    preparation: rng.even() < 0.5 ? 'ready-made solution' : pick(PREPARATION_NAMES),
    stripHour: pick(['6:00', '7:30', '8:00', '14:00', '22:00']),
    assumptions:
      rng.even() < 0.5
        ? {}
        : {
            latencyOffset: Number(between(-1, 2).toFixed(1)),
            incubationFactor: Number(between(0.95, 1.15).toFixed(2)),
            hatch: between(0.3, 0.8),
          },
  };
}

const QUICK = { draws: 60, explains: false, effort: { rounds: 1, tries: 1 } } as never;
const fault = ({ message }: { readonly message: string }): string => message;

test('two hundred random runs: the tool’s own functions say nothing against its plans', () => {
  const found: string[] = [];
  let planned = 0;
  for (let seed = 1; seed <= 200; seed++) {
    const read = readOneOrder(randomForm(seed));
    if ('faults' in read) throw new Error(read.faults.map(fault).join(' '));
    const plan = planBatches(read.book, QUICK);
    planned += plan.batches.length > 0 ? 1 : 0;
    found.push(...contradictions(read.book, plan).map((sentence) => `run ${seed}: ${sentence}`));
  }
  expect(found).toEqual([]);
  expect(planned).toBeGreaterThan(120);
});

test.each([
  ['one run', () => readOneOrder(SEASON_PLAN_FORM)],
  ['backyard', () => readOrderBook(BACKYARD)],
  [
    'commercial',
    () => readOrderBook({ ...COMMERCIAL, orders: (COMMERCIAL.orders as unknown[]).slice(0, 14) }),
  ],
] as const)('the template of %s too', (_, reading) => {
  const read = reading();
  if ('faults' in read) throw new Error(read.faults.map(fault).join(' '));
  expect(contradictions(read.book, planBatches(read.book, { draws: 60, explains: false }))).toEqual([]);
});

test('a dose of salt the tool gives is no dose its own check calls harmful', () => {
  const row = (formula: string): readonly unknown[] => {
    const got = evaluate(formula);
    return isGrid(got) ? (got[0] ?? []) : [got];
  };
  for (const strength of [1, 2, 4])
    for (const stage of ['yolk-sac fry', 'swim-up fry']) {
      const grams = row(`=SPAWN.FRY.SALT.DOSE(1000,${strength},"${stage}")`)[0];
      if (typeof grams !== 'number') continue;
      expect([strength, stage, row(`=SPAWN.SALT.CHECK(${strength},1440,"${stage}")`).at(-1)]).not.toEqual([
        strength,
        stage,
        'harmful',
      ]);
    }
});
