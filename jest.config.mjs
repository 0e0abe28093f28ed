const transform = {
  '\\.(ts|mjs|js)$': ['@swc/jest', { jsc: { target: 'es2022', parser: { syntax: 'typescript' } }, module: { type: 'commonjs' } }],
};
const common = {
  rootDir: '.',
  transform,
  transformIgnorePatterns: ['/node_modules/(?!hucre/)'],
  moduleFileExtensions: ['ts', 'mjs', 'js', 'json'],
  testEnvironment: 'node',
};
const folder = (name, extra = {}) => ({ ...common, displayName: name, testMatch: [`<rootDir>/tests/${name}/**/*.test.ts`], ...extra });

// unit: everything that runs in plain Node in seconds. The others start a browser or LibreOffice.
export default {
  projects: [
    {
      ...common,
      displayName: 'unit',
      testMatch: ['<rootDir>/tests/**/*.test.ts'],
      testPathIgnorePatterns: ['/node_modules/', '<rootDir>/tests/browser/', '<rootDir>/tests/office/', '<rootDir>/tests/pane/'],
    },
    folder('pane', { testEnvironment: 'jsdom' }),
    folder('office'),
    folder('browser'),
  ],
};
