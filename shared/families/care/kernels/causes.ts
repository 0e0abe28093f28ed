import type { Near } from '../../../base/near';
/**
 * What may lie behind a failed hatch or lost larvae: what to look at and the figure behind it. No published table
 * of patterns was found; rows join seen trials with practice, and say which.
 */
export interface Cause {
  readonly cause: string;
  readonly look: string;
  readonly figure: string;
}
const cause = (what: string, look: string, figure: string): Cause => ({ cause: what, look, figure });

const OVERRIPE = cause(
  'Stripped too late or too early',
  'Hours from injection to strip, temperature of that night (SPAWN.STRIP.ADVICE)',
  '99 % fertilised at 15 h, hatch 2 % at 17 h in one trial (Audu 2023)',
);
const MILT = cause(
  'Milt dead, watered or too little',
  'Age of the male, drops of water or urine, hours the milt stood',
  '15,000 sperm an egg gave 80 % (Rurangwa 1998)',
);
const WATER_TOUCHED = cause(
  'Eggs touched by water before the milt',
  'Wet hands, wet bowl, wet belly',
  'practice',
);
const SWING = cause(
  'Temperature swing or heat',
  'Lowest and highest of the night',
  '57 % hatch in the narrowest range, none at 19 to 37 °C',
);
const OXYGEN = cause(
  'Oxygen short at the eggs',
  'Oxygen in the last hours, heaps of eggs, still water',
  '30 to 83 % hatch with none to 12 h of shower; best near saturation',
);
const PH = cause(
  'pH or very soft or hard water',
  'pH at strip and next morning, hardness',
  'Best 6.7 to 7.6; none at 3.4 or 10',
);
const FUNGUS = cause(
  'Fungus from dead eggs',
  'White eggs not taken out, crowding, dirt',
  'Hatch falls with density and dirt (r −0.97)',
);
const CHLORINE = cause(
  'Chlorine or another poison in the water',
  'Tap water, bleach rinsed too little, new concrete',
  'practice; thousandths of a mg/L kill fry',
);
const HORMONE = cause(
  'Females not ripe',
  'Egg size even, dark spot, eggs on a light press',
  '60 % of eggs with a moved nucleus in trial fish',
);
const DEFORMED = cause(
  'Heat, over-ripe eggs or hormone',
  'Temperature, hours to strip, dose',
  '4 to 11 % deformed is seen; above a quarter call it a fault (practice)',
);

export interface HatchSigns {
  readonly fertilised: number | undefined;
  readonly hatched: number | undefined;
  readonly whiteSoon: boolean;
  readonly cotton: boolean;
  readonly early: boolean;
  readonly deformed: number | undefined;
}
export const FEW_FERTILISED = 0.6; // share, practice: 80 % is good
export const LOW_OF_FERTILISED = 0.6; // share of the fertilised, practice
export const MUCH_DEFORMED = 0.25; // share, practice
/** Causes in order of what to look at first, each once. */
export function hatchCauses(s: HatchSigns): readonly Cause[] {
  const list: Cause[] = [];
  if (s.whiteSoon) list.push(HORMONE, OVERRIPE, CHLORINE, SWING);
  if (s.fertilised !== undefined && s.fertilised < FEW_FERTILISED)
    list.push(MILT, WATER_TOUCHED, HORMONE, OVERRIPE);
  if (s.cotton) list.push(FUNGUS);
  if (s.early) list.push(OXYGEN);
  if (s.hatched !== undefined && (s.fertilised === undefined || s.hatched < LOW_OF_FERTILISED * s.fertilised))
    list.push(OVERRIPE, SWING, OXYGEN, PH, FUNGUS);
  if (s.deformed !== undefined && s.deformed > MUCH_DEFORMED) list.push(DEFORMED);
  return [...new Set(list)];
}

export const PATTERNS = [
  'all at once',
  'day 3 to 8',
  'few big ones',
  'bodies missing',
  'bellies burst',
  'at weaning',
  'slow every day',
] as const;
export type CausePattern = (typeof PATTERNS)[number];
const AMMONIA = cause(
  'Ammonia',
  'Total ammonia, pH, feed of the last days (SPAWN.WATER.CHANGE)',
  'limit for larvae not found; 0.34 mg/L at 141 g',
);
const FOOD_LATE = cause(
  'First food late, too large or too little',
  'Hour of the first food, full bellies under a lens',
  'able to eat at 36 h, yolk gone at 68 h; one run lost 95 % after day 8',
);
const EATERS = cause(
  'Eaten by the bigger ones',
  'Tails bitten, size spread (SPAWN.SIZE.SPREAD), grade now',
  '37 % in 14 days; 0.2 % left at day 45 unsorted',
);
export const LARVAL_CAUSES: Readonly<Record<CausePattern, readonly Cause[]>> = {
  'all at once': [
    cause('Oxygen gone', 'Air, power, surface, fish at the top', 'danger below 3 mg/L'),
    CHLORINE,
    AMMONIA,
    cause(
      'Sudden change of temperature or pH',
      'Last water change; alkali in the vat',
      'a rise of 0.5 pH at once kills channel catfish fry',
    ),
  ],
  'day 3 to 8': [FOOD_LATE, cause('Grain too large', 'Size of live food', '0.16 to 0.32 mm'), AMMONIA],
  'few big ones': [EATERS],
  'bodies missing': [EATERS, cause('Lost through screen or siphon', 'Mesh, siphon bucket', 'practice')],
  'bellies burst': [
    cause(
      'Too much feed at a meal',
      'Ration against SPAWN.FEED.GRAIN, number of meals',
      '3 to 5 g, age 5 to 9 weeks, more at high feeding',
    ),
  ],
  'at weaning': [
    cause(
      'Weaned too suddenly',
      'Days of half live, half dry food',
      'over 90 % alive with half live food, under 75 % at once',
    ),
    cause('Grain too large or feed spoiled', 'Grain against length, smell', 'practice'),
  ],
  'slow every day': [
    AMMONIA,
    cause('Crowded', 'Fish a litre (SPAWN.STOCKING.CHECK)', '88 % alive at 50 a litre, 64 % at 150'),
    cause('Dirt on the floor', 'Siphon twice a day', 'practice'),
    EATERS,
  ],
};

const SIGNS: HatchSigns = {
  fertilised: undefined,
  hatched: undefined,
  whiteSoon: false,
  cotton: false,
  early: false,
  deformed: undefined,
};
const isBlamed = (signs: Partial<HatchSigns>, one: Cause): boolean =>
  hatchCauses({ ...SIGNS, ...signs }).includes(one);
export const NEAR: readonly Near[] = [
  {
    number: 'fertilised share that is few',
    value: FEW_FERTILISED,
    below: () => isBlamed({ fertilised: 0.59 }, MILT),
    above: () => isBlamed({ fertilised: 0.61 }, MILT),
    answers: [true, false],
  },
  {
    number: 'hatch of the fertilised that is low',
    value: LOW_OF_FERTILISED,
    below: () => isBlamed({ fertilised: 0.9, hatched: 0.59 * 0.9 }, SWING),
    above: () => isBlamed({ fertilised: 0.9, hatched: 0.61 * 0.9 }, SWING),
    answers: [true, false],
  },
  {
    number: 'deformed share that is a fault',
    value: MUCH_DEFORMED,
    below: () => isBlamed({ deformed: 0.24 }, DEFORMED),
    above: () => isBlamed({ deformed: 0.26 }, DEFORMED),
    answers: [false, true],
  },
];
