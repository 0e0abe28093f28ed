/** The language of a text is asked only for hyphenation, which cells do not have. */
export const franc = (): string => 'und';
