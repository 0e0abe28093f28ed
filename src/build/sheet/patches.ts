/**
 * Changes to the text of the embedded spreadsheet's packages, made while bundling. They are pinned to one
 * version; each names what it looks for, and a test fails when that text is no longer there.
 */
export interface Patch {
  readonly why: string;
  /** The file inside node_modules. */
  readonly file: RegExp;
  readonly find: RegExp;
  readonly put: string;
}

export const PATCHES: readonly Patch[] = [
  {
    why:
      'The engine keeps the parsed form of 5,000 formulas and walks all of them in the same order: a ' +
      'larger book misses every time and parses each formula anew at every edit.',
    file: /@univerjs\/engine-formula\/lib\/es\/index\.js$/,
    find: /const FORMULA_CACHE_LRU_COUNT = 5e3;/,
    put: 'const FORMULA_CACHE_LRU_COUNT = 2e5;',
  },
  {
    why:
      'Class fields compiled to a call of Object.defineProperty are the hottest function of a calculation; ' +
      'a plain assignment does the same where no accessor stands in the way.',
    file: /@univerjs\/[a-z-]+\/lib\/es\/[a-z]+\.js$/,
    // Not "parent": a class of the drawing package has an accessor of that name.
    find: /\b_defineProperty\(this, "(?!parent")([A-Za-z_$][\w$]*)", /g,
    put: '(this.$1 = ',
  },
  {
    why: 'Tables for hyphenating English, built into the drawing package: cells are not hyphenated.',
    file: /@univerjs\/engine-render\/lib\/es\/index\.js$/,
    find: /^const EnUs = \[\n(?:\t.*\n)*?\];$/m,
    put: 'const EnUs = ["0", "{}", []];',
  },
];

/** Files with class fields to rewrite; in each the text must be found. */
export const WITH_FIELDS = ['core', 'engine-formula', 'engine-render', 'sheets', 'sheets-ui', 'ui', 'docs'];

/** The text with every change that belongs to its file. */
export const patched = (file: string, text: string): string =>
  PATCHES.filter((patch) => patch.file.test(file)).reduce(
    (done, { find, put }) => done.replace(find, put),
    text,
  );

/**
 * Packages that the drawing of cells needs only for long documents: what they do there is replaced by a few
 * lines of our own.
 */
export const STUBS: Readonly<Record<string, string>> = {
  'cjk-regex': 'cjk.ts',
  'opentype.js': 'fonts.ts',
  'franc-min': 'language.ts',
};
/** Tables for hyphenating documents in seventy languages; cells are not hyphenated. */
export const HYPHENATION = /^\.\/[a-z]{2,3}(-[a-z0-9]+)*-[\w-]{8}\.js$/;
