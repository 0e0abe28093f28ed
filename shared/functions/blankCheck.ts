/**
 * Id of the function that tells how a host hands over a blank cell. The shell remembers what it saw, and a
 * workbook that is written asks once.
 */
export const BLANK_CHECK = 'BLANK.CHECK';
