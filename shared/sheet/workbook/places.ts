import type { Area } from '../formula/address';
import { addressOf, parseArea, splitReference } from '../formula/address';
import type { ParsedNode } from '../formula/parse';
import type { SheetModel, WorkbookModel } from './model';

/** What the references and names of a workbook mean. */

export interface Target {
  readonly sheet: SheetModel;
  readonly area: Area;
}

const firstLetterCase = (text: string): string => text.toLowerCase();

/** Finds what a reference or a name of the model means. */
export class Places {
  private readonly sheets = new Map<string, SheetModel>();
  private readonly names = new Map<string, string>();
  private readonly tables = new Map<string, { readonly sheet: SheetModel; readonly area: Area }>();

  constructor(model: WorkbookModel) {
    for (const sheet of model.sheets) {
      this.sheets.set(firstLetterCase(sheet.name), sheet);
      for (const table of sheet.tables ?? []) {
        const area = parseArea(table.range);
        if (area) this.tables.set(firstLetterCase(table.name), { sheet, area });
      }
    }
    for (const { name, refersTo } of model.names)
      this.names.set(firstLetterCase(name), refersTo.replace(/^=/, ''));
  }

  /** Texts looked up before: thousands of formulas name the same few columns. */
  private readonly known = new Map<SheetModel, Map<string, Target | undefined>>();

  reference(text: string, home: SheetModel): Target | undefined {
    let ofSheet = this.known.get(home);
    if (!ofSheet) this.known.set(home, (ofSheet = new Map()));
    if (ofSheet.has(text)) return ofSheet.get(text);
    const target = this.find(text, home);
    ofSheet.set(text, target);
    return target;
  }

  private find(text: string, home: SheetModel): Target | undefined {
    if (text.includes('[')) return this.column(text);
    const { sheet: name, area: areaOf } = splitReference(text);
    const sheet = name === undefined ? home : this.sheets.get(firstLetterCase(name));
    const area = parseArea(areaOf);
    return sheet && area ? { sheet, area } : undefined;
  }

  name(name: string, home: SheetModel): Target | undefined {
    const refersTo = this.names.get(firstLetterCase(name));
    return refersTo === undefined ? undefined : this.reference(refersTo, home);
  }

  /** Table[Column]: the cells of a column below its heading. */
  private column(text: string): Target | undefined {
    const match = /^([^[]+)\[([^[\]]+)\]$/.exec(text);
    const table = this.tables.get(firstLetterCase(match?.[1] ?? ''));
    if (!table || !match?.[2]) return undefined;
    const { top, bottom, left, right } = table.area;
    for (let column = left; column <= right; column++)
      if (table.sheet.cells[addressOf(top, column)]?.value === match[2])
        return { sheet: table.sheet, area: { top: top + 1, bottom, left: column, right: column } };
    return undefined;
  }
}

/** Every node of a formula, each before what it is made of. */
export function* walk(node: ParsedNode | undefined): Generator<ParsedNode> {
  const waiting = [node];
  while (waiting.length > 0) {
    const one = waiting.pop();
    if (!one) continue;
    yield one;
    if (one.kind === 'call') for (let i = one.args.length - 1; i >= 0; i--) waiting.push(one.args[i]);
    else if (one.kind === 'unary') waiting.push(one.of);
    else if (one.kind === 'binary') waiting.push(one.right, one.left);
  }
}

/** Cells that a reference, spill or name in a formula means; a sentence when it means none. */
export function targetOf(node: ParsedNode, places: Places, home: SheetModel): Target | string | undefined {
  if (node.kind === 'reference')
    return places.reference(node.text, home) ?? `${node.text} is not in this workbook`;
  if (node.kind === 'name') return places.name(node.name, home) ?? `there is no name ${node.name}`;
  if (node.kind !== 'spill') return undefined;
  const anchor = places.reference(node.anchor, home);
  const cell = anchor && anchor.sheet.cells[addressOf(anchor.area.top, anchor.area.left)];
  if (!anchor || !cell?.spill) return `${node.anchor}# does not spill`;
  const [rows, columns] = cell.spill;
  return {
    sheet: anchor.sheet,
    area: { ...anchor.area, bottom: anchor.area.top + rows - 1, right: anchor.area.left + columns - 1 },
  };
}
