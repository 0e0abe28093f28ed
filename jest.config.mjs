const transform = {
  '\\.(ts|mjs|js)$': [
    '@swc/jest',
    { jsc: { target: 'es2022', parser: { syntax: 'typescript' } }, module: { type: 'commonjs' } },
  ],
};
// Packages without a CommonJS build; all but the first come with the embedded spreadsheet.
const ESM_ONLY = [
  'preact',
  'marked',
  'minisearch',
  'idb',
  'hucre',
  '@noble/hashes',
  'lodash-es',
  'nanoid',
  'rbush',
  'quickselect',
  'kdbush',
  'cjk-regex',
  'regexp-util',
  'unicode-regex',
  'franc-min',
  'trigram-utils',
  'n-gram',
  'collapse-white-space',
];
/**
 * Jest runs a file in a context of its own, where each look at a global (Math.exp, Infinity) goes through a slow
 * door: a planned season took two and a half times as long as in plain Node. Handed to every module as local
 * names, these cost nothing.
 */
const FAST_GLOBALS = [
  'Array',
  'Boolean',
  'Float64Array',
  'Infinity',
  'JSON',
  'Map',
  'Math',
  'Number',
  'Object',
  'Set',
  'String',
  'Uint8Array',
];
const common = {
  rootDir: '.',
  transform,
  transformIgnorePatterns: [`/node_modules/(?!(${ESM_ONLY.join('|')})/)`],
  moduleFileExtensions: ['ts', 'mjs', 'js', 'json'],
  testEnvironment: 'node',
  sandboxInjectedGlobals: FAST_GLOBALS,
};
const folder = (name, extra = {}) => ({
  ...common,
  displayName: name,
  testMatch: [`<rootDir>/tests/${name}/**/*.test.ts`],
  ...extra,
});

/** One build and one server for all files of a run. */
const SERVED = {
  globalSetup: '<rootDir>/tests/browser/support/startShared.ts',
  globalTeardown: '<rootDir>/tests/browser/support/stopShared.ts',
};

// quick and browser are `npm test`. quick runs the files of unit, pane and office, many in one context; these three
// run them one by one, as one does while working on a file: `npx jest tests/run`.
export default {
  projects: [
    folder('together', { displayName: 'quick' }),
    {
      ...common,
      displayName: 'unit',
      testMatch: ['<rootDir>/tests/**/*.test.ts'],
      testPathIgnorePatterns: [
        '/node_modules/',
        '<rootDir>/tests/long/',
        '<rootDir>/tests/browser/',
        '<rootDir>/tests/office/',
        '<rootDir>/tests/taskpane/',
        '<rootDir>/tests/together/',
      ],
    },
    folder('pane', { testEnvironment: 'jsdom', testMatch: ['<rootDir>/tests/taskpane/**/*.test.ts'] }),
    folder('office'),
    folder('browser', SERVED),
    // `npm run test:long`: simulations, searches, fuzzing, what takes many seconds, and long walks in a browser.
    folder('long', { testPathIgnorePatterns: ['/node_modules/', '<rootDir>/tests/long/browser/'] }),
    folder('long/browser', { displayName: 'walks', ...SERVED }),
  ],
  // A limit against hangs, far above what any test needs: a busy machine must not fail one.
  testTimeout: 300_000,
};
