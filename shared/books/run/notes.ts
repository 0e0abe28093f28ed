import { findFunction } from '../../catalogue';
import { CAUTIONS } from '../../functions/cautions';
import { tokenize } from '../../sheet/formula/tokenize';
import { SOURCES } from '../../families/sources';
import type { SheetModel } from '../../sheet/workbook/model';
import { usedBy } from './assume';
import type { Book } from './context';
import type { SheetBuilder } from '../../sheet/workbook/build';
import { heightFor } from '../../sheet/workbook/build';
import type { Assumption } from '../../families/assumptions';

export const NOTES_WIDTH = 112;

const HOW: readonly string[] = [
  'The plan works backwards: fish wanted, divided by what comes through each step, ' +
    'gives the eggs; eggs divided by what one female gives make the females. Losses are ' +
    'never added up.',
  'Then it works forwards: the strip is put at your hour on the last day that leaves ' +
    'the fish enough time, the injection before it by the waiting time of your hormone ' +
    'at your temperature.',
  'Change a yellow cell on Start or Assumptions and everything moves. Type counts on ' +
    'Chain, weights on Brood, readings on Water while the run goes on.',
  'Sheets are protected without a password, so that formulas are not overtyped by ' +
    'mistake: Review, Unprotect Sheet.',
  'Formulas that begin with SPAWN need the Spawnbook add-in to change; without it ' +
    'their last values stay until the cell is calculated again.',
  'Yields differ enormously between months, females and hatcheries. The two columns at ' +
    'the ends of Chain show how far; a plan is not a promise.',
];

const customNames = (sheets: readonly SheetModel[]): string[] =>
  [
    ...new Set(
      sheets.flatMap((sheet) =>
        Object.values(sheet.cells).flatMap((cell) =>
          cell.formula === undefined
            ? []
            : tokenize(cell.formula)
                .filter(({ kind, text }) => kind === 'call' && findFunction(text))
                .map(({ text }) => text.toUpperCase()),
        ),
      ),
    ),
  ].sort();

export interface Said {
  readonly how: readonly string[];
  /** Keys of shared/cautions.ts. */
  readonly cautions: readonly string[];
  readonly assumptions: readonly Assumption[];
}

/**
 * How to read the book, what to take care of, which functions answer in its sheets, and where the figures
 * come from.
 */
export function writeNotes(
  sheet: SheetBuilder,
  sheets: readonly SheetModel[],
  { how, cautions, assumptions }: Said,
): SheetModel {
  const functions = customNames(sheets);
  sheet.put('B1', 'Notes', 'title').height(1, 26);
  let row = 3;
  const block = (title: string, lines: readonly string[], style: 'quiet' | 'warning' = 'quiet'): void => {
    sheet.put(`B${row++}`, title, 'section');
    for (const line of lines) {
      sheet
        .put(`B${row}`, line, style)
        .height(row, heightFor([line, style === 'warning' ? NOTES_WIDTH - 10 : NOTES_WIDTH]));
      row++;
    }
    row++;
  };
  const keys = new Set([
    ...assumptions.flatMap(({ sources }) => sources),
    ...functions.flatMap((name) => findFunction(name)?.sources.slice(0, 2) ?? []),
  ]);
  block('How this plan works', how);
  block(
    'Take care',
    cautions.map((key) => CAUTIONS[key] ?? ''),
    'warning',
  );
  block(
    'Functions that answer here',
    functions.map(
      (name) =>
        `${name} (version ${findFunction(name)?.version ?? 1}): ${findFunction(name)?.summary ?? ''} Holds for: ${findFunction(name)?.valid ?? ''}.`,
    ),
  );
  block(
    'Where the figures come from (more stand in the help of each function)',
    [...keys].sort().flatMap((key) => {
      const source = SOURCES[key];
      if (!source || key === 'DEFINITION') return [];
      const standing = {
        seen: '',
        memory: ' From memory: the page was not seen, check before relying on it.',
        practice: '',
        computed: ' Computed here.',
        standard: '',
      }[source.standing];
      return [`${source.citation}.${standing}${source.note ? ` (${source.note})` : ''}`];
    }),
  );
  return sheet.build();
}

export const notesSheet = (book: Book, sheets: readonly SheetModel[]): SheetModel =>
  writeNotes(book.sheet('Notes', { widths: [2, NOTES_WIDTH], tab: '6B5B95' }), sheets, {
    how: HOW,
    cautions: ['HORMONE', 'SODA_ASH', 'AMMONIA'],
    assumptions: usedBy(book.plan.form.product),
  });
