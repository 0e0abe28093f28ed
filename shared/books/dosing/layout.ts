import type { DosingKey } from '../../dosing/fields';
import { DOSING_FIELDS, LIMES, YES } from '../../dosing/fields';

/** Where things stand on the dosing sheet, and the claims its formulas make about them. */

export const FIRST_INPUT = 14;
/** The kit's figure in the unit of the formulas. */
export const ALKALINITY = FIRST_INPUT + DOSING_FIELDS.length;
export const FIRST_READING = 15;
export const READINGS = 12;
export const LAST_READING = FIRST_READING + READINGS - 1;
/** Where the one formula stands, and the most rows it spills. */
export const PLAN = 32;
export const PLAN_ROWS = 9;
export const AMMONIA = 44;
export const CARE = 46;
export const DRAWING = 54;

/** The log's columns on this sheet, in the order of the log. */
export const LOG_AT = {
  at: 'G',
  vat: 'H',
  what: 'I',
  grams: 'J',
  ph: 'K',
  again: 'L',
  celsius: 'M',
  who: 'N',
  note: 'O',
} as const;
const rangeOf = (column: string): string => `$${column}$${FIRST_READING}:$${column}$${LAST_READING}`;
export const DOSES = rangeOf(LOG_AT.grams);
export const LEVELS = rangeOf(LOG_AT.ph);
export const AGAIN = rangeOf(LOG_AT.again);
export const MOMENTS = rangeOf(LOG_AT.at);
export const EVENTS = rangeOf(LOG_AT.what);

export const cellOf = (key: DosingKey): string =>
  `$D$${FIRST_INPUT + DOSING_FIELDS.findIndex((field) => field.key === key)}`;

const isKey = (word: string): word is DosingKey => DOSING_FIELDS.some((field) => field.key === word);
/** A formula with {key} in place of the answers. */
export const fx = (formula: string): string =>
  formula.replace(/\{(\w+)\}/g, (whole, word: string) => (isKey(word) ? cellOf(word) : whole));

/** Column by column as BUFFER.NEXT gives them. */
const SPILLED = {
  step: 'B',
  todo: 'C',
  dose: 'D',
  spoons: 'E',
  total: 'F',
  low: 'G',
  likely: 'H',
  high: 'I',
  remark: 'J',
  action: 'K',
  airedLow: 'L',
  aired: 'M',
  airedHigh: 'N',
  odds: 'O',
} as const;
type Spilled = keyof typeof SPILLED;
/** The first row of the answer: what to do now. */
export const now = (key: Spilled): string => `$${SPILLED[key]}$${PLAN}`;
export const spilled = (key: Spilled): string =>
  `$${SPILLED[key]}$${PLAN}:$${SPILLED[key]}$${PLAN + PLAN_ROWS - 1}`;

export const VERDICT = `$H$${AMMONIA}`;
const SAFE = `$G$${AMMONIA}`;

export const IS_FISH_IN = fx(`{stocked}="${YES}"`);
export const IS_LIME = `OR(${LIMES.map((lime) => fx(`{material}="${lime}"`)).join(',')})`;
/** Enough is typed for a first answer. */
export const IS_BEGUN = fx(
  `AND(ISNUMBER({volume}),ISNUMBER({temperature}),ISTEXT({stocked}),COUNT(${LEVELS})>0)`,
);
export const HAS_ANSWER = `ISNUMBER(${now('step')})`;
export const IS_DOSE = `IF(${HAS_ANSWER},${now('step')}=1,FALSE)`;
const IS_TOXIC = fx(`IF(ISNUMBER(${SAFE}),MAX({target},${now('high')})>${SAFE},FALSE)`);
/** Nothing is to be given although a dose was worked out. */
export const IS_HINDERED = fx(
  `IF(ISERROR(${now('dose')}),TRUE,IF(${IS_FISH_IN},OR(${IS_LIME},NOT(ISNUMBER({ammonia})),${IS_TOXIC}),FALSE))`,
);
export const IS_GIVEN = `IF(${IS_DOSE},NOT(${IS_HINDERED}),FALSE)`;
export const LAST_PH = `INDEX(${LEVELS},COUNT(${LEVELS}))`;
