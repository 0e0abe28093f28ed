// Long: the joint reading of a table, from the evidence of each column to one meaning for each
import type { FieldName, NumericField } from '../fields';
import { fieldSpec, FIELD_NAMES } from '../fields';
import type { Evidence } from '../meaning/fit';
import { evidenceOf, fitOfRange, scoreOf } from '../meaning/fit';
import type { Link } from '../meaning/links';
import { findLinks } from '../meaning/links';
import type { Matrix } from '../meaning/matrix';
import { repeatedColumns } from '../meaning/matrix';
import { byChains } from './steps/chains';
import { byCompany } from './steps/company';
import { byLinks } from './steps/links';
import type { Elsewhere } from './steps/moments';
import { byClocks, byOnlyDate, bySpans } from './steps/moments';
import { byOrder } from './steps/order';
import type { Given } from './steps/given';
import { byLines } from './steps/lines';
import { byContent, byPlace } from './steps/place';
import { refuted } from './steps/refuted';
import { byKind, byWarmth, byWorkOrder } from './steps/settle';
import { byShares, byStages } from './steps/stages';
import { sumsOfOneKind } from './steps/sumKinds';
import type { Candidate, Looked, Unread } from './steps/looked';
import { isClaim, LEAST_SCORE, LEAST_WORDS } from './steps/looked';
export type { Unread } from './steps/looked';
import type { ColumnContent, UnitChoice } from './cells/content';
import { chooseUnit, contentOf } from './cells/content';
import type { DateOrder } from './cells/dates';
import type { Correction, MappedColumn } from './mapping';
import { correctionFor } from './mapping';
import type { DecimalMark } from './cells/numbers';
import { fitOfMiddle } from './cells/plausible';
import { ownUnit, unitForField } from './cells/units';
import { plainNumbers, samplesOf } from './cells/values';

export interface Recognised {
  readonly mapping: readonly MappedColumn[];
  /** Numbers of every column as typed, its unit left alone; NaN where none is read. */
  readonly plain: readonly Float64Array[];
  readonly contents: readonly ColumnContent[];
  readonly links: readonly Link[];
}

const LEAST_TO_COUNT = -0.5;
/** Readings of one table that may turn out not to hold. */
const MOST_REFUTED = 4;

type Kinds = Pick<ColumnContent, 'filled' | 'dates' | 'clocks' | 'words'>;
export const kindWord = (content: Kinds): string =>
  content.filled === 0
    ? 'nothing'
    : content.dates + content.clocks > content.filled / 2
      ? 'dates or times'
      : content.words > content.filled / 2
        ? 'words'
        : 'numbers';

function lookAt(unread: Unread, content: ColumnContent): Looked {
  const evidence = evidenceOf(unread.header, unread.parent, content.unit);
  const candidates = FIELD_NAMES.flatMap((field): Candidate[] => {
    const words = evidence.words.get(field) ?? 0;
    const score = scoreOf(field, evidence, content);
    // Without words a meaning is kept in mind only for relations to speak for it.
    return score > LEAST_TO_COUNT ? [{ field, score, words }] : [];
  });
  return { unread, content, evidence, candidates: candidates.sort((a, b) => b.score - a.score) };
}

/** A meaning that numbers bear out needs fewer words. */
const isAllowed = (one: Candidate): boolean =>
  isClaim(one) || (one.because !== undefined && one.score >= LEAST_SCORE);

/** Each meaning to one column, so that the whole table reads best: greedy first, then exchanges that gain. */
export function assign(looked: readonly Looked[]): Map<Looked, Candidate> {
  const claims = looked
    .flatMap((one) => one.candidates.filter(isAllowed).map((candidate) => ({ one, candidate })))
    .sort((a, b) => b.candidate.score - a.candidate.score);
  const holder = new Map<FieldName, Looked>();
  const given = new Map<Looked, Candidate>();
  for (const { one, candidate } of claims) {
    if (given.has(one) || holder.has(candidate.field)) continue;
    given.set(one, candidate);
    holder.set(candidate.field, one);
  }
  // Each exchange adds to the whole: this ends.
  let isBetter: boolean;
  do {
    isBetter = false;
    for (const { one, candidate } of claims) if (exchange(one, candidate, given, holder)) isBetter = true;
  } while (isBetter);
  return given;
}

/** Says whether the two were exchanged. */
function exchange(
  one: Looked,
  wanted: Candidate,
  given: Map<Looked, Candidate>,
  holder: Map<FieldName, Looked>,
): boolean {
  const now = given.get(one);
  const other = holder.get(wanted.field);
  if (!other || other === one || now?.field === wanted.field) return false;
  const lost = given.get(other);
  if (!lost) return false;
  const free = (field: FieldName): boolean => !holder.has(field) || field === now?.field;
  const next = other.candidates.find((c) => isAllowed(c) && c.field !== wanted.field && free(c.field));
  if (wanted.score + (next?.score ?? 0) <= (now?.score ?? 0) + lost.score + 0.05) return false;
  if (now) holder.delete(now.field);
  holder.set(wanted.field, one);
  given.set(one, wanted);
  if (next) {
    given.set(other, next);
    holder.set(next.field, other);
  } else given.delete(other);
  return true;
}

/** Would a thousandth of the numbers fit the field better? */
const isMeantSmall = (field: FieldName, { middle }: ColumnContent): boolean =>
  fieldSpec(field).kind === 'number' &&
  !fieldSpec(field).isCount &&
  fitOfMiddle(field as NumericField, middle) < fitOfMiddle(field as NumericField, middle / 1000);
/** Every number has three digits behind its mark, and the column counts things. */
const areThousands = (field: FieldName | undefined, { isOpenAlways, thousands }: ColumnContent): boolean =>
  isOpenAlways && thousands !== undefined && field !== undefined && fieldSpec(field).isCount === true;

/**
 * 1,250 is one thousand for eggs and one and a quarter for kilograms: what other cells say first, then what
 * fits the field.
 */
function decimalOf(
  field: FieldName | undefined,
  content: ColumnContent,
  elsewhere: DecimalMark | undefined,
  corrected: Correction | undefined,
): { readonly decimal: DecimalMark; readonly because: string | undefined } {
  if (corrected?.decimal) return { decimal: corrected.decimal, because: undefined };
  if (content.decimal)
    return {
      decimal: content.decimal,
      because: content.decimal === ',' ? 'numbers are written with a decimal comma' : undefined,
    };
  if (!content.hasOpenNumbers) return { decimal: elsewhere ?? '.', because: undefined };
  if (content.thousands && areThousands(field, content))
    return {
      decimal: content.thousands,
      because: 'every number has three digits behind its mark: the mark parts thousands',
    };
  if (elsewhere)
    return {
      decimal: elsewhere,
      because: `numbers like 1${elsewhere === ',' ? '.' : ','}250 are read as one thousand two hundred and fifty, as other columns write them`,
    };
  return {
    decimal: field && isMeantSmall(field, content) ? ',' : '.',
    because:
      'numbers with three digits behind the mark can be read two ways; the one that fits ' +
      'the column was taken',
  };
}

function orderOf(
  content: ColumnContent,
  elsewhere: DateOrder | undefined,
  corrected: Correction | undefined,
): { readonly order: DateOrder; readonly because: string | undefined } {
  if (corrected?.order) return { order: corrected.order, because: undefined };
  if (content.hasMixedOrders)
    return { order: content.order ?? 'day first', because: 'dates are written in both orders' };
  if (content.order)
    return {
      order: content.order,
      because: content.hasEitherDates
        ? `dates are read ${content.order}, because some can only be that`
        : undefined,
    };
  return {
    order: elsewhere ?? 'day first',
    because: content.hasEitherDates
      ? `dates could be read day first or month first; ${elsewhere ?? 'day first'} was taken`
      : undefined,
  };
}

const whyNot = ({ content, candidates, evidence }: Looked): string =>
  candidates.some(isAllowed)
    ? 'another column says the same better'
    : [...evidence.words.values()].some((words) => words >= LEAST_WORDS)
      ? `its header could name something of a hatchery, but its cells hold ${kindWord(content)} that do not fit`
      : 'its header is not known';

const logistic = (x: number): number => 1 / (1 + Math.exp(-x));
/** How sure: by how far the reading leads the next one, and by how much there is for it. */
function surenessOf({ candidates }: Looked, given: Candidate): number {
  const rival = candidates.find((one) => one.field !== given.field && one.words >= LEAST_WORDS);
  const lead = given.score - Math.max(LEAST_SCORE - 1, rival?.score ?? 0);
  return Math.min(0.99, logistic(0.7 + 1.1 * lead) * (0.55 + 0.45 * Math.min(1, given.words + 0.15)));
}

function unitOf(field: FieldName, evidence: Evidence, content: ColumnContent): UnitChoice {
  if (fieldSpec(field).kind !== 'number')
    return { unit: undefined, because: undefined, isAgainstHeader: false };
  return chooseUnit(field as NumericField, evidence.unit?.unit, content, evidence.heading.times, (middle) =>
    fitOfRange(field as NumericField, middle),
  );
}

interface Chosen {
  readonly field: FieldName | undefined;
  readonly choice: UnitChoice | undefined;
  readonly reasons: readonly string[];
  readonly confidence: number;
}

/**
 * What the user said about the column, or the best claim of its own. A correction without a unit keeps the
 * heading's.
 */
function chosen(looked: Looked, given: Candidate | undefined, said: Correction | undefined): Chosen {
  const { evidence, content, unread } = looked;
  if (said) {
    const field = said.field === 'ignore' ? undefined : said.field;
    const guessed = field && unitOf(field, evidence, content);
    return {
      field,
      choice:
        guessed && said.unit !== undefined ? { ...guessed, unit: said.unit, because: undefined } : guessed,
      reasons: ['you said so'],
      confidence: 1,
    };
  }
  if (!given) return { field: undefined, choice: undefined, reasons: [whyNot(looked)], confidence: 0 };
  const words =
    given.words >= LEAST_WORDS
      ? `the header "${unread.header.trim()}" reads as ${fieldSpec(given.field).noun}`
      : `its header is not known`;
  return {
    field: given.field,
    choice: unitOf(given.field, evidence, content),
    reasons: [words, `its cells hold ${kindWord(content)}`, ...(given.because ? [given.because] : [])],
    confidence: surenessOf(looked, given),
  };
}

function mapped(
  looked: Looked,
  given: Candidate | undefined,
  said: Correction | undefined,
  elsewhere: Elsewhere,
): MappedColumn {
  const { unread, content, candidates, evidence } = looked;
  const { field, choice, reasons, confidence } = chosen(looked, given, said);
  const { decimal, because: aboutDecimal } = decimalOf(field, content, elsewhere.decimal, said);
  const { order, because: aboutOrder } = orderOf(content, elsewhere.order, said);
  const kind = field && fieldSpec(field).kind;
  const more = [
    choice?.because,
    kind === 'number' ? aboutDecimal : undefined,
    kind === 'moment' ? aboutOrder : undefined,
  ];
  return {
    column: unread.name,
    header: unread.header,
    parent: unread.parent,
    field,
    unit: field ? (choice?.unit ?? ownUnit(field)) : undefined,
    unitSaid: evidence.unit?.unit,
    times: evidence.heading.times,
    decimal,
    order,
    confidence,
    reasons: [...reasons, ...more.filter((one) => one !== undefined)],
    alternatives: candidates
      .filter((one) => one.field !== field && (one.words >= LEAST_WORDS || one.score > 0))
      .slice(0, 6)
      .map((one) => one.field),
    samples: samplesOf(unread.run),
    isCorrected: said !== undefined,
    isAgainstHeader: choice?.isAgainstHeader ?? false,
    isRepeated: false,
  };
}

/** The commonest of the votes that were cast. */
function mostOf<T>(votes: readonly (T | undefined)[]): T | undefined {
  const counts = new Map<T, number>();
  for (const vote of votes) if (vote !== undefined) counts.set(vote, (counts.get(vote) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
}

const RUNNING_OF: Readonly<Partial<Record<FieldName, FieldName>>> = {
  dead: 'deadRunning',
  deadTotal: 'deadRunning',
  due: 'dueRunning',
};
const TOTAL_OF: Readonly<Partial<Record<FieldName, FieldName>>> = { dead: 'deadTotal', feed: 'feedTotal' };
/** The sum over the tanks of a matrix. */
const isMatrixSum = ({ kind, isRunning, inputs, signs, result }: Link, { columns }: Matrix): boolean =>
  kind === 'sum' &&
  !isRunning &&
  inputs.length >= 2 &&
  signs.every((sign) => sign === 1) &&
  inputs.every((one) => columns.has(one)) &&
  !columns.has(result);
/** The sum of one column up to this line. */
const isRunningSum = ({ kind, isRunning, inputs, signs }: Link): boolean =>
  kind === 'sum' && isRunning && inputs.length === 1 && signs[0] === 1;

/** What a column must be because of what it adds up: the sum over tanks, the sum up to this day. */
function byStructure(
  links: readonly Link[],
  looked: readonly Looked[],
  given: ReadonlyMap<Looked, Candidate>,
  matrix: Matrix,
): Map<number, Candidate> {
  const built = new Map<number, Candidate>();
  const claim = (column: number, field: FieldName): void => {
    built.set(column, { field, score: 3, words: 1, because: 'the numbers of the table bear it out' });
  };
  const total = matrix.field && TOTAL_OF[matrix.field];
  if (total) for (const link of links) if (isMatrixSum(link, matrix)) claim(link.result, total);
  const fieldOf = (column: number | undefined): FieldName => {
    const one = looked[column ?? -1];
    return built.get(column ?? -1)?.field ?? (one && given.get(one)?.field) ?? 'note';
  };
  for (const link of links) {
    const running = isRunningSum(link) ? RUNNING_OF[fieldOf(link.inputs[0])] : undefined;
    if (running && fieldOf(link.result) !== running) claim(link.result, running);
  }
  return built;
}

function contentsOf(columns: readonly Unread[]): {
  readonly contents: ColumnContent[];
  readonly elsewhere: Elsewhere;
} {
  const first = columns.map(({ run }) => contentOf(run));
  const elsewhere = {
    decimal: mostOf(first.map((content) => content.decimal)),
    order: mostOf(first.map((content) => content.order)),
  };
  const contents = columns.map(({ run }, i) => {
    const content = first[i] ?? contentOf(run);
    const mark =
      content.decimal ?? (content.isOpenAlways ? content.thousands : undefined) ?? elsewhere.decimal;
    return content.hasOpenNumbers && mark === ',' ? contentOf(run, ',') : content;
  });
  return { contents, elsewhere };
}

const AS_PART = {
  confidence: 0.8,
  reasons: ['one of several columns that a sum adds up'],
  isRepeated: true,
} as const;
/** Columns that are parts of a sum of one kind; what adds them up is put to what is built. */
function partsOf(
  links: readonly Link[],
  looked: readonly Looked[],
  given: Given,
  { columns }: Matrix,
  built: Map<number, Candidate>,
): ReadonlyMap<number, Candidate> {
  const parts = new Map<number, Candidate>();
  for (const { field, total, result, parts: inputs } of sumsOfOneKind(links, looked, given)) {
    if ([result, ...inputs].some((i) => columns.has(i) || parts.has(i))) continue;
    for (const i of inputs) parts.set(i, { field, score: 3, words: 1 });
    built.set(result, { field: total, score: 3, words: 1, because: 'it adds up its neighbours' });
  }
  return parts;
}

/** Understands the columns of one table, together. `titles` are the words that stand above it. */
export function recognise(
  sheet: string,
  columns: readonly Unread[],
  corrections: readonly Correction[],
  titles: readonly string[] = [],
): Recognised {
  const { contents, elsewhere } = contentsOf(columns);
  const looked = columns.map((unread, i) => lookAt(unread, contents[i] ?? contentOf(unread.run)));
  const saidFor = new Map(looked.map((one) => [one, correctionFor(corrections, sheet, one.unread.header)]));
  const said = new Set([...saidFor.values()].map((one) => one?.field));
  const plain = looked.map(({ unread, content }) =>
    plainNumbers(
      unread.run,
      content.decimal ?? (content.isOpenAlways ? content.thousands : undefined) ?? elsewhere.decimal ?? '.',
    ),
  );
  const length = columns[0]?.run.length ?? 0;
  const links = findLinks(plain, length);
  const matrix = repeatedColumns(
    looked.map(({ unread, content }) => ({ header: unread.header, parent: unread.parent, content })),
    [...titles, sheet],
  );
  const free = looked.map((one, i) =>
    saidFor.get(one) || matrix.columns.has(i)
      ? { ...one, candidates: [] }
      : { ...one, candidates: one.candidates.filter(({ field }) => !said.has(field)) },
  );
  byLines(free);
  byCompany(free);
  byChains(links, free);
  byLinks(links, free);
  byClocks(free, elsewhere);
  bySpans(free, plain, elsewhere);
  byOnlyDate(free);
  byOrder(free);
  byShares(free, plain);
  let given = assign(free);
  for (let pass = 0; pass < MOST_REFUTED && refuted(plain, free, given); pass++) given = assign(free);
  byStages(free, plain, given);
  byWorkOrder(free, given);
  byContent(free, given);
  byKind(free, given);
  byWarmth(free, given);
  byPlace(free, given);
  const built = byStructure(links, free, given, matrix);
  const parts = partsOf(links, free, given, matrix, built);
  const mapping = free.map((one, i): MappedColumn => {
    const shaped = built.get(i);
    if (shaped && !saidFor.get(looked[i] as Looked))
      return { ...mapped(one, shaped, undefined, elsewhere), confidence: 0.85 };
    const found = mapped(one, given.get(one), saidFor.get(looked[i] as Looked), elsewhere);
    const part = parts.get(i);
    if (part && !found.isCorrected) return { ...mapped(one, part, undefined, elsewhere), ...AS_PART };
    if (!matrix.columns.has(i) || found.isCorrected) return found;
    return {
      ...found,
      field: matrix.field,
      unit:
        matrix.field && ownUnit(matrix.field) && unitForField(matrix.field, matrix.unit)
          ? matrix.unit
          : found.unit,
      confidence: matrix.field ? 0.8 : 0,
      reasons: ['one of several columns of the same kind'],
      isRepeated: true,
    };
  });
  return { mapping, plain, contents, links };
}
