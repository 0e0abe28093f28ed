/** Run by strangers.test.ts in a plain Node process: checks the books of one hand, prints JSON. */
import type { AuditReport } from '../../../shared/records/findings/run';
import { notReadSentence, readingShare } from '../../../shared/records';
import { cellName } from '../../../shared/records/read/sheetCells';
import { addressOf } from '../../../shared/sheet/formula/address';
import { audit, sheetOf } from '../../records/support/grid';
import type { StrangeBook } from './strangers';
import { cleanOthers, spoiltOthers } from './otherHands';
import { cleanRegisters, spoiltRegisters } from './registerHands';
import { cleanStrangers, spoiltStrangers } from './strangers';
import { cleanWider, spoiltWider } from './widerHands';

const TODAY = 47_200;
const SEED = Number(process.argv[2] ?? 7);
const HANDS = {
  strangers: [cleanStrangers, spoiltStrangers],
  others: [cleanOthers, spoiltOthers],
  wider: [cleanWider, spoiltWider],
  registers: [cleanRegisters, spoiltRegisters],
} as const;
const [cleanBooks, spoiltBooks] = HANDS[(process.argv[3] ?? 'strangers') as keyof typeof HANDS];
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
  /** Clean books in which no column was read. */
  readonly refused: readonly string[];
  /** Clean books of which less than half was read and which would still be called clean. */
  readonly halfRead: readonly string[];
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
const [refused, halfRead]: [string[], string[]] = [[], []];
interface Got {
  readonly field: string | undefined;
  readonly sureness: number;
  readonly header: string;
}
/** What each cell of the tables was read as. */
function readingsOf({ tables }: AuditReport): Map<string, Got> {
  const read = new Map<string, Got>();
  for (const table of tables)
    for (const [i, { field, confidence, header }] of table.mapping.entries())
      for (let record = 0; record < table.length; record++) {
        const spot = table.columns[i]?.spot(record);
        if (spot)
          read.set(`${spot.sheet.name}!${cellName(spot.sheet, spot.position, spot.column)}`, {
            field,
            sureness: confidence,
            header,
          });
      }
  return read;
}
function count({ field, sureness }: Got, isRight: boolean): void {
  const tenth = deciles[Math.min(9, Math.floor(10 * sureness))];
  if (field === undefined || !tenth) return;
  tenth[0]++;
  if (isRight) tenth[1]++;
}
function readings(book: StrangeBook, report: AuditReport): void {
  const read = readingsOf(report);
  const share = readingShare(report.tables);
  if (share.read === 0) refused.push(book.name);
  const known = book.columns.filter(
    ({ sheet, row, column }) => read.get(`${sheet}!${addressOf(row, column)}`)?.field !== undefined,
  ).length;
  const isSilent = notReadSentence(share) === '' && known < book.columns.length;
  if (share.isEnough && known < 0.5 * book.columns.length)
    halfRead.push(`${book.name}: ${known} of ${book.columns.length}${isSilent ? ', silent' : ''}`);
  for (const { sheet, row, column, fields } of book.columns) {
    columns++;
    const got = read.get(`${sheet}!${addressOf(row, column)}`);
    const isRight = (fields as readonly (string | undefined)[]).includes(got?.field);
    if (isRight) right++;
    else
      wrong.push(
        `${book.name}: ${String(fields[0])} read as ${got?.field ?? 'nothing'} (${got?.header ?? ''})`,
      );
    if (got) count(got, isRight);
  }
}

let cells = 0;
const alarms: string[] = [];
for (let time = 0; time < CLEAN_TIMES; time++)
  for (const book of cleanBooks(SEED + 1000 * time)) {
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
for (const book of spoiltBooks(SEED + 77, EACH)) {
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
    refused,
    halfRead,
    deciles,
  } satisfies Strangers),
);
