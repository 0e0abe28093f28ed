import { addressOf, parseAddress, parseArea } from '../../../sheet/formula/address';
import type { Blanked } from './blanking';
import { planBlanking } from './blanking';
import type { NameInfo } from '../../package/book';
import { Cells } from '../../cells/cells';
import { editCharts } from './charts';
import { lex } from '../references/lex';
import type { Exclusion, Opened } from '../open';
import type { FreezeOptions, Progress } from '../decisions/options';
import { relationsPart } from '../../package/package';
import { PAGE_NAME } from '../proof/page';
import { removePivots } from './pivots';
import type { Reference } from '../references/references';
import { ReferenceFinder } from '../references/references';
import { Refusal } from '../../package/refusal';
import { prune } from './rules';
import type { SheetScan } from '../decisions/scan';
import type { Edit } from '../../package/splice';
import { cut, put } from '../../package/splice';
import { sharedStrings } from '../../cells/strings';
import { sweepParts, sweepTree } from './sweep';
import { Telltales } from './telltales';
import type { Element } from '../../package/xml';
import { all, attribute, child, LT, nameEnd, rawText, textOf, TreeReader } from '../../package/xml';

/** Sheets and columns that the reader of the copy shall not get. */
export interface LeaveOut {
  readonly exclusion: Exclusion;
  readonly editsOf: (scan: SheetScan) => Edit[];
  readonly dropsName: (name: NameInfo) => boolean;
  /** Was there anything to leave out that was still there? Known after the edits. */
  readonly isChanging: boolean;
  readonly apply: (bookEdits: Edit[]) => string[];
  /** Does the text give away what was blanked? */
  readonly tells: (text: string) => boolean;
}

export function* planExclusion(
  opened: Opened,
  options: FreezeOptions,
): Generator<Progress, LeaveOut | undefined> {
  const wishes = (options.blank ?? []).filter((wish) => wish.trim() !== '');
  const kept = keptSheets(opened, options.sheets);
  const keeps = (sheet: number): boolean => kept.has(sheet);
  if (wishes.length === 0 && kept.size === opened.book.sheets.length) return undefined;
  const blanked = wishes.length === 0 ? undefined : yield* planBlanking(opened, wishes, keeps);
  return new LeavingOut(opened, keeps, blanked);
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
    [...kept, ...book.sheets.filter((sheet) => sheet.name.startsWith(PAGE_NAME))].map((sheet) => sheet.index),
  );
}

class LeavingOut implements LeaveOut {
  private readonly finder: ReferenceFinder;
  private readonly telltales: Telltales;
  private emptied = 0;
  private rules = 0;
  readonly exclusion: Exclusion;

  constructor(
    private readonly opened: Opened,
    private readonly keeps: (sheet: number) => boolean,
    private readonly blanked: Blanked | undefined,
  ) {
    this.finder = new ReferenceFinder(opened.names, opened.tables);
    this.telltales = blanked?.telltales ?? new Telltales();
    this.exclusion = {
      keeps,
      isBlank: (sheet, place) => blanked?.isBlank(sheet, place) ?? false,
      reads: (text, pieces, sheet, place) => {
        const { found, isUnsure } = this.finder.of(text, pieces, sheet < 0 ? undefined : sheet, place);
        return isUnsure || found.some(this.isOut);
      },
    };
  }

  private get dropped(): Opened['book']['sheets'] {
    return this.opened.book.sheets.filter((sheet) => !this.keeps(sheet.index));
  }
  get isChanging(): boolean {
    return this.dropped.length > 0 || this.emptied > 0 || this.rules > 0;
  }
  private readonly isGone = ({ sheet }: Reference): boolean => !this.keeps(sheet);
  private readonly isBlankRange = ({ sheet, area }: Reference): boolean =>
    this.blanked?.touches(sheet, area) ?? false;
  private readonly isOut = (reference: Reference): boolean =>
    this.isGone(reference) || this.isBlankRange(reference);

  tells(text: string): boolean {
    return this.telltales.in(text);
  }

  dropsName(name: NameInfo): boolean {
    if (name.scope !== undefined && !this.keeps(name.scope)) return true;
    return (
      this.telltales.inFormula(name.text) ||
      this.finder.of(name.text, lex(name.text), name.scope, undefined).found.some(this.isGone)
    );
  }

  editsOf({ info, bytes, root }: SheetScan): Edit[] {
    const { blanked } = this;
    const lost = new Set([
      ...all(root, 'sparkline').filter((one) => this.readsGone(bytes, child(one, 'f'))),
      ...all(root, 'hyperlink').filter((one) => this.pointsToGone(bytes, one)),
    ]);
    const edits: Edit[] = prune(bytes, lost);
    this.rules += edits.length;
    if (!blanked) return edits;
    edits.push(...this.emptyCells(info.index, bytes, root, blanked));
    const links = new Set(
      all(root, 'hyperlink').filter((link) => this.isTellingLink(info.part, info.index, bytes, link)),
    );
    const ids = new Set([...links].map((link) => attribute(bytes, link, 'id')?.value));
    this.opened.pack.edit(
      relationsPart(info.part),
      this.opened.pack
        .relations(info.part)
        .filter((one) => ids.has(one.id))
        .map((one) => cut(one.element)),
    );
    const around = [...prune(bytes, links), ...sweepTree(bytes, root, this.telltales)];
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

  private emptyCells(sheet: number, bytes: Uint8Array, root: Element, blanked: Blanked): Edit[] {
    const edits: Edit[] = [];
    for (const data of all(root, 'sheetData').filter((one) => one.closeStart > one.openEnd)) {
      const cells = new Cells(bytes, data.openEnd);
      while (cells.next()) {
        const { cell } = cells;
        if (cell.formulaStart < 0 && cell.valueFrom < 0 && cell.inlineFrom < 0) continue;
        if (!blanked.isBlank(sheet, cell)) continue;
        const tag = rawText(bytes, cell.start + 1, nameEnd(bytes, cell.start + 1));
        const style = cell.styleFrom < 0 ? '' : ` s="${rawText(bytes, cell.styleFrom, cell.styleTo)}"`;
        edits.push(put(cell.start, cell.end, `<${tag} r="${addressOf(cell.row, cell.column)}"${style}/>`));
      }
    }
    this.emptied += edits.length;
    return edits;
  }

  private isTellingLink(part: string, sheet: number, bytes: Uint8Array, link: Element): boolean {
    const area = parseArea(attribute(bytes, link, 'ref')?.value ?? '');
    const target =
      this.opened.pack.relations(part).find((one) => one.id === attribute(bytes, link, 'id')?.value)
        ?.target ?? '';
    return (area !== undefined && this.isBlankRange({ sheet, area })) || this.telltales.in(target);
  }

  apply(bookEdits: Edit[]): string[] {
    const { pack, book, tables } = this.opened;
    const said: string[] = [];
    this.dropSheets(bookEdits, said);
    for (const name of book.names.filter((one) => this.dropsName(one))) {
      bookEdits.push(cut(name.element));
      said.push(
        `The name ${this.telltales.in(name.name) ? 'of a range' : name.name} was removed: it stood for something left out.`,
      );
    }
    said.push(
      ...removePivots(
        pack,
        book,
        tables,
        this.finder,
        { isOut: this.isOut, telltales: this.telltales },
        bookEdits,
      ),
    );
    pack.tidy(this.opened.before);
    if (this.blanked) said.push(...this.clean(this.blanked));
    said.push(...editCharts(pack, this.finder, { isGone: this.isGone, isBlank: this.isBlankRange }));
    if (this.isChanging) {
      said.push(...this.cleanStrings(), ...this.cleanProperties());
    }
    return said;
  }

  /** Blanked values in notes, caches, texts. */
  private clean(blanked: Blanked): string[] {
    const { pack, book } = this.opened;
    const said =
      this.emptied > 0
        ? [
            `${this.emptied} cells were emptied: those you named${blanked.results > 0 ? `, ${blanked.results} results that would give them away` : ''}${blanked.found > 0 ? `, ${blanked.found} cells elsewhere that hold the same values` : ''}.`,
          ]
        : [];
    if (this.rules > 0)
      said.push('Links, rules, filters or headers of sheets that held blanked values were removed.');
    for (const sheet of book.sheets.filter((one) => this.keeps(one.index)))
      for (const relation of pack.relations(sheet.part)) {
        if (!/^(comments|threadedComment)$/i.test(relation.type)) continue;
        const found = pack.tree(relation.target);
        if (!found) continue;
        const notes = all(found.root, 'comment', 'threadedComment').filter((one) => {
          const place = parseAddress(attribute(found.bytes, one, 'ref')?.value ?? '');
          return place && blanked.isBlank(sheet.index, place);
        });
        const texts = notes.flatMap((one) =>
          all(one, 't', 'text').filter(
            (each) => each.children.length === 0 && textOf(found.bytes, each) !== '',
          ),
        );
        pack.edit(
          relation.target,
          texts.map((one) => put(one.openEnd, one.closeStart, '')),
        );
        if (texts.length > 0) said.push(`Notes on blanked cells of ${sheet.name} were emptied.`);
      }
    const { swept, stuck } = sweepParts(pack, this.telltales);
    if (swept.length > 0)
      said.push(
        `Blanked values were also taken out of: ${swept.map((part) => part.replace(/^.*\//, '')).join(', ')}.`,
      );
    for (const part of stuck)
      said.push(
        `${part.replace(/^.*\//, '')}: a table heading still holds a blanked value; rename the column in the original to remove it.`,
      );
    for (const sheet of book.sheets.filter((one) => this.keeps(one.index) && this.telltales.in(one.name)))
      said.push(
        `The sheet name ${sheet.name} still holds a blanked value; rename the sheet in the original to remove it.`,
      );
    return said;
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
    const used = new Set<number>();
    for (const sheet of book.sheets.filter((one) => one.isWorksheet && this.keeps(one.index))) {
      const bytes = pack.read(sheet.part);
      if (bytes) collectUsed(bytes, used);
    }
    const unused = strings.spans.filter(
      (span, i) => !used.has(i) && span.to > span.from && strings.text(i) !== '',
    );
    pack.edit(
      part,
      unused.map((span) => put(span.from, span.to, `<${prefixAt(strings.bytes, span.to)}t/>`)),
    );
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
