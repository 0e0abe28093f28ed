/**
 * Splits a formula, as typed in Excel with English names, into tokens. The text of every token is kept:
 * joined, they are the formula. Linear in its length, whatever it holds: files may hold anything.
 */

export type TokenKind =
  | 'number'
  | 'string'
  | 'boolean'
  | 'error'
  | 'reference'
  | 'call'
  | 'name'
  | 'operator'
  | 'open'
  | 'close'
  | 'comma'
  | 'semicolon'
  | 'openArray'
  | 'closeArray'
  | 'space'
  | 'unknown';

export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
  readonly at: number;
}

const CELL = String.raw`\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6}`;
const AREA = new RegExp(
  String.raw`(?:${CELL}(?::${CELL})?|\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}|\$?\d+:\$?\d+)(?![\p{L}\p{N}_.(])`,
  'uy',
);
const IDENTIFIER = /[\p{L}_\\][\p{L}\p{N}_.\\?]*/uy;
const SPACE = /\s+/uy;
const ERROR = /#(?:VALUE!|N\/A|NUM!|DIV\/0!|REF!|NAME\?|NULL!|SPILL!|CALC!|BUSY!)/iuy;
const BOOLEAN = /(?:TRUE|FALSE)(?![\p{L}\p{N}_.(])/iuy;
const NUMBER = /(?:\d+\.?\d*|\.\d+)(?:[Ee][+-]?\d+)?/uy;
const OPERATOR = /<=|>=|<>|[-+*/^&=<>%:#@]/uy;
const MARKS = new Map<string, TokenKind>([
  ['(', 'open'],
  [')', 'close'],
  ['{', 'openArray'],
  ['}', 'closeArray'],
  [',', 'comma'],
  [';', 'semicolon'],
]);

/** After the closing quote of what opens at `at`; doubled quotes stand for themselves. -1 when it never closes. */
function closeOf(text: string, at: number, quote: string): number {
  for (let i = text.indexOf(quote, at + 1); i >= 0; i = text.indexOf(quote, i + 2))
    if (text[i + 1] !== quote) return i + 1;
  return -1;
}

/** After the ] of Table[…], in which one more pair of brackets and 'x may stand; -1 when there is none. */
function tableEnd(text: string, at: number): number {
  let depth = 0;
  for (let i = at; i < text.length; i++) {
    const letter = text[i];
    if (letter === "'") i++;
    else if (letter === '[' && ++depth > 2) return -1;
    else if (letter === ']' && --depth === 0) return i + 1;
  }
  return -1;
}

class Tokenizer {
  readonly tokens: Token[] = [];
  private at: number;
  /** The run of letters, digits and marks last looked at: a shorter token inside it must not mean to look again. */
  private run = { from: 0, to: 0 };
  private bracket = { close: -2, prefixEnd: -1 };
  private isUnclosed = false;

  constructor(private readonly text: string) {
    this.at = text.startsWith('=') ? 1 : 0;
  }

  all(): Token[] {
    while (this.at < this.text.length) this.next();
    return this.tokens;
  }

  private take(kind: TokenKind, end: number): void {
    this.tokens.push({ kind, text: this.text.slice(this.at, end), at: this.at });
    this.at = end;
  }

  private ends(pattern: RegExp, at: number): number {
    pattern.lastIndex = at;
    return pattern.test(this.text) ? pattern.lastIndex : -1;
  }

  private next(): void {
    const { text, at } = this;
    const letter = text[at] ?? '';
    const mark = MARKS.get(letter);
    if (mark) this.take(mark, at + 1);
    else if (letter === '"') {
      const close = closeOf(text, at, '"');
      this.take(close < 0 ? 'unknown' : 'string', close < 0 ? at + 1 : close);
    } else if (letter === "'") this.quotedSheet();
    else if (letter === '[') this.word(this.bracketPrefix());
    else {
      const space = this.ends(SPACE, at);
      const error = space < 0 && letter === '#' ? this.ends(ERROR, at) : -1;
      if (space > 0) this.take('space', space);
      else if (error > 0) this.take('error', error);
      else this.word(this.sheetPrefix());
    }
  }

  private quotedSheet(): void {
    const { text, at } = this;
    const close = this.isUnclosed ? -1 : closeOf(text, at, "'");
    if (close < 0) {
      this.isUnclosed = true;
      this.take('unknown', at + 1);
    } else if (text[close] === '!' && close > at + 2) this.word(close + 1);
    else this.take('unknown', close);
  }

  /** [2]! or [Book.xlsx]Sheet!; -1 when the bracket is something else. */
  private bracketPrefix(): number {
    const { text, at } = this;
    const close = this.bracket.close >= at ? this.bracket.close : text.indexOf(']', at);
    if (close < 0) return -1;
    if (close !== this.bracket.close) {
      const end = this.identifierEnd(close + 1);
      this.bracket = { close, prefixEnd: end > 0 && text[end] === '!' ? end + 1 : -1 };
    }
    if (text[close + 1] === '!')
      return close - at <= 9 && /^\d+$/.test(text.slice(at + 1, close)) ? close + 2 : -1;
    return close > at + 1 ? this.bracket.prefixEnd : -1;
  }

  private sheetPrefix(): number {
    const end = this.identifierEnd(this.at);
    if (end < 0 || this.text[end] !== '!' || /[\\?]/.test(this.text.slice(this.at, end))) return -1;
    return end + 1;
  }

  /** End of the identifier that starts here; -1 when none does. */
  private identifierEnd(at: number): number {
    const { run } = this;
    const first = this.text[at] ?? '';
    if (at >= run.from && at < run.to) return /[\p{L}_\\\ud800-\udbff]/u.test(first) ? run.to : -1;
    const end = this.ends(IDENTIFIER, at);
    if (end > 0) this.run = { from: at, to: end };
    return end;
  }

  /** What stands here, with the sheet or file before it when `prefix` says where that ends. */
  private word(prefix: number): void {
    const { text, at } = this;
    const found = prefix > 0 ? this.named(prefix, true) : undefined;
    const plain = found ?? (text[at] === "'" || text[at] === '[' ? undefined : this.named(at, false));
    if (plain) {
      this.take(plain.kind, plain.end);
      return;
    }
    const number = this.ends(NUMBER, at);
    const operator = number < 0 ? this.ends(OPERATOR, at) : -1;
    if (number > 0) this.take('number', number);
    else if (operator > 0) this.take('operator', operator);
    else this.take('unknown', at + 1);
  }

  private named(
    at: number,
    hasPrefix: boolean,
  ): { readonly kind: TokenKind; readonly end: number } | undefined {
    const { text } = this;
    const start = text[at] === '@' ? at + 1 : at;
    const end = this.identifierEnd(start);
    if (end > 0 && text[end] === '(') return { kind: 'call', end };
    if (start === at && end > 0 && text[end] === '[') {
      const table = tableEnd(text, end);
      if (table > 0 && !/[\\?]/.test(text.slice(at + 1, end))) return { kind: 'reference', end: table };
    }
    const area = this.ends(AREA, at);
    if (area > 0) return { kind: 'reference', end: area };
    if (start !== at || end < 0) return undefined;
    const truth = hasPrefix ? -1 : this.ends(BOOLEAN, at);
    return truth > 0 ? { kind: 'boolean', end: truth } : { kind: 'name', end };
  }
}

export const tokenize = (formula: string): Token[] => new Tokenizer(formula).all();
