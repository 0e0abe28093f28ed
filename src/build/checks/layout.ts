/** The top level stays what the readme says it is. */
const ALLOWED = [
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
  'package.json',
  'package-lock.json',
  'manifest.xml',
  'tsconfig.json',
  'eslint.config.mjs',
  'jest.config.mjs',
  'shared',
  'src',
  'taskpane',
  'templates',
  'tests',
];
/** Made by commands, kept out of the repository. */
const MADE = ['node_modules', 'dist', 'coverage', 'site'];

export const layoutFaults = (names: readonly string[]): string[] =>
  names
    .filter(
      (name) =>
        !name.startsWith('.') && !name.endsWith('.log') && !ALLOWED.includes(name) && !MADE.includes(name),
    )
    .map((name) => `${name} does not belong at the top level`);
