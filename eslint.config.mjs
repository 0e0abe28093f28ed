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

/** Statements of a whole file: what a reader has to hold, however wide or tall it is printed. */
const fileStatements = {
  meta: {
    schema: [{ type: 'integer' }],
    messages: { many: 'The file holds {{n}} statements, at most {{max}}.' },
  },
  create(context) {
    const max = context.options[0];
    let n = 0;
    return {
      '*'(node) {
        if (/Statement$|^VariableDeclaration$/.test(node.type) && node.type !== 'BlockStatement') n += 1;
      },
      'Program:exit'(node) {
        if (n > max) context.report({ node, messageId: 'many', data: { n, max } });
      },
    };
  },
};

const size = (statements) => ({
  'spawnbook/file-statements': ['error', statements],
  'max-statements': ['error', 30],
  complexity: ['error', 14],
  'max-len': [
    'error',
    { code: 120, ignoreTemplateLiterals: true, ignoreRegExpLiterals: true, ignoreUrls: true },
  ],
});

export default tseslint.config(
  { ignores: ['dist/', '.cache/', 'site/', 'node_modules/', 'coverage/'] },
  ...tseslint.configs.strict,
  {
    plugins: { spawnbook: { rules: { 'file-statements': fileStatements } } },
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
      ...size(240),
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
              // Only zod, and for files as bytes pure codecs and hashes (no I/O of their own).
              regex: '^(?!\\.{1,2}/|zod$|fflate$|hucre(/|$)|papaparse$|@noble/hashes/)',
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
    files: [
      'src/build/**',
      'src/cli/**',
      'src/localsheet/serve.ts',
      'src/localsheet/buildSite.ts',
      'tests/**',
    ],
    rules: { 'no-console': 'off', 'max-statements': 'off', 'spawnbook/file-statements': 'off' },
  },
  {
    // Rows of a test are read as a table: a long text stays in its row.
    files: ['tests/**'],
    rules: { 'max-len': 'off' },
  },
);
