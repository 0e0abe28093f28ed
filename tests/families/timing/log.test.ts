import fc from 'fast-check';
import type { Grid } from '../../../shared/base/values';
import { call, columnOf, grid, number, refusal } from '../../support/call';

const START = 46000;
const RUN = { seed: 20260315, numRuns: 200 };
const temperature = fc.double({ min: 20, max: 30, noNaN: true });
/** A log from the start on, uneven steps of a quarter to eight hours. */
const anyLog = fc
  .array(fc.tuple(fc.double({ min: 0.25, max: 8, noNaN: true }), temperature), {
    minLength: 1,
    maxLength: 12,
  })
  .chain((steps) =>
    temperature.map((first) => {
      const times = [START];
      for (const [hours] of steps) times.push((times[times.length - 1] ?? START) + hours / 24);
      return { times, temperatures: [first, ...steps.map(([, t]) => t)] };
    }),
  );
type Log = { readonly times: readonly number[]; readonly temperatures: readonly number[] };
const columns = (log: Log): [Grid, Grid] => [columnOf(log.times), columnOf(log.temperatures)];
const finish = (log: Log, expected = 25): number => number('LOG.FINISH', START, ...columns(log), expected);
const done = (log: Log, at: number, start = START): number =>
  number('LOG.PROGRESS', start, at, ...columns(log), 25);

/** The same log with one more reading on the line between two others. */
function cut({ times, temperatures }: Log, index: number, share: number): Log {
  const i = index % (times.length - 1);
  const mix = (list: readonly number[]): number =>
    (list[i] ?? 0) + ((list[i + 1] ?? 0) - (list[i] ?? 0)) * share;
  const put = (list: readonly number[]): number[] => [
    ...list.slice(0, i + 1),
    mix(list),
    ...list.slice(i + 1),
  ];
  return { times: put(times), temperatures: put(temperatures) };
}

describe('cutting a log at any point changes nothing', () => {
  test('one more reading on the line between two', () => {
    fc.assert(
      fc.property(anyLog, fc.nat(20), fc.double({ min: 0.05, max: 0.95, noNaN: true }), (log, i, share) => {
        const finer = cut(log, i, share);
        expect(Math.abs(finish(finer) - finish(log))).toBeLessThan(1e-8);
      }),
      RUN,
    );
  });

  test('the shares of two stretches add up to the share of both', () => {
    fc.assert(
      fc.property(
        anyLog,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (log, a, b) => {
          const end = log.times[log.times.length - 1] ?? START;
          const to = START + (end - START) * Math.max(a, b);
          const middle = START + (end - START) * Math.min(a, b);
          expect(done(log, middle) + done(log, to, middle)).toBeCloseTo(done(log, to), 9);
        },
      ),
      RUN,
    );
  });

  test('degree-hours add up the same way', () => {
    fc.assert(
      fc.property(
        anyLog,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 10, max: 28, noNaN: true }),
        (log, a, base) => {
          const end = log.times[log.times.length - 1] ?? START;
          const middle = START + (end - START) * a;
          const sum = (from: number, to: number): number =>
            number('LOG.DEGREE.HOURS', ...columns(log), base, from, to);
          expect(sum(START, middle) + sum(middle, end)).toBeCloseTo(sum(START, end), 6);
        },
      ),
      RUN,
    );
  });
});

test('a warmer log or a warmer outlook never ends later', () => {
  fc.assert(
    fc.property(anyLog, fc.double({ min: 0, max: 3, noNaN: true }), temperature, (log, warmer, expected) => {
      const warm = { times: log.times, temperatures: log.temperatures.map((t) => Math.min(30, t + warmer)) };
      expect(finish(warm, expected)).toBeLessThanOrEqual(finish(log, expected) + 1e-9);
      expect(finish(log, Math.min(30, expected + warmer))).toBeLessThanOrEqual(finish(log, expected) + 1e-9);
    }),
    RUN,
  );
});

test('at the predicted end exactly all is done', () => {
  fc.assert(
    fc.property(anyLog, temperature, (log, expected) => {
      const end = number('LOG.FINISH', START, ...columns(log), expected);
      expect(number('LOG.PROGRESS', START, end, ...columns(log), expected)).toBeCloseTo(1, 8);
    }),
    RUN,
  );
});

test('at one steady temperature the log gives the hours of the table', () => {
  fc.assert(
    fc.property(temperature, (t) => {
      const log = { times: [START, START + 0.3], temperatures: [t, t] };
      expect((finish(log, t) - START) * 24).toBeCloseTo(number('INCUBATION.HOURS', t), 7);
    }),
    RUN,
  );
});

test(
  'in steady water the window of the log is the window of the table, and it never ' +
    'closes before it opens',
  () => {
    fc.assert(
      fc.property(temperature, (t) => {
        const log = [columnOf([START, START + 0.3]), columnOf([t, t])] as const;
        for (const [stage, id] of [
          ['latency', 'STRIP.WINDOW'],
          ['incubation', 'HATCH.WINDOW'],
        ] as const) {
          const [opens, best, closes] = (grid('LOG.WINDOW', START, ...log, t, stage)[0] ?? []).map(Number);
          const wanted = (grid(id, START, t)[0] ?? []).map(Number);
          const got = stage === 'latency' ? [opens, best, closes] : [opens, closes];
          for (const [i, moment] of got.entries()) expect(moment).toBeCloseTo(wanted[i] ?? NaN, 8);
        }
      }),
      RUN,
    );
    fc.assert(
      fc.property(anyLog, (log) => {
        const [opens = NaN, best = NaN, closes = NaN] = (
          grid('LOG.WINDOW', START, ...columns(log), 25, 'latency')[0] ?? []
        ).map(Number);
        expect(opens <= best && best <= closes).toBe(true);
        expect(best).toBeCloseTo(number('LOG.FINISH', START, ...columns(log), 25, 'latency'), 9);
      }),
      RUN,
    );
  },
);

describe('log input', () => {
  const times = columnOf([46000, 46000.25, 46000.5]);
  const steady = columnOf([25, 25, 25]);

  test('blank rows and rows without a reading are left out', () => {
    const gappy: Grid = [[46000], [null], [46000.25], [46000.5]];
    expect(number('LOG.PROGRESS', 46000, 46000.5, gappy, columnOf([25, null, null, 25]))).toBeCloseTo(
      12 / 30,
      12,
    );
  });

  test('unsorted: says to sort', () => {
    expect(refusal('LOG.FINISH', 46000, columnOf([46002, 46000, 46001]), steady, 25)).toMatch(
      /^#VALUE! .*Sort the log/,
    );
  });

  test('after midnight with the old date: says so', () => {
    expect(refusal('LOG.FINISH', 46000, columnOf([46000.9, 46000.1]), columnOf([25, 25]), 25)).toMatch(
      /not moved on after midnight/,
    );
  });

  test('the same time twice: says to keep one', () => {
    expect(refusal('LOG.FINISH', 46000, columnOf([46000, 46000.25, 46000.25]), steady, 25)).toMatch(
      /stands twice.*Keep one/,
    );
  });

  test('text: names the row', () => {
    expect(refusal('LOG.FINISH', 46000, times, columnOf([25, '25,5', 25]), 25)).toMatch(
      /temperatures, row 2.*decimal comma/,
    );
  });

  test('°F: names the row and the °C', () => {
    expect(refusal('LOG.FINISH', 46000, times, columnOf([25, 25, 77]), 25)).toMatch(
      /temperatures, row 3.*77 °F is 25 °C/,
    );
  });

  test('clock times without dates', () => {
    expect(refusal('LOG.FINISH', 46000, columnOf([0.25, 0.5, 0.75]), steady, 25)).toMatch(/without its date/);
  });

  test('a long silence is not bridged unless allowed', () => {
    const args = [46000, columnOf([46000, 46000.6]), columnOf([25, 25])] as const;
    expect(refusal('LOG.FINISH', ...args, 25)).toMatch(/^#N\/A .*14\.4 h; up to 12 h is bridged/);
    expect(number('LOG.FINISH', ...args, 25, 'incubation', null, 15)).toBeCloseTo(46001.25, 9);
  });

  test('a silence outside the question does no harm', () => {
    expect(number('LOG.PROGRESS', 46000.6, 46000.7, columnOf([46000, 46000.6, 46000.7]), steady)).toBeCloseTo(
      2.4 / 30,
      9,
    );
  });

  test('a reading outside the table is refused only where it is used, and deadly water is called so', () => {
    const hot = columnOf([25, 25, 36]);
    expect(number('LOG.PROGRESS', 46000, 46000.2, times, hot)).toBeCloseTo(4.8 / 30, 9);
    expect(refusal('LOG.PROGRESS', 46000, 46000.4, times, hot)).toMatch(
      /^#N\/A .*9 Dec 2025 12:00: 36 °C kills eggs.*35\.1/,
    );
    expect(refusal('LOG.PROGRESS', 46000, 46000.4, times, columnOf([25, 25, 34]))).toMatch(
      /34 °C is outside "African catfish" \(20 to 33 °C\)/,
    );
  });

  test('a run before the log, after the log, or asked about before it began', () => {
    expect(refusal('LOG.FINISH', 45990, times, steady, 25)).toMatch(/before the first reading/);
    expect(refusal('LOG.FINISH', 46010, times, steady, 25)).toMatch(/after the whole log/);
    expect(refusal('LOG.PROGRESS', 46000.5, 46000.4, times, steady)).toMatch(/before the start/);
  });

  test('without an outlook the last reading is held only so far', () => {
    expect(number('LOG.PROGRESS', 46000, 46000.9, times, steady)).toBeCloseTo(21.6 / 30, 9);
    expect(refusal('LOG.PROGRESS', 46000, 46001.2, times, steady)).toMatch(/40 % done/);
  });

  test('a range of moments is answered row by row', () => {
    const got = grid('LOG.PROGRESS', 46000, columnOf([46000, 46000.25, 46000.5]), times, steady);
    expect(got.map(([share]) => Number(share).toFixed(4))).toEqual(['0.0000', '0.2000', '0.4000']);
  });
});

describe('LOG.CHECK', () => {
  const findings = (times: Grid, temperatures: Grid): string[] =>
    grid('LOG.CHECK', times, temperatures)
      .slice(1)
      .map((row) => `${String(row[0])} ${String(row[2])}`);

  test('a clean log is said to be clean', () => {
    expect(findings(columnOf([46000, 46000.25]), columnOf([25, 25.5]))).toEqual(['2 no fault found']);
  });

  test('every fault is listed with its reading', () => {
    const times = columnOf([
      46000,
      46000.1,
      46000.05,
      46000.2,
      46000.2,
      0.4,
      46001.5,
      46001.52,
      'noon',
      46001.6,
      46001.7,
      46001.8,
    ]);
    const readings = columnOf([25, 77, 25, 25, 25, 25, 25, 12, 25, 'warm', null, 0]);
    expect(findings(times, readings)).toEqual([
      '2 too hot for water with fish',
      '3 earlier than the reading before it (9 Dec 2025 02:24)',
      '5 the same time stands twice',
      '6 a clock time without its date',
      '7 31.2 h without a reading before it',
      '8 −13 °C in 29 minutes',
      '9 no date and time',
      '10 the reading is not a number',
      '11 no reading',
      '12 a reading of 0 °C',
    ]);
  });

  test('its rows fit what the other functions refuse', () => {
    expect(call('LOG.FINISH', 46000, columnOf([46000, 46000]), columnOf([25, 25]), 25)).toMatchObject({
      error: '#VALUE!',
    });
    expect(findings(columnOf([46000, 46000]), columnOf([25, 25]))).toEqual(['2 the same time stands twice']);
  });
});
