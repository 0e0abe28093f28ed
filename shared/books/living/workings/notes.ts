import { findFunction } from '../../../catalogue';
import { CAUTIONS } from '../../../functions/cautions';
import { PREFIX } from '../../../functions/define';
import { parseAddress } from '../../../sheet/formula/address';
import { seenFrom } from '../../../sheet/workbook/shapes';
import { tokenize } from '../../../sheet/formula/tokenize';
import { SOURCES } from '../../../families/sources';
import type { SheetModel } from '../../../sheet/workbook/model';
import type { SheetBuilder } from '../../../sheet/workbook/build';
import { heightFor } from '../../../sheet/workbook/build';
import type { Assumption } from '../../../families/assumptions';

const OURS = `${PREFIX}.`;
export const NOTES_WIDTH = 112;

/** Our functions in the formulas of the book; formulas that differ only in their rows are read once. */
function customNames(sheets: readonly SheetModel[]): string[] {
  const names = new Set<string>();
  const seen = new Set<string>();
  for (const { cells } of sheets)
    for (const [address, { formula }] of Object.entries(cells)) {
      if (!formula?.includes(OURS)) continue;
      const shape = seenFrom(parseAddress(address)?.row ?? 0, formula);
      if (seen.has(shape)) continue;
      seen.add(shape);
      for (const { kind, text } of tokenize(formula))
        if (kind === 'call' && findFunction(text)) names.add(text.toUpperCase());
    }
  return [...names].sort();
}

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
