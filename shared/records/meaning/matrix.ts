import type { ColumnContent } from '../columns/cells/content';
import { readDate } from '../columns/cells/dates';
import type { NumericField } from '../fields';
import { fold } from '../words/fold';
import { evidenceOf, LEAST_WORDS, scoreOf } from './fit';

export interface Headed {
  readonly header: string;
  readonly parent: string;
  readonly content: ColumnContent;
}
/** Columns that say the same of different tanks or days. */
export interface Matrix {
  readonly columns: ReadonlySet<number>;
  readonly field: NumericField | undefined;
  readonly unit: string | undefined;
}

const NONE: Matrix = { columns: new Set(), field: undefined, unit: undefined };

/** "T1", "Tank 12" and "B-3" are one shape: letters with a number, or a number alone, or one last letter. */
function shapeOf(header: string): string | undefined {
  const text = fold(header)
    .replace(/[\s._-]+/g, ' ')
    .trim();
  if (text === '' || text.length > 24) return undefined;
  if (readDate(header.trim(), 'day first') !== undefined) return 'a day';
  if (/\d+$/.test(text) && !/[%/()]/.test(text)) return text.replace(/\d+$/, '#');
  const letter = /^(.{2,}) [a-z]$/.exec(text);
  return letter ? `${letter[1] ?? ''} ?` : undefined;
}

const isNumeric = ({ numbers, filled, errors }: ColumnContent): boolean =>
  filled - errors > 0 ? numbers >= 0.5 * (filled - errors) : true;

/** The largest set of neighbouring numeric columns with headings of one shape. */
function group(columns: readonly Headed[]): number[] {
  let best: number[] = [];
  const shapes = columns.map(({ header, content }) => (isNumeric(content) ? shapeOf(header) : undefined));
  for (let from = 0; from < columns.length; from++) {
    const shape = shapes[from];
    if (shape === undefined) continue;
    const found = [from];
    for (let i = from + 1; i < columns.length && shapes[i] === shape; i++) found.push(i);
    const names = new Set(found.map((i) => fold(columns[i]?.header ?? '')));
    if (found.length > best.length && names.size === found.length) best = found;
  }
  return best.length >= 2 ? best : [];
}

const LEAST_LETTERS = 4;
/** "Dead" of "Dead day 1": words a heading shares with its neighbours, if they are more than the name of a tank. */
function commonOf(header: string): string {
  if (shapeOf(header) === 'a day') return '';
  const words = fold(header).replace(/[\s._-]*\d+$/, '');
  return words.length < LEAST_LETTERS || (evidenceOf(words, '').words.get('vat') ?? 0) > 0.5 ? '' : words;
}

/** What is written down tank by tank or day by day. */
const KEPT_SO: ReadonlySet<NumericField> = new Set<NumericField>([
  'dead',
  'feed',
  'fish',
  'alive',
  'stocked',
  'sold',
  'weight',
  'length',
  'biomass',
  'temperature',
  'ph',
  'oxygen',
  'salinity',
  'ammonia',
  'nitrite',
  'density',
  'eggs',
  'eggsDead',
  'hatched',
  'fry',
  'materialDose',
  'treatAmount',
  'survival',
  'femaleWeight',
]);

/** A title says the thing and then how it is laid out: "Density (no./mL) by tank and day". */
const partsOf = (title: string): string[] => [
  ...title
    .split(/\s[-–—:|]\s|[:;]|\s(?:par|per|by|por|pour|for|untuk|moi|kwa|tiap)\s/i)
    .map((part) => part.trim()),
  title,
];

const AGE = /^(?:d|day|days|j|jour|dia|d[ií]a|hari|ngay|siku|h|w|wk|week|sem|semaine|semana|minggu|din)\b/;
const LEAST_FISH = 50;
/** Whole numbers that grow fewer from age to age are the fish still there. */
const isFishByAge = (columns: readonly Headed[]): boolean =>
  columns.length >= 2 &&
  columns.every(
    ({ header, content }, i) =>
      AGE.test(fold(header).replace(/(\D)(\d)/g, '$1 $2')) &&
      content.fractions === 0 &&
      content.middle >= LEAST_FISH &&
      (i === 0 || content.middle < (columns[i - 1]?.content.middle ?? 0)),
  );

interface Guess {
  readonly field: NumericField;
  readonly score: number;
  readonly unit: string | undefined;
}
const LEAST_GUESS = 0.8;
/** The best thing that one title names and the cells can be. */
function guessFrom(title: string, pooled: ColumnContent, cost: number): Guess | undefined {
  if (title === '') return undefined;
  const evidence = evidenceOf(title, '');
  let best: Guess | undefined;
  for (const [name, words] of evidence.words) {
    const field = name as NumericField;
    if (!KEPT_SO.has(field) || words < LEAST_WORDS) continue;
    const score = scoreOf(field, evidence, pooled) + 2 * (words - 0.5) - cost;
    if (score > (best?.score ?? LEAST_GUESS)) best = { field, score, unit: evidence.unit?.unit };
  }
  return best;
}

/** What the cells of a matrix hold is said by the words above it, or by what its headings have in common. */
export function repeatedColumns(columns: readonly Headed[], titles: readonly string[]): Matrix {
  const members = group(columns).flatMap((i) => {
    const one = columns[i];
    return one ? [{ i, one }] : [];
  });
  const [first] = members;
  if (!first) return NONE;
  const pooled = pool(members.map(({ one }) => one.content));
  const said = [first.one.parent, commonOf(first.one.header), ...titles.flatMap(partsOf)];
  const [best] = said
    .flatMap((title, i) => guessFrom(title, pooled, 0.2 * i) ?? [])
    .sort((a, b) => b.score - a.score);
  const byAge = isFishByAge(members.map(({ one }) => one)) ? 'fish' : undefined;
  return { columns: new Set(members.map(({ i }) => i)), field: best?.field ?? byAge, unit: best?.unit };
}

function pool(contents: readonly ColumnContent[]): ColumnContent {
  const sorted = contents
    .map(({ middle }) => middle)
    .filter((x) => !Number.isNaN(x))
    .sort((a, b) => a - b);
  const [first] = contents;
  const sum = (key: 'filled' | 'numbers' | 'dates' | 'clocks' | 'words' | 'errors'): number =>
    contents.reduce((all, one) => all + one[key], 0);
  return {
    ...(first as ColumnContent),
    filled: sum('filled'),
    numbers: sum('numbers'),
    dates: sum('dates'),
    clocks: sum('clocks'),
    words: sum('words'),
    errors: sum('errors'),
    fractions: contents.reduce((all, one) => all + one.fractions, 0) / contents.length,
    middle: sorted[sorted.length >> 1] ?? NaN,
  };
}
