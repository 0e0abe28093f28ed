import { assumed } from '../../shared/families/assumptions';
import { liveShare, standingOf } from '../../shared/season/batches/alive';
import type { BookedBatch } from '../../shared/season/book/living';

/** What is left of a batch on a day, by hand: from its last count, less what left, times what lives. */
const A = {
  ...assumed({}),
  hatch: 0.5,
  yolkSurvival: 0.8,
  frySurvival: 0.5,
  rearingDays: 12,
  nurserySurvival: 0.9,
  nurseryDays: 28,
};
const STRIP = 100;
const FEED = 105;
type Count = BookedBatch['counts'][number];
type Event = BookedBatch['events'][number];
const batch = (
  counts: readonly (readonly [stage: Count['stage'], at: number, number: number])[],
  more: Partial<BookedBatch> = {},
): BookedBatch =>
  ({
    state: 'growing',
    eggs: 10_000,
    clock: { stripAt: STRIP, hatchAt: STRIP + 1, feedFrom: FEED },
    counts: counts.map(([stage, at, number]) => ({ stage, at, number })),
    events: [],
    ...more,
  }) as unknown as BookedBatch;
const sold = (at: number, number: number): Partial<BookedBatch> => ({
  events: [{ at, number, kind: 'sold' } as Event],
});
const near = (x: number) => expect.closeTo(x, 6);

test('who lives: by the rearing first, then by the nursing', () => {
  expect(liveShare(A, FEED, FEED - 3)).toBe(1);
  expect(liveShare(A, FEED, FEED)).toBe(1);
  expect(liveShare(A, FEED, FEED + 12)).toBeCloseTo(0.5, 9);
  expect(liveShare(A, FEED, FEED + 12 + 28)).toBeCloseTo(0.45, 9);
  expect(liveShare(A, FEED, FEED + 12 + 14)).toBeCloseTo(0.5 * Math.sqrt(0.9), 9);
});
test('not counted: the eggs it was given, at first food what hatches of them and lives on its yolk', () => {
  expect(standingOf(batch([]), A, STRIP)).toEqual({
    isCounted: false,
    feeding: 4000,
    alive: 10_000,
    ahead: 0,
  });
  expect(standingOf(batch([]), A, FEED + 12)).toMatchObject({ feeding: 4000, alive: near(2000) });
});
const later = liveShare(A, FEED, FEED + 4);
test.each<readonly [Count['stage'], number, number, number, 0 | 1 | 2]>([
  // Stage, day of the count, larvae at first food of 1,000 counted, alive a day after first food over 1,000.
  ['eggs', STRIP, 400, 400, 0],
  ['larvae', STRIP + 1, 800, 800, 1],
  ['feeding', FEED, 1000, 1000, 2],
  ['feeding', FEED + 4, 1000 / later, 1000 / later, 2],
  ['weaned', FEED + 12, 2000, 2000, 2],
  ['fish', FEED + 40, 1000 / 0.45, 1000 / 0.45, 2],
])('%s counted on day %d', (stage, at, feeding, _, ahead) => {
  expect(standingOf(batch([[stage, at, 1000]]), A, at)).toMatchObject({
    isCounted: true,
    feeding: near(feeding),
    ahead,
  });
});
test('the last count up to the day speaks; of one hour, that of the later stage', () => {
  const counts = [
    ['larvae', STRIP + 1, 5000],
    ['feeding', FEED, 3000],
    ['weaned', FEED + 12, 900],
  ] as const;
  expect(standingOf(batch(counts), A, FEED + 5)).toMatchObject({ feeding: 3000 });
  expect(standingOf(batch(counts), A, FEED + 11)).toMatchObject({ feeding: near(1800) });
  expect(standingOf(batch(counts), A, FEED + 10.9)).toMatchObject({ feeding: 3000 });
  expect(
    standingOf(
      batch([
        ['feeding', FEED, 3000],
        ['larvae', FEED, 5000],
      ]),
      A,
      FEED,
    ),
  ).toMatchObject({
    feeding: 3000,
  });
  expect(
    standingOf(
      batch([
        ['larvae', FEED, 5000],
        ['feeding', FEED, 3000],
      ]),
      A,
      FEED,
    ),
  ).toMatchObject({
    feeding: 3000,
  });
});
test('fish that left since the count are gone, as so many larvae more the older they were', () => {
  const counted = batch([['feeding', FEED, 3000]], sold(FEED + 12, 500));
  expect(standingOf(counted, A, FEED + 12)).toMatchObject({ feeding: near(2000), alive: near(1000) });
  // What left before the count was not counted.
  expect(standingOf(batch([['weaned', FEED + 12, 900]], sold(FEED + 11, 500)), A, FEED + 12)).toMatchObject({
    feeding: near(1800),
  });
  const larvae = batch([['larvae', STRIP + 1, 3000]], sold(STRIP + 2, 500));
  expect(standingOf(larvae, A, STRIP + 3)).toMatchObject({ alive: 2500, feeding: near(1900) });
  expect(standingOf(batch([['weaned', FEED + 12, 900]], sold(FEED + 13, 2000)), A, FEED + 14)).toMatchObject({
    alive: 0,
    feeding: 0,
  });
});
test('lost or over: nothing', () => {
  for (const state of ['lost', 'over'] as const)
    expect(standingOf(batch([['fish', FEED + 40, 900]], { state }), A, FEED + 41)).toEqual({
      alive: 0,
      isCounted: true,
      feeding: 0,
      ahead: 2,
    });
});

test('of two counts of one moment the one further along the chain speaks', () => {
  const both: Parameters<typeof batch>[0] = [
    ['weaned', FEED + 12, 500],
    ['feeding', FEED + 12, 4000],
  ];
  const alive = { alive: near(500) };
  expect(standingOf(batch(both), A, FEED + 12)).toMatchObject(alive);
  expect(standingOf(batch([...both].reverse()), A, FEED + 12)).toMatchObject(alive);
});
