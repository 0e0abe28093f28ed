// Long: one writing, all or nothing: its steps and their way back stand together.
import { addressOf, parseArea, splitReference } from '../../../shared/sheet/formula/address';
import type { Area } from '../../../shared/sheet/formula/address';
import { BLANK_CHECK } from '../../../shared/functions/blankCheck';
import { PREFIX } from '../../../shared/functions/define';
import type { SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { asWritten, TEXT_FORMAT } from '../reading/cells';
import { addCharts } from './charts';
import { codeOf, toProblem, withExcel } from '../excelErrors';
import type { PortTell, WriteOutcome } from '../port';
import { HostProblem } from '../port';
import type { InUse } from './rename';
import { begunWriting, forget, interimNames, noteBegun, noteOf } from './unfinished';
import { clashes, freeSuffix, withSuffix } from './rename';
import { colourByRule, guardInputs, layOut, styleCells } from './styling';

interface Before extends InUse {
  readonly ids: ReadonlySet<string>;
  /** Id of the sheet in front. */
  readonly active: string;
}

export interface SheetToWrite {
  readonly model: SheetModel;
  readonly worksheet: Excel.Worksheet;
}
type Sheet = SheetToWrite;

async function lookAround(context: Excel.RequestContext): Promise<Before> {
  const { worksheets, names, tables } = context.workbook;
  worksheets.load('items/id,items/name');
  names.load('items/name');
  tables.load('items/name');
  const active = worksheets.getActiveWorksheet();
  active.load('id');
  await context.sync();
  return {
    active: active.id,
    ids: new Set(worksheets.items.map((sheet) => sheet.id)),
    sheets: worksheets.items.map((sheet) => sheet.name),
    names: [...names.items.map((item) => item.name), ...tables.items.map((table) => table.name)],
  };
}

const usedArea = (sheet: SheetModel): Area | undefined => {
  const areas = Object.keys(sheet.cells)
    .map(parseArea)
    .filter((area) => area !== undefined);
  if (areas.length === 0) return undefined;
  return areas.reduce((all, one) => ({
    top: Math.min(all.top, one.top),
    left: Math.min(all.left, one.left),
    bottom: Math.max(all.bottom, one.bottom),
    right: Math.max(all.right, one.right),
  }));
};

/** One block over all cells of a sheet; null leaves a cell as it is. */
function block(
  sheet: SheetModel,
  pick: (cell: SheetModel['cells'][string]) => unknown,
): { readonly area: Area; readonly rows: unknown[][] } | undefined {
  const area = usedArea(sheet);
  if (!area) return undefined;
  const rows: unknown[][] = Array.from({ length: area.bottom - area.top + 1 }, () =>
    Array.from({ length: area.right - area.left + 1 }, () => null),
  );
  let isEmpty = true;
  for (const [address, cell] of Object.entries(sheet.cells)) {
    const place = parseArea(address);
    const row = place && rows[place.top - area.top];
    const content = pick(cell);
    if (!row || content === null || content === undefined) continue;
    row[place.left - area.left] = content;
    isEmpty = false;
  }
  return isEmpty ? undefined : { area, rows };
}

const rangeFor = (worksheet: Excel.Worksheet, area: Area): Excel.Range =>
  worksheet.getCell(area.top, area.left).getResizedRange(area.bottom - area.top, area.right - area.left);

/**
 * Cells that an answer spills into hold values in the model; written to the sheet they would block the
 * answer.
 */
function withoutSpilled(sheet: SheetModel): SheetModel {
  const spilled = new Set<string>();
  for (const [address, { spill }] of Object.entries(sheet.cells)) {
    const place = parseArea(address);
    if (!spill || !place) continue;
    for (let row = 0; row < spill[0]; row++)
      for (let column = 0; column < spill[1]; column++)
        if (row + column > 0) spilled.add(`${place.top + row}:${place.left + column}`);
  }
  if (spilled.size === 0) return sheet;
  return {
    ...sheet,
    cells: Object.fromEntries(
      Object.entries(sheet.cells).map(([address, cell]) => {
        const place = parseArea(address);
        if (!place || !spilled.has(`${place.top}:${place.left}`)) return [address, cell];
        return [
          address,
          {
            ...(cell.style && { style: cell.style }),
            ...(cell.format !== undefined && { format: cell.format }),
          },
        ];
      }),
    ),
  };
}

/**
 * Asks the host, in a free cell of the first sheet while it is being built, how a blank cell reaches a function:
 * older builds hand it over as 0. The function remembers what it saw; the cells are emptied before the writing ends.
 */
function probeOf(sheets: readonly Sheet[]): { readonly ask: () => void; readonly takeAway: () => void } {
  const [first] = sheets;
  const area = first && usedArea(first.model);
  const row = (area?.bottom ?? 0) + 2;
  const cell = (): Excel.Range | undefined => first?.worksheet.getCell(row, 0);
  const blank = addressOf(row + 1, 0);
  return {
    ask: () => {
      const asking = cell();
      if (asking) asking.formulas = [[`=${PREFIX}.${BLANK_CHECK}(${blank},ISBLANK(${blank}))`]];
    },
    takeAway: () => {
      cell()?.clear('Contents');
    },
  };
}

/** Something to queue, and about how many cells it sends. */
interface Part {
  readonly cells: number;
  readonly queue: () => void;
}
/** More cells than this are sent in several trips: the web version refuses requests above 5 MB. */
const CELLS_PER_TRIP = 20_000;

/** A block sent a few rows at a time where it is large. */
function partsOf(
  worksheet: Excel.Worksheet,
  found: ReturnType<typeof block>,
  send: (range: Excel.Range, rows: unknown[][]) => void,
): Part[] {
  if (!found) return [];
  const { area, rows } = found;
  const width = area.right - area.left + 1;
  const step = Math.max(1, Math.floor(CELLS_PER_TRIP / width));
  return Array.from({ length: Math.ceil(rows.length / step) }, (_, i): Part => {
    const some = rows.slice(i * step, (i + 1) * step);
    const top = area.top + i * step;
    return {
      cells: some.length * width,
      queue: () => {
        send(rangeFor(worksheet, { ...area, top, bottom: top + some.length - 1 }), some);
      },
    };
  });
}

const valueParts = ({ model, worksheet }: Sheet): Part[] =>
  partsOf(
    worksheet,
    block(withoutSpilled(model), (cell) =>
      cell.formula === undefined && cell.value !== undefined ? asWritten(cell.value) : null,
    ),
    (range, rows) => {
      range.values = rows;
    },
  );

const formulaParts = ({ model, worksheet }: Sheet): Part[] => [
  // A formula typed into a cell of text format would stay a text.
  ...partsOf(
    worksheet,
    block(model, ({ format, formula }) =>
      formula !== undefined && format === TEXT_FORMAT ? undefined : format,
    ),
    (range, rows) => {
      range.numberFormat = rows as string[][];
    },
  ),
  ...partsOf(
    worksheet,
    block(model, (cell) => cell.formula),
    (range, rows) => {
      range.formulas = rows;
    },
  ),
];

function addTables({ model, worksheet }: Sheet): void {
  for (const { name, range, hasTotals } of model.tables ?? []) {
    const table = worksheet.tables.add(range, true);
    table.name = name;
    table.style = 'TableStyleLight1';
    if (hasTotals) table.showTotals = true;
  }
}

/** A name that is there already is pointed at its new cell: formulas anywhere that use it go on. */
function addNames(context: Excel.RequestContext, model: WorkbookModel, known: ReadonlySet<string>): void {
  for (const { name, refersTo, comment = '' } of model.names) {
    if (known.has(name.toLowerCase())) {
      context.workbook.names.getItem(name).formula = `=${refersTo.replace(/^=/, '')}`;
      continue;
    }
    const { sheet, area } = splitReference(refersTo.replace(/^=/, ''));
    const isPlain = sheet !== undefined && parseArea(area) !== undefined;
    const target = isPlain
      ? context.workbook.worksheets.getItem(sheet).getRange(area.replaceAll('$', ''))
      : `=${refersTo.replace(/^=/, '')}`;
    context.workbook.names.add(name, target, comment);
  }
}

function protect({ model, worksheet }: Sheet): void {
  if (model.isProtected)
    worksheet.protection.protect({
      allowFormatColumns: true,
      allowFormatRows: true,
      selectionMode: 'Normal',
    });
}

export interface Stage {
  readonly label: string;
  readonly parts: readonly Part[];
}
/** The writing is done: what it had noted goes. */
const endOf = (note: Excel.Setting): Stage => ({
  label: 'Finishing',
  parts: [
    light(() => {
      forget(note);
    }),
  ],
});
const light = (queue: () => void): Part => ({ cells: 0, queue });

const NO_NAMES: ReadonlySet<string> = new Set();

/**
 * The stages after the sheets are there; each is one round trip, or a few where much is sent. `known` are
 * names, in small letters, that the workbook has already.
 */
export const stagesOf = (
  context: Excel.RequestContext,
  model: WorkbookModel,
  sheets: readonly Sheet[],
  known: ReadonlySet<string> = NO_NAMES,
  probe = probeOf(sheets),
): readonly Stage[] => [
  {
    label: 'Writing words and numbers',
    parts: [
      light(() => {
        for (const sheet of sheets) {
          sheet.worksheet.name = sheet.model.name;
          if (sheet.model.tab) sheet.worksheet.tabColor = `#${sheet.model.tab.replace('#', '')}`;
        }
      }),
      ...sheets.flatMap(valueParts),
      // In front while it is built: it is seen to grow, and some hosts ask the sheet in front whether cells
      // may be merged.
      light(() => {
        sheets[0]?.worksheet.activate();
      }),
    ],
  },
  {
    label: 'Naming cells',
    parts: [
      light(() => {
        sheets.forEach(addTables);
        addNames(context, model, known);
      }),
    ],
  },
  { label: 'Writing formulas', parts: [...sheets.flatMap(formulaParts), light(probe.ask)] },
  {
    label: 'Setting looks',
    parts: sheets.map(({ model: sheet, worksheet }) => ({
      cells: Object.keys(sheet.cells).length,
      queue: () => {
        styleCells(worksheet, sheet);
        layOut(worksheet, sheet);
        guardInputs(worksheet, sheet);
        for (const rule of sheet.conditionals ?? []) colourByRule(worksheet, rule);
      },
    })),
  },
  {
    label: 'Drawing charts',
    parts: [
      light(() => {
        for (const sheet of sheets) addCharts(context, sheet.worksheet, sheet.model);
      }),
    ],
  },
  {
    label: 'Finishing',
    parts: [
      light(() => {
        probe.takeAway();
        sheets.forEach(protect);
        sheets[0]?.worksheet.activate();
        for (const { model: sheet, worksheet } of sheets) if (sheet.isHidden) worksheet.visibility = 'Hidden';
      }),
    ],
  },
];

/** Queues the parts of a stage and sends them, in as few trips as their size allows. */
export async function send(context: Excel.RequestContext, { parts }: Stage): Promise<void> {
  let queued = 0;
  for (const part of parts) {
    if (queued > 0 && queued + part.cells > CELLS_PER_TRIP) {
      await context.sync();
      queued = 0;
    }
    part.queue();
    queued += part.cells;
  }
  await context.sync();
}

/** What Excel answers to a new sheet in a workbook whose structure is protected differs by platform. */
const NO_SHEET_CODES: ReadonlySet<string> = new Set(['AccessDenied', 'InvalidOperation', 'GeneralException']);
const NO_NEW_SHEET =
  'The workbook takes no new sheets, so nothing was changed. If its structure is ' +
  'protected, choose Review › Protect Workbook to open it.';

async function build(
  context: Excel.RequestContext,
  model: WorkbookModel,
  before: Before,
  made: (ids: readonly string[]) => void,
  tell: PortTell,
): Promise<void> {
  // Sheets come first, under names that say what they are, so that from here on each is known by its id: clearing
  // up can then never hit another sheet. The note says what was begun to whoever opens the workbook next.
  const interim = interimNames(model, before.sheets);
  const begun = begunWriting(model, interim, before);
  noteBegun(context, begun);
  const sheets = model.sheets.map((sheet, i) => ({
    model: sheet,
    worksheet: context.workbook.worksheets.add(interim[i]),
  }));
  for (const { worksheet } of sheets) worksheet.load('id');
  const note = noteOf(context);
  const stages = [...stagesOf(context, model, sheets), endOf(note)];
  tell({ label: 'Adding sheets', done: 0, total: stages.length + 1 });
  await context.sync().catch((error: unknown) => {
    throw NO_SHEET_CODES.has(codeOf(error) ?? '') ? new HostProblem(NO_NEW_SHEET, { cause: error }) : error;
  });
  const ids = sheets.map(({ worksheet }) => worksheet.id);
  made(ids);
  // From here on the sheets are known by their ids, whatever they are called.
  noteBegun(context, { ...begun, ids });
  let done = 1;
  for (const stage of stages) {
    tell({ label: stage.label, done: done++, total: stages.length + 1 });
    // Names must exist before the formulas that use them, so each stage waits for the one before.
    await send(context, stage);
  }
}

/** Takes away what a failed build left: sheets by id, names by what was not there before. */
async function clearUp(
  context: Excel.RequestContext,
  model: WorkbookModel,
  before: Before,
  made: readonly string[] | undefined,
): Promise<void> {
  const { worksheets, names } = context.workbook;
  worksheets.load('items/id,items/name');
  names.load('items/name');
  const note = noteOf(context);
  await context.sync();
  const ours = new Set(model.names.map(({ name }) => name.toLowerCase()));
  const used = new Set(before.names.map((name) => name.toLowerCase()));
  const added = worksheets.items.filter((sheet) =>
    made ? made.includes(sheet.id) : !before.ids.has(sheet.id),
  );
  const active = worksheets.getItemOrNullObject(before.active);
  const contents = added.map((sheet) => ({ sheet, content: sheet.getUsedRangeOrNullObject(true) }));
  await context.sync();
  for (const item of names.items)
    if (ours.has(item.name.toLowerCase()) && !used.has(item.name.toLowerCase())) item.delete();
  // Without ids only sheets that are still empty can be ours: the first stage writes nothing.
  for (const { sheet, content } of contents) if (made || content.isNullObject) sheet.delete();
  if (!active.isNullObject) active.activate();
  // Last: where this is not reached, the next start finds the note and asks.
  forget(note);
  await context.sync();
}

async function clearUpAfter(
  error: unknown,
  model: WorkbookModel,
  before: Before,
  made: readonly string[] | undefined,
): Promise<HostProblem> {
  const problem = toProblem(error);
  const again = (): Promise<void> => withExcel((context) => clearUp(context, model, before, made));
  try {
    // Once more where a passing hindrance stopped it: what went the first time is not there the second.
    await again().catch(again);
    return problem.message === NO_NEW_SHEET
      ? problem
      : new HostProblem(`Nothing was written: what had been begun was taken away again. ${problem.message}`, {
          cause: error,
        });
  } catch {
    return new HostProblem(
      `The writing was not finished, and the sheets begun could not be taken away: ${model.sheets.map(({ name }) => name).join(', ')}. Spawnbook asks about them when it is opened the next time; or delete them by hand. ${problem.message}`,
      { cause: error },
    );
  }
}

/**
 * Writes a workbook model into the open workbook, as new sheets only. Excel does not undo a batch that fails
 * half-way, so whatever was made is removed again here.
 */
export async function writeWorkbook(
  model: WorkbookModel,
  suffix: string,
  tell: PortTell,
): Promise<WriteOutcome> {
  const wanted = withSuffix(model, suffix);
  const before = await withExcel(lookAround);
  const taken = clashes(wanted, before);
  if (taken.sheets.length > 0 || taken.names.length > 0)
    return { kind: 'taken', ...taken, free: freeSuffix(model, before) };
  let made: readonly string[] | undefined;
  try {
    await Excel.run((context) =>
      build(
        context,
        wanted,
        before,
        (ids) => {
          made = ids;
        },
        tell,
      ),
    );
  } catch (error) {
    throw await clearUpAfter(error, wanted, before, made);
  }
  // Sheets the reader sees; those that only carry formulas are hidden.
  return {
    kind: 'written',
    sheets: wanted.sheets.filter(({ isHidden }) => isHidden !== true).map(({ name }) => name),
  };
}
