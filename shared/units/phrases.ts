import { MONTH_WORDS, WEEKDAY_WORDS } from './dates';
import * as quantities from './quantities';

/**
 * Sentences in another language than English. Views, books and the engine below them write English; a language is
 * one table from an English sentence to its own, with {} where names or sentences stand and {n} for numbers and
 * days. What is between the marks is looked up again, so that a verdict or a day inside a sentence is said too.
 */
export type Phrases = Readonly<Record<string, string>>;

interface Pattern {
  readonly match: RegExp;
  readonly parts: readonly string[];
  /** Which mark of the English sentence stands at each place of the other. */
  readonly order: readonly number[];
  /** Marks that take a number alone. */
  readonly numbers: ReadonlySet<number>;
}
export interface PhraseTable {
  readonly whole: ReadonlyMap<string, string>;
  /** By the first word, where a sentence begins with one; '' for those that begin with a mark. */
  readonly patterns: ReadonlyMap<string, readonly Pattern[]>;
  readonly day: (text: string) => string | undefined;
  /** Before decimals. */
  readonly mark: () => string;
  readonly said: Map<string, string>;
}

const MARK = /\{(\d*|n)\}/g;
const HOLE = /\{(?:\d*|n)\}/;
/** What {n} takes: a number, a share, a day, and nothing that is a sentence. */
const NUMBER = `((?:[\\d¼½¾\\s.,:%+−/·–-]|[kM]\\b|(?<=\\d)e(?=[−+-]?\\d)|m²|${[...WEEKDAY_WORDS, ...MONTH_WORDS].join('|')})+)`;
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
const firstWord = (text: string): string => /^[A-Za-z]+/.exec(text)?.[0] ?? '';

function patternOf(english: string, own: string): Pattern {
  const marks = [...english.matchAll(MARK)].map(([, mark]) => mark);
  const holes = marks.map((mark) => (mark === 'n' ? NUMBER : '(.+?)'));
  const numbers = new Set(marks.flatMap((mark, i) => (mark === 'n' ? [i] : [])));
  const pieces = english.split(HOLE).map((piece, i) => `${escaped(piece)}${holes[i] ?? ''}`);
  let next = 0;
  const order = [...own.matchAll(MARK)].map(([, mark = '']) => (/\d/.test(mark) ? Number(mark) - 1 : next++));
  return { match: new RegExp(`^${pieces.join('')}$`, 's'), parts: own.split(HOLE), order, numbers };
}

const WEEKDAYS: readonly string[] = WEEKDAY_WORDS;
const DAY = new RegExp(
  `^(?:(${WEEKDAYS.join('|')}) )?(?:(\\d{1,2}) (${MONTH_WORDS.join('|')}))?( \\d{2,4})?( \\d\\d:\\d\\d)?$`,
);
/** Days and months as the language writes them; any week that begins on a Monday does to name its days. */
function dayIn(locale: string): PhraseTable['day'] {
  const month = new Intl.DateTimeFormat(locale, { month: 'short', timeZone: 'UTC' });
  const weekday = new Intl.DateTimeFormat(locale, { weekday: 'short', timeZone: 'UTC' });
  return (text) => {
    const [all, week, day, name, year = '', clock = ''] = DAY.exec(text) ?? [];
    if (!all || (week === undefined && name === undefined)) return undefined;
    const words = [
      week && weekday.format(Date.UTC(2023, 0, 2 + WEEKDAYS.indexOf(week))),
      name && `${day} ${month.format(Date.UTC(2023, MONTH_WORDS.indexOf(name), 1))}`,
    ];
    return `${words.filter(Boolean).join(' ')}${year}${clock}`;
  };
}

export function phraseTable(locale: string, phrases: Phrases, mark: () => string): PhraseTable {
  const whole = new Map<string, string>();
  const patterns = new Map<string, Pattern[]>();
  for (const [english, own] of Object.entries(phrases)) {
    if (!HOLE.test(english)) {
      whole.set(english, own);
      continue;
    }
    const word = firstWord(english);
    patterns.set(word, [...(patterns.get(word) ?? []), patternOf(english, own)]);
  }
  // What says more of itself is tried first.
  for (const list of patterns.values()) list.sort((a, b) => b.match.source.length - a.match.source.length);
  return { whole, patterns, day: dayIn(locale), mark, said: new Map() };
}

/** Numbers the engine wrote, with the decimal mark of the reader; digits in threes stand apart by spaces already. */
const withMark = ({ mark }: PhraseTable, text: string): string =>
  text.replace(/(\d)\.(?=\d)/g, `$1${mark()}`);
const NUMBER_ALONE = /^[−-]?[\d\s]*\d\.\d+(?:\s(\S{1,8}))?$/;
const UNITS = new Set(
  Object.values(quantities)
    .map(({ unit }): string => unit)
    .filter((unit) => !/^[a-z]{4,}$/.test(unit)),
);
/** Units are written alike everywhere; a short word behind a number is none and has to be said. */
const isNumberAlone = (text: string): boolean => {
  const [all, behind = ''] = NUMBER_ALONE.exec(text) ?? [];
  return all !== undefined && (!/\p{L}/u.test(behind) || UNITS.has(behind));
};

function byPattern(table: PhraseTable, text: string): string | undefined {
  for (const list of [table.patterns.get(firstWord(text)), table.patterns.get('')])
    for (const { match, parts, order, numbers } of list ?? []) {
      const found = match.exec(text);
      if (!found) continue;
      return parts.reduce((all, part, i) => {
        const at = order[i - 1] ?? 0;
        const held = lookUp(table, found[at + 1] ?? '');
        return `${all}${numbers.has(at) ? withMark(table, held) : held}${part}`;
      });
    }
  return undefined;
}

/** With its full stop or without. */
function wholly(table: PhraseTable, core: string): string | undefined {
  const own = table.whole.get(core) ?? table.day(core) ?? byPattern(table, core);
  if (own !== undefined || !/[.:]$/.test(core)) return own;
  const open = core.slice(0, -1);
  const rest = table.whole.get(open) ?? table.day(open) ?? byPattern(table, open);
  return rest === undefined ? undefined : `${rest}${core.at(-1) ?? ''}`;
}

/** Sentences that follow each other, parts of a line, items of a list. */
const SENTENCES = /(?<=[.!?…]) +/;
const JOINTS = [/^([⚠!●▲◊✕×✓▼?◯] )/, SENTENCES, /( · )/, /(; )/, /( : )/, /(: )/, /^(B\d+ )/, /(, )/];

function inParts(table: PhraseTable, text: string): string | undefined {
  for (const joint of JOINTS) {
    const parts = text.split(joint);
    if (parts.length < 2) continue;
    const said = parts.map((part) => lookUp(table, part));
    if (said.some((part, i) => part !== parts[i])) return said.join(joint === SENTENCES ? ' ' : '');
  }
  return undefined;
}

const QUOTED = /("[^"]*")/;
/** English parts thousands by commas, which others read as a decimal mark; what is quoted from a cell stays. */
export const threesApart = (text: string): string =>
  text
    .split(QUOTED)
    .map((part, i) => (i % 2 === 1 ? part : part.replace(/(\d),(?=\d{3}(?!\d))/g, '$1\u202f')))
    .join('');

/** A number of five digits and more in threes, as the pane writes its own; not in what is quoted or a formula. */
export const figuresApart = (text: string): string =>
  text
    .split(QUOTED)
    .map((part, i) =>
      i % 2 === 1
        ? part
        : part.replace(/(?<![\w.,:/(-])\d{5,}(?![\w/:])/g, (digits) =>
            digits.replace(/\B(?=(\d{3})+$)/g, '\u202f'),
          ),
    )
    .join('');

/** Whether the whole of a text can be said, and no part of it stays as it is. */
export function isKnown(table: PhraseTable, text: string): boolean {
  const core = text.trim();
  if (!/[A-Za-z]{3}/.test(core) || isNumberAlone(core) || wholly(table, core) !== undefined) return true;
  return JOINTS.some((joint) => {
    const parts = core.split(joint);
    return parts.length > 1 && parts.every((part) => isKnown(table, part));
  });
}

/** Sentence by sentence where each is known: a hole of a pattern would else reach over the end of one. */
function bySentence(table: PhraseTable, core: string): string | undefined {
  const parts = core.split(SENTENCES);
  return parts.length > 1 && !table.whole.has(core) && parts.every((part) => isKnown(table, part))
    ? parts.map((part) => lookUp(table, part)).join(' ')
    : undefined;
}

/** What has no words: a number keeps the mark of the reader before its decimals. */
const rest = (table: PhraseTable, core: string): string =>
  NUMBER_ALONE.test(core) ? withMark(table, core) : core;

/** A text in the language of the table; what it does not know stays. */
export function lookUp(table: PhraseTable, text: string): string {
  if (isNumberAlone(text)) return withMark(table, text);
  if (!/[A-Za-z]{2}/.test(text)) return text;
  const known = table.said.get(text);
  if (known !== undefined) return known;
  const [, before = '', core = '', after = ''] = /^(\s*)(.*?)(\s*)$/s.exec(text) ?? [];
  const own = bySentence(table, core) ?? wholly(table, core) ?? inParts(table, core) ?? rest(table, core);
  const said = `${before}${own}${after}`;
  // A field that is typed into makes new texts all the time.
  if (table.said.size > 5000) table.said.clear();
  table.said.set(text, said);
  return said;
}
