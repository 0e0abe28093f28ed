import type { LogLine } from './log';

/** What the dosing of a vat is made of; other lines of the log are other work. */
export const VAT_WHATS = [
  'filled',
  'reading',
  'dose',
  'aired',
  'jar',
  'night',
  'refill',
  'change',
  'rain',
  'meter check',
  'from tank',
] as const;
export type VatWhat = (typeof VAT_WHATS)[number];
export interface VatEvent extends LogLine {
  readonly what: VatWhat;
}

const isWhat = (what: string): what is VatWhat => (VAT_WHATS as readonly string[]).includes(what);
/** Words a person may write for the same. */
const ALSO: Readonly<Record<string, VatWhat>> = {
  ph: 'reading',
  dosed: 'dose',
  given: 'dose',
  air: 'aired',
  aerated: 'aired',
  rained: 'rain',
  'water change': 'change',
  'water changed': 'change',
  morning: 'night',
};

/**
 * The line as an event of a dosing; undefined for other work. A line that names nothing is a dose or a reading
 * by what stands in it.
 */
export const eventOf = (line: LogLine): VatEvent | undefined => {
  const word = line.what.trim().toLowerCase();
  const what = isWhat(word) ? word : ALSO[word];
  if (what) return { ...line, what };
  if (word !== '') return undefined;
  if (line.ph !== null) return { ...line, what: 'reading' };
  return line.grams === null ? undefined : { ...line, what: 'dose' };
};

/** Events of every vat, oldest first; lines without a time keep their place. */
export const eventsOf = (lines: readonly LogLine[]): readonly VatEvent[] => {
  const events = lines.map(eventOf).filter((event): event is VatEvent => event !== undefined);
  let last = -Infinity;
  return events
    .map((event, i) => {
      last = event.at ?? last;
      return { event, at: last, i };
    })
    .sort((a, b) => a.at - b.at || a.i - b.i)
    .map(({ event }) => event);
};

/** The events of one vat since it was last filled; a filling in between begins a new dosing. */
export const dosingOf = (events: readonly VatEvent[], vat: string): readonly VatEvent[] => {
  const own = events.filter((event) => event.vat === vat && event.what !== 'meter check');
  const start = own.map(({ what }) => what).lastIndexOf('filled');
  return start < 0 ? own : own.slice(start);
};

const BUFFER = /(\d+(?:[.,]\d+)?)/;
/** What the meter showed in a buffer, and the pH printed on it. */
export interface MeterCheck {
  readonly at: number | null;
  readonly shown: number;
  readonly buffer: number;
}
/** "buffer 7" as the unit of a meter check names the pH of its buffer. */
export const bufferUnit = (value: number): string => `buffer ${value}`;
export const meterChecks = (events: readonly VatEvent[]): readonly MeterCheck[] =>
  events.flatMap(({ what, number, unit, at }) => {
    if (what !== 'meter check' || number === null) return [];
    const [, value = '7'] = BUFFER.exec(unit) ?? [];
    return [{ at, shown: number, buffer: Number(value.replace(',', '.')) }];
  });
