// Long: commands of one screen that share its waiting and its notices.
import { isCheckSheet } from '../../../../shared/books/words/sheetNames';
import type { Correction, LatencyOffsets, RangeCells, SheetCells } from '../../../../shared/records';
import type { CheckGivens, Meaning } from '../state/check';
import { corrected, saidOf, withSaid } from '../state/check';
import type { StateChange, Command, Doors, Working } from '../../../pane/command';
import { working } from '../../../pane/command';
import type { CellsWanted, PortTell } from '../../../host/port';
import { inShares } from '../../../pane/slices';
import type { PaneState } from '../../../pane/keeping/state';
import { isFree } from '../../../pane/keeping/state';
import type { Chosen } from '../../share/commands/share';
import { begun, readChosen, stoppedAt } from '../../share/commands/share';

/**
 * Checking records. Everything is only read; cells are coloured and sheets written elsewhere, when the user
 * asks for it.
 */

/** The rules are a big part of the code and needed late: they are loaded when first asked for. */
export const auditor = () => import(/* webpackChunkName: "audit" */ '../../../../shared/records');
export const learner = () => import(/* webpackChunkName: "learn" */ '../../../../shared/books/learn');

/** Sheets of rates and findings in other languages than English. */
export const recordWords = () =>
  import(/* webpackChunkName: "recordwords" */ '../../../../shared/books/words/recordSheets');
/** The words that lead a sheet of rates back are fetched only where it is not an English one. */
export const ratesOf = async (cells: RangeCells): Promise<RangeCells> =>
  cells.values.some((row) => row.includes('Farm value'))
    ? cells
    : (await recordWords()).ratesInEnglish(cells);

const isRecords = ({ name }: { readonly name: string }): boolean => !isCheckSheet(name);
const NOTHING =
  'No records were recognised. A table needs a row of headings (Date, Eggs, ' +
  'Temperature …) above its rows, and at least two columns the check knows.';

interface Work {
  readonly doors: Doors;
  readonly tell: PortTell;
  readonly isStopped: () => boolean;
}

/** What the open workbook brings to the check. */
interface Own {
  readonly corrections: readonly Correction[];
  readonly latencyOffsets?: LatencyOffsets;
  readonly ownRates?: string;
}

async function check(
  given: CheckGivens,
  { corrections, latencyOffsets, ownRates }: Own,
  { doors, tell, isStopped }: Work,
): Promise<StateChange> {
  const { auditSheets, notReadSentence, readingShare, sourceWords, unitChoices } = await auditor();
  const report = await inShares(
    auditSheets(given.sheets, {
      corrections,
      today: doors.today(),
      ...(latencyOffsets ? { latencyOffsets } : {}),
    }),
    { label: 'Checking the records', from: 50, to: 100 },
    tell,
    isStopped,
  );
  if (!report) return stoppedAt('screen');
  const read = new Set(
    report.tables.flatMap((table) =>
      Array.from({ length: table.layout === 'rows' ? 1 : table.length }, (_, i) => table.home(i).sheet.name),
    ),
  );
  const reading = readingShare(report.tables);
  const result = {
    report,
    reading,
    notRead: notReadSentence(reading),
    units: unitChoices(),
    restsOn: new Map(report.groups.map(({ rule }) => [rule.id, sourceWords(rule.sources)])),
    unread: given.sheets.map(({ name }) => name).filter((name) => !read.has(name)),
    ownRates,
  };
  const isEmpty = report.tables.length === 0;
  return (now) => ({
    ...now,
    focus: isEmpty ? undefined : 'check-found',
    check: {
      ...now.check,
      given,
      isChanged: false,
      learned: undefined,
      fault: isEmpty ? NOTHING : undefined,
      result: isEmpty ? undefined : result,
    },
  });
}

const NAMES = {
  selection: 'the selected cells',
  sheet: 'this sheet',
  book: 'all sheets of this workbook',
} as const;
const nameOf = (wanted: CellsWanted, sheets: readonly SheetCells[]): string => {
  if (typeof wanted !== 'string')
    return wanted.area === undefined ? `the sheet ${wanted.sheet}` : `${wanted.sheet}!${wanted.area}`;
  return wanted === 'book' ? `${NAMES.book} (${sheets.length})` : NAMES[wanted];
};

const failed =
  (fault: string): StateChange =>
  (now) => ({
    ...now,
    check: { ...now.check, fault, result: undefined, given: undefined, learned: undefined },
  });

/** Whatever stands in the place of what was remembered, the check goes on. */
const quietly = <T>(reading: Promise<T>): Promise<T | undefined> => reading.catch(() => undefined);

/** The offset of the strip, from the sheet of own rates if there is one. */
async function ownRatesOf({
  workbook,
}: Doors): Promise<Pick<Own, 'latencyOffsets' | 'ownRates'> & { readonly notes: readonly string[] }> {
  const cells = await quietly(workbook.readRates());
  if (!cells) return { notes: [] };
  const { latencyOffsetsOf, ratesFromCells } = await learner();
  const { rates, leftOut } = ratesFromCells(await ratesOf(cells));
  const latencyOffsets = latencyOffsetsOf(rates);
  const notes = rates.length > 0 ? leftOut : [];
  return latencyOffsets
    ? {
        latencyOffsets,
        ownRates: `Strip times are judged with your own rates on the sheet ${cells.name}.`,
        notes,
      }
    : { notes };
}

interface Remembering {
  readonly corrections: readonly Correction[];
  readonly isKept: boolean;
}
async function checkOpen(wanted: CellsWanted, said: Remembering, work: Work): Promise<StateChange> {
  const reading = await work.doors.workbook.readCells(wanted, work.tell, work.isStopped);
  if (!reading) return stoppedAt('screen');
  const [{ rememberedFrom, sheetFromRange }, { isDateFormat }] = await Promise.all([
    auditor(),
    import(/* webpackChunkName: "audit" */ '../../../../shared/files/read/styles'),
  ]);
  // The check's own sheets are no records.
  const ranges = wanted === 'book' ? reading.sheets.filter(isRecords) : reading.sheets;
  if (ranges.length === 0)
    return failed(
      'There is nothing in these cells. Select the block with the records and its ' +
        'headings, or choose the whole sheet.',
    );
  const sheets = ranges.map((range) => sheetFromRange(range, isDateFormat));
  // What the workbook did not take holds for the session.
  const corrections = said.isKept
    ? rememberedFrom(await quietly(work.doors.workbook.recall()))
    : said.corrections;
  const { notes, ...own } = await ownRatesOf(work.doors);
  const ended = await check(
    { name: nameOf(reading.again, sheets), sheets, notes, again: reading.again },
    { corrections, ...own },
    work,
  );
  return (now) =>
    ended(
      now.check.corrections === said.corrections ? { ...now, check: { ...now.check, corrections } } : now,
    );
}

function start(state: PaneState, wanted: CellsWanted): PaneState | Working {
  if (!isFree(state)) return state;
  const said = state.check;
  return working(begun(state, 'Reading the records'), (doors, tell, isStopped) =>
    checkOpen(wanted, said, { doors, tell, isStopped }),
  );
}

export const checkSelection: Command = {
  name: 'checkSelection',
  label: 'Selected cells',
  perform: (state) => start(state, 'selection'),
};
export const checkSheet: Command = {
  name: 'checkSheet',
  label: 'This sheet',
  perform: (state) => start(state, 'sheet'),
};
export const checkBook: Command = {
  name: 'checkBook',
  label: 'All sheets',
  perform: (state) => start(state, 'book'),
};

export const checkFile: Command<Chosen> = {
  name: 'checkFile',
  label: 'A file (.xlsx, .csv)',
  perform: (state, chosen): PaneState | Working => {
    if (state.task) return state;
    const { ofFile: corrections } = state.check;
    return working(begun(state, 'Reading the file'), async (doors, tell, isStopped) => {
      const [{ readFileCells }, bytes] = await Promise.all([auditor(), readChosen(chosen)]);
      const read = await inShares(
        readFileCells(bytes, chosen.name),
        { label: 'Reading the file', from: 0, to: 50 },
        tell,
        isStopped,
      );
      if (!read) return stoppedAt('screen');
      if ('fault' in read) return failed(`${chosen.name}: ${read.fault}`);
      return check(
        { name: chosen.name, sheets: read.sheets.filter(isRecords), notes: read.notes, again: undefined },
        { corrections },
        { doors, tell, isStopped },
      );
    });
  },
};

/** The open workbook is read anew, so that what was mended since counts. */
export const checkAgain: Command = {
  name: 'checkAgain',
  label: 'Check again',
  perform: (state): PaneState | Working => {
    const { given, ofFile: corrections } = state.check;
    if (!given || state.task) return state;
    if (given.again !== undefined) return start(state, given.again);
    return working(begun(state, 'Checking the records'), (doors, tell, isStopped) =>
      check(given, { corrections }, { doors, tell, isStopped }),
    );
  },
};

export interface CheckMessage {
  readonly sheet: string | undefined;
  readonly header: string;
  readonly field: Meaning;
  /** Left out: the one its heading names, else the usual one. */
  readonly unit?: string;
}
export async function rememberIn({ workbook }: Doors, said: readonly Correction[]): Promise<StateChange> {
  const { rememberedText } = await auditor();
  const isKept = await workbook.remember(said.length === 0 ? undefined : rememberedText(said)).then(
    () => true,
    () => false,
  );
  return (now) => (now.check.corrections === said ? { ...now, check: { ...now.check, isKept } } : now);
}
/**
 * The workbook remembers what was said about it; one that takes nothing is no fault, what was said then holds
 * for the session.
 */
function keep(state: PaneState, said: readonly Correction[]): PaneState | Working {
  const next: PaneState = { ...state, check: withSaid(state.check, said) };
  if (next.check.corrections === state.check.corrections) return next;
  return working(next, (doors) => rememberIn(doors, said));
}

export const sayColumn: Command<CheckMessage> = {
  name: 'sayColumn',
  label: 'Read as',
  perform: (state, { sheet, header, field, unit }) => {
    const base = saidOf(state.check).find((one) => one.header === header && one.sheet === sheet)?.base;
    return keep(
      state,
      corrected(saidOf(state.check), {
        header,
        field,
        ...(base === undefined || field !== 'hatchShare' ? {} : { base }),
        ...(sheet === undefined ? {} : { sheet }),
        ...(unit === undefined ? {} : { unit }),
      }),
    );
  },
};

export const forgetColumns: Command = {
  name: 'forgetColumns',
  label: 'Forget what I said',
  perform: (state) => keep(state, []),
};
