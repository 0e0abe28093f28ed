// Long: the page of a copy, block by block.
import { areaText } from '../../../sheet/formula/address';
import { SOURCES } from '../../../families/sources';
import type { Return, SheetFunction } from '../../../functions/define';
import type { FindFunction } from '../../../sheet/formula';
import type { SourceStanding } from '../../../functions/source';
import type { Block } from '../decisions/blocks';
import type { StoredValue } from '../../cells/stored';
import type { SheetFacts } from './digests';
import { digestOf } from './digests';
import { canonical } from '../../cells/values';

/** The page that says where each number comes from, as rows of plain data. */

export interface PageCell {
  readonly value: StoredValue;
  readonly isBold?: boolean;
  /** Style of the cell the value was copied from, so that a date looks like a date. */
  readonly style?: string;
}
export type PageRow = readonly (PageCell | undefined)[];

export const PAGE_NAME = 'Where numbers come from';
export const TITLE = 'Where the numbers in this copy come from';
export const FORMAT = 'Spawnbook page, format 1';
export const LABELS = {
  format: 'Made with',
  workbook: 'Workbook',
  date: 'Copy made on',
  seal: 'Digest of everything',
  sheets: 'Sheet by sheet',
  sources: 'Sources of the methods',
  lines: 'Numbers worked out by Spawnbook',
  others: 'Also changed in this copy',
  people: 'What this copy may still tell of people',
} as const;
export const LINE_HEADS = [
  'Sheet',
  'Cells',
  'Count',
  'Formula, as typed in the first cell',
  'In this copy',
  'Function',
  'Unit',
  'Reads',
  'First value',
  'Lowest',
  'Highest',
  'Digest',
  'Sources',
] as const;
export const DIGEST_COLUMN = LINE_HEADS.indexOf('Digest');
export const SOURCE_HEADS = [
  'Number',
  'How far it can be trusted',
  '',
  'Where the method comes from',
] as const;
export const SHEET_HEADS = [
  'Sheet',
  'Digest of typed cells',
  'Count',
  'Digest of results of remaining formulas',
  'Count',
] as const;

/** What a matching digest shows and what it cannot show. */
export const MEANING = [
  'A digest is a fingerprint of the values: change one number and it changes. ' +
    'Spawnbook can work it out again and say whether this copy still holds the numbers ' +
    'it was made with.',
  'A match shows that nothing was changed by accident. It does not show who made the ' +
    'copy, that the typed numbers were measured correctly, or that the methods suit this ' +
    'farm.',
  'Somebody who changes a number on purpose can make a new page with a new digest. To ' +
    'rule that out, keep the digest of everything somewhere else (a letter, an e-mail) ' +
    'and compare.',
  'Formulas that remain may give other results when the workbook is calculated again, ' +
    'for example on another day.',
] as const;

const STANDING: Readonly<Record<SourceStanding, string>> = {
  seen: 'read in the publication',
  memory: 'from memory, the page was not seen',
  practice: 'common practice, no source',
  computed: 'worked out from cited figures',
  standard: 'textbook definition or exact arithmetic',
};

export const text = (raw: string): PageCell => ({ value: { type: 'str', raw: clip(raw) } });
export const bold = (raw: string): PageCell => ({ ...text(raw), isBold: true });
const count = (n: number): PageCell => ({ value: { type: 'n', raw: String(n) } });
const CELL_LIMIT = 32_000;
const clip = (raw: string): string => (raw.length > CELL_LIMIT ? `${raw.slice(0, CELL_LIMIT)} …` : raw);

const unitOf = (returns: Return): string => {
  if (returns.kind === 'value') return returns.quantity.unit || 'number';
  return Object.values(returns.columns)
    .map((column) => `${column.title}: ${column.quantity.unit || 'number'}`)
    .join('; ');
};

/** The functions a block calls, and the names that this version of Spawnbook does not know. */
interface Called {
  readonly functions: readonly SheetFunction[];
  readonly unknown: readonly string[];
}
function calledBy(block: Block, find: FindFunction): Called {
  const names = [...new Set(block.calls.map((call) => call.name))];
  return {
    functions: names.map(find).filter((fn) => fn !== undefined),
    unknown: names.filter((name) => !find(name)),
  };
}

/** Source keys in the order they are first needed; the page numbers them. */
const sourceKeys = (called: readonly Called[]): string[] => [
  ...new Set(called.flatMap(({ functions }) => functions.flatMap((fn) => fn.sources))),
];

const sourceRow = (key: string, i: number): PageRow => {
  const source = SOURCES[key];
  return [
    text(String(i + 1)),
    text(source ? STANDING[source.standing] : ''),
    undefined,
    text(
      source
        ? [source.citation, source.doi && `doi:${source.doi}`, source.url].filter(Boolean).join(' ')
        : key,
    ),
  ];
};

const functionText = (block: Block, { functions, unknown }: Called): string =>
  [
    ...functions.map((fn) => `${fn.name}, version ${fn.version}`),
    ...unknown.map((name) => `${name}, not known to this version of Spawnbook`),
    ...(block.calls.length === 0 ? ['through a name of the workbook'] : []),
  ].join('; ');

const units = (block: Block, { functions }: Called): string => {
  const [only] = functions;
  if (block.isPureCall && only) return unitOf(only.returns);
  return functions.map((fn) => `${fn.name} gives ${unitOf(fn.returns)}`).join('; ');
};

export interface ProofFacts {
  readonly workbook: string;
  readonly date: string;
  readonly maker: string;
  readonly blocks: readonly Block[];
  readonly find: FindFunction;
  readonly sheets: readonly { readonly name: string; readonly facts: SheetFacts }[];
  /** Sentences on names, rules, what-if tables and whatever else is not as it was. */
  readonly others: readonly string[];
  /** Sentences on what the copy still holds of people, or that it holds nothing. */
  readonly people: readonly string[];
}

function lineOf(
  block: Block,
  called: Called,
  facts: SheetFacts | undefined,
  position: number,
  keys: readonly string[],
): PageRow {
  const found = facts?.blocks[position];
  const style = found?.firstStyle ? { style: found.firstStyle } : {};
  const shown = (value: StoredValue | undefined): PageCell | undefined =>
    value ? { value, ...style } : undefined;
  const number = (n: number | undefined): PageCell | undefined =>
    n === undefined || block.count === 1 ? undefined : { value: { type: 'n', raw: String(n) }, ...style };
  return [
    text(block.sheet),
    text(block.areas.map(areaText).join(', ')),
    count(block.count),
    text(block.typed),
    text(block.native === undefined ? 'value' : `native formula ${block.native}`),
    text(functionText(block, called)),
    text(units(block, called)),
    text(block.inputs),
    shown(found?.first),
    number(found?.low),
    number(found?.high),
    text(found?.digest ?? ''),
    text(
      [...new Set(called.functions.flatMap((fn) => fn.sources))]
        .map((key) => keys.indexOf(key) + 1)
        .join(', '),
    ),
  ];
}

export function pageRows(facts: ProofFacts): PageRow[] {
  const called = facts.blocks.map((block) => calledBy(block, facts.find));
  const keys = sourceKeys(called);
  const positions = new Map<string, number>();
  const lines = facts.blocks.map((block, i) => {
    const position = positions.get(block.sheet) ?? 0;
    positions.set(block.sheet, position + 1);
    return lineOf(
      block,
      called[i] ?? { functions: [], unknown: [] },
      facts.sheets.find((sheet) => sheet.name === block.sheet)?.facts,
      position,
      keys,
    );
  });
  const all: PageRow[] = [
    [bold(TITLE)],
    [bold(LABELS.workbook), text(facts.workbook)],
    [bold(LABELS.date), text(facts.date)],
    [bold(LABELS.format), text(`${facts.maker}; ${FORMAT}`)],
    [],
    ...MEANING.map((sentence) => [text(sentence)]),
    [],
    [bold(LABELS.lines)],
    LINE_HEADS.map(bold),
    ...lines,
    ...(keys.length > 0 ? [[], [bold(LABELS.sources)], SOURCE_HEADS.map(bold), ...keys.map(sourceRow)] : []),
    [],
    [bold(LABELS.sheets)],
    SHEET_HEADS.map(bold),
    ...facts.sheets.map(({ name, facts: f }) => [
      text(name),
      text(f.typedDigest),
      count(f.typed),
      text(f.resultsDigest),
      count(f.results),
    ]),
    ...(facts.others.length > 0
      ? [[], [bold(LABELS.others)], ...facts.others.map((sentence) => [text(sentence)])]
      : []),
    ...(facts.people.length > 0
      ? [[], [bold(LABELS.people)], ...facts.people.map((sentence) => [text(sentence)])]
      : []),
  ];
  all.splice(4, 0, [bold(LABELS.seal), text(sealOf(all))]);
  return all;
}

/** The seal covers every cell of the page but its own row; blank rows and columns do not count. */
export const sealOf = (rows: readonly PageRow[]): string =>
  digestOf(
    rows
      .filter((row) => row[0]?.value.raw !== LABELS.seal)
      .map((row) =>
        row
          .map((cell) => (cell ? canonical(cell.value) : ''))
          .join('\t')
          .replace(/\t+$/, ''),
      )
      .filter((line) => line !== '')
      .map((line) => `${line}\n`),
  );
