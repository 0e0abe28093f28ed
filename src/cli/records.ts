import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { learnRates } from '../../shared/learn';
import { checkFile, runRecords } from '../../shared/records';
import type { CheckedFile } from '../../shared/records';
import { neutralBook } from '../../shared/records/neutral';
import type { NeutralBook } from '../../shared/records/neutral';

/** Checks record books in the terminal: npm run records -- book.xlsx [more.csv] [--json] */

const USAGE = `Checks record books: what cannot be right, why, and in which cell. Nothing is ever changed.
  npm run records -- book.xlsx more.csv          as text
  npm run records -- book.xlsx --json            as one JSON object
Exit code: 0 nothing found, 1 something found, 2 a file could not be read.
`;

const say = (text: string): void => void process.stdout.write(`${text}\n`);

/** A rate that the runs of the book speak of, with the range of the mean. */
interface NeutralRate {
  readonly rate: string;
  readonly unit: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly runs: number;
}
type Book = NeutralBook & { readonly rates: readonly NeutralRate[] };

const DIGITS = 6;
const rounded = (x: number): number => Number(x.toPrecision(DIGITS));
const ratesOf = (checked: CheckedFile): NeutralRate[] =>
  'report' in checked
    ? learnRates(runRecords(checked.report))
        .rates.filter(({ runs }) => runs > 0)
        .map(({ label, unit, value, low, high, runs }) => ({
          rate: label,
          unit,
          value: rounded(value),
          low: rounded(low),
          high: rounded(high),
          runs,
        }))
    : [];

function bookOf(path: string): Book {
  const file = basename(path);
  try {
    const checked = checkFile(new Uint8Array(readFileSync(path)), file);
    return { ...neutralBook(file, checked), rates: ratesOf(checked) };
  } catch (error) {
    return {
      file,
      refused: `The file cannot be read (${error instanceof Error ? error.message : String(error)}).`,
      tables: [],
      findings: [],
      rates: [],
    };
  }
}

const shown = (x: number, unit: string): string =>
  unit === 'share' ? `${rounded(100 * x).toFixed(1)} %` : `${Number(x.toPrecision(4))}`;
const sayRate = ({ rate, unit, value, low, high, runs }: NeutralRate): void =>
  say(
    `  Own rate: ${rate} ${shown(value, unit)}${unit === 'share' || unit === '' ? '' : ` ${unit}`} (${runs} run${runs === 1 ? '' : 's'}, 95 % range of the mean ${shown(low, unit)} to ${shown(high, unit)})`,
  );

function sayBook({ file, refused, tables, findings, notRead, rates }: Book): void {
  say(file);
  if (refused !== false) return say(`  ${refused}`);
  // What was not checked stands first.
  if (notRead !== undefined && notRead !== '') say(`  ${notRead}`);
  for (const { sheet, row, columns } of tables)
    say(
      `  ${sheet} row ${row ?? ''}: ${columns.map(({ col, cell, is, unit }) => `${col ?? cell} ${String(is)}${unit ? ` (${unit})` : ''}`).join(', ')}`,
    );
  for (const { sheet, cell, level, text } of findings) say(`  ${sheet}!${cell} [${level}] ${text}`);
  rates.forEach(sayRate);
}

const { values, positionals } = parseArgs({
  options: { json: { type: 'boolean' }, help: { type: 'boolean' } },
  allowPositionals: true,
});
if (values.help || positionals.length === 0) {
  say(USAGE);
  process.exitCode = values.help ? 0 : 2;
} else {
  const books = positionals.map(bookOf);
  if (values.json) say(JSON.stringify({ books }, null, 1));
  else books.forEach(sayBook);
  process.exitCode = books.some(({ refused }) => refused !== false)
    ? 2
    : books.some(({ findings }) => findings.some(({ level }) => level !== 'info'))
      ? 1
      : 0;
}
