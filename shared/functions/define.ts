import type { Quantity } from '../units/quantities';
import type { Cell, CellError, ErrorCode, Grid } from '../base/values';
import type { ArgsOf, Param, Params } from './params';
import { flag } from './params';

export type Family = 'Water' | 'Timing' | 'Brood fish' | 'Counting' | 'Rearing' | 'Plan and money' | 'Checks';

export interface Column {
  readonly title: string;
  readonly quantity: Quantity;
  readonly doc?: string;
}
export type Columns = Readonly<Record<string, Column>>;
export const column = (title: string, quantity: Quantity, doc?: string): Column =>
  doc ? { title, quantity, doc } : { title, quantity };

/** One value per row of the arguments. */
export interface ValueReturn {
  readonly kind: 'value';
  readonly quantity: Quantity;
  readonly doc: string;
}
/** A few values side by side per row of the arguments (an estimate with its interval). */
export interface FieldsReturn<C extends Columns = Columns> {
  readonly kind: 'fields';
  readonly columns: C;
  readonly doc: string;
}
/** A table with a heading row that spills downwards. */
export interface RowsReturn<C extends Columns = Columns> {
  readonly kind: 'rows';
  readonly columns: C;
  readonly doc: string;
}
export type Return = ValueReturn | FieldsReturn | RowsReturn;

export const value = (quantity: Quantity, doc: string): ValueReturn => ({ kind: 'value', quantity, doc });
export const fields = <const C extends Columns>(columns: C, doc: string): FieldsReturn<C> => ({
  kind: 'fields',
  columns,
  doc,
});
export const rows = <const C extends Columns>(columns: C, doc: string): RowsReturn<C> => ({
  kind: 'rows',
  columns,
  doc,
});

type Scalar = number | string | boolean | CellError;
type Row<C extends Columns> = { readonly [K in keyof C]: Scalar | null };
/** What compute gives back; a CellError stands for the whole answer. */
export type ResultOf<R extends Return> =
  R extends FieldsReturn<infer C>
    ? Row<C> | CellError
    : R extends RowsReturn<infer C>
      ? readonly Row<C>[] | CellError
      : Scalar;

/**
 * An example is a test and a help text. `gives` is printed text: a number must agree with the computed one to
 * half a unit of its last printed digit; a grid lists the rows of a table or of fields, without headings.
 */
export interface Example {
  readonly args: readonly (Cell | Grid)[];
  readonly gives?: string | readonly (readonly string[])[];
  readonly fails?: { readonly code: ErrorCode; readonly says: string };
  /** Why this is the answer: the source's table, or the reasoning. */
  readonly because: string;
}

export interface FunctionSpec<P extends Params = Params, R extends Return = Return> {
  /** After the prefix: BUFFER.DOSE. Never changes once released. */
  readonly id: string;
  readonly family: Family;
  /** One line; Excel shows it while typing. */
  readonly summary: string;
  /** In the order they are typed. */
  readonly params: P;
  readonly returns: R;
  /** Where the answer holds, in words. */
  readonly valid: string;
  /** Keys of shared/sources.ts. */
  readonly sources: readonly string[];
  /** Keys of shared/cautions.ts: what can hurt someone or fish. */
  readonly cautions?: readonly string[];
  /** More than the summary: the method, the traps. */
  readonly help?: string;
  readonly examples: readonly Example[];
  /** Questions it answers, in the plain words people type; the finder reads them. */
  readonly questions?: readonly string[];
  /** Raised when the same arguments give another number. */
  readonly version?: number;
  /**
   * Parameters that came after the function was released: they stand behind the headings, so that old calls
   * keep their places.
   */
  readonly later?: readonly (keyof P & string)[];
  /**
   * Equivalent formula of built-in functions, parameters as {name}; lets a shared copy stay alive without the
   * add-in.
   */
  readonly native?: string;
  readonly compute: (args: ArgsOf<P>) => ResultOf<R>;
}

/** A declared function with its types erased, as every derived thing reads it. */
export interface SheetFunction {
  readonly id: string;
  readonly name: string;
  readonly family: Family;
  readonly summary: string;
  readonly params: readonly NamedParam[];
  readonly returns: Return;
  readonly valid: string;
  readonly sources: readonly string[];
  readonly cautions: readonly string[];
  readonly help: string;
  readonly examples: readonly Example[];
  readonly questions: readonly string[];
  readonly version: number;
  readonly native: string | undefined;
  readonly compute: (args: Readonly<Record<string, unknown>>) => unknown;
}
export type NamedParam = Param & { readonly name: string };

export const PREFIX = 'SPAWN';
/** Every function that returns more than one column has it behind the parameters it was released with. */
export const HEADINGS = 'headings';

const headings = (returns: Return): Params =>
  returns.kind === 'value'
    ? {}
    : {
        [HEADINGS]: flag(
          returns.kind === 'rows',
          'TRUE puts a heading row with units on top, FALSE leaves it out.',
        ),
      };

export function defineFunction<const P extends Params, const R extends Return>(
  spec: FunctionSpec<P, R>,
): SheetFunction {
  const isLater = ([name]: readonly [string, unknown]): boolean => spec.later?.includes(name) === true;
  const given = Object.entries(spec.params);
  const params = [
    ...given.filter((entry) => !isLater(entry)),
    ...Object.entries(headings(spec.returns)),
    ...given.filter(isLater),
  ];
  return {
    cautions: [],
    help: '',
    questions: [],
    version: 1,
    native: undefined,
    ...(spec as unknown as Omit<
      SheetFunction,
      'name' | 'params' | 'cautions' | 'help' | 'questions' | 'version' | 'native'
    >),
    name: `${PREFIX}.${spec.id}`,
    params: params.map(([name, param]) => ({ ...param, name })),
  };
}
