/** First and last day of a season: 1 January 2000 and 31 December 2099 as a sheet counts them. */
export const FIRST_DAY = 36_526;
export const LAST_DAY = 73_050;
