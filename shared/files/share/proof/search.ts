import { addressOf } from '../../../sheet/formula/address';
import { strFromU8 } from 'fflate';
import { sharedStrings } from '../../cells/strings';
import { eachSpan, resolvedValue } from '../../cells/values';
import type { PackageBook } from '../../package/book';
import { readBook } from '../../package/book';
import { scanXml } from '../../package/events';
import { Package } from '../../package/package';
import { Refusal } from '../../package/refusal';
import { bytesOf, textBetween } from '../../package/xml';
import { revealCellText } from '../../text';
import type { ShareProgress } from '../decisions/options';
import type { LeftValues } from '../leaveOut/values';
import { LINE_HEADS, MEANING, SHEET_HEADS, SOURCE_HEADS, TITLE } from './page';

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

class Searcher {
  readonly places: string[] = [];
  constructor(private readonly values: LeftValues) {}

  say(place: string): void {
    if (this.places.at(-1) !== place) this.places.push(place);
  }

  /** Words and values of a part, without the cells. */
  xml(bytes: Uint8Array, part: string, hasCells: boolean): void {
    const { values } = this;
    const path: string[] = [];
    const runs = new Map<number, string>();
    const short = part.replace(/^.*\//, '');
    scanXml(bytes, part, {
      ...(hasCells
        ? { aside: { name: 'sheetData', read: (from: number) => closingAfter(bytes, from) } }
        : {}),
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

  part(pack: Package, name: string, hasCells: boolean): void {
    const bytes = pack.raw(name);
    if (!bytes) return;
    if (!/\.(xml|rels)$/i.test(name)) {
      this.bytes(bytes, name);
      return;
    }
    try {
      this.xml(bytes, name, hasCells);
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      this.bytes(bytes, name);
    }
  }
}

const closingAfter = (bytes: Uint8Array, from: number): number => {
  const text = strFromU8(bytes.subarray(from), true);
  const at = text.search(/<\/(?:[\w.-]+:)?sheetData\s*>/);
  return at < 0 ? bytes.length : from + at;
};

/** What every page of ours says holds nobody's values. */
const OWN_WORDS: ReadonlySet<string> = new Set([
  ...MEANING,
  ...LINE_HEADS,
  ...SHEET_HEADS,
  ...SOURCE_HEADS,
  TITLE,
]);

function* cells(
  pack: Package,
  book: PackageBook,
  values: LeftValues,
  searcher: Searcher,
): Generator<ShareProgress> {
  const strings = sharedStrings({ pack, book });
  for (const { name, part, isWorksheet } of book.sheets) {
    const bytes = isWorksheet ? pack.read(part) : undefined;
    if (!bytes) continue;
    for (const done of eachSpan(bytes, (cell) => {
      const place = (): string => `${name}!${addressOf(cell.row, cell.column)}`;
      const value = resolvedValue(bytes, cell, strings);
      if (value && OWN_WORDS.has(value.raw)) return;
      if (value && value.type !== 'b' && value.type !== 'e' && values.in(revealCellText(value.raw)))
        searcher.say(place());
      else if (
        cell.formulaOpenEnd > 0 &&
        values.inFormula(textBetween(bytes, cell.formulaOpenEnd, cell.formulaCloseStart))
      )
        searcher.say(`the formula in ${place()}`);
    }))
      yield { step: 'prove', done };
  }
}

export function* searchCopy(copy: Uint8Array, values: LeftValues): Generator<ShareProgress, Proof> {
  const steps = Package.open(copy);
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield { step: 'prove', done: step.value };
  const pack = step.value;
  const book = readBook(pack);
  const searcher = new Searcher(values);
  yield* cells(pack, book, values, searcher);
  const worksheets = new Set(book.sheets.map(({ part }) => part.toLowerCase()));
  const texts = pack.related(book.part, 'sharedStrings')?.target.toLowerCase();
  const names = pack.names.filter((name) => name !== '[Content_Types].xml');
  // Shared texts were looked at where cells use them; those that no cell uses are looked at here.
  for (const name of names)
    if (name.toLowerCase() !== texts) searcher.part(pack, name, worksheets.has(name.toLowerCase()));
  return {
    parts: names.length + 1,
    values: values.size,
    short: values.short,
    places: [...new Set(searcher.places)],
  };
}

const SHOWN = 40;

/** The outcome for the person who makes the copy; it names places, never values. */
export function proofSentences({ parts, values, short, places }: Proof): string[] {
  const rest =
    short > 0
      ? ` ${short} more cells hold values of one or two signs, which stand in every workbook by chance and were not looked for.`
      : '';
  if (places.length === 0)
    return [
      `All ${parts} parts of the copy were searched for the ${values} values left out: none is in it.${rest}`,
    ];
  const list = places.slice(0, SHOWN).join('; ');
  const more = places.length > SHOWN ? ` and ${places.length - SHOWN} more places` : '';
  return [
    `Values equal to some of the ${values} left out stand in: ${list}${more}. They were not worked out from what is left out, so they were kept; leave them out too if they tell.${rest}`,
  ];
}
