import type { Cell } from '../../../base/values';
import { isError } from '../../../base/values';
import { fieldSpec } from '../../fields';
import type { FieldName } from '../../fields';
import { fold } from '../../words/fold';
import type { ReadColumn, RecordTable } from '../../table';
import { mix, robust } from '../figures/statistics';
import type { Suspicion } from './suspect';
import { formulasIn, headingAt, isComputed } from './suspect';

const textOf = (cell: Cell): string =>
  cell === null || isError(cell) || typeof cell === 'boolean' ? '' : fold(String(cell));

/** Line numbers, running sums and formulas differ though everything else was copied. */
const COUNTING: readonly FieldName[] = [
  'serial',
  'run',
  'receipt',
  'balance',
  'dueRunning',
  'deadRunning',
  'opening',
  'closing',
  'note',
];

/** A record entered twice: all that was typed is the same as in an earlier line. */
export function repeatedRows(table: RecordTable): Suspicion[] {
  const seen = new Map<number, number>();
  const found: Suspicion[] = [];
  const columns = table.columns
    .map((_, column) => column)
    .filter((column) => !COUNTING.includes(table.mapping[column]?.field ?? 'vat'));
  const hashes = hashesOf(table, columns);
  for (let record = 0; record < table.length && found.length < 400; record++) {
    const hash = hashes(record);
    if (hash === undefined) continue;
    const first = seen.get(hash);
    if (first === undefined) seen.set(hash, record);
    else if (isSame(table, columns, first, record))
      found.push({
        rule: 'WHOLE.TWICE',
        weight: 4,
        cells: [{ record, column: firstFilled(table, record), share: 1 }],
        sentence: `This line says the same as an earlier one, cell for cell: it may have been entered twice.`,
      });
  }
  return found.length > Math.max(2, 0.1 * table.length) ? [] : found;
}

const FEWEST = 4;
const FEWEST_NUMBERS = 2;
/** One number for what each line says, column by column; undefined where it says too little to be known again. */
function hashesOf(table: RecordTable, columns: readonly number[]): (record: number) => number | undefined {
  const { length } = table;
  const hashes = new Int32Array(length).fill(17);
  const [filled, numbers] = [new Uint16Array(length), new Uint16Array(length)];
  for (const column of columns) {
    const one = table.columns[column];
    if (one) takeColumn(one, formulasIn(table, column), hashes, filled, numbers);
  }
  return (record) =>
    (filled[record] ?? 0) < Math.max(FEWEST, 0.5 * columns.length) || (numbers[record] ?? 0) < FEWEST_NUMBERS
      ? undefined
      : hashes[record];
}
function takeColumn(
  { run, plain }: ReadColumn,
  isFormula: (record: number) => boolean,
  hashes: Int32Array,
  filled: Uint16Array,
  numbers: Uint16Array,
): void {
  for (let record = 0; record < hashes.length; record++) {
    const hash = hashes[record] ?? 0;
    const number = run.numberAt(record);
    const cell = Number.isNaN(number) ? run.cellAt(record) : null;
    const isNumber = !Number.isNaN(number);
    if (!isNumber && (typeof cell !== 'string' || cell === '')) {
      hashes[record] = Math.imul(hash, 31) + 7;
      continue;
    }
    filled[record] = (filled[record] ?? 0) + 1;
    if ((plain[record] ?? 0) > 0) numbers[record] = (numbers[record] ?? 0) + 1;
    if (isFormula(record)) continue;
    hashes[record] = isNumber ? mix(hash, number) : Math.imul(hash, 31) + hashText(cell as string);
  }
}
function hashText(text: string): number {
  let hash = 5381;
  for (let i = 0; i < text.length; i++) hash = (Math.imul(hash, 33) + text.charCodeAt(i)) | 0;
  return hash;
}
const isSame = (table: RecordTable, columns: readonly number[], a: number, b: number): boolean =>
  columns.every((column) => {
    const run = table.columns[column]?.run;
    return (
      !run || isComputed(table, { record: a, column }) || textOf(run.cellAt(a)) === textOf(run.cellAt(b))
    );
  });
const firstFilled = (table: RecordTable, record: number): number =>
  Math.max(
    0,
    table.columns.findIndex(({ run }) => textOf(run.cellAt(record)) !== ''),
  );

/** Names that stand for one record each: in a column where nearly all differ, the same one twice. */
const NAMES: readonly FieldName[] = ['run', 'receipt', 'serial', 'female', 'male'];
export function repeatedNames(table: RecordTable): Suspicion[] {
  return table.columns.flatMap(({ run, content }, column): Suspicion[] => {
    const field = table.mapping[column]?.field;
    if (!field || !NAMES.includes(field)) return [];
    const first = new Map<string, number>();
    const again: number[] = [];
    let filled = 0;
    const isFormula = formulasIn(table, column);
    for (let record = 0; record < run.length && again.length < 400; record++) {
      const text = textOf(run.cellAt(record));
      if (text === '' || isFormula(record)) continue;
      filled++;
      if (first.has(text)) again.push(record);
      else first.set(text, record);
    }
    if (filled < 5 || again.length > Math.max(1, 0.08 * filled)) return [];
    // A male serves several runs, and where numbers are few, some come again by chance.
    if (field === 'male' || (content.numbers === content.filled && first.size < 5)) return [];
    return again.map((record) => ({
      rule: 'WHOLE.NAME',
      weight: 1.8,
      cells: [
        { record, column, share: 0.6 },
        { record: first.get(textOf(run.cellAt(record))) ?? 0, column, share: 0.4 },
      ],
      sentence: `"${String(run.cellAt(record)).slice(0, 30)}" under "${headingAt(table, column)}" stands there twice; every other line has its own.`,
    }));
  });
}

/** A line whose fine figures are those of the line above: left standing when the line was copied. */
export function copiedDown(table: RecordTable): Suspicion[] {
  // What follows from other columns is the same when they are.
  const following = new Set(table.links.filter(({ kind }) => kind !== 'carry').map(({ result }) => result));
  const columns = table.columns
    .map((one, column) => ({ ...one, column, isFormula: formulasIn(table, column) }))
    .filter(({ moments, column, plain }) => {
      const field = table.mapping[column]?.field;
      const isNumber = !field || fieldSpec(field).kind === 'number';
      return !moments && isNumber && !following.has(column) && isFine(plain);
    });
  const same: number[] = [];
  const said: number[] = [];
  for (let record = 1; record < table.length; record++) {
    let [n, all] = [0, 0];
    for (const { plain, isFormula } of columns) {
      const [now, before] = [plain[record] ?? NaN, plain[record - 1] ?? NaN];
      if (Number.isNaN(now) || Number.isNaN(before) || isFormula(record)) continue;
      all++;
      if (now === before) n++;
    }
    same.push(n);
    said.push(all);
  }
  const usual = robust(same).middle;
  return same.flatMap((n, i): Suspicion[] => {
    const all = said[i] ?? 0;
    if (n < Math.max(3, 0.6 * all) || usual > 0.34 * all) return [];
    const record = i + 1;
    const copied = columns.filter(
      ({ plain, isFormula }) => plain[record] === plain[record - 1] && !isFormula(record),
    );
    return [
      {
        rule: 'WHOLE.COPIED',
        weight: 1.4,
        cells: copied.map(({ column }) => ({ record, column, share: 1 / copied.length })),
        sentence: `${copied.length} figures of this line are those of the line above: it may have been copied and not filled in.`,
      },
    ];
  });
}
const MOST_REPEATS = 0.45;
/** Written finely enough that the same number twice in a row is no chance. */
function isFine(list: Float64Array): boolean {
  let n = 0;
  const kinds = new Set<number>();
  for (let i = 0; i < list.length; i++) {
    const value = list[i] ?? NaN;
    if (Number.isNaN(value) || value === 0) continue;
    n++;
    kinds.add(value);
    // More repeats than the whole column may have: no need to go on.
    if (n - kinds.size > MOST_REPEATS * list.length) return false;
  }
  return n >= 6 && n - kinds.size <= MOST_REPEATS * n;
}
