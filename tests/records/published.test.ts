/**
 * Published figures, written down as a farm would write its records, must pass the check; what is known to be
 * wrong in print must not. Data: tests/data/latency_published.csv and incubation_published.csv (each row
 * names its publication; rows marked MEMORY were recalled, the page not seen), legendre1992_growth.csv
 * (Legendre et al. 1992, J. Fish Biology 40:59-79, digitised), titration_dev.csv (soda ash sequences computed
 * with an independent carbonate solver). Transcribed by the project's own literature search.
 */
import { findRule } from '../../shared/records';
import type { AuditReport, Rule } from '../../shared/records';
import type { ExampleCell } from '../../shared/records/rules/rule';
import { tableOf } from '../support/table';
import { auditGrid } from './support/grid';

const rule = (id: string): Rule => {
  const found = findRule(id);
  if (!found) throw new Error(id);
  return found;
};
const check = (cells: readonly (readonly ExampleCell[])[], ids: readonly string[]): AuditReport =>
  auditGrid(cells, { rules: ids.map(rule) });
const cellsFound = (report: AuditReport): string[] =>
  report.groups.flatMap(({ findings }) => findings.map(({ place }) => place.cell));

/** Rows with a temperature known to within 3 °C, and the middle of their hours. */
const timed = (
  file: string,
): {
  readonly what: string;
  readonly temperature: number;
  readonly hours: number;
  readonly species: string;
}[] =>
  tableOf(file).flatMap((row) => {
    const [low, high] = [Number(row.temp_min_c || NaN), Number(row.temp_max_c || NaN)];
    return high - low <= 3
      ? [
          {
            what: row.preparation ?? row.interval ?? '',
            temperature: (low + high) / 2,
            hours: (Number(row.hours_min) + Number(row.hours_max)) / 2,
            species: row.species ?? '',
          },
        ]
      : [];
  });

test(
  'LATENCY.FIT lets every published latency of African catfish pass, with and without ' +
    'the preparation named',
  () => {
    const rows = timed('latency_published.csv').filter(({ species }) =>
      species.startsWith('Clarias gariepinus'),
    );
    expect(rows.length).toBeGreaterThanOrEqual(17);
    const unnamed = check(
      [
        ['Run', 'Temperature (°C)', 'Latency (h)'],
        ...rows.map((row, i) => [`R${i}`, row.temperature, row.hours] as const),
      ],
      ['LATENCY.FIT'],
    );
    expect(cellsFound(unnamed)).toEqual([]);
    const named = rows.filter(({ what }) => /pituitary|ready-made/.test(what));
    const report = check(
      [
        ['Run', 'Hormone', 'Temperature (°C)', 'Latency (h)'],
        ...named.map((row, i) => [`R${i}`, row.what, row.temperature, row.hours] as const),
      ],
      ['LATENCY.FIT'],
    );
    expect(cellsFound(report)).toEqual([]);
  },
);

test('LATENCY.FIT finds the same latencies twice as long', () => {
  const rows = timed('latency_published.csv').filter(
    ({ species, what }) => species.startsWith('Clarias gariepinus') && /handbook/.test(what),
  );
  const report = check(
    [
      ['Run', 'Hormone', 'Temperature (°C)', 'Latency (h)'],
      ...rows.map((row, i) => [`R${i}`, 'ready-made solution', row.temperature, 2 * row.hours] as const),
    ],
    ['LATENCY.FIT'],
  );
  expect(cellsFound(report).length).toBeGreaterThanOrEqual(
    rows.filter(({ temperature }) => temperature >= 23).length,
  );
});

test(
  'HATCH.FIT lets published incubation pass, and points at the teaching table that ' +
    'contradicts the handbook',
  () => {
    const rows = timed('incubation_published.csv').filter(
      ({ species, what }) =>
        /Clarias gariepinus|African catfish/.test(species) && what === 'fertilisation to hatching',
    );
    expect(rows.length).toBeGreaterThanOrEqual(15);
    const report = check(
      [
        ['Run', 'Incubation temp (°C)', 'Incubation (h)'],
        ...rows.map((row, i) => [`R${i}`, row.temperature, row.hours] as const),
      ],
      ['HATCH.FIT'],
    );
    // 70 to 80 h at 20 to 22 °C is printed in a teaching table; the handbook gives 57 to 38 h.
    const wrong = rows.findIndex(({ species }) => species === 'African catfish');
    expect(cellsFound(report)).toEqual([`C${wrong + 2}`]);
  },
);

test('GROWTH.RANGE lets a published growth curve pass, and finds its weights in the wrong order', () => {
  const rows = tableOf('legendre1992_growth.csv').map((row) => ({
    day: Number(row.day),
    weight: Number(row.wet_weight_g),
  }));
  const pairs = rows.slice(1).map((row, i) => ({
    start: rows[i]?.weight ?? NaN,
    end: row.weight,
    days: row.day - (rows[i]?.day ?? NaN),
  }));
  const head = ['Batch', 'Start weight (g)', 'End weight (g)', 'Days'] as const;
  expect(
    cellsFound(
      check(
        [head, ...pairs.map(({ start, end, days }, i) => [`B${i}`, start, end, days] as const)],
        ['GROWTH.RANGE'],
      ),
    ),
  ).toEqual([]);
  const falling = pairs.filter(({ start, end }) => start < 0.8 * end);
  expect(
    cellsFound(
      check(
        [head, ...falling.map(({ start, end, days }, i) => [`B${i}`, end, start, days] as const)],
        ['GROWTH.RANGE'],
      ),
    ),
  ).toHaveLength(falling.length);
});

describe('PH.DOSE on soda ash sequences of an independent solver, 1000 L each', () => {
  const rows = tableOf('titration_dev.csv')
    .filter((row) => Number(row.cum_dose_Na2CO3_mgL) > 0)
    .map((row) => ({
      before: Number(row.pH0_true),
      after: Number(row.pH_read_cheap),
      grams: Number(row.cum_dose_Na2CO3_mgL),
      kind: row.kind,
    }));
  const found = (times: number): number =>
    cellsFound(
      check(
        [
          ['Vat', 'pH', 'Product', 'Dose (g)', 'Volume (L)', 'pH after'],
          ...rows.map(
            ({ before, grams, after }, i) =>
              [`V${i}`, before, 'soda ash', grams * times, 1000, after] as const,
          ),
        ],
        ['PH.DOSE'],
      ),
    ).length;
  test('a cheap meter and an honest dose: nothing to report', () => {
    expect(rows.length).toBeGreaterThan(100);
    expect(found(1)).toBe(0);
  });
  test('the dose a thousand times too large is always found', () => {
    expect(found(1000)).toBe(rows.length);
  });
  test('a hundredth of the dose is found wherever the rise is more than airing could make', () => {
    const clear = rows.filter(({ before, after }) => after - before > 1.5).length;
    expect(clear).toBeGreaterThan(20);
    expect(found(0.01)).toBeGreaterThanOrEqual(clear);
  });
});
