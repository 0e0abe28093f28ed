import { expectKept } from '../support/kept';
import { drawn } from './drawn';
import type { FakeWorld } from './fakePort';

/**
 * What stood on the page, and what the workbook was asked, at the end of every test of a file: each line where it
 * first came up. Whatever a test is about, a word or a number beside it that moves is noticed.
 */
const screens: string[][] = [];
const known = new Set<string>();
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
const fileOf = (): string =>
  /tests\/taskpane\/(.*)\.test\.ts$/.exec(expect.getState().testPath ?? '')?.[1] ?? '';

afterEach(() => {
  if (!world) return;
  const lines = [...drawn(), ...asked(world)];
  screens.push(lines.filter((line) => !known.has(line) && known.add(line)));
});
afterAll(() => {
  const file = fileOf();
  // Files under kept/ keep their screens whole; tests chosen by name are not all of them.
  if (!isChosen && !file.includes('/') && !ELSEWHERE.test(file) && screens.length > 0)
    expectKept(`screens/${file}`, screens);
});
