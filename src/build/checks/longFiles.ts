/** Lines a file may have before it says at its head why it is long. */
export const LONG = 250;

export interface SourceText {
  readonly path: string;
  readonly text: string;
}

/** Files over the limit whose first line does not begin with "// Long: " and a reason. */
export const longFileFaults = (files: readonly SourceText[]): string[] =>
  files
    .map(({ path, text }) => ({ path, text, lines: text.split('\n').length - 1 }))
    .filter(({ text, lines }) => lines > LONG && !/^\/\/ Long: \S{3}/.test(text))
    .map(
      ({ path, lines }) =>
        `${path} has ${lines} lines, ${LONG} at most: split it where the story splits, or begin it with "// Long: " and the reason`,
    );
