/**
 * Splits a formula, as typed in Excel with English names, into tokens. The text of every token is kept:
 * joined, they are the formula.
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

const SHEET = String.raw`(?:'(?:[^']|'')+'|(?:\[[^\]]+\])?[\p{L}_][\p{L}\p{N}_.]*)!`;
const LINK = String.raw`(?:\[\d+\]!)`;
const CELL = String.raw`\$?[A-Za-z]{1,3}\$?[1-9]\d{0,6}`;
const AREA = String.raw`(?:${CELL}(?::${CELL})?|\$?[A-Za-z]{1,3}:\$?[A-Za-z]{1,3}|\$?\d+:\$?\d+)`;
const IDENTIFIER = String.raw`[\p{L}_\\][\p{L}\p{N}_.\\?]*`;
const TABLE = String.raw`[\p{L}_\\][\p{L}\p{N}_.]*\[(?:[^\[\]']|'.|\[(?:[^\[\]']|'.)*\])*\]`;

const PATTERNS: readonly (readonly [TokenKind, RegExp])[] = [
  ['space', /\s+/uy],
  ['string', /"(?:[^"]|"")*"/uy],
  ['error', /#(?:VALUE!|N\/A|NUM!|DIV\/0!|REF!|NAME\?|NULL!|SPILL!|CALC!|BUSY!)/iuy],
  ['call', new RegExp(String.raw`(?:${SHEET}|${LINK})?@?${IDENTIFIER}(?=\()`, 'uy')],
  ['reference', new RegExp(String.raw`(?:${SHEET}|${LINK})?${TABLE}`, 'uy')],
  ['reference', new RegExp(String.raw`(?:${SHEET})?${AREA}(?![\p{L}\p{N}_.(])`, 'uy')],
  ['boolean', /(?:TRUE|FALSE)(?![\p{L}\p{N}_.(])/iuy],
  ['name', new RegExp(String.raw`(?:${SHEET}|${LINK})?${IDENTIFIER}`, 'uy')],
  ['number', /(?:\d+\.?\d*|\.\d+)(?:[Ee][+-]?\d+)?/uy],
  ['operator', /<=|>=|<>|[-+*/^&=<>%:#@]/uy],
  ['open', /\(/uy],
  ['close', /\)/uy],
  ['openArray', /\{/uy],
  ['closeArray', /\}/uy],
  ['comma', /,/uy],
  ['semicolon', /;/uy],
];

export function tokenize(formula: string): Token[] {
  const tokens: Token[] = [];
  let at = formula.startsWith('=') ? 1 : 0;
  while (at < formula.length) {
    const token = next(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return tokens;
}

function next(formula: string, at: number): Token {
  for (const [kind, pattern] of PATTERNS) {
    pattern.lastIndex = at;
    const match = pattern.exec(formula);
    if (match) return { kind, text: match[0], at };
  }
  return { kind: 'unknown', text: formula[at] ?? '', at };
}
