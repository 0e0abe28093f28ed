import { parseArea } from '../../../sheet/formula/address';
import type { StoredValue } from '../../cells/stored';
import { sheetFacts } from './digests';
import { openBook } from '../open';
import type { Opened } from '../open';
import type { ShareProgress } from '../decisions/options';
import type { PageRow } from './page';
import { DIGEST_COLUMN, sealOf } from './page';
import type { PageWords } from './pageWords';
import { wordsOfTitle } from './pageWords';
import { Refusal } from '../../package/refusal';
import { sharedStrings } from '../../cells/strings';
import { eachCell } from '../../cells/values';

export type Verification =
  | { readonly kind: 'refused'; readonly sentence: string }
  | { readonly kind: 'noPage'; readonly sentence: string }
  | {
      readonly kind: 'checked';
      /** Are all typed and frozen numbers those the copy was made with? */
      readonly matches: boolean;
      readonly workbook: string;
      readonly date: string;
      readonly digest: string;
      /** What was found, plain, most important first. */
      readonly sentences: readonly string[];
    };

const NO_PAGE =
  'This workbook has no page of Spawnbook that says where its numbers come from, so ' +
  'there is nothing to compare with.';

function* readPage({
  pack,
  book,
}: Opened): Generator<ShareProgress, { words: PageWords; rows: PageRow[] } | undefined> {
  const strings = sharedStrings({ pack, book });
  // The newest page stands last.
  for (const sheet of book.sheets.toReversed()) {
    const bytes = sheet.isWorksheet ? pack.read(sheet.part) : undefined;
    if (!bytes) continue;
    const rows: (StoredValue | undefined)[][] = [];
    let words: PageWords | false | undefined;
    for (const done of eachCell(bytes, strings, (cell, value) => {
      words ??= (cell.row === 0 && cell.column === 0 && wordsOfTitle(value?.raw)) || false;
      if (words && value) (rows[cell.row] ??= [])[cell.column] = value;
    })) {
      if (words === false) break;
      yield { step: 'read', done };
    }
    if (words)
      return {
        words,
        rows: Array.from(rows, (row) => Array.from(row ?? [], (value) => (value ? { value } : undefined))),
      };
  }
  return undefined;
}

const textAt = (row: PageRow | undefined, column: number): string => row?.[column]?.value.raw ?? '';
const below = (rows: readonly PageRow[], head: string, label: string): PageRow[] => {
  const at = rows.findIndex((row) => textAt(row, 0) === label) + 1;
  if (at === 0 || textAt(rows[at], 1) !== head) return [];
  const end = rows.findIndex((row, i) => i > at && textAt(row, 0) === '');
  return rows.slice(at + 1, end < 0 ? undefined : end);
};

interface Found {
  readonly frozen: string[];
  readonly typed: string[];
  readonly results: string[];
  readonly missing: string[];
}

function* compare(
  opened: Opened,
  rows: readonly PageRow[],
  { cells, typed, value, labels }: PageWords,
): Generator<ShareProgress, Found> {
  const found: Found = { frozen: [], typed: [], results: [], missing: [] };
  const lines = below(rows, cells, labels.lines);
  const strings = sharedStrings(opened);
  const sheets = below(rows, typed, labels.sheets);
  for (const [i, row] of sheets.entries()) {
    const name = textAt(row, 0);
    const sheet = opened.book.sheets.find((one) => one.name === name);
    const bytes = sheet && opened.pack.read(sheet.part);
    if (!bytes) {
      found.missing.push(name);
      continue;
    }
    const own = lines.filter((line) => textAt(line, 0) === name);
    const areas = own.map((line) =>
      textAt(line, 1)
        .split(', ')
        .map(parseArea)
        .filter((area) => area !== undefined),
    );
    const steps = sheetFacts(bytes, strings, areas);
    let step = steps.next();
    for (; !step.done; step = steps.next()) yield { step: 'read', done: (i + step.value) / sheets.length };
    for (const [at, facts] of step.value.blocks.entries()) {
      const line = own[at];
      if (facts.digest === textAt(line, DIGEST_COLUMN)) continue;
      const isLive = textAt(line, 4) !== value;
      (isLive ? found.results : found.frozen).push(`${name}!${textAt(line, 1)}`);
    }
    if (step.value.typedDigest !== textAt(row, 1)) found.typed.push(name);
    if (step.value.resultsDigest !== textAt(row, 3)) found.results.push(name);
  }
  return found;
}

const list = (items: readonly string[]): string =>
  items.length > 10 ? `${items.slice(0, 10).join('; ')} and ${items.length - 10} more` : items.join('; ');

function sentencesOf(
  found: Found,
  isSealed: boolean,
  expected: string | undefined,
  digest: string,
): string[] {
  const say: string[] = [];
  if (expected !== undefined && expected.toLowerCase() !== digest.toLowerCase())
    say.push(
      'The digest you kept is not the one on the page: this is not the copy you noted it ' +
        'from, or its page was made anew.',
    );
  if (!isSealed) say.push('The page itself was changed: its digest of everything does not fit its text.');
  if (found.missing.length > 0)
    say.push(`Sheets of the copy are gone or have another name: ${list(found.missing)}.`);
  if (found.frozen.length > 0)
    say.push(`Numbers worked out by Spawnbook were changed in ${list(found.frozen)}.`);
  if (found.typed.length > 0) say.push(`Typed cells were changed, added or emptied on ${list(found.typed)}.`);
  if (say.length === 0)
    say.push('Every typed number and every frozen number is the one this copy was made with.');
  if (found.results.length > 0)
    say.push(
      `Remaining formulas give other results than when the copy was made: ${list(found.results)}. That also happens when they are calculated on another day.`,
    );
  return [
    ...say,
    'A match shows that nothing was changed by accident. It does not show who made the ' +
      'copy, that the typed numbers were measured correctly, or that the methods suit this ' +
      'farm.',
    expected === undefined
      ? 'Somebody who changes a number on purpose can make a new page. Compare the digest of ' +
        'everything with one kept elsewhere to rule that out.'
      : 'The digest was compared with the one you kept.',
  ];
}

/**
 * Says whether a copy still holds the numbers its page was made with. `expected` is the digest of everything
 * as somebody kept it elsewhere.
 */
export function* verifySteps(file: Uint8Array, expected?: string): Generator<ShareProgress, Verification> {
  try {
    const opened = yield* openBook(file);
    const page = yield* readPage(opened);
    if (!page) return { kind: 'noPage', sentence: NO_PAGE };
    const { labels } = page.words;
    const value = (label: string): string =>
      textAt(
        page.rows.find((row) => textAt(row, 0) === label),
        1,
      );
    const digest = value(labels.seal);
    const isSealed = digest === sealOf(page.rows);
    const found = yield* compare(opened, page.rows, page.words);
    const isExpected = expected === undefined || expected.toLowerCase() === digest.toLowerCase();
    return {
      kind: 'checked',
      matches:
        isSealed && isExpected && found.frozen.length + found.typed.length + found.missing.length === 0,
      workbook: value(labels.workbook),
      date: value(labels.date),
      digest,
      sentences: sentencesOf(found, isSealed, expected, digest),
    };
  } catch (error) {
    if (error instanceof Refusal) return { kind: 'refused', sentence: error.sentence };
    throw error;
  }
}
