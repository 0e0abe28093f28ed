// Long: records of one subject, each with its texts, questions and examples.
import * as z from 'zod';

/**
 * What a plan takes for granted until the hatchery has figures of its own. `low` and `high` span what was
 * published or is usual: low is the poor end for the fish. `setWhenPlanned` marks a figure that decides how
 * many rows the workbook has.
 */
export interface Assumption<K extends string = string> {
  readonly key: K;
  readonly label: string;
  readonly unit: string;
  readonly format: string;
  readonly planned: number;
  readonly low: number;
  readonly high: number;
  /** Limits of what may be typed. */
  readonly min: number;
  readonly max: number;
  /** Keys of shared/sources.ts. */
  readonly sources: readonly string[];
  readonly note: string;
  readonly setWhenPlanned?: boolean;
}

const SHARE = { unit: 'share', format: '0%', min: 0.01, max: 1 } as const;

export const ASSUMPTIONS = {
  ovulating: {
    key: 'ovulating',
    label: 'Injected females that give eggs',
    ...SHARE,
    format: '0.0%',
    planned: 0.875,
    low: 0.875,
    high: 1,
    sources: ['BRZUSKA03'],
    note: '87.5 % after a ready-made solution, all after carp pituitary.',
  },
  eggShare: {
    key: 'eggShare',
    label: 'Egg weight of body weight',
    ...SHARE,
    format: '0.0%',
    planned: 0.06,
    low: 0.013,
    high: 0.143,
    min: 0.001,
    max: 0.3,
    sources: ['TP62', 'GRAAF95'],
    note:
      '28,000 to 37,600 eggs stripped per kg, at 669 in a gram, are 4 to 6 %; another station had 1 % in the dry ' +
      'and 14 % in the rainy season. Look at the month and at your own notes.',
  },
  eggsPerGram: {
    key: 'eggsPerGram',
    label: 'Eggs in a gram',
    unit: 'per g',
    format: '#,##0',
    planned: 669,
    low: 435,
    high: 1176,
    min: 100,
    max: 2000,
    sources: ['DADEBO00'],
    note: 'Mean and extremes of 40 females, preserved ovaries. Weigh and count 1 g of yours.',
  },
  hatch: {
    key: 'hatch',
    label: 'Eggs that hatch',
    ...SHARE,
    planned: 0.59,
    low: 0.284,
    high: 0.864,
    sources: ['GRAAF95', 'TP62'],
    note:
      'Rainy season 59 %, dry season 28 %; best month of another station 86 %. Fertilising ' +
      'is part of it.',
  },
  yolkSurvival: {
    key: 'yolkSurvival',
    label: 'Hatched larvae alive at first feed',
    ...SHARE,
    planned: 0.8,
    low: 0.44,
    high: 0.93,
    sources: ['OKER15', 'OLUBIYI05', 'ATAGUBA22', 'EBONYI'],
    note: '78 to 93 % in hormone trials, 44 to 98 % by the water they lay in: water matters more than hormone.',
  },
  frySurvival: {
    key: 'frySurvival',
    label: 'Larvae that become weaned fry',
    ...SHARE,
    planned: 0.75,
    low: 0.33,
    high: 0.93,
    sources: ['HLREAR94', 'CHEP11', 'HYBRIDLARVAE', 'KAWAMURA17'],
    note:
      'To day 14: 79 to 92 % in one run, 61 to 73 % in the next of the same laboratory; above 90 % with half live ' +
      'food from day 8, 33 % on dry feed alone. One run in ten fails altogether (a judgement).',
  },
  nurserySurvival: {
    key: 'nurserySurvival',
    label: 'Fry that become fingerlings',
    ...SHARE,
    planned: 0.76,
    low: 0.64,
    high: 0.88,
    sources: ['MAKERERE', 'LAGOSGRADE'],
    note:
      '88 % at 50 per litre, 64 % at 150, 28 days indoors. Six farms from hatch to week 6: 71 % graded by sieve, ' +
      '61 % by hand.',
  },
  gradingShare: {
    key: 'gradingShare',
    label: 'Fish left after grading and counting out',
    ...SHARE,
    planned: 0.95,
    low: 0.9,
    high: 1,
    sources: ['PRACTICE'],
    note: 'Cannibals, runts, handling. Use your own.',
  },
  arriving: {
    key: 'arriving',
    label: 'Fish alive when the buyer counts them',
    ...SHARE,
    min: 0.5,
    planned: 1,
    low: 0.95,
    high: 1,
    sources: ['PRACTICE', 'LIM03'],
    note: '100 % where they are fetched and counted at the vat; sent in bags 95 to 98 % (SPAWN.BAG.DEAD).',
  },
  femalesPerMale: {
    key: 'femalesPerMale',
    label: 'Females to one male',
    unit: 'females',
    format: '0.0',
    planned: 2,
    low: 1,
    high: 5,
    min: 0.5,
    max: 10,
    sources: ['PRACTICE'],
    note: 'One male could serve more; more males keep the line healthy.',
  },
  hormoneDose: {
    key: 'hormoneDose',
    label: 'Ready-made solution per kg of female',
    unit: 'mL/kg',
    format: '0.00',
    planned: 0.5,
    low: 0.2,
    high: 0.5,
    min: 0.05,
    max: 2,
    sources: ['BRZUSKA03', 'OLUBIYI05', 'NGUEKU15'],
    note:
      '0.4 to 0.5 usual, 0.2 has worked. As the leaflet says; ask a vet. Other preparations: ' +
      'SPAWN.HORMONE.PREPARE.',
  },
  latencyOffset: {
    key: 'latencyOffset',
    label: 'Your fish ripen later than the table by',
    unit: 'h',
    format: '0.0',
    planned: 0,
    low: 0,
    high: 4,
    min: -6,
    max: 8,
    sources: ['PRACTICE'],
    note: 'Your own runs set it: hours you stripped after the table said, minus when earlier.',
  },
  incubationFactor: {
    key: 'incubationFactor',
    label: 'Your eggs take to hatch, times the table',
    unit: '',
    format: '0.00',
    planned: 1,
    low: 1,
    high: 1.12,
    min: 0.5,
    max: 2,
    sources: ['GRAAF96', 'AMPCLARIAS', 'ACEH19'],
    note: 'Your own runs set it. Two published durations are 1.10 and 1.11 times the handbook table.',
  },
  eggsPerLitre: {
    key: 'eggsPerLitre',
    label: 'Eggs in a litre of hatching water, at most',
    unit: 'per L',
    format: '#,##0',
    planned: 480,
    low: 100,
    high: 480,
    min: 10,
    max: 2000,
    sources: ['YONG08'],
    note: 'Standing water; hatch falls as eggs lie closer. Change part of the water daily.',
  },
  larvaePerLitre: {
    key: 'larvaePerLitre',
    label: 'Larvae and fry in a litre, at most',
    unit: 'per L',
    format: '#,##0',
    planned: 100,
    low: 50,
    high: 150,
    min: 1,
    max: 500,
    sources: ['AJANI15', 'MAKERERE'],
    note: '100 to 150 per litre recommended by one trial; 88 % alive at 50, 64 % at 150 in another.',
  },
  nurseryPerLitre: {
    key: 'nurseryPerLitre',
    label: 'Fry in a litre while nursing, at most',
    unit: 'per L',
    format: '#,##0',
    planned: 50,
    low: 50,
    high: 150,
    min: 0.1,
    max: 300,
    sources: ['MAKERERE'],
    note: 'With aeration and water change; fewer as they grow.',
  },
  startWeight: {
    key: 'startWeight',
    label: 'Weight of a larva at first feed',
    unit: 'g',
    format: '0.0000',
    planned: 0.0025,
    low: 0.002,
    high: 0.003,
    min: 0.0005,
    max: 0.1,
    sources: ['JANSSEN85', 'KAWAMURA17'],
    note: '2 to 3 mg in African catfish; hybrids and Heterobranchus 10 to 13 mg. Weigh 100 together.',
  },
  fryGrowth: {
    key: 'fryGrowth',
    label: 'Growth of larvae and fry',
    unit: '%/d',
    format: '0.0',
    planned: 16.5,
    low: 7,
    high: 28,
    min: 0,
    max: 40,
    sources: ['KAWAMURA17', 'NAJA16', 'VERRETH99', 'HYBRIDLARVAE'],
    note:
      '16.5 to 17 % a day in ordinary trials; with Artemia in surplus and warm 28 % over two ' +
      'weeks; 7 % on dry feed ' +
      'alone. Weigh 50 to 100 on day 5 to 7 and put in what they do.',
  },
  nurseryGrowth: {
    key: 'nurseryGrowth',
    label: 'Growth while nursing',
    unit: '%/d',
    format: '0.0',
    planned: 13,
    low: 11.1,
    high: 16,
    min: 0,
    max: 30,
    sources: ['MAKERERE', 'JANSSEN85'],
    note: '12.5 % a day at 50 per litre, 11.1 % at 150, underfed; 1 g at 40 to 50 days means 13 to 16 %.',
  },
  naupliiPerLarva: {
    key: 'naupliiPerLarva',
    label: 'Nauplii for one larva a day',
    unit: 'nauplii',
    format: '#,##0',
    planned: 150,
    low: 110,
    high: 350,
    min: 1,
    max: 5000,
    sources: ['CONC98', 'KKT1'],
    note:
      'Worked out: what a larva eats at 28 °C over a nauplius of 2.9 µg: 110 at 2.5 mg, 340 at 10 mg. Feed until ' +
      'some are left over after each meal.',
  },
  naupliiPerGram: {
    key: 'naupliiPerGram',
    label: 'Nauplii from a gram of cysts',
    unit: 'per g',
    format: '#,##0',
    planned: 200000,
    low: 200000,
    high: 300000,
    min: 20000,
    max: 400000,
    sources: ['LAVENS96'],
    note: 'From memory of the manual; a measured lot gave 230,600. Test your tin.',
  },
  naupliiHarvest: {
    key: 'naupliiHarvest',
    label: 'Nauplii that reach the vat',
    ...SHARE,
    planned: 0.8,
    low: 0.7,
    high: 0.95,
    sources: ['PRACTICE'],
    note: 'The rest is lost while separating shells.',
  },
  fryRation: {
    key: 'fryRation',
    label: 'Dry feed for fry, of body weight a day',
    ...SHARE,
    planned: 0.1,
    low: 0.08,
    high: 0.15,
    max: 1,
    sources: ['CONC98'],
    note:
      'Eaten at 28 °C: 13 % of the weight a day at first food, 9 % at 18 mg, 7 % at 50 mg (dry). More only fouls ' +
      'the water.',
  },
  nurseryRation: {
    key: 'nurseryRation',
    label: 'Dry feed while nursing, of body weight a day',
    ...SHARE,
    planned: 0.06,
    low: 0.04,
    high: 0.15,
    max: 1,
    sources: ['CONC98', 'FEEDFREQ'],
    note: 'Eaten at 28 °C: 7 % at 50 mg, 4.6 % at 0.5 g, 4 % at 1 g (dry). 15 % was offered in one trial.',
  },
  rearingDays: {
    key: 'rearingDays',
    label: 'Days from first feed to weaned fry',
    unit: 'd',
    format: '0',
    planned: 12,
    low: 10,
    high: 14,
    min: 7,
    max: 30,
    sources: ['HECHT13'],
    note: '10 to 14 days in the hatchery.',
    setWhenPlanned: true,
  },
  nurseryDays: {
    key: 'nurseryDays',
    label: 'Days of nursing',
    unit: 'd',
    format: '0',
    planned: 28,
    low: 28,
    high: 40,
    min: 7,
    max: 90,
    sources: ['MAKERERE'],
    note: '28 days was the length of the trial.',
    setWhenPlanned: true,
  },
  liveDays: {
    key: 'liveDays',
    label: 'Days on live food alone',
    unit: 'd',
    format: '0',
    planned: 5,
    low: 3,
    high: 7,
    min: 1,
    max: 14,
    sources: ['HECHT13'],
    note: 'Live food for 5 days from first feeding, then a dry starter.',
    setWhenPlanned: true,
  },
  weaningDays: {
    key: 'weaningDays',
    label: 'Days half live, half dry',
    unit: 'd',
    format: '0',
    planned: 4,
    low: 2,
    high: 7,
    min: 0,
    max: 14,
    sources: ['CHEP11', 'PRACTICE'],
    note: 'Half live food until they take the dry; the length is common practice.',
    setWhenPlanned: true,
  },
  meals: {
    key: 'meals',
    label: 'Meals a day',
    unit: 'meals',
    format: '0',
    planned: 5,
    low: 5,
    high: 6,
    min: 1,
    max: 24,
    sources: ['FEEDFREQ'],
    note: 'Growth was best at 5 to 6 meals a day.',
  },
  preparingDays: {
    key: 'preparingDays',
    label: 'Vats filled and aerated before stripping',
    unit: 'd',
    format: '0',
    planned: 5,
    low: 3,
    high: 7,
    min: 1,
    max: 30,
    sources: ['PRACTICE'],
    note: 'Time for the water to settle and for two part-doses.',
  },
  orderDays: {
    key: 'orderDays',
    label: 'Order goods before stripping',
    unit: 'd',
    format: '0',
    planned: 14,
    low: 7,
    high: 30,
    min: 1,
    max: 90,
    sources: ['PRACTICE'],
    note: 'Delivery time of hormone, cysts and feed.',
  },
} as const satisfies Record<string, Assumption>;

export type AssumptionKey = keyof typeof ASSUMPTIONS;
export type Assumed = { readonly [K in AssumptionKey]: number };
export const assumptionList: readonly Assumption<AssumptionKey>[] = Object.values(ASSUMPTIONS);

const isWhole = (a: Assumption): boolean => a.unit === 'd' || a.unit === 'meals';
const fits = (a: Assumption, n: unknown): boolean =>
  typeof n === 'number' && n >= a.min && n <= a.max && (!isWhole(a) || Number.isInteger(n));

const entry = (a: Assumption) =>
  z
    .custom<number>((n) => n === undefined || fits(a, n), {
      error: (issue) =>
        `${a.label}: expected ${isWhole(a) ? 'a whole number' : 'a number'} from ${a.min} to ${a.max}${a.unit === 'share' ? ' (80 % is 0.8)' : ` ${a.unit}`}, got ${String(issue.input)}.`,
    })
    .optional();

/** Any of them may be replaced by the hatchery's own figure. */
export const assumptionSchema = z.strictObject(
  Object.fromEntries(assumptionList.map((a) => [a.key, entry(a)])) as {
    [K in AssumptionKey]: ReturnType<typeof entry>;
  },
);

export const assumed = (own: z.output<typeof assumptionSchema>): Assumed =>
  Object.fromEntries(assumptionList.map((a) => [a.key, own[a.key] ?? a.planned])) as Record<
    AssumptionKey,
    number
  >;
