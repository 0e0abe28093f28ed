import tseslint from 'typescript-eslint';

/** Globals that would make the engine depend on where or when it runs. */
const impure = [
  'window',
  'document',
  'navigator',
  'localStorage',
  'fetch',
  'process',
  'Buffer',
  'require',
  'setTimeout',
  'setInterval',
  'performance',
  'console',
  'crypto',
  'Office',
  'Excel',
  'OfficeExtension',
  'CustomFunctions',
  'globalThis',
];

const size = (lines) => ({
  'max-lines': ['error', { max: lines, skipBlankLines: true, skipComments: true }],
  'max-lines-per-function': ['error', { max: 60, skipBlankLines: true, skipComments: true }],
  complexity: ['error', 14],
});

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', 'coverage/'] },
  ...tseslint.configs.strict,
  {
    languageOptions: { ecmaVersion: 2023, sourceType: 'module' },
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-dynamic-delete': 'off',
      '@typescript-eslint/consistent-type-imports': 'error',
      'no-console': 'error',
      eqeqeq: 'error',
      'prefer-const': 'error',
      'no-restricted-exports': 'off',
      ...size(300),
    },
  },
  {
    // The fence: the pure engine knows no Office, DOM, clock, chance or I/O.
    files: ['shared/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', ...impure],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'pass a seed' },
        { object: 'Date', property: 'now', message: 'pass the time in' },
      ],
      'no-restricted-syntax': [
        'error',
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'pass the time in' },
        { selector: "CallExpression[callee.name='Date']", message: 'pass the time in' },
      ],
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              // Only zod, and for files as bytes three pure codecs (no I/O of their own).
              regex: '^(?!\\.{1,2}/|zod$|fflate$|hucre(/|$)|papaparse$)',
              message: 'shared/ imports nothing but zod and the pure codecs',
            },
            { regex: '^(\\.\\./)+(src|taskpane|templates|tests)/', message: 'arrows run towards shared/' },
          ],
        },
      ],
    },
  },
  {
    files: ['templates/**/*.ts', 'taskpane/**/*.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        { patterns: [{ regex: '/(src|tests)/', message: 'arrows run towards shared/' }] },
      ],
    },
  },
  {
    files: ['src/build/**', 'src/cli/**', 'src/localsheet/serve.ts', 'tests/**'],
    rules: { 'no-console': 'off', 'max-lines-per-function': 'off' },
  },
);
