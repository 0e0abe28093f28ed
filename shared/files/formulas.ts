import { columnLetters, columnNumber, MAX_COLUMNS, MAX_ROWS } from '../sheet/formula/address';
import type { Node } from '../sheet/formula/parse';
import { isFault, parse } from '../sheet/formula/parse';
import type { Token } from '../sheet/formula/tokenize';
import { tokenize } from '../sheet/formula/tokenize';
import { walk } from '../sheet/workbook/graph';
import { filePrefix } from './functions';
import { CUSTOM_PREFIX, isOwnTyped, ownName, storedName } from './spelling';

/** Formulas as typed ⇄ as stored. */

export const hasCustomCall = (formula: string): boolean =>
  tokenize(formula).some(({ kind, text }) => kind === 'call' && isOwnTyped(text));

/** Names that LET and LAMBDA introduce; the file marks them. */
function parameters(formula: string): ReadonlySet<string> {
  if (!/\b(?:LET|LAMBDA)\(/i.test(formula)) return new Set();
  const tree = parse(formula);
  const found = new Set<string>();
  const add = (node: Node | undefined): void => {
    if (node?.kind === 'name') found.add(node.name.toLowerCase());
  };
  if (!isFault(tree))
    for (const node of walk(tree)) {
      if (node.kind !== 'call') continue;
      const name = node.name.toUpperCase();
      if (name === 'LET')
        node.args.forEach((arg, i) => {
          if (i % 2 === 0 && i < node.args.length - 1) add(arg);
        });
      if (name === 'LAMBDA') node.args.slice(0, -1).forEach(add);
    }
  return found;
}

/** A reference followed by # is the whole spilled answer there. */
const isSpillMark = (token: Token | undefined): boolean => token?.kind === 'operator' && token.text === '#';

export function toFile(formula: string): string {
  const tokens = tokenize(formula);
  const named = parameters(formula);
  return tokens
    .map((token, i) => {
      const next = tokens[i + 1];
      switch (token.kind) {
        case 'call': {
          const name = token.text.replace(/^@/, '');
          return isOwnTyped(name) ? storedName(name) : filePrefix(name) + name;
        }
        case 'reference':
          return isSpillMark(next) ? `_xlfn.ANCHORARRAY(${token.text})` : token.text;
        case 'operator':
          return token.text === '#' && tokens[i - 1]?.kind === 'reference'
            ? ''
            : token.text === '@'
              ? ''
              : token.text;
        case 'name':
          return named.has(token.text.toLowerCase()) ? `_xlpm.${token.text}` : token.text;
        default:
          return token.text;
      }
    })
    .join('');
}

/** _xlfn.ANCHORARRAY(A1) → A1#, _xlfn.SINGLE(x) → x. */
const unwrapMarks = (formula: string): string =>
  formula.replace(/_xlfn\.ANCHORARRAY\(([^()]+)\)/gi, '$1#').replace(/_xlfn\.SINGLE\(([^()]+)\)/gi, '$1');

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
