import { baseFromPair, degreeHoursOf, fitWarmth, hoursForWarmth } from '../kernels/degreeTime';
import { celsius, degreeHours, hours, ratio } from '../../../units/quantities';
import { noSolution } from '../../../base/values';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num, series } from '../../../functions/params';
import { degrees } from './say';

const BASE_ZERO =
  'Base zero misleads: the handbook latency table runs from 420 °C·h at 20 °C to 210 ' +
  '°C·h at 30 °C counted from zero, but stays within about a tenth counted from 15.4 ' +
  '°C. ' +
  ('Published bases: African catfish 15.4 °C, common carp 6.7 °C, clown featherback ' +
    '16.1 °C, climbing perch 7.6 °C.');
const temperature = num(celsius, { min: 0, max: 45, doc: 'Constant water temperature.' });
const base = num(celsius, {
  min: -5,
  max: 40,
  doc: 'Base temperature, where development stops. 15.4 °C for eggs and larvae of African catfish.',
});
const span = (doc: string): ReturnType<typeof num<'h'>> => num(hours, { above: 0, max: 20_000, doc });

export const degreeHoursValue = defineFunction({
  id: 'DEGREE.HOURS',
  family: 'Timing',
  summary: 'Degree-hours above a base temperature at one constant temperature.',
  questions: ['degree hours', 'hour degrees', 'thermal units', 'degre hours'],
  params: { duration: span('Hours at that temperature.'), temperature, base },
  returns: value(degreeHours, 'Warmth above the base; 0 below it.'),
  valid: 'Constant temperature; for a log use SPAWN.LOG.DEGREE.HOURS',
  sources: ['KAMLER02', 'PROKES15', 'CARPZERO'],
  help: BASE_ZERO,
  examples: [
    { args: [11, 25, 15.4], gives: '105.6', because: '11 h at 9.6 °C above the base.' },
    { args: [10, 12, 15.4], gives: '0', because: 'Below the base nothing counts.' },
    {
      args: [0, 25, 15.4],
      fails: { code: '#VALUE!', says: 'above 0' },
      because: 'No time, no warmth: likely a blank cell.',
    },
  ],
  compute: (args) => degreeHoursOf(args.duration, args.temperature, args.base),
});

export const degreeTime = defineFunction({
  id: 'DEGREE.TIME',
  family: 'Timing',
  summary: 'Hours a stage takes at one temperature, from its degree-hours above a base.',
  questions: [
    'hours a stage takes from degree hours',
    'time from degree hours at a temperature',
    'turn degree hours into hours',
  ],
  params: {
    warmth: num(degreeHours, { above: 0, max: 1e6, doc: 'Degree-hours of the stage above the base.' }),
    temperature,
    base,
  },
  returns: value(hours, 'Duration D/(T − base).'),
  valid: 'Where rate against temperature is a straight line: the middle of what the species bears',
  sources: ['KAMLER02', 'PROKES15'],
  help: `${BASE_ZERO} The warmth sum must have been worked out over the same base.`,
  examples: [
    { args: [102.4, 26.5, 15.4], gives: '9.225', because: '102.4 °C·h ÷ 11.1 °C.' },
    {
      args: [102.4, 15, 15.4],
      fails: { code: '#NUM!', says: 'never' },
      because: 'Nothing develops at or below the base.',
    },
  ],
  compute: (args) =>
    args.temperature > args.base
      ? hoursForWarmth(args.warmth, args.temperature, args.base)
      : noSolution(
          `temperature: at ${degrees(args.temperature)} °C, at or below the base of ${degrees(args.base)} °C, it never ends.`,
        ),
});

export const baseTemperature = defineFunction({
  id: 'BASE.TEMPERATURE',
  family: 'Timing',
  summary: 'Base temperature of a stage from its duration at two temperatures.',
  questions: [
    'base temperature from two temperatures',
    'at what temperature does development stop',
    'threshold temperature of eggs',
  ],
  params: {
    temperature1: temperature,
    duration1: span('Hours the stage took there.'),
    temperature2: num(celsius, { min: 0, max: 45, doc: 'The other temperature.' }),
    duration2: span('Hours the stage took there.'),
  },
  returns: value(celsius, 'Temperature at which development would stop.'),
  valid: 'Two constant temperatures inside what the species bears, the further apart the better',
  sources: ['CARPZERO', 'KAMLER02'],
  help: 't0 = (h1·T1 − h2·T2)/(h1 − h2). With more than two lots use SPAWN.BASE.FIT.',
  examples: [
    { args: [26, 45.17, 33, 32.75], gives: '7.54', because: 'Common carp, first pair of lots.' },
    {
      args: [26, 40, 33, 40],
      fails: { code: '#NUM!', says: 'same hours' },
      because: 'Equal durations have no base.',
    },
    {
      args: [26, 32, 33, 45],
      fails: { code: '#NUM!', says: 'swapped' },
      because: 'Warmer water cannot be slower.',
    },
  ],
  compute: ({ temperature1: t1, duration1: h1, temperature2: t2, duration2: h2 }) => {
    if (h1 === h2) return noSolution('duration2: the same hours at two temperatures give no base.');
    if (t1 === t2) return noSolution('temperature2: two different temperatures are needed.');
    return (t1 - t2) * (h1 - h2) < 0
      ? baseFromPair(t1, h1, t2, h2)
      : noSolution('duration2: longer in warmer water; were the two swapped?');
  },
});

export const baseFit = defineFunction({
  id: 'BASE.FIT',
  family: 'Timing',
  summary: 'Base temperature and degree-hours of a stage, fitted to your own lots.',
  questions: [
    'fit base temperature from my own lots',
    'fit degree hours to my records',
    'degree hour constants of my strain',
  ],
  params: {
    temperatures: series(celsius, {
      min: 0,
      max: 45,
      pair: 'lots',
      atLeast: 2,
      doc: 'Mean temperature of each lot.',
    }),
    durations: series(hours, {
      above: 0,
      max: 20_000,
      pair: 'lots',
      atLeast: 2,
      doc: 'Hours each lot took.',
    }),
  },
  returns: fields(
    {
      base: column('Base', celsius),
      warmth: column('Warmth sum', degreeHours),
      rSquared: column(
        'r²',
        ratio,
        'Share of the variation the straight line explains; published lines have 0.92 to 1.',
      ),
    },
    'Straight line through 1/hours against temperature.',
  ),
  valid: 'Lots at steady temperatures inside what the species bears; do not use it beyond them',
  sources: ['KAMLER02'],
  help: 'Least squares on the rate: 1/h = a + b·T, base = −a/b, warmth sum = 1/b.',
  examples: [
    {
      args: [
        [[26], [33]],
        [[45.14], [33.11]],
      ],
      gives: [['6.73', '869.7', '1.000']],
      because: 'Means of the common carp lots: two rows lie on a line.',
    },
    {
      args: [
        [[26], [26]],
        [[45], [44]],
      ],
      fails: { code: '#NUM!', says: 'different temperatures' },
      because: 'One temperature gives no line.',
    },
  ],
  compute: ({ temperatures, durations }) => {
    if (Math.max(...temperatures) === Math.min(...temperatures))
      return noSolution('temperatures: at least two different temperatures are needed.');
    const fit = fitWarmth(temperatures, durations);
    return fit.warmth > 0
      ? { ...fit }
      : noSolution('durations: they do not get shorter in warmer water; were the columns swapped?');
  },
});
