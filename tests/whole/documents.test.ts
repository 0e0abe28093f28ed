import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { CATALOGUE } from '../../shared/catalogue';
import { evaluate } from '../../shared/catalogue/calculation';
import { isUnreadable, readXlsx } from '../../shared/files';
import { isError, isGrid } from '../../shared/base/values';
import { agreesWithPrinted } from '../support/printed';

// What README, DEVELOPERS and the guides tell a reader to type is typed here.
const GUIDES = 'taskpane/help/guides';
const DOCUMENTS = ['README.md', 'DEVELOPERS.md', ...readdirSync(GUIDES).map((name) => `${GUIDES}/${name}`)];
const texts = DOCUMENTS.map((path) => [path, readFileSync(path, 'utf8')] as const);
const scripts = (JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: Record<string, string> })
  .scripts;

const formulasOf = (text: string): string[] =>
  [...text.matchAll(/=SPAWN\.[A-Z.]+\([^`'\n]*\)/g)].map(([all]) => all);
const hasReference = (formula: string): boolean =>
  /[(,:\s][A-Z]{1,2}\d+/.test(formula) || formula.includes('…');

test.each(texts)('%s: every formula without a cell gives an answer', (_path, text) => {
  for (const formula of formulasOf(text).filter((one) => !hasReference(one))) {
    const answer = evaluate(formula);
    const errors = (isGrid(answer) ? answer.flat() : [answer]).filter(isError);
    expect([formula, errors.map(({ message }) => message)]).toEqual([formula, []]);
  }
});

test.each(texts)('%s: every function named is there', (_path, text) => {
  const names = new Set(CATALOGUE.map(({ name }) => name));
  const named = [...text.matchAll(/SPAWN\.[A-Z]+(?:\.[A-Z]+)*(?=\()/g)].map(([name]) => name);
  expect(named.filter((name) => !names.has(name) && name !== 'SPAWN.GAS.PRESSURE')).toEqual([]);
});

test.each(texts)('%s: an answer that is told is the answer', (_path, text) => {
  for (const [, formula = '', told = ''] of text.matchAll(/`(=SPAWN[^`]+)`[^`.]*?gives `([^`]+)`/g)) {
    const answer = evaluate(formula);
    expect([formula, answer, agreesWithPrinted(answer, told)]).toEqual([formula, answer, true]);
  }
});

test.each(texts)('%s: every command is a script, every link leads to a file', (path, text) => {
  const commands = [...text.matchAll(/npm run ([\w:-]+)/g)].map(([, name = '']) => name);
  expect(commands.filter((name) => !(name in scripts))).toEqual([]);
  const links = [...text.matchAll(/\]\(([^)#\s]+)[^)]*\)/g)].map(([, link = '']) => link);
  const local = links.filter(
    (link) => !/^https?:/.test(link) && !/^(index|guide-|trust|changes)[\w-]*\.html/.test(link),
  );
  expect(
    local.filter(
      (link) => ![link, join(dirname(path), link), join(dirname(path), '..', link)].some(existsSync),
    ),
  ).toEqual([]);
});

test.each(texts)('%s: the columns left out of a copy are those of buyers and prices', (_path, text) => {
  const columns = [...text.matchAll(/--blank 'Orders!([A-Z])'/g)].map(([, column = '']) => column);
  const read = readXlsx(new Uint8Array(readFileSync('templates/season-backyard.xlsx')));
  if (isUnreadable(read)) throw new Error(read.fault);
  const cells = read.model.sheets.find(({ name }) => name === 'Orders')?.cells ?? {};
  expect(columns.map((column) => cells[`${column}4`]?.value)).toEqual(
    columns.length === 0 ? [] : ['Buyer', 'Price'],
  );
});

/** Every text of the program that a reader may meet as a label: quoted in the code, or between tags. */
const labels = ((): Set<string> => {
  const files = ['taskpane', 'src/localsheet', 'shared/books'].flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(ts|html)$/.test(name))
      .map((name) => readFileSync(join(folder, name), 'utf8')),
  );
  return new Set(
    files.flatMap((text) => [...text.matchAll(/'([^'\n]+)'|>([^<>\n]+)</g)].map(([, a, b = '']) => a ?? b)),
  );
})();

test.each(texts)('%s: every label that is named is one', (_path, text) => {
  const named = [...text.replaceAll(/\*\*[^*]+\*\*/g, '').matchAll(/\*([^*|\n]+)\*/g)].map(
    ([, label = '']) => label,
  );
  expect(named.filter((label) => !labels.has(label))).toEqual([]);
});
