/** Font files are not read in cells: the browser measures its own fonts. */
export const parse = (): never => {
  throw new Error('Font files are not read here.');
};
