// Long: every piece of evidence for what a column means, each with its weight
import type { FieldName, NumericField } from '../fields';
import { fieldSpec, FIELD_NAMES } from '../fields';
import type { ColumnContent } from '../columns/cells/content';
import { guessHeader } from '../columns/headers';
import { PLAUSIBLE } from '../columns/cells/plausible';
import type { UnitSaid } from '../columns/cells/units';
import { converter, ownUnit, unitForField, unitOfText, UNITS } from '../columns/cells/units';
import { conceptsOf } from '../words/lexicon';
import type { HeadingSaid } from './heading';
import { headingOf } from './heading';
import type { MeaningMark } from './marks';
import { marksIn } from './marks';
import { ROLES } from './roles';

/** What is known of a column before its neighbours are asked. */
export interface Evidence {
  readonly heading: HeadingSaid;
  readonly joined: string;
  readonly marks: ReadonlySet<MeaningMark>;
  readonly unit: UnitSaid | undefined;
  readonly words: ReadonlyMap<FieldName, number>;
}

const FIELDS_OF = new Map<string, (readonly [FieldName, number])[]>();
for (const field of FIELD_NAMES)
  for (const [concept, weight] of Object.entries(ROLES[field].concepts))
    FIELDS_OF.set(concept, [...(FIELDS_OF.get(concept) ?? []), [field, weight]]);

/** How much of a score a heading keeps when the words above it are left out. */
const ALONE_UNDER_PARENT = 0.88;
const OLD_LISTS = 0.95;

function addConcepts(text: string, share: number, into: Map<FieldName, number>): void {
  for (const [concept, score] of conceptsOf(text))
    for (const [field, weight] of FIELDS_OF.get(concept) ?? []) {
      const worth = share * score * weight;
      if (worth > (into.get(field) ?? 0)) into.set(field, worth);
    }
}
function addGuesses(text: string, share: number, into: Map<FieldName, number>): void {
  for (const { field, score } of guessHeader(text)) {
    const worth = share * OLD_LISTS * score;
    if (worth > (into.get(field) ?? 0)) into.set(field, worth);
  }
}

/** Units that nothing but one thing is kept in stand in for words. */
const TELLING: readonly (readonly [string, FieldName, number])[] = [
  ['°C', 'temperature', 0.55],
  ['°F', 'temperature', 0.55],
  ['mL/kg', 'hormoneDose', 0.6],
  ['mg/kg', 'hormoneDose', 0.55],
  ['IU/kg', 'hormoneDose', 0.6],
  ['per g', 'eggsPerGram', 0.6],
  ['L', 'volume', 0.5],
  ['mg/L CaCO3', 'alkalinity', 0.5],
];

/** Words that turn a thing into another and name none. */
const ONLY_MARKS: ReadonlySet<MeaningMark> = new Set([
  'morning',
  'afternoon',
  'first',
  'second',
  'before',
  'after',
  'total',
  'mean',
  'small',
  'middle',
  'big',
  'in',
  'out',
]);
const SURE_ALONE = 0.78;
/** A group name whose unit the heading's own thing cannot have ends before it: "Temp (°C)", further on pH. */
function speaksForItself(heading: HeadingSaid, above: HeadingSaid): boolean {
  const { unit } = above;
  if (!unit || heading.unit || [...marksIn(heading.said)].some((mark) => ONLY_MARKS.has(mark))) return false;
  const alone = new Map<FieldName, number>();
  addConcepts(heading.words || heading.text, 1, alone);
  const sure = [...alone].filter(([, score]) => score >= SURE_ALONE).map(([field]) => field);
  return (
    sure.length > 0 &&
    sure.every((field) => fieldSpec(field).kind !== 'number' || !ROLES[field].units?.includes(unit.of))
  );
}

function tellByUnit(unit: string | undefined, words: Map<FieldName, number>): void {
  for (const [name, field, worth] of TELLING)
    if (unit === name && worth > (words.get(field) ?? 0)) words.set(field, worth);
}

/** `inCells` is the unit most cells carry themselves. */
export function evidenceOf(header: string, parent: string, inCells?: string): Evidence {
  const heading = headingOf(header);
  const above = headingOf(parent);
  const hasParent = parent !== '' && parent !== header && !speaksForItself(heading, above);
  const joined = hasParent ? `${above.words} ${heading.words}` : heading.words;
  const words = new Map<FieldName, number>();
  const alone = hasParent ? ALONE_UNDER_PARENT : 1;
  addConcepts(heading.words || header, alone, words);
  addGuesses(header, alone, words);
  if (hasParent) {
    addConcepts(joined, 1, words);
    addGuesses(`${parent} ${header}`, 1, words);
  }
  const unit = heading.unit ?? (hasParent ? above.unit : undefined) ?? unitOfText(inCells ?? '');
  tellByUnit(unit?.unit, words);
  sizeClasses(header, words);
  sizesSaid(heading, words);
  const marks = marksIn(hasParent ? `${above.said} ${heading.said}` : heading.said);
  composed(marks, words);
  return { heading, joined, marks, unit, words };
}

/** Meanings made of general words that no list holds together: the weight of one fish, money that went out. */
const COMPOSED: readonly {
  readonly of: readonly MeaningMark[];
  readonly not?: readonly MeaningMark[];
  readonly is: FieldName;
}[] = [
  { of: ['weight', 'fish', 'one'], not: ['egg', 'female', 'male', 'perKg', 'every'], is: 'weight' },
  { of: ['weight', 'one'], not: ['egg', 'female', 'male', 'perKg', 'every', 'sample'], is: 'weight' },
  { of: ['mean', 'fish'], not: ['egg', 'female', 'male'], is: 'weight' },
  { of: ['weight', 'every'], not: ['egg', 'female', 'male', 'sample'], is: 'biomass' },
  { of: ['weight', 'after'], not: ['egg', 'male', 'sample', 'fish', 'mean', 'every'], is: 'femaleAfter' },
  { of: ['feed', 'morning'], not: ['time', 'total'], is: 'feed' },
  { of: ['feed', 'noon'], not: ['time', 'total'], is: 'feed' },
  { of: ['feed', 'afternoon'], not: ['time', 'total'], is: 'feed' },
  { of: ['money', 'in'], is: 'income' },
  { of: ['money', 'out'], not: ['in'], is: 'expense' },
  { of: ['money', 'rest'], is: 'balance' },
  { of: ['water', 'vessel'], not: ['weight', 'time', 'mean'], is: 'volume' },
];
const COMPOSED_WORTH = 0.6;
function composed(marks: ReadonlySet<MeaningMark>, words: Map<FieldName, number>): void {
  for (const { of, not = [], is } of COMPOSED)
    if (of.every((one) => marks.has(one)) && !not.some((one) => marks.has(one)))
      if ((words.get(is) ?? 0) < COMPOSED_WORTH) words.set(is, COMPOSED_WORTH);
}

const SIZES: readonly (readonly [MeaningMark, FieldName])[] = [
  ['small', 'gradeSmall'],
  ['middle', 'gradeMiddle'],
  ['big', 'gradeBig'],
];
const SIZE_WORTH = 0.55;
/** "The little ones", "Large size": a size and nothing else over counts is a grade. */
function sizesSaid({ said, unit }: HeadingSaid, words: Map<FieldName, number>): void {
  const marks = marksIn(said);
  if (unit || said.trim().length < 3 || said.trim().split(/\s+/).length > 3) return;
  for (const [mark, field] of SIZES)
    if (marks.has(mark)) words.set(field, Math.max(SIZE_WORTH, words.get(field) ?? 0));
}

/** "<2 g", "2-5 cm" and ">5g" over counts are grades. */
function sizeClasses(header: string, words: Map<FieldName, number>): void {
  const text = header.trim();
  if (!/^[<>≤≥]?\s*\d+(?:[.,]\d+)?\s*(?:[-–+]\s*\d*(?:[.,]\d+)?)?\s*(?:g|gr|cm|mm|inch|in|\+)?$/i.test(text))
    return;
  if (/^[<≤]/.test(text)) words.set('gradeSmall', 0.8);
  else if (/^[>≥]|\+$/.test(text)) words.set('gradeBig', 0.8);
  else if (/\d\s*[-–]\s*\d/.test(text)) words.set('gradeMiddle', 0.8);
}

/** Marks a meaning needs, and what their lack costs; marks that speak against it. */
interface Marked {
  readonly needs?: MeaningMark;
  /** Does as well. */
  readonly or?: MeaningMark;
  readonly cost?: number;
  readonly against?: readonly MeaningMark[];
  readonly likes?: readonly MeaningMark[];
}
const MARKED: Readonly<Partial<Record<FieldName, Marked>>> = {
  doseFirst: { needs: 'first', cost: 2 },
  rateFirst: { needs: 'first', cost: 2, likes: ['perKg'] },
  injectedFirst: { needs: 'first', cost: 1.5 },
  doseSecond: { needs: 'second', cost: 2 },
  rateSecond: { needs: 'second', cost: 2, likes: ['perKg'] },
  hormoneVolume: { against: ['first', 'second', 'perKg', 'time', 'date'] },
  hormoneDose: { against: ['first', 'second'], likes: ['perKg'] },
  injected: { against: ['first', 'date'], likes: ['time', 'second'] },
  ph: { against: ['after'], likes: ['before'] },
  phAfter: { needs: 'after', cost: 1 },
  temperature: { against: [] },
  temperatureLow: { needs: 'morning', cost: 2, against: ['afternoon'] },
  temperatureHigh: { needs: 'afternoon', cost: 2, against: ['morning'] },
  femaleAfter: { needs: 'after', cost: 3, likes: ['female'] },
  femaleWeight: { against: ['after', 'sample'], likes: ['female', 'weight'] },
  maleWeight: { needs: 'male', cost: 1.5, against: ['female'] },
  females: { likes: ['female', 'count'] },
  males: { needs: 'male', cost: 1 },
  dead: { against: ['running', 'share'], likes: ['dead'] },
  opening: { likes: ['before'], against: ['after'] },
  movedIn: { likes: ['in'], against: ['out'] },
  movedOut: { likes: ['out'], against: ['in'] },
  fry: { against: ['dead'] },
  fingerlings: { against: ['dead'] },
  fish: { against: ['dead'] },
  alive: { against: ['dead'] },
  stocked: { against: ['dead', 'out'] },
  sold: { likes: ['sale'] },
  deadRunning: { needs: 'running', cost: 1 },
  deadTotal: { needs: 'total', cost: 1.5 },
  gradeSmall: { needs: 'small', cost: 3 },
  gradeMiddle: { needs: 'middle', cost: 3 },
  gradeBig: { needs: 'big', cost: 3 },
  graded: { needs: 'total', cost: 1 },
  priceThousand: { needs: 'thousand', cost: 0.6 },
  priceEach: { against: ['thousand'] },
  unitPrice: { against: [] },
  injectedOn: { likes: ['date'], against: ['time'] },
  strippedOn: { likes: ['date'], against: ['time'] },
  hatchedOn: { likes: ['date'], against: ['time'] },
  stripped: { likes: ['time'] },
  hatchedAt: { likes: ['time'] },
  deliveryDate: { needs: 'deliver', cost: 3 },
  date: { against: ['deliver'] },
  hatched: { against: ['share', 'dead'], likes: ['count'] },
  hatchShare: { likes: ['share'] },
  fertilisedShare: { likes: ['share'] },
  survival: { likes: ['share'] },
  sampleGood: { likes: ['sample', 'count'] },
  sampleSize: { likes: ['sample', 'count'], against: ['weight'] },
  sampleWeight: { likes: ['weight', 'sample'] },
  weight: { likes: ['mean'] },
  ration: { likes: ['share'] },
  feedTotal: { needs: 'total', or: 'week', cost: 1.2 },
  dueRunning: { needs: 'running', cost: 0.6 },
};
const needed = ({ needs, or, cost = 1 }: Marked, marks: ReadonlySet<MeaningMark>): number =>
  needs === undefined ? 0 : marks.has(needs) || (or !== undefined && marks.has(or)) ? 0.8 : -cost;
/** Shares and counts of one thing are told apart by the sign beside the words. */
function markFit(field: FieldName, marks: ReadonlySet<MeaningMark>): number {
  const rule = MARKED[field];
  if (!rule) return 0;
  let fit = 0;
  fit += needed(rule, marks);
  if (field.startsWith('grade') && marks.size === 0) fit = 0;
  for (const mark of rule.against ?? []) if (marks.has(mark)) fit -= 0.8;
  for (const mark of rule.likes ?? []) if (marks.has(mark)) fit += 0.25;
  return fit;
}

interface Unusual {
  readonly fields: ReadonlySet<FieldName>;
  readonly said: ReadonlySet<string>;
  readonly worth: number;
}
const UNUSUAL: readonly Unusual[] = [
  // A hormone is weighed in milligrams and measured in millilitres.
  {
    fields: new Set<FieldName>(['hormoneVolume', 'doseFirst', 'doseSecond']),
    said: new Set(['g', 'kg', 'L', 'm3', 'gal']),
    worth: -0.9,
  },
  // All the fish of a tank are weighed in kilograms, a sample of them in grams.
  { fields: new Set<FieldName>(['biomass']), said: new Set(['g']), worth: 0.2 },
];
function unitFit(field: FieldName, unit: UnitSaid | undefined): number {
  if (!unit) return 0;
  const { units } = ROLES[field];
  const own = UNUSUAL.find(({ fields, said }) => fields.has(field) && said.has(unit.unit));
  if (own) return own.worth;
  if (units?.includes(unit.of)) return 0.9;
  if (unit.of === 'count' && !units) return -0.2;
  if (fieldSpec(field).kind !== 'number')
    return unit.of === 'span' || unit.of === 'count' || unit.of === 'length' ? -0.2 : -1.5;
  if (!units && unit.of === 'span') return -0.5;
  return -3;
}

const rangeOf = (field: NumericField): readonly [number, number] | undefined =>
  PLAUSIBLE[field]?.usual ?? ROLES[field].usual;

/** 1 inside the usual range, falling to 0 at ten times beyond either end. */
export function fitOfRange(field: NumericField, middle: number): number {
  const range = rangeOf(field);
  if (!range) return 0.6;
  const [low, high] = range;
  if (middle >= low && middle <= high) return 1;
  if (!(middle > 0)) return low === 0 ? 1 : 0;
  return Math.max(0, 1 - Math.abs(Math.log10(middle < low ? low / middle : middle / high)));
}

/** Where the heading is silent, any unit the thing may be kept in is tried. */
function bestRange(field: NumericField, { unit, heading }: Evidence, middle: number): number {
  const own = unitForField(field, unit?.unit);
  const value = middle * heading.times;
  if (own !== undefined) return fitOfRange(field, converter(field, own)(value));
  const units = Object.keys(UNITS[field] ?? {});
  const tries = units.length > 0 && unit === undefined ? units : [ownUnit(field)];
  const [first = 0, ...rest] = tries.map((name) => fitOfRange(field, converter(field, name)(value)));
  return Math.max(first, ...rest.map((x) => x - 0.25));
}

/** A reading under which most of a column could not be is no reading; one under which its highest could not, hardly. */
function beyond(field: NumericField, { unit, heading }: Evidence, content: ColumnContent): number {
  const possible = PLAUSIBLE[field]?.possible;
  if (!possible) return 0;
  const own = unitForField(field, unit?.unit);
  const names =
    own === undefined && unit === undefined ? Object.keys(UNITS[field] ?? {}) : [own ?? ownUnit(field)];
  const isBeyond = (value: number): boolean =>
    (names.length > 0 ? names : [undefined]).every((name) => {
      const x = converter(field, name)(value * heading.times);
      return x < possible[0] || x > possible[1];
    });
  return isBeyond(content.middle) ? -2.5 : isBeyond(content.high) ? -0.8 : 0;
}

/** What may go up by one from line to line, beside the number of the line. */
const COUNTED: ReadonlySet<FieldName> = new Set(['days', 'deadRunning', 'vatsInUse']);

const FEW_FISH = 120;
/** A count of fish is whole; a mean of counts may not be, 0.12 is a price. */
const fractionDoubt = ({ fractions, middle }: ColumnContent, times: number): number =>
  (times === 1 && fractions > 0.2 ? 1.4 : 0) + (fractions > 0.5 && middle < 1 ? 3 : 0);
/** What the numbers themselves speak against. */
function doubtful(field: NumericField, { heading }: Evidence, content: ColumnContent): number {
  const { isWhole } = ROLES[field];
  // So few are a sample, not what a tank holds.
  let doubt = field === 'fish' && content.middle * heading.times < FEW_FISH ? -0.8 : 0;
  if (isWhole) doubt -= fractionDoubt(content, heading.times);
  if (fieldSpec(field).quantity.unit === 'share' && content.middle > 100.5) doubt -= 3;
  if (field === 'eggsPerGram' && heading.times !== 1) doubt -= 3;
  return content.isCounted && !COUNTED.has(field) ? doubt - 2.5 : doubt;
}

function numberFit(field: NumericField, evidence: Evidence, content: ColumnContent): number {
  const usable = content.filled - content.errors;
  const share = usable > 0 ? content.numbers / usable : 0.5;
  if (share < 0.4) return -4;
  const range = Number.isNaN(content.middle) ? 0 : 1.3 * (bestRange(field, evidence, content.middle) - 0.6);
  const impossible = Number.isNaN(content.middle) ? 0 : beyond(field, evidence, content);
  return range + impossible + doubtful(field, evidence, content) - 2 * (1 - share);
}

const SIZES_END = 60;
const SIZED: ReadonlySet<FieldName> = new Set(['size', 'feedType']);
/** Whole numbers of many are counts, not sizes of fish or of pellets. */
const isNoSize = ({ numbers, filled, fractions, middle, unit }: ColumnContent): boolean =>
  unit === undefined && numbers >= 0.8 * filled && fractions === 0 && middle > SIZES_END;

const DATE_ONLY: readonly FieldName[] = [
  'date',
  'injectedOn',
  'strippedOn',
  'hatchedOn',
  'deliveryDate',
  'stockedAt',
  'emptiedAt',
];
const CLOCK_ONLY: readonly FieldName[] = ['clock', 'startTime', 'endTime'];
const SERIAL_LOW = 30_000;
const SERIAL_HIGH = 80_000;

function momentFit(field: FieldName, content: ColumnContent, marks: ReadonlySet<MeaningMark>): number {
  const usable = content.filled - content.errors;
  if (usable <= 0) return -0.2;
  const dates = content.dates + (areSerials(content) && content.fractions < 0.9 ? content.numbers : 0);
  const clocks = content.clocks + content.digitClocks;
  // 150 is a number; ten to two only where the heading speaks of time.
  const isOnlyDigits = content.digitClocks > 0 && content.clocks === 0 && !marks.has('time');
  const share = Math.min(1, (dates + clocks) / usable);
  if (share < 0.4) return -4;
  if (isOnlyDigits && dates === 0 && content.middle < 700) return -1.5;
  const isDated = dates >= clocks;
  const isStamped = content.stamps > 0.3 * usable;
  return kindFit(field, isDated, isStamped);
}
/** Days where days belong, hours where hours do, both together elsewhere. */
function kindFit(field: FieldName, isDated: boolean, isStamped: boolean): number {
  if (DATE_ONLY.includes(field)) return isDated ? 0.3 - (isStamped && field.endsWith('On') ? 0.6 : 0) : -3;
  if (CLOCK_ONLY.includes(field)) return isDated ? -3 : 0.5;
  return isDated && !isStamped ? -0.9 : 0.4;
}

const TAGS: ReadonlySet<FieldName> = new Set([
  'run',
  'serial',
  'receipt',
  'female',
  'male',
  'vat',
  'size',
  'feedType',
]);
const NAMES_LINES: ReadonlySet<FieldName> = new Set(['run', 'serial', 'receipt']);
/** What tells lines apart differs from line to line. */
const repeatsItself = ({ words, wordKinds }: ColumnContent): boolean => words >= 5 && wordKinds < 0.5 * words;
/** What sorts lines into kinds comes again. */
const CLASSES: ReadonlySet<FieldName> = new Set([
  'species',
  'origin',
  'sex',
  'status',
  'preparation',
  'category',
]);
const areAllDifferent = ({ words, wordKinds, filled }: ColumnContent): boolean =>
  words >= 6 && words >= 0.8 * filled && wordKinds > 0.9 * words;
const areSerials = ({ middle, high }: ColumnContent): boolean =>
  middle > SERIAL_LOW && middle < SERIAL_HIGH && high < 1.15 * middle;

/** What more than half of the cells are. */
interface Mostly {
  readonly usable: number;
  readonly isDated: boolean;
  readonly isNumbered: boolean;
}
/** Months and weeks are words, dates or small numbers; a week is never a whole date. */
function periodFit(
  field: FieldName,
  content: ColumnContent,
  { usable, isDated, isNumbered }: Mostly,
): number {
  const isDay = isDated || (areSerials(content) && isNumbered);
  if (field === 'week' && isDay) return -2;
  if (!isDay && isNumbered && content.middle > (field === 'week' ? 53 : 12)) return -3;
  return Math.max(content.words, content.dates + content.clocks) > 0.3 * usable ? 0.3 : 0.1;
}

const wordsFit = (field: FieldName, content: ColumnContent, isNumbered: boolean): number =>
  CLASSES.has(field) && areAllDifferent(content) ? -1.5 : isNumbered ? -2.5 : 0.3;

function textFit(field: FieldName, content: ColumnContent, { heading }: Evidence): number {
  // Thousands or lakhs of something are numbers.
  if (heading.times !== 1) return -3;
  const usable = content.filled - content.errors;
  if (usable <= 0) return -0.2;
  const isDated = (content.dates + content.clocks) / usable > 0.5;
  const isNumbered = content.numbers / usable > 0.5;
  if (field === 'month' || field === 'week')
    return periodFit(field, content, { usable, isDated, isNumbered });
  if (isDated) return -3;
  if (NAMES_LINES.has(field) && repeatsItself(content)) return -4;
  return TAGS.has(field) ? tagFit(field, content, isNumbered) : wordsFit(field, content, isNumbered);
}
/** Sizes may have decimals, names of things have none. */
function tagFit(field: FieldName, content: ColumnContent, isNumbered: boolean): number {
  if (SIZED.has(field) ? isNoSize(content) : content.fractions > 0.3) return -2;
  return isNumbered ? -0.3 : 0.3;
}

const WORDS_WEIGH = 4;
/** Words worth less say nothing. */
export const LEAST_WORDS = 0.3;

/** All that speaks for a column being the field, as one number; -Infinity where it cannot be. */
export function scoreOf(field: FieldName, evidence: Evidence, content: ColumnContent): number {
  const words = evidence.words.get(field) ?? 0;
  const { kind } = fieldSpec(field);
  const fit =
    kind === 'number'
      ? numberFit(field as NumericField, evidence, content)
      : kind === 'moment'
        ? momentFit(field, content, evidence.marks)
        : textFit(field, content, evidence);
  return (
    WORDS_WEIGH * (words >= LEAST_WORDS ? words : 0) +
    fit +
    unitFit(field, evidence.unit) +
    markFit(field, evidence.marks)
  );
}
