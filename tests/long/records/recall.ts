/**
 * Run by recall.test.ts in a plain Node process, as the shipped bundle runs: injects faults, checks clean
 * books, prints JSON.
 */
import { drawer, makeFarm, makeWildFarm } from '../../records/support/farm';
import { FAULTS } from '../../records/support/faults';
import { canHold, isFound } from '../../records/support/found';
import { audit } from '../../records/support/grid';
import { LAYOUTS, writeBook } from '../../records/support/layouts';
import { sheetsOf } from '../../records/support/read';

const TODAY = 47_200;
const VATS = 6;
const TIMES = 2;
const CLEAN_BOOKS = 8;

export interface Tally {
  readonly rule: string;
  injected: number;
  named: number;
  found: number;
  readonly missed: string[];
}
export interface Recall {
  readonly tallies: readonly Tally[];
  readonly cleanRows: number;
  readonly cleanRecords: number;
  readonly alarms: readonly string[];
}

function injectAll(): Tally[] {
  const tallies = new Map<string, Tally>();
  for (const [f, fault] of FAULTS.entries())
    for (const [l, layout] of LAYOUTS.entries())
      for (let time = 0; time < TIMES; time++) {
        if (!canHold(fault, layout)) continue;
        const seed = 1000 + f * 100 + l * 10 + time;
        const farm = makeFarm(seed);
        const draw = drawer(seed);
        const at = fault.inject(farm, draw);
        const book = writeBook(farm, layout, seed);
        fault.edit?.(book, at, draw);
        const report = audit(sheetsOf(book, layout), { today: TODAY, vatsOwned: VATS });
        const tally = tallies.get(fault.rule) ?? {
          rule: fault.rule,
          injected: 0,
          named: 0,
          found: 0,
          missed: [],
        };
        tallies.set(fault.rule, tally);
        tally.injected++;
        const verdict = isFound(report, book, fault, at);
        if (verdict === 'missed')
          tally.missed.push(
            `${layout}, seed ${seed}, ${JSON.stringify(book.where(at.table, at.row, at.field))}`,
          );
        else tally.found++;
        if (verdict === 'named') tally.named++;
      }
  return [...tallies.values()];
}

function cleanAll(): Omit<Recall, 'tallies'> {
  let [cleanRows, cleanRecords] = [0, 0];
  const alarms: string[] = [];
  for (const [l, layout] of LAYOUTS.entries())
    for (let time = 0; time < CLEAN_BOOKS; time++) {
      const seed = 50_000 + l * 100 + time;
      const farm = time % 2 === 0 ? makeFarm(seed) : makeWildFarm(seed);
      const report = audit(sheetsOf(writeBook(farm, layout, seed), layout), {
        today: TODAY,
        vatsOwned: VATS,
      });
      cleanRecords += report.records;
      const rows = farm.tables.reduce((sum, table) => sum + table.rows.length, 0);
      cleanRows += rows;
      if (report.records !== rows) alarms.push(`${layout} ${seed} read ${report.records} of ${rows} rows`);
      alarms.push(
        ...report.groups.flatMap(({ findings }) =>
          findings.map(
            ({ rule, place, sentence }) =>
              `${layout} ${seed} ${rule} ${place.sheet}!${place.cell} ${sentence}`,
          ),
        ),
      );
    }
  return { cleanRows, cleanRecords, alarms };
}

console.log(JSON.stringify({ tallies: injectAll(), ...cleanAll() } satisfies Recall));
