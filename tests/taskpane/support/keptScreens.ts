import { basename } from 'node:path';
import { expectKept } from '../../support/kept';
import { drawn } from './drawn';
import type { FakeWorld } from './fakePort';

/**
 * What stood on the page, and what the workbook was asked, at the end of every test of a file: each line where it
 * first came up. Whatever a test is about, a word or a number beside it that moves is noticed.
 */
let world: FakeWorld | undefined;
export const watch = (opened: FakeWorld): void => {
  world = opened;
};

const asked = ({ inserted, words, logged, visited, marks, mended, saved, written, rewritten }: FakeWorld) => [
  ...inserted.map((one) => `inserted ${JSON.stringify(one)}`),
  ...words.map((one) => `wrote ${one}`),
  ...logged.map((row) => `logged ${JSON.stringify(row)}`),
  ...visited.map((one) => `went to ${one}`),
  ...marks.map((one) => `marked ${JSON.stringify(one)}`),
  ...mended.map((one) => `mended ${JSON.stringify(one)}`),
  ...saved.map(({ name }) => `saved ${name}`),
  ...[...written, ...rewritten].map(
    ({ model, suffix }) => `wrote “${suffix}”: ${model.sheets.map(({ name }) => name).join(', ')}`,
  ),
];

const isChosen = process.argv.some((word) => word === '-t' || word.startsWith('--testNamePattern'));
/** The pages of all functions are long, and kept as printed help; words of another language have tests of their own. */
const ELSEWHERE = /^(functions|french.*|keyboard)$/;

/** Begins to keep the screens of a test file; its path is that under tests/taskpane. */
export function keepScreens(file: string): void {
  const name = basename(file, '.test.ts');
  const screens: string[][] = [];
  const known = new Set<string>();
  beforeAll(() => {
    world = undefined;
  });
  afterEach(() => {
    if (!world) return;
    const lines = [...drawn(), ...asked(world)];
    screens.push(lines.filter((line) => !known.has(line) && known.add(line)));
  });
  afterAll(() => {
    // Files under kept/ keep their screens whole; tests chosen by name are not all of them.
    if (!isChosen && !/^(kept|help)\//.test(file) && !ELSEWHERE.test(name) && screens.length > 0)
      expectKept(`screens/${name}`, screens);
  });
}
// A file run by itself; those that run together say whose turn it is.
const [, alone] = /tests\/taskpane\/(.*)$/.exec(expect.getState().testPath ?? '') ?? [];
if (alone !== undefined) keepScreens(alone);
