import { assumed } from '../../../shared/families/assumptions';
import { dayLines, runLines, DAY_LINES, RUN_GIVEN, RUN_LINES } from '../../../shared/run/lines';
import { LivingPages } from '../../../shared/books/living';
import { planBatches } from '../../../shared/season/batches';
import { givenBy } from '../../../shared/season/figures/given';
import { rngOf } from '../../../shared/maths/rng';
import { ASSUMPTIONS } from '../../../shared/families/assumptions';
import { bookOf, BOOK } from '../../season/support/support';

/** Order books of invented hatcheries drawn at random: size, product, day, water, hours, own figures. */
function randomBook(seed: number) {
  const chance = rngOf(seed);
  const between = (low: number, high: number): number => low + (high - low) * chance.even();
  const product = chance.even() < 0.5 ? 'fry' : 'fingerlings';
  return bookOf({
    orders: [
      {
        name: 'A',
        product,
        number: Math.round(between(500, 60_000)),
        due: 46_450 + Math.round(between(0, 60)),
        ...(chance.even() < 0.5 ? { grams: product === 'fry' ? 0.06 : between(0.5, 2.5) } : {}),
        price: 0.1,
      },
    ],
    temperatures: BOOK.temperatures.map((t) => Math.min(30, t + between(-1.5, 1.5))),
    preparation: ['own-species pituitary', 'carp pituitary', 'ready-made solution'][
      Math.floor(between(0, 3))
    ],
    staff: { stripFrom: Math.floor(between(5, 9)), stripTo: 20 },
    water: { ph: between(5, 7.5), alkalinity: chance.even() < 0.5 ? between(0.1, 1) : undefined },
    assumptions: { hatch: between(0.3, 0.8), frySurvival: between(0.4, 0.9), latencyOffset: between(-1, 2) },
  });
}

const QUICK = { draws: 0, explains: false, effort: { looks: 20_000, mostTries: 30, seed: 3 } } as const;

describe('lines and the season engine say the same', () => {
  test.each(Array.from({ length: 60 }, (_, i) => i + 1))('book %i', (seed) => {
    const book = randomBook(seed);
    const plan = planBatches(book, QUICK);
    const pages = new LivingPages(book, plan);
    for (const batch of plan.batches) {
      const lines = pages.reader(batch);
      const wanted = {
        water: batch.temperature,
        latency: batch.latencyHours,
        inject: batch.injectAt,
        look: batch.checkAt,
        late: batch.lateAt,
        hatchAt: batch.hatchAt,
        hatchEnd: batch.hatchEndAt,
        feed: batch.firstFeedAt,
        fedFrom: batch.feedFrom,
        hormone: batch.hormone,
        eggs: batch.eggs,
        larvae: batch.larvae,
        feeding: batch.feeding,
      } as const;
      for (const [key, value] of Object.entries(wanted))
        expect([key, lines.number(key) / value]).toEqual([key, expect.closeTo(1, 9)]);
      const isNursed = plan.allocations.some((own) => own.batch === batch.name && own.stage === 'nursing');
      const rows = plan.feeding.filter((row) => row.batch === batch.name);
      for (const row of isNursed ? rows.filter(({ date }) => date < batch.weanedAt - 1) : rows) {
        const day = pages.day(batch, row.date - batch.feedFrom);
        for (const [key, value] of [
          ['fishNow', row.fish],
          ['gramsNow', row.grams],
          ['cysts', row.cysts],
          ['dry', row.dry],
        ] as const)
          expect([key, row.date, day.number(key)]).toEqual([key, row.date, expect.closeTo(value, 6)]);
      }
    }
  });
});

test('lines name only lines, figures and what is given', () => {
  const known = new Set<string>([
    ...Object.keys(RUN_GIVEN),
    ...Object.keys(ASSUMPTIONS),
    ...Object.keys(RUN_LINES),
    'day',
    'left',
    'isLost',
  ]);
  expect([...runLines.needs, ...dayLines.needs].filter((key) => !known.has(key))).toEqual([]);
  expect(Object.keys(DAY_LINES).filter((key) => key in RUN_LINES)).toEqual([]);
});

test('a count typed in takes the place of what was expected, and what follows it moves', () => {
  const book = bookOf();
  const given = {
    ...givenBy(book, assumed({})),
    strip: 46_450.3,
    rearing: 12,
    nursing: 28,
    kilograms: 5,
    toSet: 1e9,
  };
  const [as, half] = [runLines.open(given), runLines.open({ ...given, hatchedCounted: 1000 })];
  expect(half.number('larvae')).toBe(1000);
  expect(half.number('fish') / half.number('larvae')).toBeCloseTo(
    as.number('fish') / as.number('larvae'),
    12,
  );
  expect(half.number('eggs')).toBe(as.number('eggs'));
});
