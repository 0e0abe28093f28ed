import type { Measure, Quantity } from '../units/quantities';

/** Limits a publication sets: outside them the answer is #N/A with this reason, never an extrapolation. */
export interface Published {
  readonly min?: number;
  readonly max?: number;
  /** Key in shared/sources.ts. */
  readonly source: string;
  readonly because: string;
}

export interface NumberLimits {
  /** What the argument means, for help and the function list. */
  readonly doc: string;
  readonly min?: number;
  readonly max?: number;
  /** Exclusive lower bound. A blank cell that arrives as 0 is told apart by it. */
  readonly above?: number;
  readonly whole?: boolean;
  readonly published?: Published;
}

interface Base {
  readonly doc: string;
  readonly optional?: boolean;
}

/** One number; a range broadcasts. */
export interface NumberParam<T = unknown> extends Base, NumberLimits {
  readonly kind: 'number';
  readonly quantity: Quantity;
  readonly default?: number;
  /** Type carrier only, never set. */
  readonly carries?: T;
}

/** One of a list of words; a range broadcasts. Letter case does not matter. */
export interface ChoiceParam<T = unknown> extends Base {
  readonly kind: 'choice';
  readonly choices: readonly string[];
  /** Other spellings people type → the choice meant. */
  readonly aliases?: Readonly<Record<string, string>>;
  readonly default?: string;
  readonly carries?: T;
}

/** TRUE or FALSE; a range broadcasts. */
export interface FlagParam extends Base {
  readonly kind: 'flag';
  readonly default: boolean;
}

/** A whole range read as one list of numbers. */
export interface SeriesParam<T = unknown> extends Base, NumberLimits {
  readonly kind: 'series';
  readonly quantity: Quantity;
  /** Series of the same pair are read row by row together; a row that is blank in all of them is skipped. */
  readonly pair?: string;
  /**
   * What a blank in one series of a pair does: 'refuse' names the row, 'drop' leaves the row out (a gap in a
   * log), 'keep' hands it on as NaN (a cell of a log that need not be filled).
   */
  readonly blanks: 'refuse' | 'drop' | 'keep';
  readonly atLeast: number;
  readonly carries?: T;
}

/** A whole range read as one list of texts (names, tags); blank stays ''. */
export interface TextsParam<T = unknown> extends Base {
  readonly kind: 'texts';
  readonly pair?: string;
  readonly atLeast: number;
  readonly carries?: T;
}

export type Param = NumberParam | ChoiceParam | FlagParam | SeriesParam | TextsParam;
export type Params = Readonly<Record<string, Param>>;

type Optional = { readonly optional: true };
type Choices<C extends readonly string[]> = C[number];

export function num<U extends string>(
  quantity: Quantity<U>,
  limits: NumberLimits & Optional,
): NumberParam<Measure<U> | undefined>;
export function num<U extends string>(
  quantity: Quantity<U>,
  limits: NumberLimits & { readonly default?: number },
): NumberParam<Measure<U>>;
export function num(
  quantity: Quantity,
  limits: NumberLimits & { readonly default?: number; readonly optional?: boolean },
): NumberParam {
  return { kind: 'number', quantity, ...limits };
}

interface ChoiceOptions<C extends readonly string[]> {
  readonly doc: string;
  readonly aliases?: Readonly<Record<string, Choices<C>>>;
}
export function choice<const C extends readonly string[]>(
  choices: C,
  options: ChoiceOptions<C> & Optional,
): ChoiceParam<Choices<C> | undefined>;
export function choice<const C extends readonly string[]>(
  choices: C,
  options: ChoiceOptions<C> & { readonly default?: Choices<C> },
): ChoiceParam<Choices<C>>;
export function choice(
  choices: readonly string[],
  options: { doc: string; aliases?: Readonly<Record<string, string>>; default?: string; optional?: boolean },
): ChoiceParam {
  return { kind: 'choice', choices, ...options };
}

export const flag = (defaultValue: boolean, doc: string): FlagParam => ({
  kind: 'flag',
  default: defaultValue,
  doc,
});

interface SeriesOptions extends NumberLimits {
  readonly pair?: string;
  readonly blanks?: 'refuse' | 'drop' | 'keep';
  readonly atLeast?: number;
}
export function series<U extends string>(
  quantity: Quantity<U>,
  options: SeriesOptions & Optional,
): SeriesParam<readonly Measure<U>[] | undefined>;
export function series<U extends string>(
  quantity: Quantity<U>,
  options: SeriesOptions,
): SeriesParam<readonly Measure<U>[]>;
export function series(quantity: Quantity, options: SeriesOptions & { optional?: boolean }): SeriesParam {
  return { kind: 'series', quantity, blanks: 'refuse', atLeast: 1, ...options };
}

interface TextsOptions {
  readonly doc: string;
  readonly pair?: string;
  readonly atLeast?: number;
}
export function texts(options: TextsOptions & Optional): TextsParam<readonly string[] | undefined>;
export function texts(options: TextsOptions): TextsParam<readonly string[]>;
export function texts(options: TextsOptions & { optional?: boolean }): TextsParam {
  return { kind: 'texts', atLeast: 1, ...options };
}

type Carried<P> = P extends FlagParam
  ? boolean
  : P extends { readonly carries?: infer T }
    ? Exclude<T, undefined> | (P extends { readonly carries?: infer V } ? V : never)
    : never;

/** What compute receives: the parameters by name, checked and converted. */
export type ArgsOf<P extends Params> = { readonly [K in keyof P]: Carried<P[K]> };
