import { SOURCES } from '../../families/sources';
import { quoteSheet } from '../../sheet/formula/address';
import type { CellModel, SheetModel, StyleName, WorkbookModel } from '../../sheet/workbook/model';
import { SheetBuilder } from '../../sheet/workbook/build';
import { fieldNoun } from '../table';
import type { Finding, FindingGroup } from './finding';
import { SEVERITY_WORDS } from './finding';
import type { AuditReport } from './run';

export const FINDINGS_SHEET = 'Check findings';
const MOST_ROWS = 5000;
const STYLE_OF: Readonly<Record<Finding['severity'], StyleName>> = {
  impossible: 'bad',
  unlikely: 'warning',
  look: 'text',
};

/**
 * What stood in a cell of a record may not come alive in the report: text that starts like a formula is given
 * words in front.
 */
export const harmless = (text: string): string => (/^\s*[=+\-@\t\r]/.test(text) ? `text ${text}` : text);
const words = (text: string, style: StyleName): CellModel =>
  text === '' ? { style } : { value: harmless(text), style };

export const sourceWords = (keys: readonly string[]): string =>
  keys.map((key) => SOURCES[key]?.citation.split(/[.:(]/)[0]?.trim() ?? key).join('; ');

/** Rows show all of their text: not every host fits them to it. */
const POINTS_PER_LINE = 13.5;
const heightFor = (texts: readonly (readonly [string, number])[]): number =>
  Math.max(
    16,
    Math.max(...texts.map(([text, width]) => Math.ceil((1.05 * text.length) / width))) * POINTS_PER_LINE + 3,
  );

const HEADINGS = [
  'Severity',
  'Sheet',
  'Cell',
  'What was found',
  'Seen',
  'Expected',
  'Proposal (nothing was changed)',
  'Why it matters',
  'Rule',
  'Rests on',
] as const;

function row(
  builder: SheetBuilder,
  at: number,
  { severity, place, sentence, seen, expected, proposal }: Finding,
  { rule }: FindingGroup,
): void {
  builder
    .row(`A${at}`, [
      words(SEVERITY_WORDS[severity], STYLE_OF[severity]),
      words(place.sheet, 'cell'),
      words(place.cell, 'cell'),
      words(sentence, 'text'),
      words(seen, 'text'),
      words(expected, 'text'),
      words(proposal ?? '', 'text'),
      words(rule.why, 'text'),
      words(rule.id, 'cell'),
      words(sourceWords(rule.sources), 'text'),
    ])
    .height(
      at,
      heightFor([
        [sentence, 60],
        [seen, 22],
        [expected, 24],
        [proposal ?? '', 24],
        [rule.why, 44],
        [sourceWords(rule.sources), 34],
      ]),
    );
}

function findingsSheet({ groups, records, found, tables }: AuditReport): SheetModel {
  const builder = new SheetBuilder(FINDINGS_SHEET, {
    widths: [17, 16, 8, 60, 22, 24, 24, 44, 18, 34],
    freeze: { rows: 4, columns: 0 },
    print: { landscape: true, titleRows: [4, 4] },
    hasGridlines: false,
  });
  builder.put('A1', { value: 'Findings of the records check' }, 'title');
  builder.put(
    'A2',
    {
      value: `${found} findings in ${records} records of ${tables.length === 1 ? 'one table' : `${tables.length} tables`}. Nothing was changed: a proposal is only a proposal.`,
    },
    'subtitle',
  );
  builder.row(
    'A4',
    HEADINGS.map((text) => ({ value: text })),
    'heading',
  );
  let [at, written] = [5, 0];
  for (const group of groups) {
    for (const finding of group.findings) if (written++ < MOST_ROWS) row(builder, at++, finding, group);
    if (group.more > 0)
      builder.put(
        `D${at++}`,
        { value: `… and ${group.more} more of ${group.rule.id} in ${group.where}` },
        'quiet',
      );
  }
  if (groups.length === 0) builder.put('A5', { value: 'Nothing was found.' }, 'good');
  return builder.build();
}

function readSheet({ tables, notChecked }: AuditReport): SheetModel {
  const builder = new SheetBuilder('Check reading', {
    widths: [22, 12, 28, 24, 14, 12, 70],
    freeze: { rows: 4, columns: 0 },
    print: { landscape: true },
    hasGridlines: false,
  });
  builder.put('A1', { value: 'How the records were read, and what was not checked' }, 'title');
  builder.put(
    'A2',
    { value: 'A column read wrongly can be set right in the pane; the check then runs again.' },
    'subtitle',
  );
  builder.row(
    'A4',
    ['Sheet', 'Column', 'Header', 'Read as', 'Unit', 'Sure to', 'Because'].map((text) => ({ value: text })),
    'heading',
  );
  let at = 5;
  for (const table of tables)
    for (const { column, header, field, unit, confidence, reasons } of table.mapping) {
      builder
        .row(`A${at++}`, [
          words(table.title, 'cell'),
          words(column, 'cell'),
          words(header, 'text'),
          words(field ? fieldNoun(field) : 'not used', 'cell'),
          words(unit ?? '', 'unit'),
          { value: confidence, format: '0%', style: 'cell' },
          words(reasons.join('; '), 'text'),
        ])
        .height(
          at - 1,
          heightFor([
            [header, 28],
            [reasons.join('; '), 70],
          ]),
        );
    }
  at += 1;
  builder.row(
    `A${at++}`,
    ['Not checked', undefined, 'Rule', undefined, undefined, undefined, 'Because'].map((text) =>
      text === undefined ? undefined : { value: text },
    ),
    'heading',
  );
  for (const { rule, title, because } of notChecked)
    builder.row(`A${at++}`, [
      words(rule, 'cell'),
      undefined,
      words(title, 'text'),
      undefined,
      undefined,
      undefined,
      words(because, 'text'),
    ]);
  return builder.build();
}

/** The findings as sheets to add to a workbook, with how each column was read. */
export const findingsWorkbook = (report: AuditReport): WorkbookModel => ({
  title: 'Findings of the records check',
  sheets: [findingsSheet(report), readSheet(report)],
  names: [],
});

/** Where a host should go when a finding is chosen: 'My sheet'!C12. */
export const addressText = ({ place }: Finding): string => `${quoteSheet(place.sheet)}!${place.cell}`;
