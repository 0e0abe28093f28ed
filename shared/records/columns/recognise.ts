import type { FieldName, NumericField } from '../fields';
import { fieldSpec } from '../fields';
import type { CellRun, Content, UnitChoice } from './content';
import { chooseUnit, contentOf, fitOfContent } from './content';
import type { DateOrder } from './dates';
import type { Guess } from './headers';
import { guessHeader } from './headers';
import type { Correction, MappedColumn } from './mapping';
import { correctionFor } from './mapping';
import type { Decimal } from './numbers';
import { fitOfMiddle } from './plausible';
import { ownUnit } from './units';

/** A column (or the label of a form) waiting to be understood. */
export interface Unread {
  readonly name: string;
  readonly header: string;
  readonly parent: string;
  readonly run: CellRun;
}

interface Candidate {
  readonly field: FieldName;
  readonly score: number;
  readonly choice: UnitChoice;
  readonly because: string;
}
interface Looked {
  readonly unread: Unread;
  readonly content: Content;
  readonly candidates: readonly Candidate[];
}

const WEIGHT_OF_HEADER = 0.7;
const LEAST_FIT = 0.12;
const LEAST_SCORE = 0.45;

/** Fields that are met together: one of them makes the others likelier. */
const COMPANY: readonly (readonly FieldName[])[] = [
  ['ph', 'phAfter', 'materialDose', 'volume', 'alkalinity', 'material'],
  [
    'female',
    'hormoneVolume',
    'hormoneDose',
    'injected',
    'stripped',
    'eggWeight',
    'eggsPerGram',
    'femaleWeight',
    'preparation',
  ],
  ['fish', 'weight', 'feed', 'ration', 'startWeight', 'endWeight', 'conversion', 'stocked', 'alive'],
];
const BONUS = 0.04;

const kindWord = (content: Content): string =>
  content.filled === 0
    ? 'nothing'
    : content.dates + content.clocks > content.filled / 2
      ? 'dates or times'
      : content.words > content.filled / 2
        ? 'words'
        : 'numbers';

/** Child header alone, or read together with the words above it when that says it exactly. */
function guessesOf({ header, parent }: Unread): readonly Guess[] {
  const alone = guessHeader(header);
  if (parent === '' || parent === header) return alone;
  const joined = guessHeader(`${parent} ${header}`).filter(({ score }) => score >= 0.85);
  return joined.length > 0
    ? [...joined, ...alone.filter(({ field }) => !joined.some((one) => one.field === field))]
    : alone;
}

const unitOf = (field: FieldName, guess: Guess | undefined, content: Content): UnitChoice =>
  fieldSpec(field).kind === 'number'
    ? chooseUnit(field as NumericField, guess?.unit, content)
    : { unit: undefined, because: undefined, isAgainstHeader: false };

/**
 * A header in words nobody listed: a column of dates is still the date of the record, if no other column
 * claims to be.
 */
const BY_CONTENT = 0.5;
const byContent = ({ filled, dates }: Content): Candidate[] =>
  filled >= 2 && dates >= 0.8 * filled
    ? [
        {
          field: 'date',
          score: BY_CONTENT,
          choice: { unit: undefined, because: undefined, isAgainstHeader: false },
          because: 'its header is not known, but nearly every cell holds a date',
        },
      ]
    : [];

function candidatesOf(unread: Unread, content: Content): Candidate[] {
  if (guessesOf(unread).length === 0) return byContent(content);
  return guessesOf(unread)
    .flatMap((guess) => {
      const choice = unitOf(guess.field, guess, content);
      const fit = fitOfContent(guess.field, choice.unit, content);
      if (fit < LEAST_FIT) return [];
      const score = WEIGHT_OF_HEADER * guess.score + (1 - WEIGHT_OF_HEADER) * fit;
      return score < LEAST_SCORE ? [] : [{ field: guess.field, score, choice, because: guess.because }];
    })
    .sort((a, b) => b.score - a.score);
}

/** A weight among brood fish columns is the weight of the female. */
function byCompany(looked: readonly Looked[]): Looked[] {
  const present = new Set(
    looked.flatMap(({ candidates }) =>
      candidates[0] && candidates[0].score > 0.8 ? [candidates[0].field] : [],
    ),
  );
  const company = (field: FieldName): number => {
    const group = COMPANY.find((list) => list.includes(field));
    return group?.some((other) => other !== field && present.has(other)) ? BONUS : 0;
  };
  const isBrood =
    ['female', 'hormoneVolume', 'injected', 'eggWeight', 'preparation', 'hormoneDose'].filter((name) =>
      present.has(name as FieldName),
    ).length >= 2;
  return looked.map((one) => {
    const candidates = one.candidates.map((c) => ({ ...c, score: Math.min(1, c.score + company(c.field)) }));
    const weight = candidates.find(({ field }) => field === 'weight');
    if (
      weight &&
      isBrood &&
      !present.has('fish') &&
      !candidates.some(({ field }) => field === 'femaleWeight')
    ) {
      const choice = chooseUnit('femaleWeight', weight.choice.unit, one.content);
      if (fitOfContent('femaleWeight', choice.unit, one.content) > 0.6)
        candidates.push({
          field: 'femaleWeight',
          score: weight.score + BONUS / 2,
          choice,
          because: `${weight.because}, beside columns about brood fish`,
        });
    }
    return { ...one, candidates: candidates.sort((a, b) => b.score - a.score) };
  });
}

/** Each field goes to the column that claims it best; the others take their next guess. */
function assign(looked: readonly Looked[]): Map<Looked, Candidate> {
  const claims = looked
    .flatMap((one) => one.candidates.map((candidate) => ({ one, candidate })))
    .sort((a, b) => b.candidate.score - a.candidate.score);
  const taken = new Set<FieldName>();
  const given = new Map<Looked, Candidate>();
  for (const { one, candidate } of claims) {
    if (given.has(one) || taken.has(candidate.field)) continue;
    given.set(one, candidate);
    taken.add(candidate.field);
  }
  return given;
}

/**
 * 1,250 is one thousand for eggs and one and a quarter for kilograms: what other cells say first, then what
 * fits the field.
 */
function decimalOf(
  field: FieldName | undefined,
  content: Content,
  elsewhere: Decimal | undefined,
  corrected: Correction | undefined,
): { readonly decimal: Decimal; readonly because: string | undefined } {
  if (corrected?.decimal) return { decimal: corrected.decimal, because: undefined };
  if (content.decimal)
    return {
      decimal: content.decimal,
      because: content.decimal === ',' ? 'numbers are written with a decimal comma' : undefined,
    };
  if (!content.hasOpenNumbers) return { decimal: elsewhere ?? '.', because: undefined };
  if (elsewhere)
    return {
      decimal: elsewhere,
      because: `numbers like 1${elsewhere === ',' ? '.' : ','}250 are read as one thousand two hundred and fifty, as other columns write them`,
    };
  const isSmall =
    field !== undefined &&
    fieldSpec(field).kind === 'number' &&
    !fieldSpec(field).isCount &&
    fitOfMiddle(field as NumericField, content.middle) <
      fitOfMiddle(field as NumericField, content.middle / 1000);
  return {
    decimal: isSmall ? ',' : '.',
    because:
      'numbers with three digits behind the mark can be read two ways; the one that fits ' +
      'the column was taken',
  };
}

function orderOf(
  content: Content,
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

interface Elsewhere {
  readonly decimal: Decimal | undefined;
  readonly order: DateOrder | undefined;
}

const whyNot = ({ unread, content, candidates }: Looked): string => {
  if (candidates.length > 0) return 'another column says the same better';
  const [guess] = guessesOf(unread);
  return guess ? `${guess.because}, but its cells hold ${kindWord(content)}` : 'its header is not known';
};

/** What the user said about the column, or the best claim of its own. */
function chosen(
  looked: Looked,
  given: Candidate | undefined,
  said: Correction | undefined,
): {
  readonly field: FieldName | undefined;
  readonly choice: UnitChoice | undefined;
  readonly reasons: readonly string[];
  readonly confidence: number;
} {
  if (said) {
    const field = said.field === 'ignore' ? undefined : said.field;
    const guessed = field && unitOf(field, undefined, looked.content);
    return {
      field,
      choice:
        guessed && said.unit !== undefined ? { ...guessed, unit: said.unit, because: undefined } : guessed,
      reasons: ['you said so'],
      confidence: 1,
    };
  }
  if (!given) return { field: undefined, choice: undefined, reasons: [whyNot(looked)], confidence: 0 };
  return {
    field: given.field,
    choice: given.choice,
    reasons: [given.because, `its cells hold ${kindWord(looked.content)}`],
    confidence: Math.min(1, given.score),
  };
}

function mapped(
  looked: Looked,
  given: Candidate | undefined,
  said: Correction | undefined,
  elsewhere: Elsewhere,
): MappedColumn {
  const { unread, content, candidates } = looked;
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
    field,
    unit: field ? (choice?.unit ?? ownUnit(field)) : undefined,
    decimal,
    order,
    confidence,
    reasons: [...reasons, ...more.filter((one) => one !== undefined)],
    alternatives: candidates.map((one) => one.field).filter((name) => name !== field),
    isCorrected: said !== undefined,
    isAgainstHeader: choice?.isAgainstHeader ?? false,
  };
}

/** The commonest of the votes that were cast. */
function mostOf<T>(votes: readonly (T | undefined)[]): T | undefined {
  const counts = new Map<T, number>();
  for (const vote of votes) if (vote !== undefined) counts.set(vote, (counts.get(vote) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0];
}

/** Understands the columns of one table, together. */
export function recognise(
  sheet: string,
  columns: readonly Unread[],
  corrections: readonly Correction[],
): MappedColumn[] {
  const contents = columns.map(({ run }) => contentOf(run));
  const elsewhere = {
    decimal: mostOf(contents.map((content) => content.decimal)),
    order: mostOf(contents.map((content) => content.order)),
  };
  const raw = columns.map((unread, i): Looked => {
    const first = contents[i] ?? contentOf(unread.run);
    const content =
      first.hasOpenNumbers && (first.decimal ?? elsewhere.decimal) === ','
        ? contentOf(unread.run, ',')
        : first;
    return { unread, content, candidates: candidatesOf(unread, content) };
  });
  const saidFor = new Map(
    raw.map((one) => [one.unread, correctionFor(corrections, sheet, one.unread.header)]),
  );
  const said = new Set([...saidFor.values()].map((one) => one?.field));
  const free = byCompany(
    raw.map((one) =>
      saidFor.get(one.unread)
        ? { ...one, candidates: [] }
        : { ...one, candidates: one.candidates.filter(({ field }) => !said.has(field)) },
    ),
  );
  const given = assign(free);
  return free.map((one) => mapped(one, given.get(one), saidFor.get(one.unread), elsewhere));
}
