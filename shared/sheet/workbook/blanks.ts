import type { NamedParam, SheetFunction } from '../../functions/define';
import { PREFIX } from '../../functions/define';
import type { FindFunction } from '../formula';
import { addressOf, parseAddress } from '../formula/address';
import type { Area } from '../formula/address';
import type { Token } from '../formula/tokenize';
import { tokenize } from '../formula/tokenize';
import type { Target } from './places';
import { Places } from './places';
import type { Moved, Shape } from './shapes';
import { Shapes } from './shapes';
import type { CellModel, SheetModel, WorkbookModel } from './model';
import { STYLES } from './styles';

/**
 * Some builds of Excel hand a blank cell to a custom function as 0. A cell of a workbook of ours that may be
 * blank therefore goes to a function as IF(cell="","",cell): '' is blank to every function, on every build.
 */

/** Whether a 0 for a blank would be noticed: the function answers with its sentence, never with a number. */
const refusesZero = (param: NamedParam): boolean => {
  if (param.kind === 'choice') return !param.optional && param.default === undefined;
  if (param.kind !== 'number' || param.optional || param.default !== undefined) return false;
  const { min = -Infinity, above = -Infinity, max = Infinity } = param;
  return min > 0 || above >= 0 || max < 0;
};
/** A blank means 0 to it. */
const takesBlankAsZero = (param: NamedParam): boolean => param.kind === 'number' && param.default === 0;

const mayBeEmptied = (sheet: SheetModel, cell: CellModel | undefined): boolean =>
  cell?.formula === undefined &&
  (cell?.value === undefined ||
    cell.value === '' ||
    sheet.isProtected !== true ||
    (cell.style !== undefined && STYLES[cell.style].isOpen === true));

const isOneCell = (area: Area): boolean => area.top === area.bottom && area.left === area.right;

/** Cells that the answer of a formula elsewhere fills. */
function spilledInto(sheet: SheetModel): ReadonlySet<string> {
  const filled = new Set<string>();
  for (const address in sheet.cells) {
    const spill = sheet.cells[address]?.spill;
    const place = spill && parseAddress(address);
    if (!place) continue;
    for (let row = 0; row < spill[0]; row++)
      for (let column = 0; column < spill[1]; column++)
        filled.add(addressOf(place.row + row, place.column + column));
  }
  return filled;
}

class BlankCells {
  private readonly known = new Map<string, boolean>();
  private readonly spilled: ReadonlyMap<string, ReadonlySet<string>>;
  constructor(
    private readonly places: Places,
    model: WorkbookModel,
  ) {
    this.spilled = new Map(model.sheets.map((sheet) => [sheet.name, spilledInto(sheet)]));
  }

  target(token: Token, home: SheetModel): Target | undefined {
    return token.kind === 'reference'
      ? this.places.reference(token.text, home)
      : token.kind === 'name'
        ? this.places.name(token.text, home)
        : undefined;
  }

  /** A cell of the area is not filled by a formula and may be empty, now or when somebody clears it. */
  within({ sheet, area }: Target): boolean {
    if (isOneCell(area)) return this.look(sheet, area);
    const key = `${sheet.name}\n${area.top}:${area.left}:${area.bottom}:${area.right}`;
    let may = this.known.get(key);
    if (may === undefined) this.known.set(key, (may = this.look(sheet, area)));
    return may;
  }

  private look(sheet: SheetModel, area: Area): boolean {
    for (let row = area.top; row <= area.bottom; row++)
      for (let column = area.left; column <= area.right; column++) {
        const address = addressOf(row, column);
        if (mayBeEmptied(sheet, sheet.cells[address]) && !this.spilled.get(sheet.name)?.has(address))
          return true;
      }
    return false;
  }
}

interface OpenCall {
  readonly fn: SheetFunction | undefined;
  argument: number;
}

/** Follows the brackets of a formula: which call and which of its arguments a token stands in. */
class Nesting {
  private readonly open: OpenCall[] = [];

  inside(): OpenCall | undefined {
    return this.open.at(-1);
  }

  pass(token: Token, before: Token | undefined, find: FindFunction): void {
    const inside = this.inside();
    if (token.kind === 'open')
      this.open.push({ fn: before?.kind === 'call' ? find(before.text) : undefined, argument: 0 });
    else if (token.kind === 'close') this.open.pop();
    else if (token.kind === 'comma' && inside) inside.argument += 1;
  }
}

const isPlace = ({ kind }: Token): boolean => kind === 'reference' || kind === 'name';
const begins = (token: Token | undefined): boolean => token?.kind === 'open' || token?.kind === 'comma';
const ends = (token: Token | undefined): boolean => token?.kind === 'close' || token?.kind === 'comma';

/** The arguments of our calls that are one reference or name and nothing else, with what they fill. */
function* plainArguments(
  tokens: readonly Token[],
  find: FindFunction,
): Generator<{ readonly token: Token; readonly param: NamedParam }> {
  const nesting = new Nesting();
  const solid = tokens.filter(({ kind }) => kind !== 'space');
  for (const [i, token] of solid.entries()) {
    nesting.pass(token, solid[i - 1], find);
    if (!isPlace(token) || !begins(solid[i - 1]) || !ends(solid[i + 1])) continue;
    const call = nesting.inside();
    const param = call?.fn?.params[call.argument];
    if (param) yield { token, param };
  }
}

interface Asked {
  readonly moved: Moved;
  readonly refusesZero: boolean;
}
/** Which cells the formulas of one shape hand to our functions: asked of the shape, answered for each row. */
class HandedOver {
  private readonly known = new Map<Shape, readonly Asked[]>();
  private readonly shapes: Shapes;
  constructor(
    private readonly find: FindFunction,
    private readonly blanks: BlankCells,
    places: Places,
  ) {
    this.shapes = new Shapes(places);
  }

  mayBeBlank(formula: string, address: string, home: SheetModel): boolean {
    const row = parseAddress(address)?.row ?? 0;
    const shape = this.shapes.of(formula, row, home);
    if (shape.isAlone) return true;
    let asked = this.known.get(shape);
    if (!asked) this.known.set(shape, (asked = this.asked(formula, shape)));
    return asked.some(({ moved, refusesZero: refuses }) => {
      const target = moved.by(row - shape.row);
      return !(isOneCell(target.area) && refuses) && this.blanks.within(target);
    });
  }

  private asked(formula: string, shape: Shape): Asked[] {
    return [...plainArguments(tokenize(formula), this.find)].flatMap(({ token, param }) => {
      const moved = takesBlankAsZero(param) ? undefined : shape.moved.get(token.text);
      return moved ? [{ moved, refusesZero: refusesZero(param) }] : [];
    });
  }
}

function keptIn(formula: string, home: SheetModel, find: FindFunction, blanks: BlankCells): string {
  const tokens = tokenize(formula);
  const wrapped = new Set<Token>();
  for (const { token, param } of plainArguments(tokens, find)) {
    const target = takesBlankAsZero(param) ? undefined : blanks.target(token, home);
    if (!target || (isOneCell(target.area) && refusesZero(param))) continue;
    if (blanks.within(target)) wrapped.add(token);
  }
  if (wrapped.size === 0) return formula;
  const text = tokens
    .map((token) => (wrapped.has(token) ? `IF(${token.text}="","",${token.text})` : token.text))
    .join('');
  return formula.startsWith('=') && !text.startsWith('=') ? `=${text}` : text;
}

const OURS = `${PREFIX}.`;

/** The model with every reference to cells that may be blank handed to our functions so that blank stays blank. */
export function keepBlanks(find: FindFunction, model: WorkbookModel): WorkbookModel {
  const places = new Places(model);
  const blanks = new BlankCells(places, model);
  const handed = new HandedOver(find, blanks, places);
  const sheetOf = (sheet: SheetModel): SheetModel => {
    let changed: Record<string, CellModel> | undefined;
    for (const address in sheet.cells) {
      const cell = sheet.cells[address];
      if (!cell?.formula?.includes(OURS) || !handed.mayBeBlank(cell.formula, address, sheet)) continue;
      const formula = keptIn(cell.formula, sheet, find, blanks);
      if (formula === cell.formula) continue;
      changed ??= { ...sheet.cells };
      changed[address] = { ...cell, formula };
    }
    return changed ? { ...sheet, cells: changed } : sheet;
  };
  return { ...model, sheets: model.sheets.map(sheetOf) };
}
