import { parseAddress } from '../../../shared/sheet/formula/address';
import type { FieldName } from '../../../shared/records/fields';
import type { Draw, Farm, FarmRow, FarmTable } from './farm';
import { round } from './farm';
import { partsOf } from './file';
import type { Made } from './file';
import type { Book } from './layouts';

/** A fault put into a clean book, and where. */
export interface Injected {
  readonly table: string;
  readonly row: number;
  readonly field: FieldName;
  /** The whole column or the whole row is at fault, not one cell. */
  readonly reach?: 'column' | 'row';
}
export interface Fault {
  /** The rule the fault is made for. */
  readonly rule: string;
  /** Other rules that may rightly be the ones to say it: the same fault seen from another side. */
  readonly also?: readonly string[];
  readonly inject: (farm: Farm, draw: Draw) => Injected;
  /** Changes the written book instead of the farm. */
  readonly edit?: (book: Book, at: Injected, draw: Draw) => void;
  /** Layouts in which the fault can exist. */
  readonly needsRows?: true;
  readonly needsFile?: true;
}

const tableOf = (farm: Farm, name: string): FarmTable => {
  const found = farm.tables.find((table) => table.name === name);
  if (!found) throw new Error(name);
  return found;
};
const someRow = (table: FarmTable, draw: Draw, from = 2): number =>
  from + Math.floor(draw.random() * (table.rows.length - from - 2));
const num = (row: FarmRow, field: FieldName): number => {
  const value = row[field];
  if (typeof value !== 'number') throw new Error(field);
  return value;
};

/** Changes one value of one row. */
const one =
  (name: string, field: FieldName, change: (value: number, row: FarmRow, draw: Draw) => number) =>
  (farm: Farm, draw: Draw): Injected => {
    const table = tableOf(farm, name);
    const at = someRow(table, draw);
    const row = table.rows[at] ?? {};
    row[field] = change(num(row, field), row, draw);
    return { table: name, row: at, field };
  };

/** Two neighbouring digits swapped so that the number moves by at least a tenth. */
const swapped = (value: number): number => {
  const digits = [...String(value)];
  for (let i = 0; i + 1 < digits.length; i++) {
    const other = [...digits];
    [other[i], other[i + 1]] = [digits[i + 1] ?? '', digits[i] ?? ''];
    const meant = Number(other.join(''));
    if (other[0] !== '0' && digits[i] !== '.' && digits[i + 1] !== '.' && Math.abs(meant / value - 1) > 0.1)
      return meant;
  }
  return value * 3;
};

const SLIPS = [
  'SLIP.TEN',
  'SLIP.THOUSAND',
  'SLIP.POUND',
  'SLIP.DIGITS',
  'SLIP.HISTORY',
  'SLIP.FAHRENHEIT',
] as const;
const cellsOf = (
  book: Book,
  at: Injected,
): { line: Made[]; column: number; row: number; cells: Made[][] } => {
  const place = book.where(at.table, at.row, at.field);
  const spot = place && parseAddress(place.cell);
  const sheet = book.sheets.find(({ name }) => name === place?.sheet);
  if (!spot || !sheet) throw new Error('no place');
  const cells = sheet.cells as Made[][];
  return { line: cells[spot.row] ?? [], column: spot.column, row: spot.row, cells };
};
const here =
  (name: string, field: FieldName) =>
  (farm: Farm, draw: Draw): Injected => ({ table: name, row: someRow(tableOf(farm, name), draw), field });

export const FAULTS: readonly Fault[] = [
  { rule: 'SLIP.TEN', also: ['SLIP.HISTORY'], inject: one('Spawning', 'eggs', (x) => x * 10) },
  {
    rule: 'SLIP.TEN',
    also: ['SLIP.HISTORY', 'VALUE.RANGE'],
    inject: one('Spawning', 'eggWeight', (x) => round(x / 10, 2)),
  },
  {
    rule: 'SLIP.THOUSAND',
    also: ['FEED.RATION', 'SLIP.HISTORY', 'FEED.STATED'],
    inject: one('Feeding', 'feed', (x) => x / 1000),
  },
  {
    rule: 'SLIP.THOUSAND',
    also: ['VALUE.RANGE', 'SLIP.HISTORY'],
    inject: one('Spawning', 'femaleWeight', (x) => x * 1000),
  },
  {
    rule: 'SLIP.POUND',
    also: ['DOSE.VOLUME'],
    inject: one('Spawning', 'femaleWeight', (x) => round(x * 2.2046, 2)),
  },
  { rule: 'SLIP.DIGITS', also: ['EGGS.PRODUCT', 'SLIP.TEN'], inject: one('Spawning', 'eggs', swapped) },
  { rule: 'SLIP.FAHRENHEIT', inject: one('Feeding', 'temperature', (x) => round(x * 1.8 + 32, 1)) },
  {
    // Nothing else in the row gives it away: the number of eggs is not kept.
    rule: 'SLIP.HISTORY',
    also: ['VALUE.RANGE'],
    inject: (farm, draw) => {
      const table = tableOf(farm, 'Spawning');
      (table.fields as FieldName[]).splice(
        0,
        table.fields.length,
        ...table.fields.filter((name) => !['eggs', 'fertilised', 'hatched', 'fry'].includes(name)),
      );
      return one('Spawning', 'eggsPerGram', (x) => x / 10)(farm, draw);
    },
  },
  {
    rule: 'STAGE.GROWS',
    also: ['SHARE.COUNTS', ...SLIPS],
    inject: one('Spawning', 'hatched', (_, row, draw) =>
      Math.round(num(row, 'fertilised') * draw.between(1.1, 1.6)),
    ),
  },
  {
    rule: 'STAGE.GROWS',
    also: ['SHARE.COUNTS', ...SLIPS],
    inject: one(
      'Spawning',
      'sampleGood',
      (_, row, draw) => num(row, 'sampleSize') + Math.ceil(draw.between(2, 15)),
    ),
  },
  { rule: 'COUNT.SENSE', inject: one('Feeding', 'dead', (x) => -Math.max(1, x)) },
  {
    rule: 'EGGS.PRODUCT',
    also: SLIPS,
    inject: one('Spawning', 'eggs', (x, _, draw) => Math.round(x * draw.between(1.12, 1.4))),
  },
  {
    rule: 'SHARE.COUNTS',
    also: SLIPS,
    inject: one('Spawning', 'hatchShare', (x, _, draw) =>
      round(Math.min(0.99, x + draw.between(0.08, 0.25)), 2),
    ),
  },
  {
    rule: 'SHARE.COUNTS',
    also: SLIPS,
    inject: one('Batches', 'survival', (x, _, draw) => round(x - draw.between(0.08, 0.3), 2)),
  },
  {
    rule: 'DOSE.VOLUME',
    also: SLIPS,
    inject: one('Spawning', 'hormoneVolume', (x, _, draw) => round(x * draw.between(1.35, 1.8), 2)),
  },
  {
    rule: 'DAYS.STATED',
    also: SLIPS,
    inject: one('Batches', 'days', (x, _, draw) => x + Math.round(draw.between(4, 15))),
  },
  {
    rule: 'FEED.STATED',
    also: SLIPS,
    inject: one('Feeding', 'feed', (x, _, draw) => Math.round(x * draw.between(1.35, 1.9))),
  },
  {
    rule: 'GROWTH.STATED',
    also: SLIPS,
    inject: one('Batches', 'growthRate', (x, _, draw) => round(x * draw.between(1.15, 1.6), 2)),
  },
  {
    rule: 'FCR.STATED',
    also: ['FCR.RANGE', ...SLIPS],
    inject: one('Batches', 'conversion', (x, _, draw) => round(x * draw.between(0.55, 0.8), 2)),
  },
  { rule: 'VALUE.RANGE', also: SLIPS, inject: one('Water', 'ph', (x) => x * 10) },
  {
    rule: 'VALUE.RANGE',
    also: ['HISTORY.FAR', 'LATENCY.FIT', ...SLIPS],
    inject: one('Feeding', 'temperature', (x) => x + 22),
  },
  {
    rule: 'SHARE.RANGE',
    also: ['SHARE.COUNTS', ...SLIPS],
    inject: one('Spawning', 'hatchShare', (x) => round(x + 0.75, 2)),
  },
  {
    rule: 'EGGS.PERGRAM',
    also: ['EGGS.PRODUCT', 'HISTORY.FAR', ...SLIPS],
    inject: one('Spawning', 'eggsPerGram', (_, __, draw) => Math.round(draw.between(230, 370))),
  },
  {
    rule: 'EGGS.YIELD',
    also: ['EGGS.PRODUCT', 'HISTORY.FAR', ...SLIPS],
    inject: one('Spawning', 'eggWeight', (_, row, draw) =>
      round(1000 * num(row, 'femaleWeight') * draw.between(0.36, 0.6), 1),
    ),
  },
  {
    rule: 'DOSE.PERKG',
    also: ['DOSE.VOLUME', 'HISTORY.FAR', ...SLIPS],
    inject: one('Spawning', 'hormoneDose', (_, __, draw) => round(draw.between(4.5, 9), 1)),
  },
  {
    rule: 'TEMPERATURE.LETHAL',
    also: ['HISTORY.FAR', 'HATCH.FIT'],
    inject: one('Spawning', 'incubationTemperature', (_, __, draw) => round(draw.between(36, 39), 1)),
  },
  {
    rule: 'LATENCY.FIT',
    also: ['DATE.ORDER'],
    inject: one('Spawning', 'stripped', (x, _, draw) => x + draw.between(0.7, 0.95)),
  },
  {
    rule: 'LATENCY.FIT',
    also: ['HISTORY.FAR'],
    inject: one('Spawning', 'injected', (x, _, draw) => x + draw.between(0.25, 0.33)),
  },
  { rule: 'HATCH.FIT', inject: one('Spawning', 'hatchedAt', (x, _, draw) => x + draw.between(1, 2.2)) },
  { rule: 'PH.DOSE', also: SLIPS, inject: one('Water', 'materialDose', (x) => round(x / 100, 3)) },
  { rule: 'PH.DOSE', also: SLIPS, inject: one('Water', 'materialDose', (x) => x * 1000) },
  {
    rule: 'PH.DOSE',
    also: ['HISTORY.FAR'],
    inject: one('Water', 'phAfter', (_, row, draw) => round(num(row, 'ph') - draw.between(0.5, 1.2), 1)),
  },
  {
    rule: 'FEED.RATION',
    also: ['FEED.STATED', ...SLIPS],
    inject: one('Feeding', 'fish', (x) => Math.round(x / 17)),
  },
  {
    rule: 'FCR.RANGE',
    also: ['FCR.STATED', 'HISTORY.FAR', ...SLIPS],
    inject: one('Batches', 'conversion', (_, __, draw) => round(draw.between(0.05, 0.3), 2)),
  },
  {
    rule: 'GROWTH.RANGE',
    also: ['GROWTH.STATED', 'DAYS.STATED', ...SLIPS],
    inject: one('Batches', 'days', (x) => Math.round(x / 6)),
  },
  { rule: 'DATE.ORDER', also: ['LATENCY.FIT'], inject: one('Spawning', 'stripped', (x) => x - 1) },
  {
    rule: 'DATE.ORDER',
    also: ['DAYS.STATED', 'VAT.TWICE', ...SLIPS],
    inject: one('Batches', 'emptiedAt', (x, _, draw) => x - Math.round(draw.between(50, 90))),
  },
  {
    rule: 'DATE.CENTURY',
    also: ['DATE.ORDER', 'DATE.SEQUENCE'],
    inject: one('Spawning', 'date', (x) => x - 36_525),
  },
  {
    rule: 'DATE.SEQUENCE',
    also: ['DATE.FUTURE'],
    inject: one(
      'Feeding',
      'date',
      (x, _, draw) => x + Math.round(draw.between(60, 300)) * (draw.random() < 0.5 ? 1 : -1),
    ),
  },
  {
    rule: 'COLUMN.COPIED',
    inject: (farm, draw) => {
      const table = tableOf(farm, 'Spawning');
      const at = someRow(table, draw, 1) % (table.rows.length - 10);
      for (let i = 1; i < 9; i++) {
        const row = table.rows[at + i] ?? {};
        row.eggsPerGram = num(table.rows[at] ?? {}, 'eggsPerGram');
        row.eggs = Math.round(num(row, 'eggWeight') * num(row, 'eggsPerGram'));
        row.fertilised = Math.round(num(row, 'eggs') * num(row, 'fertilisedShare'));
        row.hatched = Math.round(num(row, 'fertilised') * num(row, 'hatchShare'));
        row.fry = Math.round(num(row, 'hatched') * num(row, 'survival'));
      }
      return { table: 'Spawning', row: at + 1, field: 'eggsPerGram', reach: 'column' };
    },
  },
  {
    rule: 'ROW.REPEATED',
    inject: (farm, draw) => {
      const table = tableOf(farm, 'Spawning');
      const at = someRow(table, draw);
      table.rows[at + 1] = { ...table.rows[at], run: table.rows[at + 1]?.run ?? null };
      return { table: 'Spawning', row: at + 1, field: 'run', reach: 'row' };
    },
  },
  {
    rule: 'COUNT.HEAPED',
    inject: (farm) => {
      const table = tableOf(farm, 'Batches');
      for (const row of table.rows) {
        row.alive = Math.round(num(row, 'alive') / 100) * 100;
        row.survival = round(num(row, 'alive') / num(row, 'stocked'), 2);
        row.conversion = round(
          num(row, 'feed') /
            (num(row, 'endWeight') * num(row, 'alive') - num(row, 'startWeight') * num(row, 'stocked')),
          2,
        );
      }
      return { table: 'Batches', row: 0, field: 'alive', reach: 'column' };
    },
  },
  {
    rule: 'HISTORY.FAR',
    also: SLIPS,
    inject: one('Water', 'oxygen', (_, __, draw) => round(draw.between(11.5, 14), 1)),
  },
  {
    rule: 'HISTORY.FAR',
    also: ['PH.DOSE', ...SLIPS],
    inject: one('Water', 'ph', (_, __, draw) => round(draw.between(8.4, 9.2), 1)),
  },
  {
    rule: 'VAT.TWICE',
    also: ['DAYS.STATED', 'DATE.ORDER', 'GROWTH.STATED'],
    inject: (farm, draw) => {
      const table = tableOf(farm, 'Batches');
      const at = 8 + Math.floor(draw.random() * (table.rows.length - 10));
      const row = table.rows[at] ?? {};
      const other = table.rows.findIndex(
        (one, i) =>
          i !== at &&
          one.vat !== row.vat &&
          num(one, 'stockedAt') < num(row, 'stockedAt') &&
          num(one, 'emptiedAt') > num(row, 'stockedAt') + 4,
      );
      row.vat = table.rows[other]?.vat ?? null;
      return { table: 'Batches', row: at, field: 'vat' };
    },
  },
  {
    rule: 'VATS.MORE',
    also: ['VAT.TWICE'],
    inject: (farm, draw) => {
      const table = tableOf(farm, 'Batches');
      const at = 8 + Math.floor(draw.random() * (table.rows.length - 12));
      const open = num(table.rows[at] ?? {}, 'stockedAt');
      // A seventh vat appears while all six are taken.
      const busy = table.rows.findIndex(
        (row, i) => i >= at && i + 1 < table.rows.length && num(row, 'stockedAt') >= open,
      );
      const row = table.rows[busy] ?? {};
      row.vat = 'V7';
      table.rows.push({
        ...row,
        run: 'B90',
        vat: String(table.rows[at]?.vat === 'V7' ? 'V1' : (table.rows[at]?.vat ?? 'V1')),
        stocked: num(row, 'stocked') + 7,
      });
      for (const n of [1, 2, 3, 4, 5, 6])
        table.rows.push({ ...row, run: `B${91 + n}`, vat: `V${n}`, stocked: num(row, 'stocked') + 11 * n });
      return { table: 'Batches', row: busy, field: 'vat', reach: 'column' };
    },
  },
  { rule: 'DATE.FUTURE', also: ['DATE.SEQUENCE'], inject: one('Water', 'date', (x) => x + 4000) },
  {
    rule: 'TEXT.UNREADABLE',
    inject: here('Water', 'oxygen'),
    edit: (book, at, draw) => {
      const { line, column } = cellsOf(book, at);
      line[column] = draw.pick(['meter broken', 'ask Bo', 'see notebook']);
    },
  },
  {
    rule: 'TEXT.NUMBER',
    needsFile: true,
    inject: (farm, draw) => ({ ...here('Water', 'oxygen')(farm, draw), reach: 'column' }),
    edit: (book, at) => {
      const { line, column } = cellsOf(book, at);
      line[column] = String(partsOf(line[column] ?? null).value);
    },
  },
  {
    rule: 'CELL.ERROR',
    needsFile: true,
    inject: here('Water', 'oxygen'),
    edit: (book, at, draw) => {
      const { line, column } = cellsOf(book, at);
      line[column] = {
        value: { error: draw.pick(['#DIV/0!', '#REF!', '#N/A', '#NAME?'] as const) },
        formula: '=Z1/0',
      };
    },
  },
  {
    rule: 'FORMULA.LINK',
    also: ['FORMULA.DIFFERS', 'FORMULA.TYPED'],
    needsFile: true,
    inject: here('Water', 'oxygen'),
    edit: (book, at, draw) => {
      const { line, column } = cellsOf(book, at);
      line[column] = {
        value: partsOf(line[column] ?? null).value,
        formula: draw.pick([
          '=[2]!_xldudf_SPAWN_OXYGEN_SATURATION(26)',
          "='C:\\tools\\old.xla'!_xldudf_SPAWN_OXYGEN_SATURATION(26)",
          '=[3]!SPAWN.OXYGEN.SATURATION(A1)',
        ]),
      };
    },
  },
  {
    rule: 'FORMULA.TYPED',
    needsRows: true,
    needsFile: true,
    inject: here('Spawning', 'eggs'),
    edit: (book, at) => {
      const { line, column } = cellsOf(book, at);
      line[column] = partsOf(line[column] ?? null).value;
    },
  },
  {
    rule: 'FORMULA.DIFFERS',
    needsRows: true,
    needsFile: true,
    inject: here('Spawning', 'eggs'),
    edit: (book, at) => {
      const { line, column, row } = cellsOf(book, at);
      const { value, formula = '' } = partsOf(line[column] ?? null);
      line[column] = { value, formula: formula.replace(String(row + 1), String(row)) };
    },
  },
  {
    rule: 'DATE.STYLES',
    inject: (farm) => {
      tableOf(farm, 'Feeding').rows.forEach((row, i) => {
        row.date = i % 2 === 0 ? `${17 + (i % 10)}/03/2026` : `03/${17 + (i % 10)}/2026`;
      });
      return { table: 'Feeding', row: 0, field: 'date', reach: 'column' };
    },
  },
  {
    rule: 'UNIT.HEADER',
    needsRows: true,
    needsFile: true,
    inject: (farm, draw) => ({ ...here('Spawning', 'eggWeight')(farm, draw), reach: 'column' }),
    edit: (book, at) => {
      const { column, row, cells } = cellsOf(book, at);
      for (let r = row; r >= 0; r--) {
        const cell = cells[r]?.[column];
        if (typeof cell === 'string') {
          (cells[r] ?? [])[column] = cell.replace('(g)', '(kg)');
          break;
        }
      }
    },
  },
  {
    rule: 'EGGS.YIELDSHARE',
    also: SLIPS,
    inject: (farm, draw) => {
      const table = tableOf(farm, 'Spawning');
      (table.fields as FieldName[]).push('eggYield');
      for (const row of table.rows)
        row.eggYield = round(num(row, 'eggWeight') / (1000 * num(row, 'femaleWeight')), 3);
      return one('Spawning', 'eggYield', (x, _, d) => round(x * d.between(1.3, 1.8), 3))(farm, draw);
    },
  },
  {
    rule: 'LATENCY.STATED',
    also: ['LATENCY.FIT', ...SLIPS],
    inject: (farm, draw) => {
      const table = tableOf(farm, 'Spawning');
      (table.fields as FieldName[]).push('latency');
      for (const row of table.rows)
        row.latency = round(24 * (num(row, 'stripped') - num(row, 'injected')), 1);
      return one('Spawning', 'latency', (x, _, d) => round(x + d.between(1, 3), 1))(farm, draw);
    },
  },
  {
    rule: 'HATCH.STATED',
    also: ['HATCH.FIT', ...SLIPS],
    inject: (farm, draw) => {
      const table = tableOf(farm, 'Spawning');
      (table.fields as FieldName[]).push('incubationHours');
      for (const row of table.rows)
        row.incubationHours = round(24 * (num(row, 'hatchedAt') - num(row, 'fertilisedAt')), 1);
      return one('Spawning', 'incubationHours', (x, _, d) => round(x + d.between(2, 6), 1))(farm, draw);
    },
  },
];
