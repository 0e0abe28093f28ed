import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { findFunction } from '../../shared/catalogue';
import type { Cell } from '../../shared/base/values';
import { isError, isGrid } from '../../shared/base/values';
import type { Operand } from '../../shared/sheet/formula';
import { find } from '../../taskpane/help/finding/finder';

/**
 * What a run needs beside its plan, asked as people ask: the terminal answers the formula, the finder the
 * question. None of these questions stands in a record.
 */

const ASKED: Readonly<Record<string, readonly string[]>> = {
  'NET.AREA': ['how much net for my eggs', 'size of hatching net for 100000 eggs'],
  'WASH.STEPS': ['how to disinfect a tank', 'clean nets between batches'],
  'CHLORINE.DOSE': ['how much bleach for a vat', 'chlorine to disinfect tank'],
  'CHLORINE.NEUTRALISE': ['get rid of chlorine in the water', 'neutralise bleach'],
  'LIME.MUD': ['lime for pond mud', 'lime on the bottom of a drained pond'],
  'WATER.CHANGE': ['how much water to change every day', 'daily water exchange for fry'],
  'AIR.MINUTES': ['power went off how long do fry live', 'how long can fish stay without aerator'],
  'AIR.STEPS': ['what to do when the power goes', 'aerator stopped what first'],
  'FEED.GRAIN': ['pellet size for small fingerlings', 'which crumble size for small fry'],
  'BAG.FISH': ['how many fry in one bag', 'fish in a transport bag for 6 hours'],
  'BAG.DEAD': ['fish that die on the road', 'how many die in the bags'],
  'HATCH.WHY': ['why did the eggs not hatch', 'few eggs hatched'],
  'LARVAE.WHY': ['larvae keep dying', 'larvae died after three days'],
  'DEATHS.EXPECTED': ['how many dead a day is normal', 'too many dead fry today'],
  'RIPE.FEMALE': ['is she ready to spawn', 'which female is ripe'],
  'RIPE.MALE': ['is the male ripe', 'choose a male for milt'],
  'COUNT.OUT': ['count fry by weighing', 'weigh out 5000 fry for a buyer'],
  'FORMALIN.VOLUME': ['ml of formalin for eggs', 'how many ml formalin in 100 litres'],
  'HORMONE.PREPARE': ['how to mix the hormone', 'saline for pituitary'],
  'PREPARATION.LIST': ['which hormones are there', 'list of hormone preparations'],
  'STRIP.EVIDENCE': ['studies of latency', 'latency in published trials'],
  'STRIP.ADVICE': ['am I too late with stripping'],
  'PH.CHECK': ['is this pH safe for larvae', 'pH bad for fry'],
  'AMMONIA.CHECK': ['is the ammonia dangerous', 'ammonia level safe for fry'],
  'TEMPERATURE.CHECK': ['is the water too warm', 'water too cold for eggs'],
  'SALT.CHECK': ['is this much salt safe', 'salt bath too strong for fry'],
  'UNIT.READ': ['convert gallons to litres', 'degrees fahrenheit in celsius'],
  'LARVA.WEIGHT': ['weight of a larva at first feeding', 'how heavy is a larva'],
  'FEMALES.FORCERTAINTY': ['how many females to be sure', 'females for nine in ten seasons'],
};
const recordOf = (id: string) => {
  const fn = findFunction(`SPAWN.${id}`);
  if (!fn) throw new Error(`There is no ${id}.`);
  return fn;
};
const cellText = (cell: Cell): string =>
  cell === null ? '' : typeof cell === 'string' ? `"${cell.replaceAll('"', '""')}"` : String(cell);
const argumentText = (value: Operand): string =>
  isGrid(value) ? `{${value.map((row) => row.map(cellText).join(',')).join(';')}}` : cellText(value as Cell);

test('the terminal answers each of them: the first example of its page, without an error', () => {
  const formulas = Object.keys(ASKED).map((id) => {
    const example = recordOf(id).examples.find((one) => 'gives' in one);
    return `=SPAWN.${id}(${(example?.args ?? []).map((arg) => argumentText(arg as Operand)).join(',')})`;
  });
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-answers-'));
  const list = join(folder, 'formulas.txt');
  writeFileSync(list, formulas.join('\n'));
  const run = spawnSync(process.execPath, ['src/build/run.mjs', 'src/cli/calc.ts', '--file', list], {
    cwd: join(__dirname, '../..'),
    encoding: 'utf8',
  });
  rmSync(folder, { recursive: true, force: true });
  const answers = run.stdout
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { formula: string; answer: Operand });
  expect(answers.map(({ formula }) => formula)).toEqual(formulas);
  for (const { formula, answer } of answers) {
    const cells = isGrid(answer) ? answer.flat() : [answer as Cell];
    expect([formula, cells.find(isError)?.message ?? 'an answer']).toEqual([formula, 'an answer']);
    expect([formula, cells.some((cell) => cell !== null && cell !== '')]).toEqual([formula, true]);
  }
});

test.each(Object.entries(ASKED))('%s is found in the first three', (id, questions) => {
  for (const question of questions) {
    const found = find(question, 3).functions.map(({ name }) => name);
    expect([question, found]).toEqual([question, expect.arrayContaining([`SPAWN.${id}`])]);
    expect(recordOf(id).questions ?? []).not.toContain(question);
  }
});
