import { quoteSheet } from '../../sheet/formula/address';
import { PREFIX } from '../../functions/define';
import type { BookWords } from './words';
import { ownSheetName, sayIn } from './words';

/**
 * The words of a formula in another language: sheets it names, texts it answers and compares. Names of functions and
 * of cells stay, and so does a text handed to a function of ours, which is one of its options.
 */

const TOKEN = /"(?:[^"]|"")*"|'(?:[^']|'')+'!|[\p{L}_\\][\p{L}\p{N}_.\\]*[(!]|[(),]/gu;
/** The end of a text compared with a word as long as the text itself: LEFT(A1,5)="CLASH". */
const ENDS = /\b(LEFT|RIGHT)\(([^(),]+),(\d+)\)="((?:[^"]|"")*)"/g;
const DAY_FORMAT = /^"ddd d mmm(, hh:mm)?"$/;

interface Call {
  readonly name: string;
  /** Where it begins in what was written so far. */
  readonly from: number;
  argument: number;
  /** End of its first argument. */
  first: number;
  dayFormat?: string;
}

const literal = (text: string): string => `"${text.replaceAll('"', '""')}"`;
const bare = (token: string): string => token.slice(1, -1).replaceAll('""', '"');

/** A moment with its day in words, whatever language the spreadsheet program formats days in. */
function dayInWords({ weekdays, months }: BookWords, moment: string, format: string): string {
  const choose = (of: string, list: readonly string[]): string =>
    `CHOOSE(${of}(${moment}),${list.map(literal).join(',')})`;
  const clock = format.includes('hh:mm') ? `&", "&TEXT(${moment},"hh:mm")` : '';
  return `${choose('WEEKDAY', weekdays)}&" "&DAY(${moment})&" "&${choose('MONTH', months)}${clock}`;
}

class Translation {
  private out = '';
  private readonly open: Call[] = [];

  constructor(private readonly words: BookWords) {}

  private get inside(): Call | undefined {
    return this.open.at(-1);
  }

  private literal(token: string): string {
    const { inside } = this;
    if (inside?.name === 'TEXT' && inside.argument === 1) {
      if (DAY_FORMAT.test(token)) inside.dayFormat = token;
      return token;
    }
    // A number, or a number format picked within TEXT, is no word.
    if (!/[A-Za-z]{2}/.test(token)) return token;
    // What is compared stands in a cell in this language; what is handed over is an option.
    const isCompared = /[=<>]\s*$/.test(this.out);
    return !isCompared && this.open.some(({ name }) => name.startsWith(`${PREFIX}.`))
      ? token
      : literal(sayIn(this.words, bare(token)));
  }

  private close(): void {
    const call = this.open.pop();
    this.out += ')';
    if (call?.dayFormat === undefined) return;
    const moment = this.out.slice(call.from + call.name.length + 1, call.first);
    this.out = this.out.slice(0, call.from) + dayInWords(this.words, moment, call.dayFormat);
  }

  private token(token: string): void {
    const { inside } = this;
    if (token.startsWith('"')) this.out += this.literal(token);
    else if (token.endsWith('!')) {
      const name = token.startsWith("'") ? token.slice(1, -2).replaceAll("''", "'") : token.slice(0, -1);
      this.out += `${quoteSheet(ownSheetName(this.words, name))}!`;
    } else if (token.endsWith('(')) {
      this.open.push({
        name: token.slice(0, -1).toUpperCase(),
        from: this.out.length,
        argument: 0,
        first: 0,
      });
      this.out += token;
    } else if (token === ')') this.close();
    else {
      if (inside?.argument === 0) inside.first = this.out.length;
      if (inside) inside.argument++;
      this.out += token;
    }
  }

  of(formula: string): string {
    let at = 0;
    for (const { 0: token, index } of formula.matchAll(TOKEN)) {
      this.out += formula.slice(at, index);
      this.token(token);
      at = index + token.length;
    }
    return this.out + formula.slice(at);
  }
}

/** A text in pieces, because a formula takes none above 255 letters: said as a whole, then cut anew. */
const PIECES = /"(?:[^"]|"")*"(?:&"(?:[^"]|"")*")+/g;
const LONGEST = 250;
const pieces = (text: string): string =>
  text
    .match(new RegExp(`.{1,${LONGEST}}`, 'gsu'))
    ?.map(literal)
    .join('&') ?? '""';
const joined = (all: string): string =>
  [...all.matchAll(/"((?:[^"]|"")*)"/g)].map(([, text = '']) => text.replaceAll('""', '"')).join('');

export function formulaIn(words: BookWords, given: string): string {
  const formula = given.replace(PIECES, (all) => {
    const text = joined(all);
    const own = sayIn(words, text);
    return own === text ? all : pieces(own);
  });
  const ends = formula.replace(ENDS, (all, call: string, of: string, length: string, text: string) => {
    if (Number(length) !== text.length) return all;
    const own = sayIn(words, text);
    return `${call}(${of},${own.length})="${own}"`;
  });
  return new Translation(words).of(ends);
}
