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
import type { PageLanguage } from './pageWords';
import { isSeal, PAGE_WORDS } from './pageWords';
import { canonical } from '../../cells/values';

/** The page that says where each number comes from, as rows of plain data. */

export interface PageCell {
  readonly value: StoredValue;
  readonly isBold?: boolean;
  /** Style of the cell the value was copied from, so that a date looks like a date. */
  readonly style?: string;
}
export type PageRow = readonly (PageCell | undefined)[];

export const FORMAT = 'Spawnbook page, format 1';
const LINE_HEADS = [
  'Sheet',
  PAGE_WORDS.en.cells,
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
const SOURCE_HEADS = ['Number', 'How far it can be trusted', '', 'Where the method comes from'] as const;
const SHEET_HEADS = [
  'Sheet',
  PAGE_WORDS.en.typed,
  'Count',
  'Digest of results of remaining formulas',
  'Count',
] as const;

/** What a matching digest shows and what it cannot show. */
const MEANING = [
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

/** What every page of ours says holds nobody's values. */
export const ownWords = ({ say, language }: Pick<ProofFacts, 'say' | 'language'>): readonly string[] => {
  const { title, labels, cells, typed } = PAGE_WORDS[language];
  return [
    ...[...MEANING, ...LINE_HEADS, ...SHEET_HEADS, ...SOURCE_HEADS].map(say),
    ...[title, cells, typed, ...Object.values(labels)],
  ];
};

const STANDING: Readonly<Record<SourceStanding, string>> = {
  seen: 'read in the publication',
  memory: 'from memory, the page was not seen',
  practice: 'common practice, no source',
  computed: 'worked out from cited figures',
  standard: 'textbook definition or exact arithmetic',
};

type Say = ProofFacts['say'];
export const text = (raw: string): PageCell => ({ value: { type: 'str', raw: clip(raw) } });
export const bold = (raw: string): PageCell => ({ ...text(raw), isBold: true });
const count = (n: number): PageCell => ({ value: { type: 'n', raw: String(n) } });
const CELL_LIMIT = 32_000;
const clip = (raw: string): string => (raw.length > CELL_LIMIT ? `${raw.slice(0, CELL_LIMIT)} …` : raw);

const unitOf = (returns: Return, say: Say): string => {
  if (returns.kind === 'value') return say(returns.quantity.unit || 'number');
  return Object.values(returns.columns)
    .map((column) => `${say(column.title)}: ${say(column.quantity.unit || 'number')}`)
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

const sourceRow = (key: string, i: number, say: Say): PageRow => {
  const source = SOURCES[key];
  return [
    text(String(i + 1)),
    text(source ? say(STANDING[source.standing]) : ''),
    undefined,
    text(
      source
        ? [source.citation, source.doi && `doi:${source.doi}`, source.url].filter(Boolean).join(' ')
        : key,
    ),
  ];
};

const functionText = (block: Block, { functions, unknown }: Called): readonly string[] => [
  ...functions.map((fn) => `${fn.name}, version ${fn.version}`),
  ...unknown.map((name) => `${name}, not known to this version of Spawnbook`),
  ...(block.calls.length === 0 ? ['through a name of the workbook'] : []),
];

const units = (block: Block, { functions }: Called, say: Say): string => {
  const [only] = functions;
  if (block.isPureCall && only) return unitOf(only.returns, say);
  return functions.map((fn) => `${fn.name} ${say('gives')} ${unitOf(fn.returns, say)}`).join('; ');
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
  readonly language: PageLanguage;
  /** Our own words in that language; English stands in the code. */
  readonly say: (text: string) => string;
}

function lineOf(
  block: Block,
  called: Called,
  facts: SheetFacts | undefined,
  position: number,
  { keys, say, language }: Pick<ProofFacts, 'say' | 'language'> & { readonly keys: readonly string[] },
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
    text(
      block.native === undefined ? PAGE_WORDS[language].value : `${say('native formula')} ${block.native}`,
    ),
    text(functionText(block, called).map(say).join('; ')),
    text(units(block, called, say)),
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
  const { say, language } = facts;
  const { title, labels, cells, typed } = PAGE_WORDS[language];
  const heads = (list: readonly string[]): PageRow =>
    list.map((head) =>
      bold(head === PAGE_WORDS.en.cells ? cells : head === PAGE_WORDS.en.typed ? typed : say(head)),
    );
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
      { keys, say, language },
    );
  });
  const all: PageRow[] = [
    [bold(title)],
    [bold(labels.workbook), text(facts.workbook)],
    [bold(labels.date), text(facts.date)],
    [bold(labels.format), text(`${facts.maker}; ${FORMAT}`)],
    [],
    ...MEANING.map((sentence) => [text(say(sentence))]),
    [],
    [bold(labels.lines)],
    heads(LINE_HEADS),
    ...lines,
    ...(keys.length > 0
      ? [[], [bold(labels.sources)], heads(SOURCE_HEADS), ...keys.map((key, i) => sourceRow(key, i, say))]
      : []),
    [],
    [bold(labels.sheets)],
    heads(SHEET_HEADS),
    ...facts.sheets.map(({ name, facts: f }) => [
      text(name),
      text(f.typedDigest),
      count(f.typed),
      text(f.resultsDigest),
      count(f.results),
    ]),
    ...(facts.others.length > 0
      ? [[], [bold(labels.others)], ...facts.others.map((sentence) => [text(sentence)])]
      : []),
    ...(facts.people.length > 0
      ? [[], [bold(labels.people)], ...facts.people.map((sentence) => [text(sentence)])]
      : []),
  ];
  all.splice(4, 0, [bold(labels.seal), text(sealOf(all))]);
  return all;
}

/** The seal covers every cell of the page but its own row; blank rows and columns do not count. */
export const sealOf = (rows: readonly PageRow[]): string =>
  digestOf(
    rows
      .filter((row) => !isSeal(row[0]?.value.raw))
      .map((row) =>
        row
          .map((cell) => (cell ? canonical(cell.value) : ''))
          .join('\t')
          .replace(/\t+$/, ''),
      )
      .filter((line) => line !== '')
      .map((line) => `${line}\n`),
  );
