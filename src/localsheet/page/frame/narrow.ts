/** Screens where the sheet and the pane do not fit beside each other: one of the two is seen. */
export const NARROW = '(max-width: 760px)';
export const isNarrow = (): boolean => window.matchMedia(NARROW).matches;
