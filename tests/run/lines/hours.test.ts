import { runLines, TASKS, taskTimes } from '../../../shared/run/lines';
import type { TaskContext, TaskKey } from '../../../shared/run/lines';

/** When each task of a run is due, worked out by hand from the hours of one run; days count from its injection day. */

const DAY = 46_500;
const hours = (day: number, hour: number): number => DAY + day + hour / 24;
/** Injected in the evening at 20:10, stripped 7:40, hatched from 12:20 the day after to 18:10, first food at 3:00. */
const RUN: Readonly<Record<string, number>> = {
  plannedOn: DAY - 60,
  fill: DAY - 2,
  inject: hours(0, 20 + 1 / 6),
  look: hours(1, 4.2),
  strip: hours(1, 7 + 2 / 3),
  late: hours(1, 9.2),
  hatchAt: hours(2, 12 + 1 / 3),
  hatchEnd: hours(2, 18 + 1 / 6),
  feed: hours(4, 3),
  fedFrom: DAY + 4,
  liveDays: 5,
  weaningDays: 3,
  weaned: DAY + 23,
  firstLeaves: DAY + 30,
  leaves: DAY + 32,
  on: DAY + 30,
  restDays: 90,
  leadHormone: 14,
  leadCysts: 14,
};
const dueOf = (changes: Readonly<Record<string, number>> = {}) => {
  const due = taskTimes((key) => ({ ...RUN, ...changes })[key] ?? null);
  return (task: TaskKey): readonly [number, number] => {
    const at = due(task) - DAY;
    return [Math.floor(at + 1e-9), Number((24 * (at - Math.floor(at + 1e-9))).toFixed(4))];
  };
};

const DUE = [
  // Fourteen days before the injection, or before the cysts are set: the earlier of both.
  ['order', -14, 9],
  ['fill', -2, 8],
  ['trial', -1, 8],
  ['dose1', -1, 15],
  ['dose2', 0, 8],
  ['choose', -1, 16],
  // Two hours, one hour before; to the half hour.
  ['glands', 0, 18],
  ['weigh', 0, 19],
  ['inject', 0, 20],
  ['look', 1, 4],
  ['net', 1, 6.5],
  ['milt', 1, 7],
  ['strip', 1, 7.5],
  ['late', 1, 9],
  // Nine hours after the strip is 16:40, within the working day.
  ['white', 1, 16.5],
  // The last end of a working day before the hatch.
  ['power', 1, 17],
  ['hatch', 2, 12.5],
  // The hatch is over at 18:10, after work: next morning.
  ['lift', 3, 7],
  ['back', 2, 9],
  ['cysts', 3, 7],
  ['firstFeed', 4, 7],
  ['daily', 5, 7],
  ['weighFry', 10, 9],
  ['grade', 11, 8],
  ['wean', 9, 8],
  ['dry', 12, 8.5],
  ['weaned', 23, 10],
  ['fast', 29, 7],
  ['handOver', 30, 8],
  ['empty', 32, 14],
  ['rested', 91, 8],
] as const;
test.each(DUE)('%s: day %i at %f h', (task, day, hour) => {
  expect([task, ...dueOf()(task as TaskKey)]).toEqual([task, day, hour]);
});

test('no task is left out', () => {
  expect(DUE.map(([task]) => task).sort()).toEqual(Object.keys(TASKS).sort());
});

// People work from seven to five: just inside, just outside.
test.each([
  [6.9, 4, 7],
  [7, 4, 7],
  [7.4, 4, 7.5],
  [16.9, 4, 17],
  [17, 4, 17],
  [17.1, 5, 7],
])('food due at %f h is given on day %i at %f h', (due, day, hour) => {
  expect(dueOf({ feed: hours(4, due) })('firstFeed')).toEqual([day, hour]);
});

test('the grading before the first fish leave comes a day before them, however early', () => {
  expect(dueOf({ firstLeaves: DAY + 20 })('weaned')).toEqual([19, 10]);
  expect(dueOf({ firstLeaves: DAY + 24 })('weaned')).toEqual([23, 10]);
  expect(dueOf({ firstLeaves: DAY + 25 })('weaned')).toEqual([23, 10]);
});

// The two published paths part in the first week (VERRETH99, KAWAMURA17): a weighing before day 3 tells nothing.
test.each([
  [2, NaN],
  [3, 3],
  [6, 6],
])('a weighing on day %i of feeding is taken on day %s', (day, taken) => {
  const lines = runLines.open({ wasFeed: DAY + 4, weighedGrams: 0.012, weighedOn: DAY + 4 + day });
  expect(lines.number('weighedDay')).toBe(taken);
});

test('growth after a weighing lies between the two published paths, and beyond them stays at the nearer one', () => {
  // 20 % a day as planned; on day 6 the weight of 20 %, of 32.1 % (half way to 44.2), of 60 % a day.
  for (const [percent, after] of [
    [15, 20],
    [20, 20],
    [32.1, 20 - 0.5 * (20 - 11.7)],
    [44.2, 11.7],
    [60, 11.7],
  ] as const) {
    const lines = runLines.open({
      wasFeed: DAY + 4,
      startWeight: 0.0025,
      fryGrowth: 20,
      weighedGrams: 0.0025 * Math.exp((percent * 6) / 100),
      weighedOn: DAY + 10,
    });
    expect([percent, lines.number('growing')]).toEqual([percent, expect.closeTo(after, 6)]);
  }
});

test('white eggs of a strip at eight are counted at five the same afternoon; at half past eight the next morning', () => {
  expect(dueOf({ strip: hours(1, 8), hatchAt: hours(3, 12) })('white')).toEqual([1, 17]);
  expect(dueOf({ strip: hours(1, 8.5), hatchAt: hours(3, 12) })('white')).toEqual([2, 7]);
});

test('fish that are nursed are moved when they are graded; fry that are sold are counted', () => {
  const said = (nursingVats: readonly string[]): string =>
    TASKS.weaned.what({ nursingVats } as unknown as TaskContext);
  expect(said([])).toBe('Grade and count (Counts)');
  expect(said(['Vat 4', 'Vat 5'])).toContain('move to Vat 4, Vat 5');
});

// Where two hours meet, the earlier or the later counts: each side of every choice.
test.each([
  [
    'an early injection moves the water before it',
    { fill: DAY, inject: hours(0, 9) },
    {
      fill: [-1, 23],
      trial: [0, 1],
      dose1: [0, 3],
      dose2: [0, 5],
    },
  ],
  [
    'the first look comes an hour before the strip at the latest',
    { strip: hours(1, 4.5) },
    { look: [1, 3.5] },
  ],
  ['eggs may wait half an hour at least', { late: hours(1, 7.7) }, { late: [1, 8] }],
  [
    'white eggs are counted two hours before the hatch at the latest',
    { hatchAt: hours(1, 16) },
    { white: [1, 14] },
  ],
  [
    'power is tried half an hour before a hatch in the evening',
    { hatchAt: hours(1, 17.2) },
    { power: [1, 16.5] },
  ],
  ['power is tried an hour after the strip at the earliest', { hatchAt: hours(1, 9) }, { power: [1, 8.5] }],
  ['nets stay two hours from the first hatch', { hatchEnd: hours(2, 12.5) }, { lift: [2, 14.5] }],
  ['nets are out an hour before food', { hatchEnd: hours(2, 12.5), feed: hours(2, 15) }, { lift: [2, 14] }],
  ['goods are not ordered before the plan', { plannedOn: DAY - 5 }, { order: [-5, 9] }],
  ['goods wait for the cysts', { leadCysts: 30 }, { order: [-27, 9] }],
  ['goods wait for the hormone', { leadHormone: 20 }, { order: [-20, 9] }],
] as const)('%s', (_, changes, due) => {
  const read = dueOf(changes as Readonly<Record<string, number>>);
  for (const [task, at] of Object.entries(due)) expect([task, read(task as TaskKey)]).toEqual([task, at]);
});

test.each([
  [8.2, 4, 17],
  [9, 5, 7],
])('food due %f seconds after five is given on day %i at %f h', (seconds, day, hour) => {
  expect(dueOf({ feed: hours(4, 17 + seconds / 3600) })('firstFeed')).toEqual([day, hour]);
});

test('words of a task: one vat and two, a fish without glands of donors', () => {
  const context = {
    females: ['F1', 'F2'],
    eggVats: ['Vat 1'],
    fryVats: ['Vat 1', 'Vat 2'],
    nursingVats: ['Vat 2'],
    preparation: 'carp pituitary',
    donors: false,
    isSolution: false,
  } as unknown as TaskContext;
  expect(TASKS.fill.what(context)).toContain('air 1 vat for the eggs: Vat 1.');
  expect(TASKS.fill.what({ ...context, eggVats: ['Vat 1', 'Vat 2'] })).toContain(
    'air 2 vats for the eggs: Vat 1, Vat 2.',
  );
  expect(TASKS.glands.what(context)).not.toContain('donors');
  expect(TASKS.glands.what({ ...context, donors: true })).toContain('glands of the donors');
  expect([TASKS.glands.isAsked?.(context), TASKS.glands.isAsked?.({ ...context, isSolution: true })]).toEqual(
    [true, false],
  );
  expect(TASKS.empty.what(context)).toContain('dry Vat 1, Vat 2');
  expect(TASKS.grade.every).toBe(7);
});
