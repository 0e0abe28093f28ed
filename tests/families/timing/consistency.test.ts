/**
 * Values computed by us from published or recalled inputs. They show that the parts agree with each other,
 * not that a publication says so. The handbook tables are recalled from memory (GRAAF96); the base of 15.4 °C
 * was read in PROKES15.
 */
import { baseFromPair, hoursForWarmth } from '../../../shared/families/timing/kernels/degreeTime';
import { columnOf, grid, number } from '../../support/call';

const TEMPERATURES = [20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30];
const LATENCY = ['21', '18', '15.5', '13.5', '12', '11', '10', '9', '8', '7.5', '7'];
const HANDBOOK: Readonly<Record<string, string>> = {
  'LATENCY.HOURS': 'handbook pituitary',
  'INCUBATION.HOURS': 'handbook African catfish',
};
const HATCHING = ['57', '46', '38', '33', '29', '27', '25', '23', '22', '21', '20'];

describe('consistency: the recalled handbook tables', () => {
  test.each(TEMPERATURES.map((t, i) => [t, LATENCY[i] ?? '', HATCHING[i] ?? ''] as const))(
    '%d °C: latency %s h, hatching %s h',
    (t, latency, hatching) => {
      expect(number('LATENCY.HOURS', t, 'handbook pituitary')).toAgreeWithPrinted(latency);
      expect(number('INCUBATION.HOURS', t, 'handbook African catfish')).toAgreeWithPrinted(hatching);
    },
  );

  const warmths = (id: string): number[] =>
    TEMPERATURES.map((t) => number('DEGREE.HOURS', number(id, t, HANDBOOK[id] ?? ''), t, 15.4));
  const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;

  test.each([
    ['LATENCY.HOURS', '96.6', '102.4', '106.0'],
    ['INCUBATION.HOURS', '249.4', '265.1', '292.0'],
  ])('%s over 15.4 °C: least %s, mean %s, most %s °C·h', (id, least, middle, most) => {
    const got = warmths(id);
    expect(Math.min(...got)).toAgreeWithPrinted(least);
    expect(mean(got)).toAgreeWithPrinted(middle);
    expect(Math.max(...got)).toAgreeWithPrinted(most);
  });

  test('counted from zero the latency table runs from 420 to 210 °C·h', () => {
    expect(
      number('DEGREE.HOURS', number('LATENCY.HOURS', 20, 'handbook pituitary'), 20, 0),
    ).toAgreeWithPrinted('420');
    expect(
      number('DEGREE.HOURS', number('LATENCY.HOURS', 30, 'handbook pituitary'), 30, 0),
    ).toAgreeWithPrinted('210');
  });

  test.each([
    [LATENCY, '15.29', '103.8', '0.9966'],
    [HATCHING, '13.90', '309.8', '0.9834'],
  ])('least squares on the rate', (table, base, warmth, rSquared) => {
    const [got] = grid('BASE.FIT', columnOf(TEMPERATURES), columnOf(table.map(Number)));
    expect(got?.[0]).toAgreeWithPrinted(base);
    expect(got?.[1]).toAgreeWithPrinted(warmth);
    expect(got?.[2]).toAgreeWithPrinted(rSquared);
  });
});

describe('consistency: warmth sums in degree-days over 15.4 °C', () => {
  test.each([
    ['hatching 23.5 h at 28 °C', 23.5, 28, '12.34'],
    ['hatching 25.0 h at 28 °C', 25, 28, '13.13'],
    ['first food 36 h at 28.05 °C', 36, 28.05, '18.98'],
    ['yolk gone 68 h at 28.05 °C', 68, 28.05, '35.84'],
  ])('%s', (_what, hours, temperature, degreeDays) => {
    // The printed 13.13 is 13.125 rounded up: a half unit of the last digit.
    expect(number('DEGREE.HOURS', hours, temperature, 15.4) / 24).toAgreeWithPrinted(degreeDays);
  });
});

describe('consistency: worked examples', () => {
  test.each([
    [22, 16.5],
    [25, 21],
    [28, 24],
  ])('strip at 08:00 with %d °C: inject at %d:00 the day before', (temperature, hour) => {
    expect(number('INJECTION.TIME', 46001 + 8 / 24, temperature, 'handbook pituitary')).toBeCloseTo(
      46000 + hour / 24,
      9,
    );
  });

  test('a straight degree model, 4 h at 27 °C then 24 °C: 10.512 h in all', () => {
    const done = number('DEGREE.HOURS', 4, 27, 15.4);
    expect(done).toAgreeWithPrinted('46.4');
    expect(4 + number('DEGREE.TIME', 102.4 - done, 24, 15.4)).toAgreeWithPrinted('10.512');
    // The same through a table of its own made of that model: the sum of rates is the model.
    const own = [20, 30].map((t) => hoursForWarmth(102.4, t, 15.4));
    const end = number(
      'LOG.FINISH',
      46000,
      columnOf([46000, 46000 + 4 / 24]),
      columnOf([27, 27]),
      24,
      'latency',
      null,
      12,
      columnOf([20, 30]),
      columnOf(own),
    );
    expect((end - 46000) * 24).toAgreeWithPrinted('10.512');
  });

  test(
    'between rows: the rate is read, 9.474 h at 26.5 °C, between the linear 9.5 h and ' + 'the model 9.225 h',
    () => {
      expect(number('LATENCY.HOURS', 26.5, 'handbook pituitary')).toAgreeWithPrinted('9.474');
      expect(number('DEGREE.TIME', 102.4, 26.5, 15.4)).toAgreeWithPrinted('9.225');
    },
  );

  test('two rows of a straight model give its base back', () => {
    expect(baseFromPair(20, hoursForWarmth(265, 20, 13.9), 30, hoursForWarmth(265, 30, 13.9))).toBeCloseTo(
      13.9,
      10,
    );
  });
});

test('consistency: preparations at 26 °C stand in the order measured', () => {
  // Okere et al. 2015, one trial: 10.2 h ready-made, 12.4 h pituitary extract; own glands 12.0 h at 28 °C; tilapia half as long again.
  const at26 = [
    'handbook pituitary',
    'ready-made solution',
    'own-species pituitary',
    'tilapia pituitary',
  ].map((p) => number('LATENCY.HOURS', 26, p));
  expect(at26).toEqual([...at26].sort((a, b) => a - b));
});

test('consistency: the run clock says what the single functions say', () => {
  const rows = grid('RUN.CLOCK', 46000.875, 26, 24, 'ready-made solution', 0.5, false);
  const when = new Map(rows.map(([event, time]) => [event, Number(time)]));
  const strip = number('STRIP.TIME', 46000.875, 26, 'ready-made solution', 0.5);
  const hatch = number('HATCH.TIME', strip, 24);
  expect(when.get('Strip and fertilise')).toBeCloseTo(strip, 9);
  expect(when.get('Most have hatched')).toBeCloseTo(hatch, 9);
  expect(when.get('First hatch')).toBeCloseTo(Number(grid('HATCH.WINDOW', strip, 24)[0]?.[0]), 9);
  expect(when.get('First food')).toBeCloseTo(number('FEEDING.START', hatch, 24), 9);
  expect(when.get('Yolk gone')).toBeCloseTo(number('YOLK.GONE', hatch, 24), 9);
  const times = rows.map(([, time]) => Number(time));
  expect(times).toEqual([...times].sort((a, b) => a - b));
});
