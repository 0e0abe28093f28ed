// Long: one pass over a workbook; the steps share its state.
import { append } from '../../append';
import type { CellPlace } from '../../../sheet/formula/address';
import { addressOf, areaText, parseArea } from '../../../sheet/formula/address';
import { Cells } from '../../cells/cells';
import { sharedStrings } from '../../cells/strings';
import type { NameInfo } from '../../package/book';
import { relationsPart } from '../../package/package';
import { Refusal } from '../../package/refusal';
import type { Edit } from '../../package/splice';
import { cut, put } from '../../package/splice';
import type { Element } from '../../package/xml';
import { all, attribute, child, LT, nameEnd, rawText, textOf, TreeReader } from '../../package/xml';
import { mergedAreas } from '../decisions/blocks';
import type { FreezeOptions, ShareProgress } from '../decisions/options';
import type { SheetScan } from '../decisions/scan';
import type { Exclusion, Opened } from '../open';
import { isPageName } from '../proof/pageWords';
import type { FormulaPiece } from '../references/lex';
import { lex } from '../references/lex';
import type { Reference, ReferenceFinder } from '../references/references';
import { editFormats, editNotes, editShapes, editTables, removeRevisions, tellingElements } from './around';
import { editCharts, editTyped } from './charts';
import type { Flow, LeaveOutReason } from './flow';
import { planFlow } from './flow';
import { removePivots } from './pivots';
import { ruleReads } from './reads';
import { prune } from './rules';
import type { LeftValues } from './values';

/** Sheets and columns that the reader of the copy shall not get. */
export interface LeaveOut {
  readonly exclusion: Exclusion;
  /** The formulas of the sheets that stay. */
  readonly scans: readonly SheetScan[];
  readonly editsOf: (scan: SheetScan) => Edit[];
  readonly dropsName: (name: NameInfo) => boolean;
  /** Was there anything to leave out that was still there? Known after the edits. */
  readonly isChanging: boolean;
  readonly apply: (bookEdits: Edit[]) => string[];
  /** Does a rule for these cells read, or spell out, what is left out? */
  readonly ruleTells: (
    formula: string,
    pieces: readonly FormulaPiece[],
    sheet: number,
    cells: string,
  ) => boolean;
  /** What was left out, for the search of the copy. */
  readonly values: LeftValues;
  /** Sums over so many of the cells left out that they may stay. */
  readonly isSafeSum: (sheet: number, place: CellPlace) => boolean;
}

export function* planExclusion(
  opened: Opened,
  options: FreezeOptions,
): Generator<ShareProgress, LeaveOut | undefined> {
  const wishes = (options.blank ?? []).filter((wish) => wish.trim() !== '');
  const kept = keptSheets(opened, options.sheets);
  const keeps = (sheet: number): boolean => kept.has(sheet);
  if (wishes.length === 0 && kept.size === opened.book.sheets.length) return undefined;
  const sheets = opened.book.sheets.map(({ index }) => index).filter((index) => !keeps(index));
  const flow = yield* planFlow(opened, { wishes, sheets, keepResults: options.keepResults ?? false });
  return new LeavingOut(opened, keeps, flow);
}

function keptSheets({ book }: Opened, wish: readonly string[] | undefined): Set<number> {
  if (!wish) return new Set(book.sheets.map((sheet) => sheet.index));
  const wanted = new Set(wish.map((name) => name.toLowerCase()));
  for (const name of wish)
    if (!book.sheets.some((sheet) => sheet.name.toLowerCase() === name.toLowerCase()))
      throw new Refusal(
        `There is no sheet "${name}". The sheets are: ${book.sheets.map((sheet) => sheet.name).join(', ')}.`,
      );
  const kept = book.sheets.filter((sheet) => wanted.has(sheet.name.toLowerCase()));
  if (
    !kept.some((sheet) => (attribute(book.bytes, sheet.element, 'state')?.value ?? 'visible') === 'visible')
  )
    throw new Refusal('None of the chosen sheets is visible. Choose at least one that is.');
  // Our own page explains the numbers and stays.
  return new Set(
    [...kept, ...book.sheets.filter((sheet) => isPageName(sheet.name))].map((sheet) => sheet.index),
  );
}

const REASONS: Readonly<Record<LeaveOutReason, string>> = {
  reads: 'worked out from what is left out',
  few: `sums over so few of the cells left out that one of them could be told`,
  untold: 'reads cells that cannot be told (INDIRECT, OFFSET and the like)',
  pivot: 'filled by a pivot table that read what is left out',
};
const SHOWN_AREAS = 30;

class LeavingOut implements LeaveOut {
  private readonly finder: ReferenceFinder;
  private readonly emptiedStyles = new Set<string>();
  private emptied = 0;
  private rules = 0;
  readonly exclusion: Exclusion;
  readonly scans: readonly SheetScan[];

  constructor(
    private readonly opened: Opened,
    private readonly keeps: (sheet: number) => boolean,
    private readonly flow: Flow,
  ) {
    this.finder = flow.finder;
    this.scans = flow.judgedScans(keeps);
    this.exclusion = {
      keeps,
      reads: (text, pieces, sheet) => {
        const { found, isUnsure } = this.finder.of(text, pieces, sheet < 0 ? undefined : sheet, undefined);
        return isUnsure || found.some(this.isOut);
      },
    };
  }

  isSafeSum(sheet: number, place: CellPlace): boolean {
    return this.flow.isSafeSum(sheet, place);
  }
  get values(): LeftValues {
    return this.flow.values;
  }
  private get dropped(): Opened['book']['sheets'] {
    return this.opened.book.sheets.filter((sheet) => !this.keeps(sheet.index));
  }
  get isChanging(): boolean {
    return this.dropped.length > 0 || this.emptied > 0 || this.rules > 0;
  }
  private readonly isGone = ({ sheet }: Reference): boolean => !this.keeps(sheet);
  private readonly isEmptied = (reference: Reference): boolean => this.flow.touches(reference);
  private readonly isOut = (reference: Reference): boolean =>
    this.isGone(reference) || this.isEmptied(reference);
  private readonly readsEmptied = (formula: string): boolean => {
    const { found, isUnsure } = this.finder.of(formula, lex(formula), undefined, undefined);
    return isUnsure || found.some(this.isEmptied);
  };

  ruleTells(formula: string, pieces: readonly FormulaPiece[], sheet: number, cells: string): boolean {
    const areas = cells.split(/\s+/).flatMap((one) => parseArea(one) ?? []);
    if (ruleReads(this.finder, formula, pieces, sheet, areas).some(this.isOut)) return true;
    if (this.finder.of(formula, pieces, sheet, undefined).isUnsure) return true;
    return this.flow.values.inFormula(formula) && areas.some((area) => this.isEmptied({ sheet, area }));
  }

  dropsName(name: NameInfo): boolean {
    if (name.scope !== undefined && !this.keeps(name.scope)) return true;
    const pieces = this.opened.names.pieces.get(name) ?? [];
    const { found } = this.finder.of(name.text, pieces, name.scope, undefined);
    return found.some(this.isGone) || (found.some(this.isEmptied) && this.flow.values.inFormula(name.text));
  }

  editsOf({ info, bytes, root }: SheetScan): Edit[] {
    const { flow } = this;
    const lost = new Set([
      ...all(root, 'sparkline').filter((one) => this.readsGone(bytes, child(one, 'f'))),
      ...all(root, 'hyperlink').filter((one) => this.pointsToGone(bytes, one)),
    ]);
    const edits: Edit[] = prune(bytes, lost);
    this.rules += edits.length;
    append(edits, this.emptyCells(info.index, bytes, root, flow));
    const telling = tellingElements(bytes, root, info.index, flow);
    const ids = new Set(
      [...telling]
        .filter((one) => one.name === 'hyperlink')
        .map((link) => attribute(bytes, link, 'id')?.value ?? ''),
    );
    const links = this.opened.pack.relations(info.part).filter((one) => ids.has(one.id));
    this.opened.pack.edit(
      relationsPart(info.part),
      links.map((one) => cut(one.element)),
    );
    const around = prune(bytes, telling);
    this.rules += around.length;
    return [...edits, ...around];
  }

  private readsGone(bytes: Uint8Array, formula: Element | undefined): boolean {
    const text = formula ? textOf(bytes, formula) : '';
    return this.finder.of(text, lex(text), undefined, undefined).found.some(this.isGone);
  }

  private pointsToGone(bytes: Uint8Array, link: Element): boolean {
    const text = attribute(bytes, link, 'location')?.value ?? '';
    return text !== '' && this.finder.of(text, lex(text), undefined, undefined).found.some(this.isGone);
  }

  private emptyCells(sheet: number, bytes: Uint8Array, root: Element, flow: Flow): Edit[] {
    const edits: Edit[] = [];
    for (const data of all(root, 'sheetData').filter((one) => one.closeStart > one.openEnd)) {
      const cells = new Cells(bytes, data.openEnd);
      while (cells.next()) {
        const { cell } = cells;
        if (cell.formulaStart < 0 && cell.valueFrom < 0 && cell.inlineFrom < 0) continue;
        if (!flow.isBlank(sheet, cell)) continue;
        const tag = rawText(bytes, cell.start + 1, nameEnd(bytes, cell.start + 1));
        const number = cell.styleFrom < 0 ? '' : rawText(bytes, cell.styleFrom, cell.styleTo);
        if (number !== '') this.emptiedStyles.add(number);
        const style = number === '' ? '' : ` s="${number}"`;
        edits.push(put(cell.start, cell.end, `<${tag} r="${addressOf(cell.row, cell.column)}"${style}/>`));
      }
    }
    this.emptied += edits.length;
    return edits;
  }

  apply(bookEdits: Edit[]): string[] {
    const { pack, book } = this.opened;
    const said: string[] = [];
    this.dropSheets(bookEdits, said);
    for (const name of book.names.filter((one) => this.dropsName(one))) {
      bookEdits.push(cut(name.element));
      said.push(`The name ${name.name} was removed: it stood for something left out.`);
    }
    said.push(...removePivots(this.opened, this.finder, this.isOut, bookEdits));
    said.push(...this.clean(this.flow));
    said.push(...editCharts(pack, this.finder, { isGone: this.isGone, isBlank: this.isEmptied }));
    if (this.emptied > 0) said.push(...editTyped(pack, this.values));
    if (this.isChanging) {
      if (removeRevisions(pack, book.part) > 0)
        said.push('The record of changes, which holds what cells were before.');
      said.push(...this.cleanStrings(), ...this.cleanProperties());
    }
    return said;
  }

  /** What hangs on emptied cells: notes, tables, shapes, controls, formats. */
  private clean(flow: Flow): string[] {
    const { pack, book, tables } = this.opened;
    const said = this.emptied > 0 ? this.emptiedLines(flow) : [];
    if (this.rules > 0)
      said.push('Links, filters or scenarios that held values of emptied cells were removed.');
    editTables(
      pack,
      tables.filter(({ sheet }) => this.keeps(sheet)),
      flow,
    );
    for (const sheet of book.sheets.filter((one) => this.keeps(one.index)))
      if (editNotes(pack, sheet.part, sheet.index, flow) > 0)
        said.push(`Notes on emptied cells of ${sheet.name} were emptied.`);
    if (editShapes(pack, this.readsEmptied) > 0)
      said.push('Shapes, pictures or controls that showed emptied cells no longer do.');
    const styles = pack.related(book.part, 'styles')?.target;
    if (styles !== undefined && editFormats(pack, styles, this.emptiedStyles, flow) > 0)
      said.push('Number formats of emptied cells that spelled out a value were made plain.');
    return said;
  }

  private emptiedLines(flow: Flow): string[] {
    const lines = this.lostLines(flow);
    const which = !flow.hasWishes
      ? ''
      : lines.length === 0
        ? ' those you named.'
        : ' those you named and these:';
    return [`${this.emptied} cells were emptied:${which}`, ...lines];
  }

  private lostLines(flow: Flow): string[] {
    return flow
      .lost()
      .filter(({ sheet }) => this.keeps(sheet))
      .map(({ sheet, reason, areas }) => {
        const list = mergedAreas(areas);
        const more = list.length > SHOWN_AREAS ? ` and ${list.length - SHOWN_AREAS} more ranges` : '';
        const name = this.opened.book.sheets[sheet]?.name ?? '';
        return `${name}!${list.slice(0, SHOWN_AREAS).map(areaText).join(', ')}${more}: ${REASONS[reason]}.`;
      });
  }

  private dropSheets(bookEdits: Edit[], said: string[]): void {
    const { pack, book } = this.opened;
    if (this.dropped.length === 0) return;
    for (const sheet of this.dropped) {
      pack.remove(sheet.part);
      bookEdits.push(cut(sheet.element));
    }
    said.push(
      this.dropped.length === 1 ? 'One sheet is left out.' : `${this.dropped.length} sheets are left out.`,
    );
    for (const name of book.names) {
      const scope = attribute(book.bytes, name.element, 'localSheetId');
      if (scope && name.scope !== undefined && this.keeps(name.scope)) {
        const shift = this.dropped.filter((sheet) => sheet.index < (name.scope ?? 0)).length;
        if (shift > 0) bookEdits.push(put(scope.valueStart, scope.valueEnd, String(name.scope - shift)));
      }
    }
    // Tabs are counted from the left; the first one opens.
    for (const view of all(child(book.root, 'bookViews'), 'workbookView'))
      for (const place of ['activeTab', 'firstSheet']) {
        const found = attribute(book.bytes, view, place);
        if (found) bookEdits.push(cut(found));
      }
  }

  /** Shared texts that no remaining cell uses are emptied; their numbers stay, so no cell needs to change. */
  private cleanStrings(): string[] {
    const { pack, book } = this.opened;
    const part = pack.related(book.part, 'sharedStrings')?.target;
    if (part === undefined) return [];
    const strings = sharedStrings(this.opened);
    if (strings.spans.length === 0) return [];
    const used = new Set<number>();
    for (const sheet of book.sheets.filter((one) => one.isWorksheet && this.keeps(one.index))) {
      const bytes = pack.read(sheet.part);
      if (bytes) collectUsed(bytes, used);
    }
    const unused = strings.spans.filter(
      (span, i) => !used.has(i) && span.to > span.from && strings.text(i) !== '',
    );
    const edits = unused.map((span) => put(span.from, span.to, `<${prefixAt(strings.bytes, span.to)}t/>`));
    const root = edits.length > 0 ? pack.tree(part) : undefined;
    // How often texts are used is no longer what the list says of itself.
    const count = root && attribute(root.bytes, root.root, 'count');
    pack.edit(part, count ? [cut(count), ...edits] : edits);
    return unused.length > 0 ? [`${unused.length} texts that only cells left out had used.`] : [];
  }

  /** The list of sheets in the properties, and the small picture of the first one. */
  private cleanProperties(): string[] {
    const { pack } = this.opened;
    const picture = pack.related('', 'thumbnail')?.target;
    if (picture !== undefined) pack.remove(picture);
    const part =
      pack.related('', 'extended-properties')?.target ?? pack.related('', 'extendedProperties')?.target;
    const found = part === undefined ? undefined : pack.tree(part);
    if (part !== undefined && found)
      pack.edit(part, all(found.root, 'TitlesOfParts', 'HeadingPairs').map(cut));
    return picture === undefined ? [] : ['The preview picture of the workbook.'];
  }
}

function collectUsed(bytes: Uint8Array, used: Set<number>): void {
  const tree = new TreeReader(bytes, 'sheetData');
  for (let data = tree.run(); data; data = tree.run()) {
    const cells = new Cells(bytes, data.openEnd);
    while (cells.next()) {
      const { cell } = cells;
      if (cell.typeTo - cell.typeFrom === 1 && bytes[cell.typeFrom] === 0x73 && cell.valueFrom >= 0)
        used.add(Number(rawText(bytes, cell.valueFrom, cell.valueTo)));
    }
    tree.seek(cells.closeAt);
  }
}

/** The namespace prefix of the </si> at `at`. */
const prefixAt = (bytes: Uint8Array, at: number): string =>
  bytes[at] === LT ? (/^(\w+:)?/.exec(rawText(bytes, at + 2, at + 40))?.[0] ?? '') : '';
