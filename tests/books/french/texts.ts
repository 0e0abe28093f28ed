import { SOURCES } from '../../../shared/families/sources';
import type { BookWords } from '../../../shared/books/words/words';
import type { CellModel, SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';

/** Every text that stands in a workbook, wherever it stands. */

const literalsOf = (formula: string): string[] =>
  [...formula.matchAll(/"((?:[^"]|"")*)"/g)].map(([, text = '']) => text.replaceAll('""', '"'));
const wordsOfFormat = (format = ''): string[] =>
  [...format.matchAll(/"([^"]*)"/g)].map(([, text = '']) => text);

const textsOfCell = ({ value, formula, note, format }: CellModel): string[] => [
  ...(typeof value === 'string' ? [value] : []),
  ...literalsOf(formula ?? ''),
  ...(note === undefined ? [] : [note]),
  ...wordsOfFormat(format),
];

function textsOfSheet(sheet: SheetModel): string[] {
  const { validations = [], conditionals = [], charts = [], print } = sheet;
  return [
    sheet.name,
    ...Object.values(sheet.cells).flatMap(textsOfCell),
    ...validations.flatMap((one) => [one.message, ...(one.kind === 'list' ? one.items : [])]),
    ...conditionals.flatMap(({ formula }) => literalsOf(formula)),
    ...charts.flatMap(({ title, xTitle = '', yTitle = '', series }) => [
      title,
      xTitle,
      yTitle,
      ...series.map(({ name }) => name),
    ]),
    print?.footer ?? '',
  ];
}

export const textsOf = (model: WorkbookModel): readonly string[] => [
  ...new Set([model.title, ...model.sheets.flatMap(textsOfSheet)].filter((text) => /\p{L}{2}/u.test(text))),
];

/** Common words of English that are no words of French. */
export const ENGLISH =
  /(?<!\p{L})(the|of|is|are|and|with|not|your|you|which|from|for|was|were|has|have|this|that|to|by|be|what|when|where|each|every|its|their|them|they|or|in|at|into)(?!\p{L})/iu;
const CITATIONS = Object.values(SOURCES).map(({ citation }) => citation);
/** Titles of what was published keep their language, and so do the first words of one that stand for it. */
const isCited = (text: string): boolean =>
  CITATIONS.some((citation) => text.startsWith(citation)) ||
  /\((publié|de mémoire, page non vue)\)/.test(text);

/** Texts of a translated workbook that are still English: the same as before, or with words of English in them. */
export function englishIn(
  own: WorkbookModel,
  before: WorkbookModel,
  words: BookWords,
  names: ReadonlySet<string>,
): string[] {
  const english = new Set(textsOf(before));
  const isSame = (text: string): boolean => words.phrases[text.trim()] === text.trim();
  const isNames = (text: string): boolean => text.split(/, | × | · |; /).every((part) => names.has(part));
  return textsOf(own).filter(
    (text) => !isCited(text) && !isSame(text) && !isNames(text) && (english.has(text) || ENGLISH.test(text)),
  );
}
