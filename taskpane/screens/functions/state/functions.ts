import type { Family, SheetFunction } from '../../../../shared/functions/define';
import { CATALOGUE, findFunction } from '../../../../shared/catalogue';
import type { Found } from '../../../help/finding/finder';
import { find } from '../../../help/finding/finder';
import type { Intent } from '../../../help/finding/intents';
import type { RangeReading } from '../../../host/port';

export interface FunctionsState {
  readonly search: string;
  readonly family: Family | 'all';
  /** Name of the function whose page is open. */
  readonly open: string | undefined;
  /** What stands in each argument field, by parameter name. */
  readonly texts: Readonly<Record<string, string>>;
  /** What the references among them hold, by reference text. */
  readonly readings: Readonly<Record<string, ArgumentReading>>;
  /** Its name and its unit are written beside the answer. */
  readonly isNamed: boolean;
}

export type ArgumentReading =
  | { readonly kind: 'read'; readonly range: RangeReading }
  | { readonly kind: 'failed'; readonly sentence: string };

export const initialFunctions: FunctionsState = {
  search: '',
  family: 'all',
  open: undefined,
  texts: {},
  readings: {},
  isNamed: false,
};

export const FAMILIES: readonly Family[] = [...new Set(CATALOGUE.map((fn) => fn.family))];

/** What answers the question typed, best first; all of a subject while nothing is typed. */
export interface Matches {
  readonly list: readonly SheetFunction[];
  readonly intent: Intent | undefined;
  readonly fits: boolean;
}
let known: { readonly search: string; readonly found: Found } | undefined;

export function matching({ search, family }: FunctionsState): Matches {
  const inFamily = (fn: SheetFunction): boolean => family === 'all' || fn.family === family;
  if (search.trim() === '')
    return { list: family === 'all' ? [] : CATALOGUE.filter(inFamily), intent: undefined, fits: true };
  // Views ask at every redraw; the answer is the same until the question changes.
  if (known?.search !== search) known = { search, found: find(search, CATALOGUE.length) };
  const { functions, intent, fits } = known.found;
  return { list: functions.filter(inFamily).slice(0, NEAREST), intent, fits };
}
/** So many are shown of what was found. */
export const NEAREST = 5;

export const openFunction = (state: FunctionsState): SheetFunction | undefined =>
  state.open ? findFunction(state.open) : undefined;
