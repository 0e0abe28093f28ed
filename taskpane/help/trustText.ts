import type { Source } from '../../shared/functions/source';
import { TRUST } from './functionPage';
import type { TrustFacts } from './trust';

/** A text as it may stand in a cell of a Markdown table. */
const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

const table = (heads: readonly string[], rows: readonly (readonly (string | number)[])[]): string =>
  [heads, heads.map(() => '---'), ...rows]
    .map((row) => `| ${row.map((text) => cell(String(text))).join(' | ')} |`)
    .join('\n');

const standingRows = (sources: TrustFacts['sources']): (readonly [string, number])[] =>
  (Object.keys(TRUST) as Source['standing'][])
    .map((standing): [string, number] => [
      TRUST[standing],
      Object.values(sources).filter((source) => source.standing === standing).length,
    ])
    .filter(([, count]) => count > 0);

const weak = (sources: TrustFacts['sources']): string =>
  Object.values(sources)
    .filter(({ standing }) => standing === 'memory' || standing === 'practice')
    .map(({ citation, standing }) => `- ${citation} (${TRUST[standing]})`)
    .join('\n');

/** The page "How far to trust the numbers" as Markdown, for a reader of the repository: a line a source. */
export const trustText = ({
  sources,
  printed,
  figures,
  unopened,
}: TrustFacts): string => `# How far to trust the numbers

A number of Spawnbook is an equation or a table that somebody published, with your readings put in. It is never better than the reading. This page says what was compared with what, and what was not. The same page in the help shows each printed value beside ours.

## Where the numbers come from

${table(['Where a number comes from', 'Sources'], standingRows(sources))}

## Printed values and ours

Each line is a publication, and how many of its printed values a test compares with ours. They agree to the last printed digit, or the test fails.

${table(
  ['Publication', 'Values', 'Test'],
  printed.map(({ citation, values, test }) => [citation, values.length, test]),
)}

## What was simulated

Advice and plans cannot be looked up in a table. They were tried on invented waters, hatcheries and record books, by programs that share no equation with the advice.

${table(
  ['What', 'Measured', 'Test'],
  Object.values(figures).map(({ what, text, test }) => [what, text, test]),
)}

## From memory, or common practice

These have no page that somebody looked at. Treat them as a colleague's advice.

${weak(sources)}

## Never opened in a real Excel

Everything was tried in our local sheet, in LibreOffice, in Gnumeric and on Excel's own client library. No one has pressed the buttons in Excel itself. Half an hour does it; the most doubtful stands first.

${unopened.map((line, i) => `${i + 1}. ${line}`).join('\n')}
`;
