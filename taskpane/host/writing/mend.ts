import { parseArea } from '../../../shared/sheet/formula/address';
import { areaText, partsOf, rectangles, TEXT_FORMAT } from '../reading/cells';
import { toProblem, withExcel } from '../excelErrors';
import type { Mending, MendReport, PortTell } from '../port';

type Left = MendReport['left'][number];
interface Block {
  readonly cells: readonly Mending[];
  readonly area: string;
  readonly range: Excel.Range;
}

const keyAt = (row: number, column: number): string => `${row}:${column}`;

/**
 * Cells that touch are written together; on a protected sheet each cell stands alone, because each may be
 * open or locked.
 */
function blocksOf(worksheet: Excel.Worksheet, cells: readonly Mending[], isProtected: boolean): Block[] {
  const byPlace = new Map(
    cells.map((cell) => {
      const area = parseArea(cell.address);
      return [keyAt(area?.top ?? 0, area?.left ?? 0), cell];
    }),
  );
  const areas = isProtected
    ? cells.map((cell) => parseArea(cell.address)).filter((area) => area !== undefined)
    : rectangles(cells.map((cell) => cell.address));
  return areas.map((area) => {
    const members: Mending[] = [];
    for (let row = area.top; row <= area.bottom; row++)
      for (let column = area.left; column <= area.right; column++) {
        const cell = byPlace.get(keyAt(row, column));
        if (cell) members.push(cell);
      }
    return { cells: members, area: areaText(area), range: worksheet.getRange(areaText(area)) };
  });
}

const leave = (cells: readonly Mending[], sentence: string): Left[] =>
  cells.map(({ sheet, address }) => ({ sheet, address, sentence }));

/**
 * Some hosts give the formula of a spilling cell for the cells it fills too. Writing there would block the
 * answer: only the first cell is entered again.
 */
async function anchorsOnly(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  cells: readonly Mending[],
): Promise<readonly Mending[]> {
  const alive = cells.filter((cell) => cell.showsValue);
  if (alive.length === 0) return cells;
  const spills = alive.map((cell) => ({
    cell,
    area: worksheet.getRange(cell.address).getSpillingToRangeOrNullObject(),
  }));
  for (const { area } of spills) area.load('address');
  await context.sync();
  const filled = new Set<string>();
  for (const { cell, area } of spills) {
    const anchor = parseArea(cell.address);
    const covered = area.isNullObject ? undefined : parseArea(partsOf(area.address).area);
    if (!anchor || !covered || covered.top !== anchor.top || covered.left !== anchor.left) continue;
    for (let row = covered.top; row <= covered.bottom; row++)
      for (let column = covered.left; column <= covered.right; column++)
        if (row !== anchor.top || column !== anchor.left) filled.add(keyAt(row, column));
  }
  return cells.filter((cell) => {
    const place = parseArea(cell.address);
    return !place || !filled.has(keyAt(place.top, place.left));
  });
}

/** Writes the blocks of one sheet that still hold what was read; answers the cells left alone. */
async function mendSheet(
  context: Excel.RequestContext,
  name: string,
  cells: readonly Mending[],
): Promise<Left[]> {
  const worksheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (worksheet.isNullObject) return leave(cells, `The sheet “${name}” is not there any more.`);
  worksheet.protection.load('protected');
  await context.sync();
  const isProtected = worksheet.protection.protected;
  const blocks = blocksOf(worksheet, await anchorsOnly(context, worksheet, cells), isProtected);
  for (const { range } of blocks) {
    range.load('formulas,numberFormat');
    if (isProtected) range.format.protection.load('locked');
  }
  await context.sync();
  const left: Left[] = [];
  for (const { range, cells: members, area } of blocks) {
    const columns = range.formulas[0]?.length ?? 1;
    if (isProtected && range.format.protection.locked !== false) {
      left.push(
        ...leave(
          members,
          `The sheet “${name}” is protected and ${area} is locked. Choose Review › Unprotect Sheet, then repair again.`,
        ),
      );
      continue;
    }
    const hasMoved = members.some(
      (cell, i) => range.formulas[Math.floor(i / columns)]?.[i % columns] !== cell.was,
    );
    if (hasMoved) {
      left.push(...leave(members, 'The cell was changed meanwhile. Look through the workbook again.'));
      continue;
    }
    const isText = range.numberFormat.some((row) => row.includes(TEXT_FORMAT));
    if (isText && isProtected) {
      left.push(
        ...leave(
          members,
          `${area} is formatted as text and the sheet “${name}” is protected. Choose Review › Unprotect Sheet, then repair again.`,
        ),
      );
      continue;
    }
    if (isText)
      range.numberFormat = range.numberFormat.map((row) =>
        row.map((format: unknown) => (format === TEXT_FORMAT ? 'General' : format)),
      );
    range.formulas = Array.from({ length: members.length / columns }, (_, row) =>
      members.slice(row * columns, (row + 1) * columns).map((cell) => cell.formula),
    );
  }
  await context.sync();
  return left;
}

const groupBySheet = (cells: readonly Mending[]): Map<string, Mending[]> => {
  const groups = new Map<string, Mending[]>();
  for (const cell of cells) groups.set(cell.sheet, [...(groups.get(cell.sheet) ?? []), cell]);
  return groups;
};

export async function mend(cells: readonly Mending[], tell: PortTell): Promise<MendReport> {
  const groups = groupBySheet(cells);
  const left: Left[] = [];
  let done = 0;
  for (const [sheet, members] of groups) {
    try {
      // A sheet at a time: a refusal on one must not keep the others from being mended.
      left.push(...(await withExcel((context) => mendSheet(context, sheet, members))));
    } catch (error) {
      left.push(...leave(members, toProblem(error).message));
    }
    done++;
    tell({ label: 'Re-entering formulas', done, total: groups.size });
  }
  return { mended: cells.length - left.length, left };
}
