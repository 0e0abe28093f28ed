import { strToU8 } from 'fflate';
import { readFileCells, recordTables, rememberedOf, RememberedSchema } from '../../shared/records';
import type { Correction, RecordTable, FieldName } from '../../shared/records';
import type { ExampleCell } from '../../shared/records/rules/rule';
import { finish, sheetOf } from './support/grid';

const tablesOf = (
  cells: readonly (readonly ExampleCell[])[],
  corrections: readonly Correction[] = [],
): RecordTable[] => recordTables([sheetOf('Book', cells)], corrections);
const only = (
  cells: readonly (readonly ExampleCell[])[],
  corrections: readonly Correction[] = [],
): RecordTable => {
  const tables = tablesOf(cells, corrections);
  expect(tables).toHaveLength(1);
  return tables[0] as RecordTable;
};
const fieldsOf = (table: RecordTable): (FieldName | undefined)[] => table.mapping.map(({ field }) => field);
const csv = (text: string | Uint8Array, name = 'book.csv'): RecordTable[] => {
  const file = finish(readFileCells(typeof text === 'string' ? strToU8(text) : text, name));
  if ('fault' in file) throw new Error(file.fault);
  return recordTables(file.sheets);
};

describe('headers', () => {
  test.each([
    ['wt (kg)', 'weight', 'kg'],
    ['temp F', 'temperature', '°F'],
    ['Water temp. (°C)', 'temperature', '°C'],
    ['No. of eggs', 'eggs', undefined],
    ['Eggs/g', 'eggsPerGram', undefined],
    ['eggs (g)', 'eggWeight', 'g'],
    ['Hatchability (%)', 'hatchShare', '%'],
    ['Fertilization rate', 'fertilisedShare', 'share'],
    ['temprature', 'temperature', '°C'],
    ['Body wt kg', 'femaleWeight', 'kg'],
    ['Soda ash (g)', 'materialDose', 'g'],
    ['Dose (ml/kg)', 'hormoneDose', 'mL/kg'],
    ['Hormone (ml)', 'hormoneVolume', 'mL'],
    ['Vol. (m3)', 'volume', 'm3'],
    ['Latency (hrs)', 'latency', 'h'],
    ['Incubation (min)', 'incubationHours', 'min'],
  ] as const)('%s', (header, field, unit) => {
    const value: Readonly<Partial<Record<FieldName, number>>> = {
      weight: 1.1,
      temperature: unit === '°F' ? 79.5 : 26.4,
      eggs: 84_321,
      eggsPerGram: 691,
      eggWeight: 131,
      hatchShare: unit === '%' ? 61 : 0.61,
      fertilisedShare: 0.82,
      femaleWeight: 1.2,
      materialDose: 15,
      hormoneDose: 0.5,
      hormoneVolume: 0.6,
      volume: 1.2,
      latency: 11,
      incubationHours: 1430,
    };
    const table = only([
      ['Run', header, 'Date'],
      ['R1', value[field] ?? 1, 46_001],
      ['R2', (value[field] ?? 1) * 1.02, 46_002],
    ]);
    expect(table.mapping[1]).toMatchObject({ field, unit });
    expect(table.mapping[1]?.confidence).toBeGreaterThan(0.7);
    expect(table.mapping[1]?.reasons.join(' ')).toContain(header);
  });

  test('stand below a title, a note and blank rows; totals, averages and headers said again are no records', () => {
    const table = only([
      ['Long Reach hatchery: spawning book'],
      [],
      ['all weights on the small scale'],
      [],
      ['Run', 'Date', 'Egg weight (g)', 'Eggs/g'],
      ['R1', 46_001, 121, 655],
      ['R2', 46_003, 134, 690],
      [],
      ['Total', null, 255, null],
      ['Run', 'Date', 'Egg weight (g)', 'Eggs/g'],
      ['R3', 46_007, 118, 701],
      ['Average', null, 124, 682],
      ['check the scale'],
    ]);
    expect(table.length).toBe(3);
    expect([...(table.numbers.eggWeight ?? [])]).toEqual([121, 134, 118]);
    expect(table.skipped.map(({ why }) => why)).toEqual(['total', 'header again', 'total', 'note']);
  });

  test('in two rows: words over words, and units in a row of their own', () => {
    const two = only([
      ['Run', 'Eggs', null, 'Larvae'],
      [null, 'weight (g)', 'per gram', 'no.'],
      ['R1', 121, 655, 40_123],
      ['R2', 134, 690, 41_877],
    ]);
    expect(fieldsOf(two)).toEqual(['run', 'eggWeight', 'eggsPerGram', 'hatched']);
    const units = only([
      ['Run', 'Female weight', 'Water temperature'],
      [null, '(lb)', '(°F)'],
      ['R1', 2.6, 79],
      ['R2', 3.1, 80.2],
    ]);
    expect(units.numbers.femaleWeight?.[0]).toBeCloseTo(1.179, 3);
    expect(units.numbers.temperature?.[0]).toBeCloseTo(26.11, 2);
  });

  test('words that no record has are left alone, with the reason', () => {
    const table = only([
      ['Run', 'Moon phase', 'Eggs'],
      ['R1', 'full', 84_000],
      ['R2', 'new', 91_000],
    ]);
    expect(table.mapping[1]).toMatchObject({
      field: undefined,
      confidence: 0,
      reasons: ['its header is not known'],
    });
    expect(
      tablesOf([
        ['Moon', 'Mood'],
        ['full', 'good'],
        ['new', 'bad'],
      ]),
    ).toEqual([]);
    expect(tablesOf([])).toEqual([]);
  });

  test('cells that cannot be what the header says speak against it', () => {
    const table = only([
      ['Run', 'Eggs', 'Temperature', 'Larvae'],
      ['R1', 84_000, 'warm', 40_000],
      ['R2', 91_000, 'cool', 42_000],
    ]);
    expect(table.mapping[2]?.field).toBeUndefined();
    expect(table.mapping[2]?.reasons.join()).toContain('its cells hold words');
  });
});

describe('side by side, forms, runs across', () => {
  test('two tables beside each other are two tables', () => {
    const tables = tablesOf([
      ['Vat', 'Fish', 'Feed (g)', null, 'Vat', 'Fish', 'Feed (g)'],
      ['V1', 1000, 210, null, 'V2', 1100, 230],
      ['V1', 990, 215, null, 'V2', 1080, 236],
    ]);
    expect(tables.map((table) => [...(table.numbers.feed ?? [])])).toEqual([
      [210, 215],
      [230, 236],
    ]);
    expect(tables[1]?.spot(0, 'feed')).toMatchObject({ column: 6 });
  });

  test('the same headers again without a gap start a new table', () => {
    expect(
      tablesOf([
        ['Vat', 'Fish', 'Feed (g)', 'Vat', 'Fish', 'Feed (g)'],
        ['V1', 1000, 210, 'V2', 1100, 230],
        ['V1', 990, 215, 'V2', 1080, 236],
      ]),
    ).toHaveLength(2);
  });

  test('one run on each sheet, labels with values beside them and units between', () => {
    const form = (n: number, weight: number): readonly (readonly ExampleCell[])[] => [
      ['Spawning sheet', n],
      [],
      ['Female:', null, `F${n}`],
      ['Female weight:', 'kg', weight],
      ['Egg weight:', 'g', 100 * weight],
      ['Eggs per gram:', null, 640 + n],
    ];
    const [table, ...more] = recordTables([
      sheetOf('Run 1', form(1, 1.1)),
      sheetOf('Run 2', form(2, 1.3)),
      sheetOf('Run 3', form(3, 0.9)),
    ]);
    expect(more).toEqual([]);
    expect(table?.layout).toBe('forms');
    expect([...(table?.numbers.femaleWeight ?? [])]).toEqual([1.1, 1.3, 0.9]);
    expect(table?.spot(1, 'eggWeight')).toMatchObject({ sheet: { name: 'Run 2' }, column: 2 });
  });

  test('labels down, runs across', () => {
    const [table] = tablesOf([
      ['Female', 'F1', 'F2', 'F3'],
      ['Egg weight (g)', 121, 134, 118],
      ['Eggs per gram', 655, 690, 701],
      ['Hatch %', 61, 64, 59],
    ]);
    expect(table?.length).toBe(3);
    expect([...(table?.numbers.hatchShare ?? [])]).toEqual([0.61, 0.64, 0.59]);
  });
});

describe('values', () => {
  test('text numbers, units left in the cell, signs for nothing', () => {
    const table = only([
      ['Run', 'Female weight (kg)', 'Eggs'],
      ['R1', '1.2 kg', '84 321'],
      ['R2', '950 g', '91,250'],
      ['R3', '-', 'n/a'],
      ['R4', '2.2 lb', "77'000"],
      ['R5', '~1.1', '80 thousand?'],
    ]);
    expect([...(table.numbers.femaleWeight ?? [])].map((x) => Number(x.toFixed(3)))).toEqual([
      1.2,
      0.95,
      NaN,
      0.998,
      1.1,
    ]);
    expect([...(table.numbers.eggs ?? [])].slice(0, 4)).toEqual([84_321, 91_250, NaN, 77_000]);
    expect(table.read.eggs?.unreadable).toEqual([4]);
  });

  test('1,250 is read as other cells of the sheet write numbers', () => {
    const comma = only([
      ['Run', 'Egg weight (g)', 'Eggs', 'pH'],
      ['R1', '121,5', '84.321', '6,2'],
      ['R2', '134,25', '91.250', '6,4'],
    ]);
    expect([...(comma.numbers.eggs ?? [])]).toEqual([84_321, 91_250]);
    const point = only([
      ['Run', 'Egg weight (g)', 'Eggs', 'pH'],
      ['R1', '121.5', '84,321', '6.2'],
      ['R2', '134.25', '91,250', '6.4'],
    ]);
    expect([...(point.numbers.eggs ?? [])]).toEqual([84_321, 91_250]);
  });

  test('dates: as numbers, as text in one order for the column, with words, with clock times', () => {
    const table = only([
      ['Date', 'Injected', 'Eggs'],
      ['14/03/2026', '14 Mar 2026 21:05', 84_000],
      ['02/04/2026', '2026-04-02T20:30:00', 91_000],
      ['5 April 2026', 'Sunday 5 April 2026 8.15 pm', 88_000],
    ]);
    expect([...(table.numbers.date ?? [])]).toEqual([46_095, 46_114, 46_117]);
    expect([...(table.numbers.injected ?? [])].map((x) => Number(x.toFixed(4)))).toEqual([
      46_095.8785, 46_114.8542, 46_117.8438,
    ]);
    const american = only([
      ['Date', 'Eggs', 'Larvae'],
      ['03/14/2026', 84_000, 41_000],
      ['04/02/2026', 91_000, 42_000],
    ]);
    expect([...(american.numbers.date ?? [])]).toEqual([46_095, 46_114]);
    expect(american.mapping[0]?.order).toBe('month first');
  });

  test('clock times go on the date of the row, and past midnight', () => {
    const table = only([
      ['Date', 'Injected', 'Stripped', 'Temperature'],
      [46_095, '21:00', '08:00', 25],
      [46_096, '22:30', '9:15', 25.5],
    ]);
    expect(table.numbers.injected?.[0]).toBeCloseTo(46_095.875, 6);
    expect(table.numbers.stripped?.[0]).toBeCloseTo(46_096.3333, 4);
  });
});

describe('text tables', () => {
  const german =
    'Lauf;Datum;Egg weight (g);Eggs per gram;Female\r\nR1;14.03.2026;121,5;655;"Müller; 1"\r\nR2;15.03.2026;134,25;690;Größe\r\n';
  const latin = Uint8Array.from(german, (c) => c.charCodeAt(0));
  const wide = Uint8Array.from([
    0xff,
    0xfe,
    ...[...german].flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8]),
  ]);
  test.each([
    ['UTF-8', strToU8(german)],
    ['UTF-8 with a byte order mark', strToU8(`\uFEFF${german}`)],
    ['an old Windows code page', latin],
    ['UTF-16', wide],
    ['a line that names the separator', strToU8(`sep=;\r\n${german}`)],
    ['tabs', strToU8(german.replaceAll('"Müller; 1"', 'Müller 1').replaceAll(';', '\t'))],
  ])('%s', (_what, bytes) => {
    const [table] = csv(bytes);
    expect([...(table?.numbers.eggWeight ?? [])]).toEqual([121.5, 134.25]);
    expect([...(table?.numbers.date ?? [])]).toEqual([46_095, 46_096]);
    expect(table?.texts.female?.[1]).toBe('Größe');
    // Excel shows the first row of the table as row 1, whether or not a line names the separator.
    expect(table?.home(0)).toMatchObject({ position: 1 });
  });

  test('commas between fields and points in numbers', () => {
    const [table] = csv(
      'Run,Date,Egg weight (g),Eggs\nR1,2026-03-14,121.5,"84,321"\nR2,2026-03-15,134.2,"91,250"\n',
    );
    expect([...(table?.numbers.eggs ?? [])]).toEqual([84_321, 91_250]);
  });
});

describe('corrections', () => {
  const cells = [
    ['Run', 'Moon phase', 'Eggs'],
    ['R1', 26.5, 84_000],
    ['R2', 27.1, 91_000],
  ] as const;
  test('the user may say what a column is, or that it is nothing', () => {
    const table = only(cells, [
      { header: 'moon  PHASE', field: 'temperature' },
      { header: 'Eggs', field: 'ignore', sheet: 'Book' },
      { header: 'Eggs', field: 'fry', sheet: 'Another sheet' },
    ]);
    expect(fieldsOf(table)).toEqual(['run', 'temperature', undefined]);
    expect(table.mapping[1]).toMatchObject({ confidence: 1, isCorrected: true, reasons: ['you said so'] });
  });

  test('a mapping is remembered as text and read back to the same', () => {
    const table = only(cells, [{ header: 'Moon phase', field: 'temperature', unit: '°C' }]);
    const kept = RememberedSchema.parse(
      JSON.parse(JSON.stringify(rememberedOf([{ sheet: 'Book', columns: table.mapping }]))),
    );
    expect(fieldsOf(only(cells, kept.columns))).toEqual(fieldsOf(table));
    expect(only(cells, kept.columns).mapping.every(({ isCorrected }) => isCorrected)).toBe(true);
    expect(() =>
      RememberedSchema.parse({ version: 1, columns: [{ header: 'x', field: 'moonPhase' }] }),
    ).toThrow();
  });
});
