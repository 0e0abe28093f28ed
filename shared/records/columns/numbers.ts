/** Numbers that arrive as text are read in one place, for sheets as for forms. */
export { decimalIn, isOpenToBoth, readNumber } from '../../units/numberText';
export type { Decimal } from '../../units/numberText';
