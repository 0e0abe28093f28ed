// Long: the work of a run, one record a task.
import { moment } from '../../units/quantities';
import type { RunLine } from './declare';
import { line } from './declare';

/** What the words of a task name. */
export interface TaskContext {
  readonly batch: string;
  readonly females: readonly string[];
  readonly males: readonly string[];
  readonly eggVats: readonly string[];
  readonly fryVats: readonly string[];
  readonly nursingVats: readonly string[];
  readonly order: string;
  /** The hormone, the unit of its dose, whether it is injected as bought, whether glands are taken from fish. */
  readonly preparation: string;
  readonly unit: string;
  readonly isSolution: boolean;
  readonly donors: boolean;
}
export interface RunTask {
  readonly at: RunLine;
  readonly what: (context: TaskContext) => string;
  /** A line or given of the run (of the share for tasks of an order). */
  readonly amount?: string;
  readonly unit?: string;
  /** Once a batch, or once for every order the batch serves. */
  readonly per: 'batch' | 'order';
  readonly isAsked?: (context: TaskContext) => boolean;
  /** Again every so many days while it lies before the last fish leave. */
  readonly every?: number;
}

/** People work from seven to five; chosen here, no source. Biology keeps its own hour, to the half hour. */
const FROM = '7/24';
const UNTIL = '17/24';
const half = (x: string): string => `ROUND((${x})*48,0)/48`;
/** A few seconds: five o'clock of a day is not later than five. */
const SLACK = '1/9999';
/** The same time within working hours, else the next morning. */
const atWork = (x: string): string =>
  `IF(MOD(${x},1)<${FROM},INT(${x})+${FROM},IF(MOD(${x},1)>${UNTIL}+${SLACK},INT(${x})+1+${FROM},${half(x)}))`;

const names = (list: readonly string[]): string => list.join(', ');
export const plural = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`;
const isNursed = ({ nursingVats }: TaskContext): boolean => nursingVats.length > 0;

const when = (label: string, at: string): RunLine => line(label, moment, `=${at}`);
const batch = (
  label: string,
  at: string,
  what: string | RunTask['what'],
  more: Partial<Omit<RunTask, 'at' | 'what'>> = {},
): RunTask => ({
  at: when(label, at),
  what: typeof what === 'string' ? () => what : what,
  per: 'batch',
  ...more,
});

const PREPARING = {
  order: batch(
    'Order goods',
    `MAX({plannedOn},MIN(INT({inject})-{leadHormone},INT({feed})-1-{leadCysts}))+9/24`,
    'Order hormone, cysts and feed of this batch: amounts by week on Shopping',
  ),
  fill: batch(
    'Fill',
    half('MIN({fill}+8/24,{inject}-10/24)'),
    ({ eggVats }) =>
      `Clean, rinse, fill and air ${plural(eggVats.length, 'vat')} for the eggs: ${names(eggVats)}. Evening: pH, alkalinity, temperature`,
    { amount: 'litresEggs', unit: 'L' },
  ),
  trial: batch(
    'Trial',
    half('MIN({fill}+1+8/24,{inject}-8/24)'),
    'Aired overnight: read the pH. If it is still low, try a bucket of 10 L with a stock of 5 g/L',
    { amount: 'stock', unit: 'mL' },
  ),
  dose1: batch(
    'First half',
    half('MIN({fill}+1+15/24,{inject}-6/24)'),
    'First half of the dose, dissolved in a bucket, air on, no fish in. Goggles and gloves',
    { amount: 'halfEggs', unit: 'g in all' },
  ),
  dose2: batch(
    'Second half',
    half('MIN({fill}+2+8/24,{inject}-4/24)'),
    'Read the pH; the second half only if it is still low. Never above 8',
    { amount: 'halfEggs', unit: 'g in all' },
  ),
} as const;

const SPAWNING = {
  choose: batch(
    'Choose',
    'INT({inject})-1+16/24',
    ({ females }) =>
      `Choose ${names(females)}: round soft belly, a few eggs run at a light press. Keep each alone and covered; no more feed`,
    { amount: 'females', unit: 'females' },
  ),
  glands: batch(
    'Glands',
    half('{inject}-2/24'),
    ({ preparation, donors }) =>
      `Make up the ${preparation}${donors ? ', glands of the donors (how many: Batches)' : ''}: grind or dissolve it in boiled salt water of 9 g in a litre, cooled`,
    { amount: 'saline', unit: 'mL of salt water', isAsked: ({ isSolution }) => !isSolution },
  ),
  weigh: batch(
    'Weigh',
    half('{inject}-1/24'),
    ({ preparation, unit }) =>
      `Weigh every female (Batches), draw up her dose of ${preparation} in ${unit}; a clean needle for each fish`,
    { amount: 'hormone', unit: 'in all' },
  ),
  inject: batch('Inject', half('{inject}'), 'Inject; write down the hour and the water. Ask a vet', {
    amount: 'females',
    unit: 'females',
  }),
  look: batch(
    'First look',
    `MIN(${half('{look}')},${half('{strip}')}-1/24)`,
    'First look: press lightly, then every half hour. Cooler water means later',
  ),
  net: batch(
    'Net',
    `${half('{strip}')}-1/24`,
    ({ eggVats }) =>
      `Hang the nets in ${names(eggVats)}, 5 to 10 cm under the surface, air gentle; eggs in one layer`,
    { amount: 'netArea', unit: 'm² of net' },
  ),
  milt: batch(
    'Milt',
    `${half('{strip}')}-0.5/24`,
    ({ males }) => `Milt of ${names(males)} ready, dry and cool; males killed humanely`,
    { amount: 'males', unit: 'males' },
  ),
  strip: batch(
    'Strip',
    half('{strip}'),
    'Strip into a dry bowl, weigh the eggs, mix with milt, wet, spread in one layer. Dry hands, shade',
    { amount: 'eggs', unit: 'eggs' },
  ),
  late: batch(
    'Until',
    `MAX(${half('{late}')},${half('{strip}')}+0.5/24)`,
    'Not stripped yet? Nobody has tested later than this well: keep such eggs apart from the others',
  ),
  white: batch(
    'White eggs',
    `MIN(${atWork('({strip}+9/24)')},${half('{hatchAt}')}-2/24)`,
    'Count 100 eggs: clear and greenish live, white are dead (Counts). Take white clumps out',
    { amount: 'hundred', unit: 'eggs' },
  ),
  power: batch(
    'Power',
    `MAX(${half('{strip}')}+1/24,MIN(INT({hatchAt}-${UNTIL})+${UNTIL},${half('{hatchAt}')}-0.5/24))`,
    'Before the hatch: try the backup power and the spare air pump. Keep wires and plugs dry',
  ),
} as const;

const REARING = {
  hatch: batch('Hatch', half('{hatchAt}'), 'First larvae hatch: dark, calm, plenty of gentle air', {
    amount: 'larvae',
    unit: 'larvae',
  }),
  lift: batch(
    'Lift the net',
    `MIN(${atWork('MAX({hatchEnd},{hatchAt}+2/24)')},${half('{feed}')}-1/24)`,
    'Hatch over: lift the nets with shells and dead eggs, siphon the floor',
  ),
  back: batch(
    'Brood fish back',
    'INT({strip})+1+9/24',
    ({ females }) => `${names(females)} back to their own water; look for wounds`,
    { amount: 'females', unit: 'females' },
  ),
  cysts: batch(
    'Cysts',
    `${atWork('{feed}')}-1`,
    'Set the first cysts to hatch, then every day at this hour (amounts on Today)',
    { amount: 'cystsFirst', unit: 'g' },
  ),
  firstFeed: batch(
    'First food',
    atWork('{feed}'),
    ({ fryVats }) => `First live food. Count samples (Counts), spread the larvae over ${names(fryVats)}`,
    { amount: 'feeding', unit: 'larvae' },
  ),
  daily: batch(
    'Daily',
    '{fedFrom}+1+7/24',
    'From now on every morning: siphon, count the dead and write them down, change water as Today says',
  ),
  weighFry: batch(
    'Weigh fry',
    '{fedFrom}+6+9/24',
    'Weigh 100 fry together, blotted, divide by 100: weight of one and the day on Counts decide the feed from here on',
    { amount: 'hundred', unit: 'fry' },
  ),
  grade: batch('Grade', '{fedFrom}+7+8/24', 'Take out the big ones: they eat the rest. Weigh a sample', {
    every: 7,
  }),
  wean: batch(
    'Wean',
    '{fedFrom}+{liveDays}+8/24',
    'Start weaning: dry starter first, live food after. Siphon leftovers',
  ),
  dry: batch(
    'Dry feed',
    '{fedFrom}+{liveDays}+{weaningDays}+8.5/24',
    'Dry feed alone. Bellies full? If not, live food for a day or two more',
  ),
  weaned: batch(
    'Weaned',
    'MIN({weaned},{firstLeaves}-1)+10/24',
    (context) =>
      isNursed(context)
        ? `Grade, count (Counts), move to ${names(context.nursingVats)}`
        : 'Grade and count (Counts)',
    { amount: 'fry', unit: 'fry' },
  ),
} as const;

const ENDING = {
  fast: {
    ...batch(
      'Last meal',
      '{on}-1+7/24',
      ({ order }) => `${order}: last meal this morning; bags, oxygen and clean cool water ready`,
    ),
    per: 'order',
  },
  handOver: {
    ...batch(
      'Hand over',
      '{on}+8/24',
      ({ order }) => `${order}: count out by weight and hand over; write it in the log on Counts`,
      { amount: 'handOver', unit: 'fish' },
    ),
    per: 'order',
  },
  empty: batch(
    'Empty',
    '{leaves}+14/24',
    ({ fryVats, nursingVats, eggVats }) =>
      `All fish gone: empty, scrub, disinfect, dry ${names([...new Set([...eggVats, ...fryVats, ...nursingVats])])}`,
  ),
  rested: batch(
    'Rested',
    'INT({strip})+{restDays}+8/24',
    ({ females }) => `${names(females)} have rested and may be used again`,
    { amount: 'females', unit: 'females' },
  ),
} as const satisfies Record<string, RunTask>;

/** Everything there is to do for a batch. */
export const TASKS = { ...PREPARING, ...SPAWNING, ...REARING, ...ENDING } as const;
export type TaskKey = keyof typeof TASKS;
export const taskList: readonly (readonly [TaskKey, RunTask])[] = Object.entries(TASKS) as [
  TaskKey,
  RunTask,
][];

/**
 * The order of events: each of a pair lies no later than the other, whatever the water and the hours. A test
 * holds it on random runs.
 */
export const EVENTS_IN_ORDER: readonly (readonly TaskKey[])[] = [
  ['fill', 'trial', 'dose1', 'dose2', 'weigh', 'inject', 'look', 'net', 'milt', 'strip', 'late'],
  ['choose', 'glands', 'weigh', 'inject'],
  ['strip', 'white', 'hatch', 'lift', 'firstFeed', 'daily'],
  ['strip', 'power', 'hatch'],
  ['strip', 'back'],
  ['cysts', 'firstFeed', 'weighFry', 'grade'],
  ['firstFeed', 'wean', 'dry'],
  ['weaned', 'empty'],
];
