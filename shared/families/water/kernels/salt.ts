// Long: one row for each published trial.
/**
 * Published evidence on salt and young catfish. Levels in g/L; a limit is what a paper reports, not a
 * recommendation.
 */
export interface SaltEvidence {
  readonly fish: SaltFish | 'a relative';
  readonly stage: SaltStage;
  /** Highest level at which as many lived as without salt, g/L; undefined where the text names none. */
  readonly borne: number | undefined;
  /** Lowest level that killed half or more, or hatched none, g/L; undefined where none was reached. */
  readonly harm: number | undefined;
  readonly exposure: string;
  readonly result: string;
  readonly source: string;
  /** Far from every other trial, unexplained by its text. */
  readonly isOutlier?: true;
}

export const SALT_STAGES = ['eggs', 'larvae', 'fingerlings', 'juveniles'] as const;
export type SaltStage = (typeof SALT_STAGES)[number];
export const SALT_FISH = ['African catfish', 'Heterobranchus longifilis', 'hybrid'] as const;
export type SaltFish = (typeof SALT_FISH)[number];

const row = (
  fish: SaltEvidence['fish'],
  stage: SaltStage,
  borne: number | undefined,
  harm: number | undefined,
  exposure: string,
  result: string,
  source: string,
): SaltEvidence => ({ fish, stage, borne, harm, exposure, result, source });
const CLARIAS = 'African catfish';
const LONGIFILIS = 'Heterobranchus longifilis';

export const SALT_EVIDENCE: readonly SaltEvidence[] = [
  row(CLARIAS, 'eggs', 5, 8, 'incubation', 'hatch normal at 0 to 5, none at 8', 'GBULUBO98'),
  row(
    LONGIFILIS,
    'eggs',
    3,
    9,
    'incubation',
    'hatch 88 % at 0, 78 at 3, 69 at 6, 53 at 7.5, none at 9',
    'HETSALT',
  ),
  row('hybrid', 'eggs', 0, undefined, 'incubation', 'hatch falls steadily from 0 to 10', 'BORODE05'),
  row(
    CLARIAS,
    'larvae',
    6,
    undefined,
    '21 d',
    '49 to 55 % alive at 2, 4, 5 and 6; 24 to 31 at 0, 1, 3 and 7',
    'KAWAMURA17',
  ),
  row(
    CLARIAS,
    'larvae',
    undefined,
    8,
    'days',
    'half dead at 8 to 11 raised by 1 a day; after 50 to 59 h at 10 at once',
    'GBULUBO98',
  ),
  {
    ...row(
      CLARIAS,
      'larvae',
      undefined,
      0.61,
      '24 h',
      'half the yolk-sac fry dead at 0.61, of the swim-up fry at 0.70',
      'FRYSALT11',
    ),
    isOutlier: true,
  },
  row(
    'hybrid',
    'larvae',
    4,
    4.4,
    '96 h',
    '14 days old: 90, 88, 78, 10 % alive at 0, 2, 4, 6; half at 4.4',
    'HYBSALT',
  ),
  row(LONGIFILIS, 'larvae', undefined, 4.35, '96 h', 'half dead at 4.35', 'HETSALT'),
  row(
    'a relative',
    'larvae',
    undefined,
    2.82,
    '96 h',
    'Heteropneustes: half the larvae dead at 2.8, of the fry at 7.6',
    'HETEROPN20',
  ),
  row(
    CLARIAS,
    'fingerlings',
    5,
    undefined,
    '10 weeks',
    'no loss of growth up to 5, slower at 10 to 15',
    'CALABAR',
  ),
  row(LONGIFILIS, 'fingerlings', undefined, 8, '96 h', 'half dead at 8.0', 'HETSALT'),
  row('a relative', 'fingerlings', undefined, 10, '96 h', 'Heteropneustes: half dead at 10', 'HETEROPN20'),
  row(
    CLARIAS,
    'juveniles',
    10,
    15,
    '24 h',
    'over 90 % alive after 24 h at 10 put straight in; all dead at 15',
    'CLARSALT',
  ),
];

export type SaltStanding = 'bears' | 'harms' | 'silent';
/** What one trial says about a level: where no borne level is named, up to half of the harmful one counts. */
export const saltStanding = (strength: number, { borne, harm }: SaltEvidence): SaltStanding => {
  if (harm !== undefined && strength >= harm) return 'harms';
  const most = borne ?? (harm ?? 0) / 2;
  return strength <= most ? 'bears' : 'silent';
};

export type SaltCode = 'borne' | 'disputed' | 'harmful' | 'untried';
/** The majority of the trials that say anything. */
export function saltMajority(standings: readonly SaltStanding[]): SaltCode {
  const bears = standings.filter((s) => s === 'bears').length;
  const harms = standings.filter((s) => s === 'harms').length;
  if (bears + harms === 0) return 'untried';
  return bears > harms ? 'borne' : bears === harms ? 'disputed' : 'harmful';
}

/** Grams of salt for a level: water × (wanted − present) / purity. */
export const saltGrams = (volume: number, wanted: number, present: number, purity: number): number =>
  (volume * (wanted - present)) / purity;

/** Weak sodium chloride from its conductivity at 20 °C: 0.53 mg/L per µS/cm, to 0.5 g/L (WATERUNITS). */
export const MG_SALT_PER_MICROSIEMENS = 0.53; // mg/L per µS/cm at 20 °C, WATERUNITS
