import { columnLetters, columnNumber, MAX_COLUMNS, MAX_ROWS } from '../sheet/formula/address';
import type { Token } from '../sheet/formula/tokenize';
import { tokenize } from '../sheet/formula/tokenize';
import { filePrefix } from './functions';
import { CUSTOM_PREFIX, isOwnTyped, ownName, storedName } from './spelling';

/** Formulas as typed ⇄ as stored. */

export const hasCustomCall = (formula: string): boolean =>
  tokenize(formula).some(({ kind, text }) => kind === 'call' && isOwnTyped(text));

interface OpenCall {
  readonly name: string;
  /** Arguments so far, each as its only name or undefined. */
  readonly names: (string | undefined)[];
  only: Token | undefined;
  count: number;
}

/** Names that LET and LAMBDA introduce; the file marks them. Read from the tokens, so that no syntax is too new. */
function parameters(tokens: readonly Token[]): ReadonlySet<string> {
  const found = new Set<string>();
  const open: OpenCall[] = [];
  const close = (one: OpenCall): void => {
    one.names.push(one.count === 1 && one.only?.kind === 'name' ? one.only.text : undefined);
  };
  for (const [i, token] of tokens.entries()) {
    const top = open.at(-1);
    if (token.kind === 'open' || token.kind === 'openArray') {
      const before = tokens[i - 1];
      const name = before?.kind === 'call' ? before.text.toUpperCase() : '';
      if (top) top.count++;
      open.push({ name, names: [], only: undefined, count: 0 });
    } else if (token.kind === 'close' || token.kind === 'closeArray') {
      const ended = open.pop();
      if (!ended) continue;
      close(ended);
      introduced(ended).forEach((name) => found.add(name.toLowerCase()));
    } else if (token.kind === 'comma' && top) {
      close(top);
      top.only = undefined;
      top.count = 0;
    } else if (token.kind !== 'space' && top) {
      top.only = token;
      top.count++;
    }
  }
  return found;
}

const introduced = ({ name, names }: OpenCall): string[] =>
  names
    .slice(0, -1)
    .filter((_, i) => name === 'LAMBDA' || (name === 'LET' && i % 2 === 0))
    .filter((one) => one !== undefined);

/** @A1:A3 is the one cell of the range beside the formula; a file says so with SINGLE. */
const isSingleMark = (tokens: readonly Token[], i: number): boolean =>
  tokens[i]?.kind === 'operator' &&
  tokens[i].text === '@' &&
  (tokens[i + 1]?.kind === 'reference' || tokens[i + 1]?.kind === 'name');

/** A reference followed by # is the whole spilled answer there. */
const isSpillMark = (token: Token | undefined): boolean => token?.kind === 'operator' && token.text === '#';

/** A parameter of LET or LAMBDA may itself be called: LET(f,LAMBDA(x,x+1),f(2)). */
function callInFile(text: string, named: ReadonlySet<string>): string {
  const name = text.replace(/^@/, '');
  if (named.has(name.toLowerCase())) return `_xlpm.${name}`;
  return isOwnTyped(name) ? storedName(name) : filePrefix(name) + name;
}

const NO_NAMES: ReadonlySet<string> = new Set();

export function toFile(formula: string): string {
  const tokens = tokenize(formula);
  const named = /\b(?:LET|LAMBDA)\(/i.test(formula) ? parameters(tokens) : NO_NAMES;
  return tokens
    .map((token, i) => {
      const next = tokens[i + 1];
      switch (token.kind) {
        case 'reference': {
          const text = isSpillMark(next) ? `_xlfn.ANCHORARRAY(${token.text})` : token.text;
          return isSingleMark(tokens, i - 1) ? `_xlfn.SINGLE(${text})` : text;
        }
        case 'operator':
          return token.text === '#' && tokens[i - 1]?.kind === 'reference'
            ? ''
            : token.text === '@'
              ? ''
              : token.text;
        case 'name': {
          const text = named.has(token.text.toLowerCase()) ? `_xlpm.${token.text}` : token.text;
          return isSingleMark(tokens, i - 1) ? `_xlfn.SINGLE(${text})` : text;
        }
        case 'call':
          return callInFile(token.text, named);
        default:
          return token.text;
      }
    })
    .join('');
}

/** _xlfn.ANCHORARRAY(A1) → A1#, _xlfn.SINGLE(A1:A3) → @A1:A3. */
const unwrapMarks = (formula: string): string =>
  formula.replace(/_xlfn\.ANCHORARRAY\(([^()]+)\)/gi, '$1#').replace(/_xlfn\.SINGLE\(([^()]+)\)/gi, '@$1');

const FOREIGN = /^(?:\[\d+\]|'[^']+'|[^!]+)!(?=_xldudf_)/i;

function typedWord(word: string): string {
  const bare = word.replace(FOREIGN, '');
  const own = ownName(bare);
  if (own?.isStored) return own.name;
  return bare.slice(0, CUSTOM_PREFIX.length).toLowerCase() === CUSTOM_PREFIX
    ? bare
    : word.replace(/^_xlfn\.(?:_xlws\.)?|^_xlws\.|^_xlpm\./i, '');
}

/** The formula as typed, from the text of a file; starts with =. */
export function fromFile(text: string): string {
  const tokens = tokenize(`=${unwrapMarks(text)}`);
  return `=${tokens
    .map(({ kind, text: word }) => (kind === 'call' || kind === 'name' ? typedWord(word) : word))
    .join('')}`;
}

interface Corner {
  readonly isColumnFixed: boolean;
  readonly column: string;
  readonly isRowFixed: boolean;
  readonly row: string;
}
const CORNER = /^(\$?)([A-Za-z]{0,3})(\$?)(\d{0,7})$/;
const cornerOf = (text: string): Corner | undefined => {
  const match = CORNER.exec(text);
  // A row alone ($5) gives its $ to the first group.
  return match
    ? {
        isColumnFixed: match[1] === '$',
        column: match[2] ?? '',
        isRowFixed: match[3] === '$' || (match[2] === '' && match[1] === '$'),
        row: match[4] ?? '',
      }
    : undefined;
};

function shiftCorner(text: string, down: number, right: number): string {
  const corner = cornerOf(text);
  if (!corner) return text;
  const column = corner.column === '' ? 0 : columnNumber(corner.column) + (corner.isColumnFixed ? 0 : right);
  const row = corner.row === '' ? 0 : Number(corner.row) - 1 + (corner.isRowFixed ? 0 : down);
  if (column < 0 || column >= MAX_COLUMNS || row < 0 || row >= MAX_ROWS) return '#REF!';
  const letters = corner.column === '' ? '' : `${corner.isColumnFixed ? '$' : ''}${columnLetters(column)}`;
  return letters + (corner.row === '' ? '' : `${corner.isRowFixed ? '$' : ''}${row + 1}`);
}

export const pieceTokens = (formula: string): Token[] => tokenize(`=${formula}`);

/** Tokens of a formula as they read in another cell: relative references move along. */
export const movedFormula = (tokens: readonly Token[], down: number, right: number): string =>
  tokens
    .map(({ kind, text }) => {
      if (kind !== 'reference' || text.includes('[')) return text;
      const at = text.lastIndexOf('!') + 1;
      return (
        text.slice(0, at) +
        text
          .slice(at)
          .split(':')
          .map((corner) => shiftCorner(corner, down, right))
          .join(':')
      );
    })
    .join('');

export const shifted = (formula: string, down: number, right: number): string =>
  `=${movedFormula(tokenize(formula), down, right)}`;
