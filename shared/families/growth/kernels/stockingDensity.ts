export const STAGES = ['eggs', 'fry in tanks', 'larvae in ponds', 'fingerlings in ponds'] as const;
export type StockingStage = (typeof STAGES)[number];

export interface StageDensity {
  /** Number per litre, or per square metre of pond. */
  readonly density: number;
  readonly unit: 'per L' | 'per m²';
  /** The most that a trial recommended or still had good survival at. */
  readonly most: number;
  readonly source: string;
  readonly says: string;
}

/** One published density per stage, the one that kept most fish alive. */
export const STAGE_DENSITY: Readonly<Record<StockingStage, StageDensity>> = {
  eggs: {
    density: 480,
    unit: 'per L',
    most: 480,
    source: 'YONG08',
    says:
      'standing water, hatch falls as eggs lie closer; in a jar with 30 changes an hour 5,000 to 15,000 hatched 86 ' +
      'to 90 %',
  },
  'fry in tanks': {
    density: 50,
    unit: 'per L',
    most: 150,
    source: 'MAKERERE',
    says:
      '88 % alive at 50 and 64 % at 150 after 28 days; 100 to 150 recommended by another trial, growth falls by a ' +
      'fifth to 300; Heterobranchus longifilis 15',
  },
  'larvae in ponds': {
    density: 100,
    unit: 'per m²',
    most: 100,
    source: 'GRAAF95',
    says: '32 fingerlings per m² after 40 days in fenced ponds, 5 in open ones',
  },
  'fingerlings in ponds': {
    density: 10,
    unit: 'per m²',
    most: 10,
    source: 'FAO362MONO',
    says: '10,000 kg per hectare at 200 g after 6 months, which means half were alive',
  },
};

export interface StockingStudy {
  readonly stage: string;
  readonly density: number;
  readonly unit: string;
  readonly days: number | null;
  readonly survival: number | null;
  readonly note: string;
  readonly source: string;
}

/** Densities in published trials, as printed in their abstracts. */
export const STOCKING_STUDIES: readonly StockingStudy[] = [
  {
    stage: 'Eggs, standing water',
    density: 480,
    unit: 'per L',
    days: null,
    survival: null,
    note: 'the most; hatch falls as density rises, or renew part of the water daily',
    source: 'YONG08',
  },
  {
    stage: 'Larvae and fry in tanks',
    density: 50,
    unit: 'per L',
    days: 28,
    survival: 0.88,
    note: 'growth 12.5 %/d, from day 7 after hatching',
    source: 'MAKERERE',
  },
  {
    stage: 'Larvae and fry in tanks',
    density: 150,
    unit: 'per L',
    days: 28,
    survival: 0.64,
    note: 'growth 11.1 %/d',
    source: 'MAKERERE',
  },
  {
    stage: 'Fry in tanks',
    density: 100,
    unit: 'per L',
    days: 28,
    survival: null,
    note: 'recommended 100 to 150; growth 8.47 %/d',
    source: 'AJANI15',
  },
  {
    stage: 'Fry in tanks',
    density: 300,
    unit: 'per L',
    days: 28,
    survival: null,
    note: 'growth 6.55 %/d',
    source: 'AJANI15',
  },
  {
    stage: 'Larvae of 3 days in ponds, fenced',
    density: 100,
    unit: 'per m²',
    days: 40,
    survival: 0.323,
    note: '32.3 fingerlings per m²',
    source: 'GRAAF95',
  },
  {
    stage: 'Larvae of 3 days in ponds, open to frogs',
    density: 100,
    unit: 'per m²',
    days: 40,
    survival: 0.05,
    note: '5.0 fingerlings per m²',
    source: 'GRAAF95',
  },
  {
    stage: 'Fingerlings in ponds',
    density: 10,
    unit: 'per m²',
    days: null,
    survival: 0.5,
    note: '6 months; survival worked out from 10,000 kg/ha at 200 g',
    source: 'FAO362MONO',
  },
];

/**
 * Vats for a number at a density: whole vats, never fewer than needed. Example: 100,000 eggs at 480 per L in
 * 60 L vats → 4.
 */
export const vatsFor = (fish: number, density: number, size: number): number =>
  Math.ceil(fish / (density * size) - 1e-9);
