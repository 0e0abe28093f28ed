/** So many places are read; more are counted. */
const FEW = 6;
/** "Log!B2; Log!B3 and 4 more". */
export const placesText = (all: readonly string[]): string =>
  `${all.slice(0, FEW).join('; ')}${all.length > FEW ? ` and ${all.length - FEW} more` : ''}`;
