import type { LogLine } from '../../../../shared/dosing/log';
import { EMPTY_LINE } from '../../../../shared/dosing/log';
import type { CellChange, LogFact } from '../../../../shared/books/living/reading/day';
import type { CardId, LineDraft } from './cards';

/** The day's notebook: which vat, which card, what stands in its fields, and every line noted. */
export interface VatState {
  readonly vats: readonly string[];
  readonly vat: string;
  readonly card: CardId | undefined;
  /** What stands in the fields, by vat, card and field. */
  readonly texts: Readonly<Record<string, string>>;
  /** The field the number keys type into. */
  readonly field: string;
  readonly lines: readonly NotebookLine[];
  readonly timer: Timer | undefined;
  readonly isAdding: boolean;
  readonly added: string;
  /** Who writes; stays until it is changed. */
  readonly who: string;
}
/** A fact for the season's book: which table takes it. */
export type BookEntry =
  | { readonly kind: 'log'; readonly fact: LogFact }
  | { readonly kind: 'pairs'; readonly batch: string; readonly key: 'injected' | 'stripped' }
  | { readonly kind: 'look'; readonly batch: string; readonly looked: number; readonly alive: number }
  | {
      readonly kind: 'samples';
      readonly batch: string;
      readonly samples: readonly { readonly grams: number; readonly eggs: number }[];
    }
  | { readonly kind: 'eggGrams'; readonly batch: string; readonly grams: number }
  | { readonly kind: 'larvae'; readonly batch: string; readonly number: number }
  | { readonly kind: 'weight'; readonly female: string; readonly kilograms: number }
  | { readonly kind: 'fishWeight'; readonly batch: string; readonly grams: number }
  /** A cell of a list of what to do; it takes the moment it was done. */
  | { readonly kind: 'tick'; readonly sheet: string; readonly address: string };

/** Cells of the book that a line filled, to be emptied again. */
export interface Filled {
  readonly sheet: string;
  readonly cells: readonly CellChange[];
}

export interface NotebookLine extends LineDraft {
  readonly id: number;
  readonly at: number;
  readonly vat: string;
  /** Where it stands in the vat log; undefined while it waits, or where it stands in the book alone. */
  readonly row: number | undefined;
  /** It stands in another workbook than the one that is open. */
  readonly isElsewhere?: boolean;
  /** The task it ticks off, if any. */
  readonly task?: string;
  readonly filled?: readonly Filled[];
  /** It stands where it belongs. */
  readonly isWritten?: boolean;
}
export interface Timer {
  readonly what: string;
  /** Moment it ends, as a serial with its hour. */
  readonly until: number;
  readonly hasRung: boolean;
}

export const initialVat: VatState = {
  vats: ['1', '2', '3'],
  vat: '1',
  card: undefined,
  texts: {},
  field: '',
  lines: [],
  timer: undefined,
  isAdding: false,
  added: '',
  who: '',
};

/** As the sheet names what was noted, whatever the language of the pane: one word for one thing. */
export const WHAT: Readonly<Record<string, string>> = {
  reading: 'reading',
  dose: 'dose',
  temperature: 'water temperature',
  ph: 'pH',
  oxygen: 'oxygen',
  feed: 'feed given',
  dead: 'dead',
  weight: 'female weight',
  hormone: 'hormone',
  eggGrams: 'weight of eggs',
  eggs: 'eggs',
  good: 'good eggs seen',
  seen: 'eggs looked at',
  fry: 'fry counted',
  salt: 'salt bath',
  formalin: 'formalin bath',
  fishWeight: 'weight of a fish',
  handed: 'handed over',
  injected: 'injected',
  stripped: 'stripped',
  hatching: 'first hatch seen',
  fed: 'first food',
  changed: 'water changed',
  graded: 'graded',
  cleaned: 'vat cleaned',
};

export const waiting = ({ lines }: VatState): readonly NotebookLine[] =>
  lines.filter(({ row, isWritten }) => row === undefined && isWritten !== true);

/** What of the notebook outlives the pane. */
export const VAT_KEEPS = { vat: ['vats', 'vat', 'card', 'texts', 'field', 'lines', 'timer', 'who'] } as const;

/** Things noted that have a column of their own. */
const OWN_COLUMN: Readonly<Record<string, 'ph' | 'celsius' | 'grams'>> = {
  ph: 'ph',
  temperature: 'celsius',
  dose: 'grams',
};

/** The line as the log in the workbook holds it. */
export const entryOf = ({ at, vat, what, value, unit, note, entry }: NotebookLine): LogLine => {
  const base = { ...EMPTY_LINE, at, vat, note: note ?? '' };
  if (entry?.what !== undefined) return { ...base, ...entry };
  const column = OWN_COLUMN[what];
  const isReading = what === 'ph' || what === 'temperature';
  return {
    ...base,
    what: isReading ? 'reading' : (WHAT[what] ?? what),
    ...(column ? { [column]: value } : { number: value, unit }),
    ...entry,
  };
};

const keyOfWhat = new Map(Object.entries(WHAT).map(([key, said]) => [said, key]));
/** The line of the pane behind a line of the log. */
export const lineOfEntry = (
  entry: LogLine & { readonly row: number },
  id: number,
  at: number,
): NotebookLine => {
  const { row, ...line } = entry;
  const [value, unit] =
    line.ph !== null
      ? [line.ph, '']
      : line.grams !== null
        ? [line.grams, 'g']
        : line.celsius !== null
          ? [line.celsius, '°C']
          : line.number !== null
            ? [line.number, line.unit]
            : [line.litres, line.litres === null ? '' : 'L'];
  const key = keyOfWhat.get(line.what) ?? line.what;
  return {
    id,
    at: line.at ?? at,
    vat: line.vat,
    what: key,
    value,
    unit,
    ...(line.note ? { note: line.note } : {}),
    row,
    entry: line,
  };
};
