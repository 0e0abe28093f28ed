import type { AuditReport } from './findings/run';
import type { Correction, MappedColumn } from './columns/mapping';
import { correctionFor } from './columns/mapping';
import type { NumericField } from './fields';
import type { RecordTable } from './table';
import { columnOf } from './table';
import { fold } from './words/fold';

/**
 * What a share of hatched eggs is a share of. 70 % of the fertilised eggs is 56 % of all eggs where 80 % are
 * fertilised, so it is decided by the user's word, by counts, by the heading, by what cannot be, in that
 * order; else it stays open and is asked.
 */
export type ShareBase = 'eggs' | 'fertilised';

/** Written to the whole percent. */
const WRITTEN_TO = 0.01;
/** Both readings must be told apart by more than what rounding hides on either side. */
const APART = 2 * WRITTEN_TO;
/** Of the records that tell, this part must say the same; chosen here, no source. */
const AGREED = 0.8;
/**
 * More of the eggs cannot hatch than are fertilised. A sample of 100 eggs is off by 10 points at most in 95 of
 * 100 cases (twice the square root of 0.5 × 0.5 ÷ 100); two such records are needed.
 */
const BEYOND = 0.1;
const BEYOND_RECORDS = 2;

type NumberAt = (field: NumericField) => number;

/** Part of the eggs that were fertilised, from counts or as it was written; NaN where not said. */
function fertilisedPart(at: NumberAt): number {
  const ways = [at('sampleGood') / at('sampleSize'), at('fertilised') / at('eggs'), at('fertilisedShare')];
  return ways.find((x) => x > 0 && x <= 1) ?? NaN;
}

function voteOf(at: NumberAt): ShareBase | undefined {
  const [share, hatched] = [at('hatchShare'), at('hatched')];
  const ofAll = hatched / at('eggs');
  const fertilised = at('fertilised') > 0 ? at('fertilised') : at('eggs') * fertilisedPart(at);
  const ofFertilised = hatched / fertilised;
  if (Math.abs(ofAll - ofFertilised) <= APART) return undefined;
  if (Math.abs(share - ofAll) <= WRITTEN_TO) return 'eggs';
  return Math.abs(share - ofFertilised) <= WRITTEN_TO ? 'fertilised' : undefined;
}

const numbersAt =
  ({ numbers }: RecordTable, record: number): NumberAt =>
  (field) =>
    numbers[field]?.[record] ?? NaN;

function byCounts(table: RecordTable): ShareBase | undefined {
  let [eggs, fertilised] = [0, 0];
  for (let record = 0; record < table.length; record++) {
    const vote = voteOf(numbersAt(table, record));
    if (vote === 'eggs') eggs++;
    else if (vote === 'fertilised') fertilised++;
  }
  if (eggs + fertilised === 0) return undefined;
  if (eggs >= AGREED * (eggs + fertilised)) return 'eggs';
  return fertilised >= AGREED * (eggs + fertilised) ? 'fertilised' : undefined;
}

function byLimits(table: RecordTable): ShareBase | undefined {
  let beyond = 0;
  for (let record = 0; record < table.length; record++) {
    const at = numbersAt(table, record);
    if (at('hatchShare') > fertilisedPart(at) + BEYOND) beyond++;
  }
  return beyond >= BEYOND_RECORDS ? 'fertilised' : undefined;
}

/** "Of the fertilised", in English, French, Portuguese, Spanish, Indonesian and Malay. */
const FERTILISED =
  /\b(fertili[sz]ed|fertile eggs?|of fert|fert\.? eggs?|fecond(?:e|es|ee|ees)|fertilis(?:e|es|ee|ees)|fecundad[oa]s?|fertilizad[oa]s?|ter?buahi|dibuahi|tersenyawa|disenyawakan)\b/;
const EGGS = '(?:eggs?|oeufs?|ovos?|huevos?|telur)';
/** "Of all eggs", "of the eggs set", in the same languages: the base said outright. */
const ALL_EGGS = new RegExp(
  `\\b(?:all|total|tous les|todos os|todos los|semua|seluruh|jumlah)\\b.*\\b${EGGS}\\b|\\b${EGGS} (?:set|incubated|stripped|laid|totals?|totaux|totais|totales|incubes|incubados|incubadas|pondus|mis|yang ditetaskan)\\b`,
);
/** "% of eggs"; but "hatch rate of the eggs" only says what hatches. */
const OF_EGGS = new RegExp(
  `\\b(?:of|from|sur|des|dos|sobre|de los|dari|daripada)\\b (?:the |les |los |os )?${EGGS}\\b`,
);
const A_RATE = /\b(rate|hatchability|taux|taxa|tasa|tingkat|derajat|daya|kadar)\b/;

/** What the words of a heading say of the base; undefined where they leave it open. */
export function baseInWords(heading: string): ShareBase | undefined {
  const words = fold(heading)
    .replace(/œ/g, 'oe')
    .replace(/[^\p{L}\p{N}%.]+/gu, ' ');
  if (FERTILISED.test(words)) return 'fertilised';
  if (ALL_EGGS.test(words)) return 'eggs';
  return OF_EGGS.test(words) && !A_RATE.test(words) ? 'eggs' : undefined;
}

/** The sheet of a table of rows; a form's label is the same on every sheet. */
const sheetOf = (table: RecordTable): string | undefined =>
  table.layout === 'rows' ? table.home(0).sheet.name : undefined;

/** What the hatch share of a table is a share of; undefined where nothing says it, or there is none. */
export function hatchBaseOf(table: RecordTable, said: readonly Correction[] = []): ShareBase | undefined {
  const column = columnOf(table, 'hatchShare');
  if (!column || table.length === 0) return undefined;
  return (
    correctionFor(said, table.home(0).sheet.name, column.header)?.base ??
    byCounts(table) ??
    baseInWords(`${column.parent} ${column.header}`) ??
    byLimits(table)
  );
}

/** Hatch shares that cannot be learned before the user has said what they are shares of. */
export interface ShareQuestion {
  readonly sheet: string | undefined;
  readonly header: string;
  /** A share of the column that stands in its middle, for the question to show. */
  readonly share: number;
  readonly records: number;
  /** What the user said, kept with the column. */
  readonly base: ShareBase | undefined;
}

const saidBase = (said: readonly Correction[], table: RecordTable, { header }: MappedColumn) =>
  correctionFor(said, table.home(0).sheet.name, header)?.base;

/** One question a column whose base nothing tells, those answered by the user included. */
export function shareQuestions(
  { tables }: Pick<AuditReport, 'tables'>,
  said: readonly Correction[] = [],
): ShareQuestion[] {
  return tables.flatMap((table): ShareQuestion[] => {
    const column = columnOf(table, 'hatchShare');
    if (!column || table.length === 0) return [];
    const base = saidBase(said, table, column);
    if (base === undefined && hatchBaseOf(table) !== undefined) return [];
    const shares = Array.from({ length: table.length }, (_, record) => numbersAt(table, record))
      .filter((at) => !Number.isNaN(at('hatchShare')) && Number.isNaN(at('hatched') / at('eggs')))
      .map((at) => at('hatchShare'))
      .sort((a, b) => a - b);
    const share = shares[Math.floor((shares.length - 1) / 2)];
    return share === undefined
      ? []
      : [{ sheet: sheetOf(table), header: column.header, share, records: shares.length, base }];
  });
}
