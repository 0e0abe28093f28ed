import type { Area } from '../../sheet/formula/address';
import { addressOf, areaText } from '../../sheet/formula/address';
import type { FindFunction } from '../../sheet/formula';
import { calculateBy } from '../../sheet/workbook/calculate';
import type { FormulaNode, Group, Needed } from '../../sheet/workbook/graph';
import { Covering, formulaNodes, inOrder, isGroup } from '../../sheet/workbook/graph';
import type { CellModel, SheetModel, WorkbookModel } from '../../sheet/workbook/model';
import type { Cell } from '../../base/values';
import { isError } from '../../base/values';
import type { CellSpan } from '../cells/cells';
import { Cells } from '../cells/cells';
import { readBook } from '../package/book';
import { Package } from '../package/package';
import type { Edit } from '../package/splice';
import { put } from '../package/splice';
import { all, nameEnd, rawText, textOf, TreeReader } from '../package/xml';
import { hasCustomCall } from '../formulas';
import { isUnreadable, readXlsx } from '../read';
import { escapeCellText } from '../text';
import { mergedAreas } from './decisions/blocks';
import type { ShareProgress } from './decisions/options';
import type { SheetScan } from './decisions/scan';

/**
 * A program without Spawnbook that saves a live workbook leaves #NAME? where it calculated. The formulas are still
 * there, and so are the numbers they read: what they give is worked out again here, and only that.
 */

export interface Revived {
  readonly bytes: Uint8Array;
  readonly areas: readonly { readonly sheet: string; readonly areas: readonly Area[] }[];
}

/** Larger workbooks are not read whole for this; they are to be calculated where they live. */
export const MOST_CELLS = 400_000;
const SHOWN_AREAS = 20;

const SWALLOWS = /\b(?:IFERROR|IFNA|ISERROR|ISERR|ISNA|ISNUMBER|ERROR\.TYPE|AGGREGATE)\(/i;
const CLOCK = /\b(?:TODAY|NOW|RAND|RANDBETWEEN|RANDARRAY)\(/i;
const OTHER_PROGRAM = /LibreOffice|OpenOffice|Collabora|gnumeric/i;

const isUnknown = ({ value }: CellModel): boolean => isError(value) && value.error === '#NAME?';

/**
 * Did a program that does not know our functions calculate one of our formulas? Its #NAME? tells, or, where the
 * formula itself catches errors, its name in the file.
 */
export function needsReviving(pack: Package, scans: readonly SheetScan[]): boolean {
  const own = scans.flatMap(({ cells }) => cells.filter(({ verdict }) => verdict === 'own'));
  if (own.some(({ value }) => value?.type === 'e' && value.raw.toUpperCase() === '#NAME?')) return true;
  return own.some(({ text }) => SWALLOWS.test(text)) && OTHER_PROGRAM.test(writerOf(pack));
}

function writerOf(pack: Package): string {
  const part = pack.relations('').find(({ type }) => /^extended-?properties$/i.test(type))?.target;
  const found = part === undefined ? undefined : pack.tree(part);
  const [name] = found ? all(found.root, 'Application') : [];
  return found && name ? textOf(found.bytes, name) : '';
}

/** Formulas whose stored answer cannot be trusted, and all that read them. */
function doubtful(model: WorkbookModel): ReadonlyMap<SheetModel, ReadonlySet<string>> {
  const nodes = formulaNodes(model);
  const covering = new Covering(nodes);
  const reached = new Set<FormulaNode>();
  const known = new Map<Group, boolean>();
  const reads = (needed: Needed): boolean => {
    if (!isGroup(needed)) return reached.has(needed);
    let found = known.get(needed);
    if (found === undefined) known.set(needed, (found = needed.members.some((one) => reached.has(one))));
    return found;
  };
  const found = new Map<SheetModel, Set<string>>();
  for (const node of inOrder(nodes, covering).order) {
    const cell = node.sheet.cells[node.address] ?? {};
    const isOwnDoubt =
      isUnknown(cell) ||
      (hasCustomCall(node.formula) && (isError(cell.value) || SWALLOWS.test(node.formula)));
    const isByOthers =
      !CLOCK.test(node.formula) &&
      node.faults.length === 0 &&
      node.targets.some((target) => reads(covering.within(target)));
    if (!isOwnDoubt && !isByOthers) continue;
    reached.add(node);
    const ofSheet = found.get(node.sheet);
    if (ofSheet) ofSheet.add(node.address);
    else found.set(node.sheet, new Set([node.address]));
  }
  return found;
}

/** Only those formulas are worked out; all others count with the values they hold. */
function onlyThose(model: WorkbookModel, those: ReadonlyMap<SheetModel, ReadonlySet<string>>): WorkbookModel {
  const bare = ({ value, formula, spill }: CellModel, isWanted: boolean): CellModel => ({
    ...(value === undefined ? {} : { value }),
    ...(isWanted && formula !== undefined ? { formula, ...(spill ? { spill } : {}) } : {}),
  });
  return {
    ...model,
    sheets: model.sheets.map((sheet) => ({
      ...sheet,
      cells: Object.fromEntries(
        Object.entries(sheet.cells).map(([address, cell]) => [
          address,
          bare(cell, those.get(sheet)?.has(address) ?? false),
        ]),
      ),
    })),
  };
}

const isSame = (a: Cell | undefined, b: Cell): boolean =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b))
    : isError(a) && isError(b)
      ? a.error === b.error
      : (a ?? '') === (b ?? '');

/** Answers that differ from what the file holds, by sheet and address. A function nobody knows gives none. */
function answersOf(model: WorkbookModel, find: FindFunction): Map<string, Map<string, Cell>> {
  const worked = calculateBy(find, onlyThose(model, doubtful(model))).model;
  const found = new Map<string, Map<string, Cell>>();
  for (const [i, { name, cells }] of model.sheets.entries()) {
    const answers = new Map<string, Cell>();
    for (const [address, cell] of Object.entries(worked.sheets[i]?.cells ?? {})) {
      const before = cells[address]?.value;
      const { value } = cell;
      if (value === undefined || isUnknown(cell) || isSame(before, value)) continue;
      if (isError(value) && !isError(before)) continue;
      answers.set(address, value);
    }
    if (answers.size > 0) found.set(name, answers);
  }
  return found;
}

const stored = (value: Cell): readonly [type: string, raw: string] =>
  typeof value === 'number'
    ? ['n', String(value)]
    : typeof value === 'boolean'
      ? ['b', value ? '1' : '0']
      : isError(value)
        ? ['e', value.error]
        : ['str', escapeCellText(value ?? '')];

/** Type and value are written over or put in; the rest of the cell stays. */
function valueEdits(bytes: Uint8Array, cell: CellSpan, value: Cell): Edit[] {
  const [type, raw] = stored(value);
  const name = nameEnd(bytes, cell.start + 1);
  const typed = cell.typeFrom < 0 ? put(name, name, ` t="${type}"`) : put(cell.typeFrom, cell.typeTo, type);
  const isClosedAtOnce = cell.valueFrom > 0 && bytes[cell.valueFrom - 2] === SLASH;
  if (cell.inlineFrom >= 0 || isClosedAtOnce) return [];
  if (cell.valueFrom >= 0) return [typed, put(cell.valueFrom, cell.valueTo, raw)];
  const prefix = /^\w+:/.exec(rawText(bytes, cell.start + 1, name))?.[0] ?? '';
  return cell.formulaEnd < 0
    ? []
    : [typed, put(cell.formulaEnd, cell.formulaEnd, `<${prefix}v>${raw}</${prefix}v>`)];
}
const SLASH = 0x2f;

function sheetEdits(bytes: Uint8Array, answers: ReadonlyMap<string, Cell>): { edits: Edit[]; areas: Area[] } {
  const edits: Edit[] = [];
  const areas: Area[] = [];
  const tree = new TreeReader(bytes, 'sheetData');
  for (let data = tree.run(); data; data = tree.run()) {
    const walk = new Cells(bytes, data.openEnd);
    while (walk.next()) {
      const { cell } = walk;
      const answer = answers.get(addressOf(cell.row, cell.column));
      const own = answer === undefined ? [] : valueEdits(bytes, cell, answer);
      if (own.length === 0) continue;
      edits.push(...own);
      areas.push({ top: cell.row, left: cell.column, bottom: cell.row, right: cell.column });
    }
    tree.seek(walk.closeAt);
  }
  return { edits, areas };
}

/** undefined when nothing could be worked out. */
export function* reviveSteps(
  find: FindFunction,
  file: Uint8Array,
): Generator<ShareProgress, Revived | undefined> {
  const read = readXlsx(file);
  if (isUnreadable(read)) return undefined;
  const size = read.model.sheets.reduce((sum, { cells }) => sum + Object.keys(cells).length, 0);
  if (size > MOST_CELLS) return undefined;
  yield { step: 'read', done: 0.5 };
  const answers = answersOf(read.model, find);
  const opening = Package.open(file);
  let step = opening.next();
  for (; !step.done; step = opening.next()) yield { step: 'unpack', done: step.value };
  const pack = step.value;
  const changed: { sheet: string; areas: Area[] }[] = [];
  for (const { name, part } of readBook(pack).sheets) {
    const [own, bytes] = [answers.get(name), pack.read(part)];
    if (!own || !bytes) continue;
    const { edits, areas } = sheetEdits(bytes, own);
    pack.edit(part, edits);
    if (areas.length > 0) changed.push({ sheet: name, areas });
  }
  if (changed.length === 0) return undefined;
  const packing = pack.save(1);
  let packed = packing.next();
  for (; !packed.done; packed = packing.next()) yield { step: 'pack', done: packed.value };
  return { bytes: packed.value, areas: changed };
}

/** How many, where and why, on the sheets that stay. */
export function revivedSentence({ areas }: Revived, keeps: (sheet: string) => boolean = () => true): string {
  const kept = areas.filter(({ sheet }) => keeps(sheet));
  const count = kept.reduce((sum, one) => sum + one.areas.length, 0);
  const places = kept.flatMap((one) =>
    mergedAreas(one.areas).map((area) => `${one.sheet}!${areaText(area)}`),
  );
  const more = places.length > SHOWN_AREAS ? ` and ${places.length - SHOWN_AREAS} more ranges` : '';
  return (
    `A program without Spawnbook saved the workbook last and could not work out its functions. ` +
    `${count} cell${count === 1 ? ' was' : 's were'} worked out again from the values they read: ${places.slice(0, SHOWN_AREAS).join(', ')}${more}.`
  );
}
