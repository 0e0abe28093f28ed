export interface RationStudy {
  readonly stage: string;
  readonly ration: number | null;
  readonly meals: number | null;
  readonly result: string;
  readonly source: string;
  readonly standing: 'read' | 'from memory';
}

/**
 * Rations of published trials, as their abstracts print them. No table of ration by weight was found, so none
 * is here.
 */
export const RATION_STUDIES: readonly RationStudy[] = [
  {
    stage: 'Fry',
    ration: null,
    meals: 5,
    result: 'live food as much as they take; growth best at 5 to 6 meals',
    source: 'FEEDFREQ',
    standing: 'read',
  },
  {
    stage: 'Fry',
    ration: 0.25,
    meals: 6,
    result: 'dry feed in the first nursing, every 4 h, 28 °C',
    source: 'UYS85',
    standing: 'from memory',
  },
  {
    stage: 'Larvae from day 7',
    ration: 0.03,
    meals: 3,
    result: 'rate of one study, 42 % protein; likely too low for larvae',
    source: 'MAKERERE',
    standing: 'read',
  },
  {
    stage: 'Fingerlings',
    ration: 0.15,
    meals: 3,
    result: '4 meals: same growth, fewer alive',
    source: 'FEEDFREQ',
    standing: 'read',
  },
  {
    stage: 'Fingerlings of 5.88 g',
    ration: 0.03,
    meals: 2,
    result: 'rate of one study, 35 % protein',
    source: 'ILJS',
    standing: 'read',
  },
  {
    stage: 'Fingerlings in ponds',
    ration: 0.02,
    meals: null,
    result: 'least feed per gain, 35 % protein, 4 months',
    source: 'BASH23',
    standing: 'read',
  },
  {
    stage: 'Fingerlings in ponds',
    ration: 0.04,
    meals: null,
    result: 'best economics of 2, 4, 6 and 8 %',
    source: 'BASH23',
    standing: 'read',
  },
  {
    stage: 'Fingerlings in ponds',
    ration: 0.08,
    meals: null,
    result: 'fastest growth of 2, 4, 6 and 8 %',
    source: 'BASH23',
    standing: 'read',
  },
];
