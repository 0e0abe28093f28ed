// Long: one entry for each preparation, with every figure that is used of it.
import { CLARIAS_BASE } from './timing/kernels/base';

/**
 * Hormone preparations for African catfish and its kin, once: dose, waiting time, plan, shopping, checks and
 * learning read this list and no other. Doses are per kg of fish and given at once: no trial seen on these
 * fish needed a preparatory injection.
 */
export interface Preparation {
  readonly name: string;
  /** Other words people write for it, lower case. */
  readonly words: readonly string[];
  readonly unit: 'mL' | 'mg' | 'µg' | 'IU';
  /** Per kg of female, in the unit. */
  readonly dose: number;
  /** Lowest and highest usual dose; lower ones may have worked, see the note. */
  readonly published: readonly [number, number];
  /** Share of the female's dose given to a male whose milt comes from the testis: none is needed. */
  readonly maleShare: number;
  /** Dopamine antagonist given with it, mg per kg. */
  readonly antagonist: number;
  /** Dosed by volume: a mL of it is a mL in the syringe. */
  readonly isSolution: boolean;
  /** Salt water of 9 g/L in which one dose is taken up, mL per kg of fish; 0 for a solution. */
  readonly salineMlPerKg: number;
  /** Weight of fresh donors for each kg of fish treated; undefined where glands are not taken from one's own fish. */
  readonly donorsPerKg: number | undefined;
  readonly waiting: Waiting;
  readonly storage: string;
  readonly note: string;
  /** Keys of shared/families/sources.ts. */
  readonly sources: readonly string[];
}

/**
 * Waiting time as an envelope of trials, each hour counted as warmth over 15.4 °C (hours × (T − 15.4)):
 * the earliest at which eggs were had, the stretch of the measured or best hours, and the last at which a
 * trial with a known temperature still had good eggs. Nobody tested the base of 15.4 °C on waiting times.
 */
export interface Waiting {
  readonly firstLook: number;
  readonly best: readonly [number, number];
  readonly lastTested: number;
  /** Temperatures of the trials behind it, °C. Outside them the hours are carried, which is thinner. */
  readonly trials: readonly [number, number];
  readonly source: string;
  readonly says: string;
}

const warmth = (hours: number, temperature: number): number => hours * (temperature - CLARIAS_BASE);
/**
 * A ready-made solution, seen trials: 8 h at 26 to 27 °C; 613 min at 26.0 °C; most eggs at 12 h at 26 to 27 °C,
 * the last hour tried.
 */
const READY_MADE: Waiting = {
  firstLook: warmth(8, 26.4),
  best: [warmth(613 / 60, 26), warmth(12, 26.5)],
  lastTested: warmth(12, 27),
  trials: [26, 28],
  source: 'OKER15',
  says:
    'eggs at 8 h at 26 to 27 °C, 10.2 h measured at 26.0 °C, most and best eggs at 12 h at 26 to 27 °C, the ' +
    'last hour tried there; without a temperature: 99 % fertilised at 11 and 15 h, best hatch at 13 h, hatch ' +
    '2 % at 17 h',
};

export const PREPARATIONS = [
  {
    name: 'ready-made solution',
    words: ['ready made solution', 'ready-made', 'ready made', 'gnrha with antagonist, ready-made'],
    unit: 'mL',
    dose: 0.5,
    published: [0.4, 0.5],
    maleShare: 0,
    antagonist: 0,
    isSolution: true,
    salineMlPerKg: 0,
    donorsPerKg: undefined,
    waiting: READY_MADE,
    storage: 'As the leaflet says: how long an opened vial keeps was not found.',
    note:
      '0.2 to 0.5 mL/kg all worked in one trial; 0.4 mL/kg with a quarter of salt water lost nothing. One female ' +
      'in eight gave no eggs in another trial, so plan one more.',
    sources: ['BRZUSKA03', 'SUEZ', 'OLUBIYI05', 'NGUEKU15', 'OKER15', 'WORLDAQ25', 'AUDU23'],
  },
  {
    name: 'own-species pituitary',
    words: ['homoplastic pituitary', 'catfish pituitary', 'own species pituitary', 'fresh pituitary'],
    unit: 'mg',
    dose: 4,
    published: [3, 4],
    maleShare: 0,
    antagonist: 0,
    isSolution: false,
    salineMlPerKg: 1,
    donorsPerKg: 1.5,
    waiting: {
      firstLook: 100,
      best: [warmth(13.5, 23), warmth(12, 28)],
      lastTested: warmth(17, 27),
      trials: [22, 28],
      source: 'MOSHAAND',
      says: '13.5 h at 23 °C, 12 h at 28 °C, 20 h at 22 °C; larvae hatched from eggs stripped at 17 h at 26 to 28 °C',
    },
    storage: 'Acetone or alcohol, up to 18 months; fresh glands at once.',
    note:
      '2 to 5 mg/kg tried, 4 best. One donor as heavy as the female to one and a half times her weight. Grind the ' +
      'gland in 1 to 2 mL of salt water of 9 g/L.',
    sources: ['CLARIIDPAGE', 'MOSHAAND', 'GADISSA13', 'NGUEKU15'],
  },
  {
    name: 'carp pituitary',
    words: ['pituitary', 'pituitary extract', 'pituitary gland', 'hypophysis', 'dry carp pituitary', 'cpe'],
    unit: 'mg',
    dose: 4,
    published: [3, 4],
    maleShare: 0,
    antagonist: 0,
    isSolution: false,
    salineMlPerKg: 1,
    donorsPerKg: undefined,
    waiting: {
      firstLook: 100,
      best: [warmth(13.5, 23), warmth(745 / 60, 26)],
      lastTested: warmth(745 / 60, 26.7),
      trials: [23, 26.7],
      source: 'OKER15',
      says: '13.5 h at 23 °C; 12.4 h measured at 26.0 ± 0.7 °C with pituitary extract',
    },
    storage: 'Acetone changed three times, then dry in a desiccator: up to three years (carp hatcheries).',
    note: 'Grind in 1 to 2 mL of salt water of 9 g/L. 3 mg/kg fertilised 81 % in one trial.',
    sources: ['BRZUSKA03', 'GRAAF95', 'GADISSA13', 'OKER15'],
  },
  {
    name: 'tilapia pituitary',
    words: ['tilapia gland', 'acetone-dried tilapia pituitary'],
    unit: 'mg',
    dose: 8,
    published: [6, 10],
    maleShare: 0,
    antagonist: 0,
    isSolution: false,
    salineMlPerKg: 1,
    donorsPerKg: undefined,
    waiting: {
      firstLook: warmth(14, 26.2),
      best: [warmth(14, 27), warmth(18, 27)],
      lastTested: warmth(18, 28),
      trials: [26, 28],
      source: 'TILAPIAGLAND',
      says: '14 to 18 h at 27 ± 1 °C; half as long again as the own gland in another trial (17.6 against 11.9 h)',
    },
    storage: 'Acetone-dried.',
    note: 'Nothing happened below 6 mg/kg.',
    sources: ['TILAPIAGLAND', 'VILLANUEVA25'],
  },
  {
    name: 'hCG',
    words: ['human chorionic gonadotropin', 'chorionic gonadotropin'],
    unit: 'IU',
    dose: 3000,
    published: [500, 6000],
    maleShare: 0,
    antagonist: 0,
    isSolution: false,
    salineMlPerKg: 1,
    donorsPerKg: undefined,
    waiting: {
      firstLook: warmth(7.5, 30),
      best: [warmth(11, 28), warmth(11, 30)],
      lastTested: warmth(14, 28),
      trials: [27, 30],
      source: 'LEGENDRE95',
      says:
        'measured in Heterobranchus longifilis: eggs from 7 to 8 h, complete at 11 h at 30 °C; within 14 h at 27 ' +
        'to 29 °C. For African catfish no trial with a temperature was seen',
    },
    storage: 'As the leaflet says: how long opened hCG keeps was not found.',
    note: 'Worked in Egypt and in Heterobranchus longifilis, failed or poor in two reports.',
    sources: ['SUEZ', 'SALEH', 'LEGENDRE95', 'LONGIHCG'],
  },
  {
    name: 'LHRHa with domperidone',
    words: [
      'lhrha with antagonist',
      'lhrha',
      'gnrha',
      'gnrha with domperidone',
      'gnrha with antagonist',
      'lhrh-a',
    ],
    unit: 'µg',
    dose: 40,
    published: [40, 40],
    maleShare: 0,
    antagonist: 10,
    isSolution: false,
    salineMlPerKg: 1,
    donorsPerKg: undefined,
    waiting: {
      ...READY_MADE,
      source: 'SHARAF12',
      says:
        'the same kind of substances as in a ready-made solution, whose hours are used; 9 to 12 h without a ' +
        'temperature in one trial',
    },
    storage: 'As the leaflet says.',
    note: '40 µg with 10 or 20 mg of domperidone: all ovulated. Without the antagonist one in six did.',
    sources: ['SHOURBELA', 'SHARAF12', 'OKER15', 'WORLDAQ25'],
  },
  {
    name: 'LHRHa with pimozide',
    words: ['gnrha with pimozide'],
    unit: 'µg',
    dose: 30,
    published: [30, 40],
    maleShare: 0,
    antagonist: 8,
    isSolution: false,
    salineMlPerKg: 1,
    donorsPerKg: undefined,
    waiting: {
      ...READY_MADE,
      source: 'SHARAF12',
      says: 'as a ready-made solution, whose hours are used; 9 to 12 h without a temperature in one trial',
    },
    storage: 'As the leaflet says.',
    note: '4 mg of pimozide was too little in one trial (one in six ovulated), 16 mg was enough.',
    sources: ['SHARAF12', 'SHOURBELA', 'OKER15'],
  },
] as const satisfies readonly Preparation[];

export type PreparationName = (typeof PREPARATIONS)[number]['name'];
/** The names, for a choice. */
export const PREPARATION_NAMES = [
  'ready-made solution',
  'own-species pituitary',
  'carp pituitary',
  'tilapia pituitary',
  'hCG',
  'LHRHa with domperidone',
  'LHRHa with pimozide',
] as const satisfies readonly PreparationName[];
export const DEFAULT_PREPARATION: PreparationName = 'ready-made solution';

/** Other words → the name in the list, as a choice of a function takes them. */
export const PREPARATION_WORDS: Readonly<Record<string, PreparationName>> = Object.fromEntries(
  PREPARATIONS.flatMap(({ name, words }) => words.map((word) => [word, name] as const)),
);

/** The name of the list for a word, or what was given when the list does not know it. */
export const preparationWord = (word: unknown): unknown =>
  typeof word === 'string' ? (preparationNamed(word)?.name ?? word) : word;

/** The preparation a word means; undefined when the list has no such word. */
export function preparationNamed(word: string): Preparation | undefined {
  const wanted = word.trim().toLowerCase();
  const name = PREPARATION_WORDS[wanted] ?? wanted;
  return PREPARATIONS.find((p) => p.name.toLowerCase() === name.toLowerCase());
}
