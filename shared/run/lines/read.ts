import { callFunction } from '../../catalogue/calculation';
import type { Operand } from '../../sheet/formula';
import type { Compiled } from '../../sheet/formula/compile';
import { compile } from '../../sheet/formula/compile';
import type { RunLine } from './declare';
import { filled } from './declare';

/** The values of one run: given ones and, as they are asked for, those of lines. */
type Scope = (Operand | undefined)[];
const PREFIX = 'of_';

/** Lines as a table of closures: reading one works out only what it hangs on, once. */
export class LineTable<K extends string> {
  private readonly places = new Map<string, number>();
  private readonly lines: (Compiled<Scope> | undefined)[] = [];

  constructor(private readonly declared: Readonly<Record<K, RunLine>>) {
    const keys = Object.keys(declared) as K[];
    for (const key of keys) this.placeOf(key);
    for (const key of keys)
      this.lines[this.placeOf(key)] = compile<Scope>(
        filled(declared[key].formula, (name) => `${PREFIX}${name}`),
        {
          name: (name) => this.readerOf(this.placeOf(name.slice(PREFIX.length))),
          call: callFunction,
        },
      );
  }

  /** Everything its lines name that is no line. */
  get needs(): readonly string[] {
    return [...this.places.keys()].filter((key) => !(key in this.declared));
  }

  /** A run: what is given, laid out once. A key not given is a blank cell. */
  open(given: Readonly<Record<string, Operand | undefined>>): LineReader<K> {
    const scope: Scope = new Array<Operand | undefined>(this.places.size);
    for (const [key, place] of this.places)
      if (this.lines[place] === undefined) scope[place] = given[key] ?? null;
    return new LineReader(scope, this.places, this.lines);
  }

  private placeOf(key: string): number {
    let place = this.places.get(key);
    if (place === undefined) this.places.set(key, (place = this.places.size));
    return place;
  }
  private readerOf(place: number): Compiled<Scope> {
    const { lines } = this;
    return (scope) => (scope[place] ??= lines[place]?.(scope) ?? null);
  }
}

export class LineReader<K extends string> {
  constructor(
    private readonly scope: Scope,
    private readonly places: ReadonlyMap<string, number>,
    private readonly lines: readonly (Compiled<Scope> | undefined)[],
  ) {}

  /** The value of a line, or of what was given. */
  get(key: K | (string & {})): Operand {
    const place = this.places.get(key);
    if (place === undefined) throw new Error(`There is no line ${key}.`);
    return (this.scope[place] ??= this.lines[place]?.(this.scope) ?? null);
  }
  has(key: string): boolean {
    return this.places.has(key);
  }
  /** A number; NaN where there is none. */
  number(key: K | (string & {})): number {
    const value = this.get(key);
    return typeof value === 'number' ? value : NaN;
  }
}
