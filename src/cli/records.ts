import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { checkFile } from '../../shared/records';
import { neutralBook } from '../../shared/records/neutral';
import type { NeutralBook } from '../../shared/records/neutral';

/** Checks record books in the terminal: npm run records -- book.xlsx [more.csv] [--json] */

const USAGE = `Checks record books: what cannot be right, why, and in which cell. Nothing is ever changed.
  npm run records -- book.xlsx more.csv          as text
  npm run records -- book.xlsx --json            as one JSON object
Exit code: 0 nothing found, 1 something found, 2 a file could not be read.
`;

const say = (text: string): void => void process.stdout.write(`${text}\n`);

function bookOf(path: string): NeutralBook {
  const file = basename(path);
  try {
    return neutralBook(file, checkFile(new Uint8Array(readFileSync(path)), file));
  } catch (error) {
    return {
      file,
      refused: `The file cannot be read (${error instanceof Error ? error.message : String(error)}).`,
      tables: [],
      findings: [],
    };
  }
}

function sayBook({ file, refused, tables, findings, notRead }: NeutralBook): void {
  say(file);
  if (refused !== false) return say(`  ${refused}`);
  // What was not checked stands first.
  if (notRead !== undefined && notRead !== '') say(`  ${notRead}`);
  for (const { sheet, row, columns } of tables)
    say(
      `  ${sheet} row ${row ?? ''}: ${columns.map(({ col, cell, is, unit }) => `${col ?? cell} ${String(is)}${unit ? ` (${unit})` : ''}`).join(', ')}`,
    );
  for (const { sheet, cell, level, text } of findings) say(`  ${sheet}!${cell} [${level}] ${text}`);
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
