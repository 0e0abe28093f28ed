import { RULES } from '../../shared/audit/rules';
import type { AuditReport } from '../../shared/audit/findings/run';
import { drawer, makeFarm } from './support/farm';
import type { Fault, Injected } from './support/faults';
import { FAULTS } from './support/faults';
import { audit } from './support/grid';
import type { Book, Layout } from './support/layouts';
import { LAYOUTS, writeBook } from './support/layouts';
import { sheetsOf } from './support/read';

const TODAY = 47_200;
const VATS = 6;
const TIMES = 2;
const CLEAN_BOOKS = 6;

const columnOf = (cell: string): string => cell.replace(/\d/g, '');
const rowOf = (cell: string): string => cell.replace(/\D/g, '');

/** Is the fault reported where it is, by its rule or one of those that may rightly say it? */
function isFound(report: AuditReport, book: Book, fault: Fault, at: Injected): 'named' | 'found' | 'missed' {
  const place = book.where(at.table, at.row, at.field);
  const points = (one: { readonly sheet: string; readonly cell: string }): boolean => {
    if (!place || one.sheet !== place.sheet) return at.reach === 'column' && place !== undefined;
    if (one.cell === place.cell) return true;
    // In a sheet of runs side by side a row of records is a column of the sheet.
    return at.reach === 'column' ? columnOf(one.cell) === columnOf(place.cell) || rowOf(one.cell) === rowOf(place.cell) : at.reach === 'row' && (rowOf(one.cell) === rowOf(place.cell) || columnOf(one.cell) === columnOf(place.cell));
  };
  const hits = report.groups.flatMap(({ findings }) => findings).filter(({ place: first, related }) => [first, ...related].some(points)).map(({ rule }) => rule);
  if (hits.includes(fault.rule)) return 'named';
  return hits.some((rule) => fault.also?.includes(rule)) ? 'found' : 'missed';
}

const canHold = (fault: Fault, layout: Layout): boolean =>
  !(fault.needsFile && layout === 'text table') && !(fault.needsRows && ['one run per sheet', 'runs across', 'text table'].includes(layout)) && !(fault.rule === 'TEXT.NUMBER' && layout === 'one run per sheet');

interface Tally { injected: number; named: number; found: number; missed: string[] }

test('every rule has a fault made for it', () => {
  expect(RULES.map(({ id }) => id).filter((id) => !FAULTS.some(({ rule }) => rule === id))).toEqual([]);
});

test('recall: at least 98 % of injected faults are reported at their cell, in every layout', () => {
  const tallies = new Map<string, Tally>();
  for (const [f, fault] of FAULTS.entries()) for (const [l, layout] of LAYOUTS.entries()) for (let time = 0; time < TIMES; time++) {
    if (!canHold(fault, layout)) continue;
    const seed = 1000 + f * 100 + l * 10 + time;
    const farm = makeFarm(seed);
    const draw = drawer(seed);
    const at = fault.inject(farm, draw);
    const book = writeBook(farm, layout, seed);
    fault.edit?.(book, at, draw);
    const report = audit(sheetsOf(book, layout), { today: TODAY, vatsOwned: VATS });
    const tally = tallies.get(fault.rule) ?? { injected: 0, named: 0, found: 0, missed: [] };
    tallies.set(fault.rule, tally);
    tally.injected++;
    const verdict = isFound(report, book, fault, at);
    if (verdict === 'missed') tally.missed.push(`${layout}, seed ${seed}, ${JSON.stringify(at)} ${JSON.stringify(book.where(at.table, at.row, at.field))}`);
    else tally.found++;
    if (verdict === 'named') tally.named++;
  }
  const all = [...tallies.values()].reduce((sum, one) => ({ injected: sum.injected + one.injected, found: sum.found + one.found, named: sum.named + one.named }), { injected: 0, found: 0, named: 0 });
  console.log([...tallies].map(([rule, one]) => `${rule.padEnd(20)} ${one.found}/${one.injected} found, ${one.named} by its own rule${one.missed.length > 0 ? `\n    missed: ${one.missed.join('\n            ')}` : ''}`).join('\n')
    + `\nrecall ${(100 * all.found / all.injected).toFixed(2)} % of ${all.injected} faults; ${(100 * all.named / all.injected).toFixed(1)} % named by the rule made for them`);
  expect(all.found / all.injected).toBeGreaterThanOrEqual(0.98);
  // No rule may hide behind the others.
  for (const [rule, { injected, found, named }] of tallies) {
    expect([rule, found / injected >= 0.85]).toEqual([rule, true]);
    expect([rule, named > 0]).toEqual([rule, true]);
  }
});

test('false alarms: at most one in 200 clean rows', () => {
  let rows = 0;
  const alarms: string[] = [];
  for (const [l, layout] of LAYOUTS.entries()) for (let time = 0; time < CLEAN_BOOKS; time++) {
    const seed = 50_000 + l * 100 + time;
    const farm = makeFarm(seed);
    const report = audit(sheetsOf(writeBook(farm, layout, seed), layout), { today: TODAY, vatsOwned: VATS });
    rows += farm.tables.reduce((sum, table) => sum + table.rows.length, 0);
    alarms.push(...report.groups.flatMap(({ findings }) => findings.map(({ rule, place, sentence }) => `${layout} ${seed} ${rule} ${place.sheet}!${place.cell} ${sentence}`)));
    expect(report.records).toBe(farm.tables.reduce((sum, table) => sum + table.rows.length, 0));
  }
  console.log(`${alarms.length} false alarms in ${rows} clean rows (one in ${Math.round(rows / Math.max(1, alarms.length))})\n${alarms.slice(0, 60).join('\n')}`);
  expect(alarms.length / rows).toBeLessThanOrEqual(1 / 200);
});
