import { findFunction } from '../../../catalogue';
import { CAUTIONS } from '../../../functions/cautions';
import { PREFIX } from '../../../functions/define';
import { tokenize } from '../../../sheet/formula/tokenize';
import { SOURCES } from '../../../families/sources';
import type { SheetModel } from '../../../sheet/workbook/model';
import type { SheetBuilder } from '../../../sheet/workbook/build';
import { heightFor } from '../../../sheet/workbook/build';
import type { Assumption } from '../../../families/assumptions';

const OURS = `${PREFIX}.`;
export const NOTES_WIDTH = 112;

/** Every call of ours in a formula, and words inside its texts that look like one. */
const CALLS = new RegExp(`${OURS.replaceAll('.', '\\.')}[A-Z0-9._]+(?=\\()`, 'gi');

/** Our functions in the formulas of the book; a formula is read closely only where it names a new one. */
function customNames(sheets: readonly SheetModel[]): string[] {
  const names = new Set<string>();
  const looked = new Set<string>();
  for (const { cells } of sheets)
    for (const address in cells) {
      const formula = cells[address]?.formula;
      if (!formula?.includes(OURS)) continue;
      const called = (formula.match(CALLS) ?? []).map((text) => text.toUpperCase());
      if (called.every((text) => names.has(text) || looked.has(text))) continue;
      for (const { kind, text } of tokenize(formula))
        if (kind === 'call' && findFunction(text)) names.add(text.toUpperCase());
        else if (kind === 'call') looked.add(text.toUpperCase());
    }
  return [...names].sort();
}

const FROM_MEMORY = 'From memory: the page was not seen, check before relying on it.';
const CITATIONS = Object.values(SOURCES).map(({ citation }) => citation);
/** The list of what was published in another language: titles keep theirs, only our own remark is said. */
export const citedIn = (text: string, say: (text: string) => string): string | undefined =>
  CITATIONS.some((citation) => text.startsWith(citation)) ? text.replace(FROM_MEMORY, say) : undefined;

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
        memory: ` ${FROM_MEMORY}`,
        practice: '',
        computed: ' Computed here.',
        standard: '',
      }[source.standing];
      return [`${source.citation}.${standing}${source.note ? ` (${source.note})` : ''}`];
    }),
  );
  return sheet.build();
}
