import type { Cell, ErrorCode } from '../../base/values';
import type { Token } from './tokenize';
import { tokenize } from './tokenize';

export type ParsedNode =
  | { readonly kind: 'literal'; readonly value: Cell }
  | { readonly kind: 'array'; readonly rows: readonly (readonly Cell[])[] }
  | { readonly kind: 'reference'; readonly text: string }
  | { readonly kind: 'spill'; readonly anchor: string }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'call'; readonly name: string; readonly args: readonly (ParsedNode | undefined)[] }
  | { readonly kind: 'unary'; readonly operator: string; readonly of: ParsedNode }
  | {
      readonly kind: 'binary';
      readonly operator: string;
      readonly left: ParsedNode;
      readonly right: ParsedNode;
    };

/** What is wrong with the text and where, as a sentence. */
export interface SyntaxFault {
  readonly fault: string;
  readonly at: number;
}
export const isFault = (parsed: ParsedNode | SyntaxFault): parsed is SyntaxFault => 'fault' in parsed;

class Fault extends Error {
  constructor(
    message: string,
    readonly at: number,
  ) {
    super(message);
  }
}

const BINARY: readonly (readonly string[])[] = [
  ['=', '<>', '<', '>', '<=', '>='],
  ['&'],
  ['+', '-'],
  ['*', '/'],
  ['^'],
];
const MAX_DEPTH = 200;

/**
 * Recursive descent over the tokens; precedence as in Excel (a sign binds tighter than ^, % tighter still).
 */
class Parser {
  private index = 0;
  private depth = 0;
  constructor(
    private readonly tokens: readonly Token[],
    private readonly length: number,
  ) {}

  whole(): ParsedNode {
    const node = this.binary(0);
    const rest = this.peek();
    if (rest) throw new Fault(`"${rest.text}" is not expected here`, rest.at);
    return node;
  }

  private peek(): Token | undefined {
    return this.tokens[this.index];
  }
  private isAt(kind: Token['kind'], text?: string): boolean {
    const token = this.peek();
    return token?.kind === kind && (text === undefined || token.text === text);
  }
  private take(): Token {
    const token = this.peek();
    if (!token) throw new Fault('the formula ends too early', this.length);
    this.index++;
    return token;
  }
  private expect(kind: Token['kind'], what: string): void {
    const token = this.peek();
    if (token?.kind !== kind) throw new Fault(`${what} is missing`, token?.at ?? this.length);
    this.index++;
  }

  private binary(level: number): ParsedNode {
    const operators = BINARY[level];
    if (!operators) return this.unary();
    let left = this.binary(level + 1);
    for (
      let token = this.peek();
      token?.kind === 'operator' && operators.includes(token.text);
      token = this.peek()
    ) {
      this.index++;
      left = { kind: 'binary', operator: token.text, left, right: this.binary(level + 1) };
    }
    return left;
  }

  private unary(): ParsedNode {
    if (++this.depth > MAX_DEPTH)
      throw new Fault('the formula is nested too deeply', this.peek()?.at ?? this.length);
    const token = this.peek();
    let node: ParsedNode;
    if (token?.kind === 'operator' && ['-', '+', '@'].includes(token.text)) {
      this.index++;
      const of = this.unary();
      node = token.text === '@' ? of : { kind: 'unary', operator: token.text, of };
    } else node = this.percent();
    this.depth--;
    return node;
  }

  private percent(): ParsedNode {
    let node = this.primary();
    for (let count = 0; this.isAt('operator', '%'); this.index++) {
      if (++count > MAX_DEPTH)
        throw new Fault('the formula is nested too deeply', this.peek()?.at ?? this.length);
      node = { kind: 'unary', operator: '%', of: node };
    }
    return node;
  }

  private primary(): ParsedNode {
    const token = this.take();
    switch (token.kind) {
      case 'open': {
        const inner = this.binary(0);
        this.expect('close', 'a closing bracket )');
        return inner;
      }
      case 'openArray':
        return this.array();
      case 'call':
        return this.call(token);
      case 'reference':
        return this.reference(token);
      case 'name':
        return { kind: 'name', name: token.text };
      default:
        return { kind: 'literal', value: literal(token) };
    }
  }

  private reference(token: Token): ParsedNode {
    if (!this.isAt('operator', '#')) return { kind: 'reference', text: token.text };
    this.index++;
    return { kind: 'spill', anchor: token.text };
  }

  private call(token: Token): ParsedNode {
    this.expect('open', 'an opening bracket (');
    const args: (ParsedNode | undefined)[] = [];
    if (!this.isAt('close')) {
      do args.push(this.isAt('comma') || this.isAt('close') ? undefined : this.binary(0));
      while (this.isAt('comma') && this.index++ >= 0);
    }
    this.expect('close', 'a closing bracket )');
    return { kind: 'call', name: token.text.replace(/^@/, ''), args };
  }

  private array(): ParsedNode {
    const rows: Cell[][] = [[]];
    for (;;) {
      const sign = this.isAt('operator', '-') && this.index++ >= 0 ? -1 : 1;
      const token = this.take();
      const value = literal(token);
      rows.at(-1)?.push(typeof value === 'number' ? sign * value : value);
      if (this.isAt('comma')) this.index++;
      else if (this.isAt('semicolon') && this.index++ >= 0) rows.push([]);
      else break;
    }
    const close = this.peek()?.at ?? this.length;
    this.expect('closeArray', 'a closing brace }');
    if (rows.some((row) => row.length !== rows[0]?.length))
      throw new Fault('the rows of the array are not equally long', close);
    return { kind: 'array', rows };
  }
}

function literal(token: Token): Cell {
  switch (token.kind) {
    case 'number': {
      const value = Number(token.text);
      return Number.isFinite(value) ? value : { error: '#NUM!' };
    }
    case 'string':
      return token.text.slice(1, -1).replaceAll('""', '"');
    case 'boolean':
      return token.text.toUpperCase() === 'TRUE';
    case 'error':
      return { error: token.text.toUpperCase() as ErrorCode };
    default:
      throw new Fault(
        token.kind === 'unknown' && token.text === '"'
          ? 'a closing quotation mark is missing'
          : `"${token.text}" is not expected here`,
        token.at,
      );
  }
}

export function parse(formula: string): ParsedNode | SyntaxFault {
  const tokens = tokenize(formula).filter((token) => token.kind !== 'space');
  try {
    return new Parser(tokens, formula.length).whole();
  } catch (error) {
    if (error instanceof Fault) return { fault: error.message, at: error.at };
    throw error;
  }
}
