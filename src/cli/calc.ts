import { readFileSync } from 'node:fs';
import { CATALOGUE } from '../../shared/catalogue';
import { evaluate } from '../../shared/catalogue/calculation';
import type { Operand } from '../../shared/sheet/formula';
import { describeFunction } from '../../shared/functions/describe';
import type { Cell } from '../../shared/base/values';
import { isError, isGrid } from '../../shared/base/values';

/** Formulas in the terminal: npm run calc -- '=SPAWN.BUFFER.DOSE(1000, 4.6, 7)' */

const USAGE = `Calculates a formula, as a sheet would.
  npm run calc -- '=SPAWN.AMMONIA.SHARE(8, 25)'     one formula
  npm run calc -- --list                            the catalogue as JSON
  npm run calc -- --file formulas.txt               one formula a line, answers as JSON lines
`;

const cellText = (cell: Cell): string =>
  cell === null
    ? ''
    : isError(cell)
      ? cell.error
      : typeof cell === 'boolean'
        ? String(cell).toUpperCase()
        : String(cell);

/** A table with its columns lined up. */
function tableText(grid: readonly (readonly Cell[])[]): string {
  const texts = grid.map((row) => row.map(cellText));
  const widths = (texts[0] ?? []).map((_, column) =>
    Math.max(...texts.map((row) => row[column]?.length ?? 0)),
  );
  return texts
    .map((row) =>
      row
        .map((text, column) => text.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

const sentences = (answer: Operand): string[] =>
  [
    ...new Set(
      (isGrid(answer) ? answer.flat() : [answer]).filter(isError).map((error) => error.message ?? ''),
    ),
  ].filter(Boolean);

function one(formula: string): number {
  const answer = evaluate(formula);
  process.stdout.write(`${isGrid(answer) ? tableText(answer) : cellText(answer)}\n`);
  for (const sentence of sentences(answer)) process.stderr.write(`${sentence}\n`);
  return isError(answer) ? 1 : 0;
}

function file(path: string): number {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    process.stderr.write(
      `${path}: the file cannot be read (${error instanceof Error ? error.message : String(error)}).\n`,
    );
    return 2;
  }
  for (const line of text.split(/\r?\n/)) {
    const formula = line.trim();
    if (formula && !formula.startsWith('//'))
      process.stdout.write(`${JSON.stringify({ formula, answer: evaluate(formula) })}\n`);
  }
  return 0;
}

function main([first, second]: readonly string[]): number {
  if (first === '--list') {
    process.stdout.write(`${JSON.stringify(CATALOGUE.map(describeFunction), null, 1)}\n`);
    return 0;
  }
  if (first === '--file' && second) return file(second);
  if (!first || first.startsWith('--')) {
    process.stderr.write(USAGE);
    return first === '--help' ? 0 : 2;
  }
  return one(first);
}

process.exitCode = main(process.argv.slice(2));
