import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import { CATALOGUE } from '../../../shared/catalogue';
import { callFunction, evaluate } from '../../../shared/catalogue/calculation';
import { freeze, inspect } from '../../../shared/catalogue/sharing';
import type { Cell, Grid } from '../../../shared/base/values';
import { isGrid } from '../../../shared/base/values';
import { readXlsx } from '../../../shared/files';
import { checkFile } from '../../../shared/records';
import { readTypedNumber } from '../../../shared/units/typedNumber';
import { readTypedHour } from '../../../shared/units/typedTime';
import { seeded } from '../../files/share/support/seeded';
import { OPTIONS, zip } from '../../files/share/support/parts';

/**
 * What nobody would write: single bits turned, workbooks of three other programs changed inside their XML, functions
 * and formulas with anything at all. Nothing throws, nothing is silently another number. `SEED=… npm run test:long`
 * tries others; `LONG=full` many more.
 */
jest.setTimeout(1_800_000);
const SEED = Number(process.env.SEED ?? 20_261_128);
const TIMES = process.env.LONG === 'full' ? 12 : 1;
beforeAll(() => {
  process.stdout.write(`seed ${SEED}\n`);
});

const FOLDER = join(__dirname, '..', '..', 'data', 'files');
const FILES = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.xlsx'))
  .map((name) => [name, new Uint8Array(readFileSync(join(FOLDER, name)))] as const);
const pick = <T>(list: readonly T[], chance: () => number): T =>
  list[Math.floor(chance() * list.length)] as T;

const valuesOf = (file: Uint8Array): string => {
  const read = readXlsx(file);
  return 'fault' in read
    ? `refused: ${read.fault}`
    : JSON.stringify(read.model.sheets.map(({ name, cells }) => [name, cells]));
};
const checkOf = (file: Uint8Array): string => {
  const checked = checkFile(file, 'book.xlsx');
  return 'fault' in checked ? `refused: ${checked.fault}` : JSON.stringify(checked);
};

test('750 single bits turned: refused, or read as before', () => {
  const chance = seeded(SEED);
  const silent: unknown[] = [];
  let refused = 0;
  const good = FILES.map(([name, file]) => ({ name, file, values: valuesOf(file), check: checkOf(file) }));
  for (let n = 0; n < 750; n++) {
    const { name, file, values, check } = pick(good, chance);
    const at = Math.floor(chance() * file.length);
    const bit = 1 << Math.floor(chance() * 8);
    const turned = file.slice();
    turned[at] = (turned[at] ?? 0) ^ bit;
    for (const [door, was, is] of [
      ['open', values, valuesOf(turned)],
      // A check is dear: every fifth.
      ...(n % 5 === 0 ? [['check', check, checkOf(turned)] as const] : []),
    ] as const) {
      if (is.startsWith('refused: ') && !was.startsWith('refused: ')) refused++;
      else if (is !== was) silent.push([door, name, at, bit]);
    }
  }
  process.stdout.write(`750 bits turned: ${refused} times refused, ${silent.length} silent\n`);
  expect(silent).toEqual([]);
  expect(refused).toBeGreaterThan(500);
});

const CRUMBS = [
  '<',
  '>',
  '"',
  '&',
  '&#0;',
  '</c>',
  '<c r="A1"/>',
  'NaN',
  '1E999',
  '-1',
  '2147483648',
  'r="ZZZZ9"',
  '<!--',
  ']]>',
  '\u0000',
  't="s"',
  's="99999"',
  '_xldudf_SPAWN_',
];
/** A few changes somewhere in the text: a piece lost, doubled, or something strange put in. */
function changed(text: string, chance: () => number): string {
  let now = text;
  for (let n = 1 + Math.floor(chance() * 4); n > 0; n--) {
    const at = Math.floor(chance() * now.length);
    const end = Math.min(now.length, at + 1 + Math.floor(chance() * 40));
    const kind = chance();
    const piece = kind < 0.3 ? '' : kind < 0.5 ? now.slice(at, end).repeat(2) : pick(CRUMBS, chance);
    now = now.slice(0, at) + piece + now.slice(kind < 0.5 ? end : at);
  }
  return now;
}

test('workbooks of three programs changed inside: a sentence or a result, never a throw', () => {
  const chance = seeded(SEED + 1);
  const odd: unknown[] = [];
  const parts = FILES.map(([name, file]) => [name, unzipSync(file)] as const);
  for (let n = 0; n < 150 * TIMES; n++) {
    const [name, whole] = pick(parts, chance);
    const part = pick(
      Object.keys(whole).filter((path) => /\.(xml|rels)$/.test(path)),
      chance,
    );
    const text = changed(new TextDecoder().decode(whole[part]), chance);
    const file = zip({ ...whole, [part]: text });
    try {
      const said = [valuesOf(file), checkOf(file), inspect(file).refused ?? ''];
      const copy = freeze(file, { ...OPTIONS, personal: true, acceptProblems: true });
      if (copy.kind === 'refused') said.push(`refused: ${copy.sentence}`);
      for (const one of said)
        if (one.startsWith('refused: ') && !/^refused: [A-Z“][^]{19,}[.)]$/.test(one))
          odd.push([name, part, n, one]);
    } catch (error) {
      odd.push([name, part, n, String(error)]);
    }
  }
  expect(odd).toEqual([]);
});

const NUMBERS = [
  0,
  -0,
  1,
  -1,
  0.5,
  7,
  26,
  1e-300,
  1e300,
  -1e300,
  2 ** 53,
  46_000,
  46_000.5,
  1e6,
  0.1 + 0.2,
  14,
  100,
];
const TEXTS = [
  '',
  ' ',
  'soda ash',
  'yes',
  '7,5',
  '1.000',
  '__proto__',
  '22h30',
  '=1',
  '\u0000',
  'ö'.repeat(300),
];
const anyCell = (chance: () => number): Cell =>
  chance() < 0.6
    ? pick(NUMBERS, chance)
    : pick<Cell>([null, true, false, { error: '#N/A' }, { error: '#VALUE!' }, ...TEXTS], chance);
const anyArg = (chance: () => number): Cell | Grid | undefined =>
  chance() < 0.1
    ? undefined
    : chance() < 0.7
      ? anyCell(chance)
      : Array.from({ length: 1 + Math.floor(chance() * 4) }, () => [anyCell(chance)]);
const isSound = (cell: Cell): boolean => typeof cell !== 'number' || Number.isFinite(cell);

test('every function with anything: a number that is one, a text, or an error', () => {
  const chance = seeded(SEED + 2);
  const odd: unknown[] = [];
  for (const { name, params } of CATALOGUE)
    for (let n = 0; n < 60 * TIMES; n++) {
      const args = params.map(() => anyArg(chance)).slice(0, 1 + Math.floor(chance() * params.length));
      try {
        const answer = callFunction(name)?.(args) ?? null;
        const cells = isGrid(answer) ? answer.flat() : [answer];
        const bad = cells.find(
          (cell) => !isSound(cell) || /\bNaN\b|Infinity|undefined/.test(JSON.stringify(cell)),
        );
        if (bad !== undefined) odd.push([name, args, bad]);
      } catch (error) {
        odd.push([name, args, String(error)]);
      }
    }
  expect(odd.slice(0, 5).map((one) => JSON.stringify(one))).toEqual([]);
});

const WORDS = [
  'A1',
  'B2:C3',
  '1',
  '0.5',
  '1E308',
  '"x"',
  '""',
  'TRUE',
  '#N/A',
  '(',
  ')',
  ',',
  ';',
  '{',
  '}',
  '{1,2;3,4}',
  '+',
  '-',
  '*',
  '/',
  '^',
  '&',
  '=',
  '<>',
  '%',
  '@',
  ':',
  '!',
  "'",
  '[',
  ']',
  'SUM(',
  'IF(',
  'INDEX(',
  'TEXT(',
  'DATE(',
  'HOUR(',
  'AND(',
  'SPAWN.BUFFER.DOSE(',
  'LET(x,',
  ' ',
  '\n',
];
test('formulas of any words: an answer or a fault, never a throw, never infinity', () => {
  const chance = seeded(SEED + 3);
  const odd: unknown[] = [];
  const grid: Grid = [
    [1, null],
    ['x', 1e308],
  ];
  for (let n = 0; n < 20_000 * TIMES; n++) {
    const formula = `=${Array.from({ length: 1 + Math.floor(chance() * 14) }, () => pick(WORDS, chance)).join('')}`;
    try {
      const answer = evaluate(formula, {
        reference: (text) => (text.includes(':') ? grid : pick(NUMBERS, chance)),
      });
      if (!(isGrid(answer) ? answer.flat() : [answer]).every(isSound)) odd.push([formula, answer]);
    } catch (error) {
      odd.push([formula, String(error)]);
    }
  }
  expect(odd.slice(0, 5).map((one) => JSON.stringify(one))).toEqual([]);
});

test('anything typed into a field: read, asked about, or not a number', () => {
  const chance = seeded(SEED + 4);
  const odd: unknown[] = [];
  const letters = [...'0123456789.,:/- hHeEµ°%+’\u00a0kgLmF'];
  for (let n = 0; n < 20_000 * TIMES; n++) {
    const text = Array.from({ length: Math.floor(chance() * 12) }, () => pick(letters, chance)).join('');
    try {
      const read = readTypedNumber(text, { unit: pick(['g', '°C', 'L', ''], chance) });
      if (read.kind === 'number' && !Number.isFinite(read.value)) odd.push([text, read]);
      readTypedHour(text);
    } catch (error) {
      odd.push([text, String(error)]);
    }
  }
  expect(odd.slice(0, 5).map((one) => JSON.stringify(one))).toEqual([]);
});
