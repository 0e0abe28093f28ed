/** Run by strangers.test.ts in a plain Node process: checks the books of strangers.ts, prints JSON. */
import type { AuditReport } from '../../../shared/records/findings/run';
import { cellName } from '../../../shared/records/read/sheetCells';
import { addressOf } from '../../../shared/sheet/formula/address';
import { audit, sheetOf } from '../../records/support/grid';
import type { StrangeBook } from './strangers';
import { cleanStrangers, spoiltStrangers } from './strangers';

const TODAY = 47_200;
const SEED = Number(process.argv[2] ?? 7);
const CLEAN_TIMES = 3;
const EACH = 4;

export interface Strangers {
  readonly faults: number;
  readonly found: number;
  readonly missed: readonly string[];
  readonly cells: number;
  readonly alarms: readonly string[];
  readonly columns: number;
  readonly right: number;
  readonly wrong: readonly string[];
  /** By tenth of sureness: columns read, and how many of them right. */
  readonly deciles: readonly (readonly [read: number, right: number])[];
}

const check = (book: StrangeBook): AuditReport =>
  audit(
    book.sheets.map(({ name, cells, formats }) => sheetOf(name, cells, formats)),
    { today: TODAY },
  );
const accusing = (report: AuditReport) =>
  report.groups.flatMap(({ findings }) => findings).filter(({ severity }) => severity !== 'look');

const deciles = Array.from({ length: 10 }, (): [number, number] => [0, 0]);
const wrong: string[] = [];
let [columns, right] = [0, 0];
function readings(book: StrangeBook, { tables }: AuditReport): void {
  const read = new Map<
    string,
    { readonly field: string | undefined; readonly sureness: number; readonly header: string }
  >();
  for (const table of tables)
    for (const [i, mapped] of table.mapping.entries())
      for (let record = 0; record < table.length; record++) {
        const spot = table.columns[i]?.spot(record);
        if (spot)
          read.set(`${spot.sheet.name}!${cellName(spot.sheet, spot.position, spot.column)}`, {
            field: mapped.field,
            sureness: mapped.confidence,
            header: mapped.header,
          });
      }
  for (const { sheet, row, column, fields } of book.columns) {
    columns++;
    const got = read.get(`${sheet}!${addressOf(row, column)}`);
    const isRight = got?.field !== undefined && (fields as readonly string[]).includes(got.field);
    if (isRight) right++;
    else
      wrong.push(
        `${book.name}: ${String(fields[0])} read as ${got?.field ?? 'nothing'} (${got?.header ?? 'no column'})`,
      );
    if (got?.field === undefined) continue;
    const tenth = deciles[Math.min(9, Math.floor(10 * got.sureness))];
    if (!tenth) continue;
    tenth[0]++;
    if (isRight) tenth[1]++;
  }
}

let cells = 0;
const alarms: string[] = [];
for (let time = 0; time < CLEAN_TIMES; time++)
  for (const book of cleanStrangers(SEED + 1000 * time)) {
    const report = check(book);
    cells += book.sheets.reduce((n, one) => n + one.cells.flat().filter((cell) => cell !== null).length, 0);
    alarms.push(
      ...accusing(report).map(
        ({ rule, place, sentence }) => `${book.name} ${rule} ${place.sheet}!${place.cell} ${sentence}`,
      ),
    );
    readings(book, report);
  }

let [faults, found] = [0, 0];
const missed: string[] = [];
for (const book of spoiltStrangers(SEED + 77, EACH)) {
  const { fault } = book;
  if (!fault) continue;
  faults++;
  const wanted = new Set(fault.cells.map(([row, column]) => `${fault.sheet}!${addressOf(row, column)}`));
  const hits = accusing(check(book));
  if (
    hits.some(({ place, or }) =>
      [place, ...(or ?? [])].some(({ sheet, cell }) => wanted.has(`${sheet}!${cell}`)),
    )
  )
    found++;
  else missed.push(`${fault.kind}, ${book.name} ${[...wanted][0] ?? ''}`);
}
console.log(
  JSON.stringify({
    faults,
    found,
    missed,
    cells,
    alarms,
    columns,
    right,
    wrong,
    deciles,
  } satisfies Strangers),
);
