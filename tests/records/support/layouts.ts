import { addressOf } from '../../../shared/sheet/formula/address';
import type { FieldName } from '../../../shared/records/fields';
import { fieldSpec } from '../../../shared/records/fields';
import type { Farm, FarmTable, Value } from './farm';
import { drawer } from './farm';
import type { Made, MadeSheet } from './file';

/** The same farm written down in the ways people keep records. */
export const LAYOUTS = [
  'plain',
  'titled',
  'two-row header',
  'side by side',
  'one run per sheet',
  'runs across',
  'text table',
] as const;
export type Layout = (typeof LAYOUTS)[number];

export interface Book {
  readonly sheets: readonly MadeSheet[];
  /** Where a field of a record was written. */
  readonly where: (
    table: string,
    row: number,
    field: FieldName,
  ) => { readonly sheet: string; readonly cell: string } | undefined;
}

/**
 * Headings in several hands: the words, and the factor from the unit of the field to the unit of the heading.
 */
const HEADINGS: Readonly<
  Partial<Record<FieldName, readonly (readonly [string, ((x: number) => number)?])[]>>
> = {
  run: [['Run'], ['Batch no.'], ['Spawn no']],
  date: [['Date'], ['Spawning date'], ['Date']],
  female: [['Female'], ['Female tag'], ['Female ID']],
  femaleWeight: [['Female weight (kg)'], ['Female wt (g)', (x) => Math.round(x * 1000)], ['Body wt kg']],
  preparation: [['Hormone'], ['Preparation'], ['Hormone type']],
  hormoneDose: [['Dose (ml/kg)'], ['Hormone dose (mL/kg)'], ['Dose ml/kg']],
  hormoneVolume: [['Hormone (ml)'], ['Volume injected (ml)'], ['Injected (mL)']],
  injected: [['Injected at'], ['Injection time'], ['Time of injection']],
  stripped: [['Stripped'], ['Strip time'], ['Time of stripping']],
  temperature: [
    ['Temp (°C)'],
    ['Water temp F', (x) => Math.round((x * 1.8 + 32) * 10) / 10],
    ['Water temperature °C'],
  ],
  eggWeight: [['Egg wt (g)'], ['Weight of eggs (g)'], ['Eggs (g)']],
  eggsPerGram: [['Eggs per gram'], ['Eggs/g'], ['No. of eggs per g']],
  eggs: [['Eggs'], ['Number of eggs'], ['Total eggs']],
  sampleSize: [['Eggs checked'], ['Sample size'], ['Sample']],
  sampleGood: [['Good'], ['Good eggs'], ['Good in sample']],
  fertilisedShare: [
    ['Fert. %', (x) => Math.round(x * 100)],
    ['Fertilisation rate'],
    ['% fertilised', (x) => Math.round(x * 100)],
  ],
  fertilised: [['Fertilised eggs'], ['No. fertilised'], ['Fertilized']],
  fertilisedAt: [['Fertilised at'], ['Time fertilised'], ['Milt added']],
  incubationTemperature: [['Incubation temp (°C)'], ['Egg temperature'], ['Hatchery temp. °C']],
  hatchedAt: [['Hatch time'], ['Hatched at'], ['First hatch']],
  hatched: [['Larvae'], ['Hatchlings'], ['No. of larvae']],
  hatchShare: [
    ['Hatch %', (x) => Math.round(x * 100)],
    ['Hatching rate'],
    ['Hatchability (%)', (x) => Math.round(x * 100)],
  ],
  fry: [['Fry'], ['Swim-up fry'], ['Number of fry']],
  survival: [
    ['Survival %', (x) => Math.round(x * 100)],
    ['Survival'],
    ['Survival rate (%)', (x) => Math.round(x * 100)],
  ],
  vat: [['Vat'], ['Tank no.'], ['Tank']],
  stockedAt: [['Stocking date'], ['Date stocked'], ['Start date']],
  emptiedAt: [['End date'], ['Harvest date'], ['Date out']],
  stocked: [['Stocked'], ['No. stocked'], ['Fry stocked']],
  alive: [['Alive'], ['Survivors'], ['Number harvested']],
  startWeight: [['Start weight (g)'], ['Initial wt (g)'], ['Weight at start (g)']],
  endWeight: [['End weight (g)'], ['Final wt (g)'], ['Weight at end (g)']],
  days: [['Days'], ['No. of days'], ['Duration (days)']],
  feed: [['Feed (g)'], ['Feed given (kg)', (x) => Math.round(x) / 1000], ['Feed (g)']],
  growthRate: [['SGR'], ['Growth rate (%/day)'], ['Specific growth rate']],
  conversion: [['FCR'], ['Feed conversion'], ['FCR']],
  volume: [['Volume (L)'], ['Water volume (L)'], ['Tank volume (litres)']],
  ph: [['pH'], ['pH before'], ['Initial pH']],
  phAfter: [['pH after'], ['Final pH'], ['pH after dose']],
  material: [['Product'], ['Product used'], ['Material']],
  materialDose: [['Dose (g)'], ['Product given (g)'], ['Soda ash (g)']],
  oxygen: [['DO (mg/l)'], ['Oxygen (mg/L)'], ['Dissolved oxygen']],
  fish: [['Fish'], ['No. of fish'], ['Fish in tank']],
  dead: [['Dead'], ['Deaths'], ['Mortality']],
  weight: [['Mean weight (g)'], ['Avg wt (g)'], ['ABW (g)']],
  ration: [
    ['Ration %', (x) => Math.round(x * 1000) / 10],
    ['Ration'],
    ['Feeding rate (%)', (x) => Math.round(x * 1000) / 10],
  ],
  eggYield: [
    ['Egg yield (%)', (x) => Math.round(x * 1000) / 10],
    ['Egg yield'],
    ['Yield % body weight', (x) => Math.round(x * 1000) / 10],
  ],
  latency: [['Latency (h)'], ['Latency period (hrs)'], ['Latency']],
  incubationHours: [['Incubation (h)'], ['Incubation time (hrs)'], ['Hours to hatch']],
  note: [['Remarks'], ['Notes'], ['Comments']],
};

interface Hand {
  readonly heading: (field: FieldName) => string;
  readonly write: (field: FieldName, value: Value) => Made;
}

function hand(seed: number): Hand {
  const draw = drawer(seed + 991);
  const chosen = new Map<FieldName, readonly [string, ((x: number) => number)?]>();
  const of = (field: FieldName): readonly [string, ((x: number) => number)?] => {
    let one = chosen.get(field);
    if (!one) chosen.set(field, (one = draw.pick(HEADINGS[field] ?? [[field]])));
    return one;
  };
  return {
    heading: (field) => of(field)[0],
    write: (field, value) => {
      if (typeof value !== 'number') return value;
      if (fieldSpec(field).kind === 'moment') return { value, isDate: true };
      return of(field)[1]?.(value) ?? value;
    },
  };
}

class Writer {
  readonly sheets: { name: string; cells: Made[][]; merges: string[] }[] = [];
  readonly places = new Map<string, { sheet: string; cell: string }>();

  sheet(name: string): { name: string; cells: Made[][]; merges: string[] } {
    let found = this.sheets.find((one) => one.name === name);
    if (!found) this.sheets.push((found = { name, cells: [], merges: [] }));
    return found;
  }
  put(sheet: string, row: number, column: number, made: Made): void {
    const { cells } = this.sheet(sheet);
    while (cells.length <= row) cells.push([]);
    const line = cells[row] ?? [];
    while (line.length <= column) line.push(null);
    line[column] = made;
  }
  field(
    table: string,
    record: number,
    field: FieldName,
    sheet: string,
    row: number,
    column: number,
    made: Made,
  ): void {
    this.put(sheet, row, column, made);
    this.places.set(`${table} ${record} ${field}`, { sheet, cell: addressOf(row, column) });
  }
}

const withFormula = (
  table: FarmTable,
  at: number,
  field: FieldName,
  column: (name: FieldName) => number,
  row: number,
  made: Made,
): Made => {
  const { formula } = table;
  if (formula?.field !== field || typeof made !== 'number') return made;
  const [a, b] = formula.of;
  const [x, y] = [table.rows[at]?.[a], table.rows[at]?.[b]];
  // A value that does not follow was typed.
  const follows = typeof x === 'number' && typeof y === 'number' && Math.abs(x * y - made) <= 1;
  return follows
    ? { value: made, formula: `=ROUND(${addressOf(row, column(a))}*${addressOf(row, column(b))},0)` }
    : made;
};

function writeRows(
  writer: Writer,
  table: FarmTable,
  h: Hand,
  sheet: string,
  top: number,
  left: number,
  isBare = false,
): void {
  const column = (field: FieldName): number => left + table.fields.indexOf(field);
  table.rows.forEach((record, r) =>
    table.fields.forEach((field) => {
      const made = h.write(field, record[field] ?? null);
      writer.field(
        table.name,
        r,
        field,
        sheet,
        top + r,
        column(field),
        isBare ? made : withFormula(table, r, field, column, top + r, made),
      );
    }),
  );
}

const headings = (
  writer: Writer,
  table: FarmTable,
  h: Hand,
  sheet: string,
  row: number,
  left: number,
): void =>
  table.fields.forEach((field, i) => {
    writer.put(sheet, row, left + i, h.heading(field));
  });

function plain(writer: Writer, table: FarmTable, h: Hand): void {
  headings(writer, table, h, table.name, 0, 0);
  writeRows(writer, table, h, table.name, 1, 0);
}

/** A title over the table, a blank row, notes, and a row of totals below. */
function titled(writer: Writer, table: FarmTable, h: Hand): void {
  writer.put(table.name, 0, 0, `Long Reach hatchery, ${table.name.toLowerCase()} book`);
  writer.sheet(table.name).merges.push('A1:H1');
  writer.put(table.name, 1, 0, 'Fill in every evening');
  headings(writer, table, h, table.name, 3, 0);
  writeRows(writer, table, h, table.name, 4, 0);
  const end = 5 + table.rows.length;
  writer.put(table.name, end, 0, 'Total');
  table.fields.forEach((field, i) => {
    if (i > 0 && fieldSpec(field).isCount)
      writer.put(
        table.name,
        end,
        i,
        table.rows.reduce((sum, row) => sum + (typeof row[field] === 'number' ? row[field] : 0), 0),
      );
  });
}

/** Words over groups of columns, the heading itself below. */
function twoRows(writer: Writer, table: FarmTable, h: Hand): void {
  const groups = [table.fields.slice(0, 4), table.fields.slice(4)];
  writer.put(table.name, 0, 0, 'General');
  writer.put(table.name, 0, groups[0]?.length ?? 4, 'Figures');
  writer
    .sheet(table.name)
    .merges.push(
      `A1:${addressOf(0, (groups[0]?.length ?? 4) - 1)}`,
      `${addressOf(0, groups[0]?.length ?? 4)}:${addressOf(0, table.fields.length - 1)}`,
    );
  headings(writer, table, h, table.name, 1, 0);
  writeRows(writer, table, h, table.name, 2, 0);
}

function forms(writer: Writer, table: FarmTable, h: Hand): void {
  table.rows.forEach((record, r) => {
    const sheet = `${table.name} ${r + 1}`;
    writer.put(sheet, 0, 0, `Sheet of run ${r + 1}`);
    table.fields.forEach((field, i) => {
      writer.put(sheet, 2 + i, 0, `${h.heading(field)}:`);
      writer.field(table.name, r, field, sheet, 2 + i, 1, h.write(field, record[field] ?? null));
    });
  });
}

function across(writer: Writer, table: FarmTable, h: Hand): void {
  table.fields.forEach((field, i) => {
    writer.put(table.name, i, 0, h.heading(field));
    table.rows.forEach((record, r) => {
      writer.field(table.name, r, field, table.name, i, 1 + r, h.write(field, record[field] ?? null));
    });
  });
}

export function writeBook(farm: Farm, layout: Layout, seed: number): Book {
  const writer = new Writer();
  const [spawning, batches, water, feeding] = farm.tables;
  const rows = [batches, water, feeding].filter((one) => one !== undefined);
  const write = { plain, titled, 'two-row header': twoRows, 'text table': plain } as const;
  if (layout === 'side by side') {
    let left = 0;
    for (const table of rows) {
      const h = hand(seed + left);
      headings(writer, table, h, 'Book', 1, left);
      writeRows(writer, table, h, 'Book', 2, left);
      left += table.fields.length + 1;
    }
    if (spawning) plain(writer, spawning, hand(seed));
  } else if (layout === 'one run per sheet' || layout === 'runs across') {
    if (spawning) (layout === 'runs across' ? across : forms)(writer, spawning, hand(seed));
    for (const [i, table] of rows.entries()) plain(writer, table, hand(seed + i + 1));
  } else for (const [i, table] of farm.tables.entries()) write[layout](writer, table, hand(seed + i));
  return {
    sheets: writer.sheets,
    where: (table, row, field) => writer.places.get(`${table} ${row} ${field}`),
  };
}
