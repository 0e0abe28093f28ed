// Long: one walk over every kind of part that may hold a value.
import type { CellPlace } from '../../../sheet/formula/address';
import { addressOf } from '../../../sheet/formula/address';
import { strFromU8 } from 'fflate';
import { sharedStrings } from '../../cells/strings';
import { Cells } from '../../cells/cells';
import type { CellSpan } from '../../cells/cells';
import { numberAt } from '../../cells/numbers';
import type { SharedStrings } from '../../cells/strings';
import { resolvedValue } from '../../cells/values';
import type { PackageBook } from '../../package/book';
import { readBook } from '../../package/book';
import { scanXml } from '../../package/events';
import { Package } from '../../package/package';
import { Refusal } from '../../package/refusal';
import { bytesOf, textBetween, TreeReader } from '../../package/xml';
import { revealCellText } from '../../text';
import type { ShareProgress } from '../decisions/options';
import type { LeftValues } from '../leaveOut/values';

/** Looks for every value that was left out in everything the finished copy holds, as it lies in the file. */

export interface Proof {
  /** Parts looked through. */
  readonly parts: number;
  /** Values looked for. */
  readonly values: number;
  /** Values too short to look for: they stand in every workbook by chance. */
  readonly short: number;
  /** Where one of them stands, by cell or by part; empty when the copy is clean. */
  readonly places: readonly string[];
  /** Further places, beyond those listed. */
  readonly more: number;
}

/** Attributes that hold words or values; in all others numbers are places, sizes and switches. */
const WORDY = new Set(
  (
    'name title descr prompt promptTitle error errorTitle tooltip display location caption totalsRowLabel ' +
    'displayName userName user comment description help statusBar refreshedBy author altText alt string v u ' +
    'Label sourceName command connection formatCode textlink uniqueName customList Target value text'
  ).split(' '),
);
const VALUED = new Set([
  'filter',
  'customFilter',
  'inputCells',
  'dateGroupItem',
  'formControlPr',
  'cfvo',
  'n',
  's',
  'd',
]);
const PLACES = new Set(['sqref', 'row', 'col', 'rowOff', 'colOff', 'Row', 'Column', 'Anchor', 'ref']);
const FORMULAS = new Set(
  'f formula formula1 formula2 calculatedColumnFormula totalsRowFormula definedName'.split(' '),
);
const HOLDERS = new Set(['p', 'text', 'si', 'is', 'comment']);
const MOST_BYTES_WORK = 2_000_000_000;
/** Places kept; a copy that fills the list is not clean however many more there are. */
const MOST_PLACES = 2_000;

class Searcher {
  readonly places = new Set<string>();
  more = 0;
  /** Where the cells of a sheet end, by part and where they begin. */
  readonly cellsEnd = new Map<string, Map<number, number>>();
  constructor(private readonly values: LeftValues) {}

  say(place: string): void {
    if (this.places.size < MOST_PLACES) this.places.add(place);
    else if (!this.places.has(place)) this.more++;
  }

  /** Words and values of a part, without the cells. */
  xml(bytes: Uint8Array, part: string): void {
    const { values } = this;
    const ends = this.cellsEnd.get(part.toLowerCase());
    const path: string[] = [];
    const runs = new Map<number, string>();
    const short = part.replace(/^.*\//, '');
    scanXml(bytes, part, {
      ...(ends ? { aside: { name: 'sheetData', read: (from: number) => ends.get(from) ?? from } } : {}),
      open: (tag) => {
        path.push(tag.name);
        if (HOLDERS.has(tag.name)) runs.set(path.length, '');
        for (const { name, value } of tag.attributes) {
          const local = name.slice(name.indexOf(':') + 1);
          const isValue = WORDY.has(local) || (local === 'val' && VALUED.has(tag.name));
          if (isValue ? values.in(value) : values.inWords(value)) this.say(short);
        }
      },
      text: (text) => {
        const name = path.at(-1) ?? '';
        if (PLACES.has(name)) return;
        if (FORMULAS.has(name) ? values.inFormula(text) : values.in(revealCellText(text))) this.say(short);
        for (const [depth, run] of runs) if (depth <= path.length) runs.set(depth, run + text);
      },
      close: () => {
        const run = runs.get(path.length);
        if (run !== undefined && values.inWords(run)) this.say(short);
        runs.delete(path.length);
        path.pop();
      },
    });
  }

  bytes(bytes: Uint8Array, part: string): void {
    const text = strFromU8(bytes, true).toLowerCase();
    let work = 0;
    for (const spelling of this.values.spellings()) {
      if ((work += text.length) > MOST_BYTES_WORK) {
        this.say(`${part.replace(/^.*\//, '')} (not searched to its end)`);
        return;
      }
      const narrow = strFromU8(bytesOf(spelling), true);
      if (text.includes(narrow) || text.includes([...spelling].join('\0')))
        this.say(part.replace(/^.*\//, ''));
    }
  }

  part(pack: Package, name: string): void {
    const bytes = pack.raw(name);
    if (!bytes) return;
    if (!/\.(xml|rels)$/i.test(name)) {
      this.bytes(bytes, name);
      return;
    }
    try {
      this.xml(bytes, name);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      this.bytes(bytes, name);
    }
  }
}

const QUOTE = 0x22;
const AMPERSAND = 0x26;
const isDigit = (byte: number): boolean => byte >= 0x30 && byte <= 0x39;
/** Letters, digits, $, _ and the point: a digit behind one of them belongs to an address, a name or a number. */
const isWord = (byte: number): boolean =>
  isDigit(byte) ||
  (byte >= 0x41 && byte <= 0x5a) ||
  (byte >= 0x61 && byte <= 0x7a) ||
  byte === 0x24 ||
  byte === 0x5f ||
  byte > 127;

/** Quick look without decoding: can the formula spell out a number or a text at all? */
function mayHoldLiteral(bytes: Uint8Array, from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const byte = bytes[i] ?? 0;
    if (byte === QUOTE || byte === AMPERSAND || byte === 0x3c) return true;
    if (isDigit(byte) && !isWord(i === from ? 0x28 : (bytes[i - 1] ?? 0))) return true;
  }
  return false;
}

/** Looks at the cells of one sheet. */
class CellSearch {
  private readonly known = new Map<number, boolean>();
  constructor(
    private readonly name: string,
    private readonly bytes: Uint8Array,
    private readonly strings: SharedStrings,
    private readonly values: LeftValues,
    private readonly searcher: Searcher,
    private readonly kept: Kept,
    private readonly sheet: number,
  ) {}

  look(cell: CellSpan): void {
    if (this.holds(cell) && !this.kept.isSafeSum(this.sheet, cell)) this.searcher.say(this.place(cell));
    else if (
      cell.formulaOpenEnd > 0 &&
      mayHoldLiteral(this.bytes, cell.formulaOpenEnd, cell.formulaCloseStart) &&
      this.values.inFormula(textBetween(this.bytes, cell.formulaOpenEnd, cell.formulaCloseStart))
    )
      this.searcher.say(`the formula in ${this.place(cell)}`);
  }

  private place(cell: CellSpan): string {
    return `${this.name}!${addressOf(cell.row, cell.column)}`;
  }

  private holds(cell: CellSpan): boolean {
    const { bytes, values } = this;
    if (cell.valueFrom < 0 && cell.inlineFrom < 0) return false;
    if (cell.typeFrom < 0 && cell.valueFrom >= 0)
      return values.inNumber(numberAt(bytes, cell.valueFrom, cell.valueTo));
    // The same shared text stands in many cells.
    const isShared =
      cell.typeTo - cell.typeFrom === 1 && bytes[cell.typeFrom] === 0x73 && cell.valueFrom >= 0;
    if (!isShared) return this.holdsText(cell);
    const number = numberAt(bytes, cell.valueFrom, cell.valueTo);
    const known = this.known.get(number);
    if (known !== undefined) return known;
    const found = this.holdsText(cell);
    this.known.set(number, found);
    return found;
  }

  private holdsText(cell: CellSpan): boolean {
    const value = resolvedValue(this.bytes, cell, this.strings);
    if (!value || value.type === 'b' || value.type === 'e' || this.kept.said.has(value.raw)) return false;
    return this.values.in(revealCellText(value.raw));
  }
}

const CELLS_PER_STEP = 20_000;

function* cells(
  pack: Package,
  book: PackageBook,
  values: LeftValues,
  searcher: Searcher,
  kept: Kept,
): Generator<ShareProgress> {
  const strings = sharedStrings({ pack, book });
  for (const { name, part, isWorksheet } of book.sheets) {
    const bytes = isWorksheet ? pack.read(part) : undefined;
    if (!bytes) continue;
    const search = new CellSearch(name, bytes, strings, values, searcher, kept, kept.indexOf(name));
    const ends = new Map<number, number>();
    searcher.cellsEnd.set(part.toLowerCase(), ends);
    const tree = new TreeReader(bytes, 'sheetData');
    for (let data = tree.run(); data; data = tree.run()) {
      const walk = new Cells(bytes, data.openEnd);
      for (let count = 1; walk.next(); count++) {
        search.look(walk.cell);
        if (count % CELLS_PER_STEP === 0) yield { step: 'prove', done: walk.cell.end / bytes.length };
      }
      ends.set(data.openEnd, walk.closeAt);
      tree.seek(walk.closeAt);
    }
  }
}

/** What may stand in the copy although it equals a value left out. */
export interface Kept {
  /** Sentences of ours on the page, which hold nobody's values. */
  readonly said: ReadonlySet<string>;
  /** A sum over so many cells that none of them can be told; by the sheet's place in the original. */
  readonly isSafeSum: (sheet: number, place: CellPlace) => boolean;
  readonly indexOf: (sheet: string) => number;
}

export function* searchCopy(
  copy: Uint8Array,
  values: LeftValues,
  kept: Kept,
): Generator<ShareProgress, Proof> {
  const steps = Package.open(copy);
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield { step: 'prove', done: step.value };
  const pack = step.value;
  const book = readBook(pack);
  const searcher = new Searcher(values);
  yield* cells(pack, book, values, searcher, kept);
  const texts = pack.related(book.part, 'sharedStrings')?.target.toLowerCase();
  const names = pack.names.filter((name) => name !== '[Content_Types].xml');
  // Shared texts were looked at where cells use them; those that no cell uses are looked at here.
  for (const name of names) if (name.toLowerCase() !== texts) searcher.part(pack, name);
  return {
    parts: names.length + 1,
    values: values.size,
    short: values.short,
    places: [...searcher.places],
    more: searcher.more,
  };
}
