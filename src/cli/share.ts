import { existsSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import type { FreezeReport } from '../../shared/catalogue/sharing';
import { freeze, inspect, repairCalls, verify } from '../../shared/catalogue/sharing';
import { isSameFile, writeWhole } from './writeWhole';

/** A copy that opens without the add-in, in the terminal: npm run share -- season.xlsx copy.xlsx */

const USAGE = `Makes a copy of a workbook that opens anywhere with the same values, and a page that says where they come from.
  npm run share -- season.xlsx copy.xlsx                      the copy
  npm run share -- season.xlsx copy.xlsx --sheets Plan,Money  only these sheets
  npm run share -- season.xlsx copy.xlsx --sheets Plan --keep-results   what the sheets left out were worked into stays
  npm run share -- season.xlsx copy.xlsx --blank 'Fish!C'     this column emptied, and what would reveal it (may be repeated)
  npm run share -- season.xlsx copy.xlsx --personal           authors, paths, printers and the like taken out
  npm run share -- season.xlsx copy.xlsx --keep-alive         simple functions become native formulas instead of values
  npm run share -- season.xlsx --inspect                      what a copy would be; makes nothing
  npm run share -- --verify copy.xlsx [--digest 1a2b…]        does a copy still hold its numbers?
  npm run share -- season.xlsx mended.xlsx --repair           calls tied to a foreign book get their spelling back
--force overwrites the second file. --accept goes on although cells were never calculated. --date '14 March 2026' is printed on the page.
`;

const say = (line: string): void => {
  process.stdout.write(`${line}\n`);
};
const complain = (line: string): number => {
  process.stderr.write(`${line}\n`);
  return 1;
};

function read(path: string): Uint8Array | undefined {
  try {
    return new Uint8Array(readFileSync(path));
  } catch (error) {
    complain(`${path}: the file cannot be read (${error instanceof Error ? error.message : String(error)}).`);
    return undefined;
  }
}

function write(from: string, to: string, bytes: Uint8Array, isForced: boolean): number {
  if (isSameFile(from, to)) return complain('The copy would overwrite the original. Give it another name.');
  if (existsSync(to) && !isForced)
    return complain(`${to} is there already. Choose another name, or add --force.`);
  try {
    writeWhole(to, bytes, isForced);
    return 0;
  } catch (error) {
    return complain(
      `${to}: the file cannot be written (${error instanceof Error ? error.message : String(error)}). What was there before is as it was.`,
    );
  }
}

const OPTIONS = {
  sheets: { type: 'string', multiple: true },
  blank: { type: 'string', multiple: true },
  'keep-results': { type: 'boolean' },
  'keep-alive': { type: 'boolean' },
  personal: { type: 'boolean' },
  verify: { type: 'string' },
  digest: { type: 'string' },
  inspect: { type: 'boolean' },
  repair: { type: 'boolean' },
  force: { type: 'boolean' },
  accept: { type: 'boolean' },
  date: { type: 'string' },
  help: { type: 'boolean' },
} as const;
type Values = ReturnType<typeof parseArgs<{ options: typeof OPTIONS; allowPositionals: true }>>['values'];

function check(path: string, digest: string | undefined): number {
  const file = read(path);
  if (!file) return 2;
  const result = verify(file, digest);
  if (result.kind !== 'checked') return complain(result.sentence);
  say(
    `${result.matches ? 'The copy matches its page' : 'The copy does not match its page'} (${result.workbook}, made on ${result.date}).`,
  );
  for (const sentence of result.sentences) say(sentence);
  say(`Digest of everything: ${result.digest}`);
  return result.matches ? 0 : 1;
}

function look(file: Uint8Array): number {
  const seen = inspect(file);
  if (seen.refused !== undefined) return complain(seen.refused);
  say(`${seen.calls} formulas of Spawnbook.`);
  for (const sheet of seen.sheets) say(`  ${sheet.name}: ${sheet.calls}`);
  for (const problem of seen.problems) say(`${problem.stops ? 'Stops a copy' : 'Note'}: ${problem.sentence}`);
  for (const note of seen.notes) say(`Note: ${note}`);
  return seen.stops ? 1 : 0;
}

function mend(from: string, to: string, file: Uint8Array, isForced: boolean): number {
  const result = repairCalls(file);
  if (result.kind === 'refused') return complain(result.sentence);
  if (result.kind === 'unchanged') {
    say(result.sentence);
    return 0;
  }
  say(`${result.repaired} formulas got their spelling back.`);
  for (const sentence of result.sentences) say(sentence);
  return write(from, to, result.bytes, isForced);
}

function copy(from: string, to: string, file: Uint8Array, values: Values): number {
  const sheets = values.sheets
    ?.flatMap((list) => list.split(','))
    .map((name) => name.trim())
    .filter(Boolean);
  const result = freeze(file, {
    workbook: basename(from),
    date: values.date ?? new Date().toISOString().slice(0, 10),
    keepAlive: values['keep-alive'] === true,
    keepResults: values['keep-results'] === true,
    personal: values.personal === true,
    acceptProblems: values.accept === true,
    blank: values.blank ?? [],
    ...(sheets ? { sheets } : {}),
  });
  if (result.kind === 'refused') {
    for (const problem of result.problems) if (problem.stops) process.stderr.write(`${problem.sentence}\n`);
    return complain(result.sentence);
  }
  if (result.kind === 'unchanged') {
    say(`${result.sentence} Nothing was written.`);
    return 0;
  }
  const code = write(from, to, result.bytes, values.force === true);
  if (code === 0) tell(to, result.report);
  return code;
}

function tell(to: string, report: FreezeReport): void {
  say(
    `${to}: ${report.frozen} formulas became values${report.alive > 0 ? `, ${report.alive} became native formulas` : ''}, ${report.kept} stay as they were.`,
  );
  for (const problem of report.problems) say(`Note: ${problem.sentence}`);
  for (const line of report.removed) say(`Changed: ${line}`);
  for (const line of report.left) say(`Still there: ${line}`);
  say(`The page "${report.page}" says where the numbers come from. Digest of everything: ${report.digest}`);
}

/** From one file to another, never onto itself. */
function convert(from: string, to: string, file: Uint8Array, values: Values): number {
  if (isSameFile(from, to)) return complain('The copy would overwrite the original. Give it another name.');
  if (existsSync(to) && !values.force)
    return complain(`${to} is there already. Choose another name, or add --force.`);
  return values.repair ? mend(from, to, file, values.force === true) : copy(from, to, file, values);
}

function run(values: Values, [from, to]: readonly string[]): number {
  if (values.verify !== undefined) return check(values.verify, values.digest);
  if (values.help || from === undefined || (to === undefined && !values.inspect)) {
    process.stderr.write(USAGE);
    return values.help ? 0 : 2;
  }
  const file = read(from);
  if (!file) return 2;
  return values.inspect || to === undefined ? look(file) : convert(from, to, file, values);
}

function main(args: readonly string[]): number {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options: OPTIONS, allowPositionals: true });
    return run(values, positionals);
  } catch (error) {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n${USAGE}`);
    return 2;
  }
}

process.exitCode = main(process.argv.slice(2));
