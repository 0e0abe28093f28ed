/**
 * Published evidence on salt and young catfish. Levels in g/L; a limit is what a paper reports, not a
 * recommendation.
 */
export interface SaltEvidence {
  readonly fish: string;
  readonly stage: SaltStage;
  /** Highest level that did no harm seen in the trial, g/L. */
  readonly borne: number;
  /** Level that killed half or all, or hatched none, g/L. */
  readonly harm: number;
  readonly exposure: string;
  readonly result: string;
  readonly source: string;
}

export const SALT_STAGES = [
  'eggs',
  'yolk-sac fry',
  'swim-up fry',
  'larvae',
  'fry',
  'fingerlings',
  'juveniles',
] as const;
export type SaltStage = (typeof SALT_STAGES)[number];

const CLARIAS = 'African catfish';
const HETEROBRANCHUS = 'Heterobranchus longifilis';
const HYBRID = 'Clarias × Heterobranchus';
const row = (
  fish: string,
  stage: SaltStage,
  borne: number,
  harm: number,
  exposure: string,
  result: string,
  source: string,
): SaltEvidence => ({ fish, stage, borne, harm, exposure, result, source });

export const SALT_EVIDENCE: readonly SaltEvidence[] = [
  row(CLARIAS, 'eggs', 5, 8, 'incubation', 'hatch normal at 0 to 5, none at 8 g/L', 'GBULUBO98'),
  row(
    CLARIAS,
    'yolk-sac fry',
    0.8,
    0.61,
    '15 min borne; 24 h kills half',
    '0.2 to 0.8 g/L for 15 min used; half dead in 24 h at 0.61, all at 10 g/L',
    'FRYSALT11',
  ),
  row(
    CLARIAS,
    'swim-up fry',
    1,
    0.7,
    '15 min borne; 24 h kills half',
    '0.2 to 1.0 g/L for 15 min used; half dead in 24 h at 0.70 g/L',
    'FRYSALT11',
  ),
  row(
    CLARIAS,
    'fry',
    8,
    10,
    'days',
    'half dead after 50 to 59 h at 10 g/L, after 12 to 22 h at 12 g/L; 8 to 11 g/L if raised by 1 a day',
    'GBULUBO98',
  ),
  row(
    CLARIAS,
    'juveniles',
    10,
    15,
    '24 h',
    'over 90 % lived 24 h at 10 g/L put straight in; all dead at 15',
    'CLARSALT',
  ),
  row(
    HETEROBRANCHUS,
    'eggs',
    0,
    9,
    'incubation',
    'hatch 88 % at 0, 81 at 1.5, 78 at 3, 53 at 7.5 g/L, none at 9',
    'HETSALT',
  ),
  row(HETEROBRANCHUS, 'larvae', 0, 4.35, '96 h kills half', 'half dead in 96 h at 4.35 g/L', 'HETSALT'),
  row(HETEROBRANCHUS, 'fingerlings', 0, 8, '96 h kills half', 'half dead in 96 h at 8.0 g/L', 'HETSALT'),
  row(
    HYBRID,
    'larvae',
    2,
    4.4,
    '96 h kills half',
    '14 to 21 days old: 90, 88, 78, 10 % lived 96 h at 0, 2, 4, 6 g/L',
    'HYBSALT',
  ),
];

/** Grams of salt for a level: water × (wanted − present) / purity. */
export const saltGrams = (volume: number, wanted: number, present: number, purity: number): number =>
  (volume * (wanted - present)) / purity;

/** Weak sodium chloride from its conductivity at 20 °C: 0.53 mg/L per µS/cm, to 0.5 g/L (WATERUNITS). */
export const MG_SALT_PER_MICROSIEMENS = 0.53; // mg/L per µS/cm at 20 °C, WATERUNITS
