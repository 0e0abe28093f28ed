import { contextOf } from '../../../shared/books/living/layout';
import { LivingPages } from '../../../shared/books/living';
import { assumed } from '../../../shared/families/assumptions';
import {
  DAY_LINES,
  dayLines,
  RUN_GIVEN,
  RUN_LINES,
  runLines,
  SHARE_LINES,
  shareLines,
  TASKS,
  taskList,
  taskTimes,
} from '../../../shared/run/lines';
import type { Operand } from '../../../shared/sheet/formula';
import { isError } from '../../../shared/base/values';
import { expectKept } from '../../support/kept';
import { runOf } from '../support';

/**
 * Every line of a run, of its days, of the fish of an order and of its tasks, for runs that lie on both sides of
 * what the lines ask: counted and not, measured and not, sour and hard water, weighed early and late, few and many.
 */
const DAY = 46_500;
type Given = Readonly<Record<string, Operand>>;
const months = (values: readonly number[]): Operand => [values.slice()];
const BASE: Given = {
  ...assumed({}),
  plannedOn: DAY - 60,
  strip: DAY + 7.3 / 24,
  measured: 26,
  rearing: 14,
  nursing: 21,
  leaves: DAY + 40,
  firstLeaves: DAY + 33,
  kilograms: 5.2,
  females: 4,
  males: 3,
  hundred: 100,
  toSet: 150_000,
  litresEggs: 600,
  litresFry: 1200,
  litresNursing: 4000,
  ph: 6.1,
  phWanted: 7.1,
  alkalinity: 0.4,
  material: 'soda ash',
  preparation: 'ready-made solution',
  waterByMonth: months([24, 25, 26, 27, 28, 27, 26, 26, 27, 26.5, 25.5, 24.5]),
  eggShares: months([0.1, 0, 0.12, 0.13, 0.11, 0, 0.09, 0, 0.1, 0.1, 0, 0.08]),
  restDays: 80,
  leadHormone: 14,
  leadCysts: 20,
  leadFeed: 7,
  isLost: 'growing',
};
const RUNS: Readonly<Record<string, Given>> = {
  planned: {},
  'no measured water': { measured: null },
  'cold, glands': { measured: 22.5, preparation: 'own-species pituitary', kilograms: 0.8, females: 1 },
  'warm, hard water': { measured: 29.5, ph: 8.4, phWanted: 7.5, alkalinity: 3 },
  'pH not known': { ph: null, alkalinity: null },
  'other hormone and product': {
    preparation: 'carp pituitary',
    material: 'baking soda',
    ph: 5.2,
    alkalinity: null,
  },
  'few eggs, small vats': { toSet: 900, kilograms: 0.3, litresFry: 3, litresEggs: 0.9, litresNursing: 0 },
  'no vats, no fish': {
    toSet: 0,
    kilograms: 0,
    females: 0,
    litresEggs: 0,
    litresFry: 0,
    litresNursing: 0,
    nursing: 0,
  },
  'all counted': {
    eggsCounted: 88_000,
    hatchedCounted: 51_000,
    feedingCounted: 43_000,
    weanedCounted: 30_500,
    handedCounted: 21_000,
  },
  'as it was': {
    wasInject: DAY - 0.41,
    wasLook: DAY + 0.2,
    wasLate: DAY + 0.42,
    wasHatch: DAY + 1.5,
    wasHatchEnd: DAY + 1.8,
    wasFeed: DAY + 3.62,
  },
  'grew fast': { weighedGrams: 0.055, weighedOn: DAY + 10, fryGrowth: 30 },
  'grew slowly': { weighedGrams: 0.012, weighedOn: DAY + 9 },
  'weighed too early': { weighedGrams: 0.004, weighedOn: DAY + 5 },
  'on its own farm': { latencyOffset: 1.3, incubationFactor: 1.15, nurserySurvival: 0.7, frySurvival: 0.5 },
  'short rearing, nothing nursed': { rearing: 5, nursing: 0, litresNursing: 0 },
  lost: { isLost: 'lost' },
  december: { measured: null, strip: DAY + 240.9, plannedOn: DAY + 300 },
  'first of a month': { measured: null, strip: DAY + 11.25 },
};

const short = (value: Operand): unknown =>
  typeof value === 'number'
    ? Number(value.toPrecision(8))
    : isError(value as never)
      ? JSON.stringify(value)
      : value;
const texts = (
  list: Readonly<
    Record<
      string,
      { formula: string; label: string; note?: string; quantity: { format?: string | undefined } }
    >
  >,
) =>
  Object.entries(list).map(([key, { label, formula, note = '', quantity }]) =>
    [key, label, quantity.format ?? '', formula, note].join(' ¦ '),
  );

test('the texts of the lines', () => {
  expectKept('run-texts', {
    given: Object.entries(RUN_GIVEN).map(
      ([key, { label, quantity }]) => `${key} ¦ ${label} ¦ ${quantity.format ?? ''}`,
    ),
    run: texts(RUN_LINES),
    day: texts(DAY_LINES),
    share: texts(SHARE_LINES),
    tasks: taskList.map(([key, { at, amount = '', unit = '', per, every = '' }]) =>
      [key, at.label, at.formula, amount, unit, per, every].join(' ¦ '),
    ),
  });
});

test('their answers', () => {
  const answers = Object.entries(RUNS).map(([run, changes]) => {
    const given: Given = { ...BASE, ...changes };
    const lines = runLines.open(given);
    const read = (key: string): Operand =>
      key in given ? (given[key] ?? null) : lines.has(key) ? lines.get(key) : null;
    const taken = (needs: readonly string[]): Record<string, Operand> =>
      Object.fromEntries(needs.map((key) => [key, read(key)]));
    const days = [0, 3, 5, 8, 13, 14, 20, 36].map((day) => {
      const reader = dayLines.open({ ...taken(dayLines.needs), day, left: day > 13 ? 0.25 : null });
      return `${day}: ${Object.keys(DAY_LINES)
        .map((key) => `${key} ${String(short(reader.get(key)))}`)
        .join(', ')}`;
    });
    const shares = (
      [
        [10, 0.5, null, 0.05],
        [14, 0.3, 0.06, 0],
        [30, 0.2, 1.5, 0.12],
        [50, 0.7, 9, 0.2],
      ] as const
    ).map(([age, part, wanted, price]) => {
      const on = lines.number('fedFrom') + age;
      const reader = shareLines.open({ ...taken(shareLines.needs), on, part, wanted, price });
      return `${age}: ${Object.keys(SHARE_LINES)
        .map((key) => `${key} ${String(short(reader.get(key)))}`)
        .join(', ')}`;
    });
    const times = taskTimes((key) => (key === 'on' ? lines.number('fedFrom') + 30 : read(key)));
    return {
      run,
      lines: Object.fromEntries(Object.keys(RUN_LINES).map((key) => [key, short(lines.get(key))])),
      days,
      shares,
      times: taskList.map(([key]) => `${key} ${String(short(times(key)))}`).join(', '),
    };
  });
  expectKept('run-answers', answers);
});

test('what the tasks of a run say', () => {
  const { book, plan } = runOf({ ph: 5.1, females: 3, males: 3, wanted: 6000 });
  const [batch] = plan.batches;
  if (!batch) throw new Error('no batch');
  const say = (preparation: string): string[] =>
    taskList.flatMap(([key, task]) => {
      const context = contextOf(plan, batch, preparation, 'O1');
      return (task.isAsked?.(context) ?? true) ? [`${key}: ${TASKS[key].what(context)}`] : [];
    });
  const pages = new LivingPages(book, plan);
  expectKept('run-tasks', {
    own: say('own-species pituitary'),
    ready: say('ready-made solution'),
    listed: pages.rows.tasks.map(({ batch: of, task, order, later, what, when }) =>
      [of, task, order, later, when.toFixed(5), what].join(' ¦ '),
    ),
  });
});
