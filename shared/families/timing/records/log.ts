// Long: records of one subject, each with its texts, questions and examples.
import { momentText } from '../../../units/dates';
import { logFaults } from '../kernels/logFaults';
import { warmthCurve } from '../kernels/rateCurve';
import type { RateCurve } from '../kernels/rateCurve';
import { celsius, count, degreeHours, moment, share, text } from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError, outside } from '../../../base/values';
import { column, defineFunction, fields, rows, value } from '../../../functions/define';
import { num, texts } from '../../../functions/params';
import { SERIALS } from './latency';
import * as say from './logSay';
import { anyProfile, ownTable, stage } from './profiles';
import {
  expectedTemperature,
  finish,
  logParams,
  longestGap,
  obstacle,
  progress,
  trackFor,
  warmthBetween,
  windowOf,
} from './track';

const VALID =
  'Every reading used must lie within the rows of the chosen table; silences up to ' +
  'longestGap are bridged by a straight line';
const HELP =
  'Development is the sum of rate × time, rate = 1/hours read from the table in a ' +
  'straight line between rows; between two readings the temperature runs in a straight ' +
  'line, before the first one it is held, after the last one the expected temperature ' +
  'takes over. ' +
  ('Any spacing of readings will do, and cutting the log changes nothing. At one steady ' +
    'temperature the answer is that of the table. ') +
  'The two handbook tables are recalled from memory: their printed page was not seen.';
const SOURCES = ['KAMLER02', 'GRAAF96', 'OKER15', 'HOU15', 'PROKES15'] as const;
const start = num(moment, {
  ...SERIALS,
  doc: 'Date and time of the injection, the fertilisation or the hatch: where the stage begins.',
});

const TIMES = [[46000], [46000.25], [46000.5]];
const STEADY = [[25], [25], [25]];

export const logProgress = defineFunction({
  id: 'LOG.PROGRESS',
  family: 'Timing',
  summary: 'Share of a stage done at a time, summed over a temperature log.',
  questions: [
    'how far are the eggs by the log',
    'share of incubation done',
    'how far along is the stage',
    'when will it be done with changing temperature',
  ],
  params: {
    start,
    at: num(moment, { ...SERIALS, doc: 'The date and time asked about; NOW() for now.' }),
    ...logParams,
    expected: expectedTemperature,
    stage,
    profile: anyProfile,
    longestGap,
    ...ownTable,
  },
  returns: value(share, 'Share done: 1 when the stage is over, more when it is past.'),
  valid: VALID,
  sources: SOURCES,
  help: HELP,
  examples: [
    { args: [46000, 46000.5, TIMES, STEADY], gives: '0.4', because: '12 of the 30 h at a steady 25 °C.' },
    {
      args: [46000, 46000.5, TIMES, [[23], [25], [28]]],
      gives: '0.4146',
      because: 'Six hours from 1/33 to 1/30 and six from 1/30 to 1/24.25 per hour.',
    },
    {
      args: [46000, 46000.5, TIMES, [[25], [79], [25]]],
      fails: { code: '#VALUE!', says: '26.1 °C' },
      because: 'One reading was written in °F.',
    },
    {
      args: [46000, 46000.5, [[46000.9], [46000.1]], [[25], [25]]],
      fails: { code: '#VALUE!', says: 'after midnight' },
      because: 'The date was not moved on after midnight.',
    },
  ],
  compute: (args) => progress(args, args.at),
});

export const logFinish = defineFunction({
  id: 'LOG.FINISH',
  family: 'Timing',
  summary: 'Date and time a stage ends: the log so far, then the temperature you expect.',
  questions: [
    'hatch time from a temperature log',
    'when is the stage done with changing water temperature',
    'finish time by logged temperatures',
    'how far along are the eggs',
  ],
  params: {
    start,
    ...logParams,
    expected: expectedTemperature,
    stage,
    profile: anyProfile,
    longestGap,
    ...ownTable,
  },
  returns: value(moment, 'When eggs flow, the first hatch, larvae first feed, or the yolk is gone.'),
  valid: VALID,
  sources: SOURCES,
  help: `${HELP} Give expected a range of temperatures to see what a cold night would do.`,
  examples: [
    { args: [46000, TIMES, STEADY, 25], gives: '46001.2500', because: '30 h at 25 °C, as in the table.' },
    {
      args: [46000, [[46000], [46000.1666667]], [[27], [27]], 24, 'latency', 'handbook pituitary'],
      gives: '46000.4444',
      because: '4/9 done in 4 h at 27 °C; the rest, 5/9 of 12 h, at 24 °C.',
    },
    {
      args: [46000, TIMES, STEADY],
      fails: { code: '#N/A', says: '40 % done' },
      because: 'The log ends long before the hatch and no temperature is expected.',
    },
  ],
  compute: finish,
});

export const logWindow = defineFunction({
  id: 'LOG.WINDOW',
  family: 'Timing',
  summary: 'When to check, strip and stop, or first and last hatch: the log so far, then the expected water.',
  questions: [
    'strip hour from the temperature log',
    'when to check and strip with falling temperature',
    'window from logged temperatures',
    'power went off water got cold',
  ],
  params: {
    start,
    ...logParams,
    expected: expectedTemperature,
    stage,
    profile: anyProfile,
    longestGap,
    ...ownTable,
  },
  returns: fields(
    {
      opens: column('Opens', moment, 'First look for eggs, or first hatch.'),
      best: column('Best', moment, 'Strip, or the hour of the table.'),
      closes: column('Closes', moment, 'Last hour tried for a strip, or last hatch.'),
    },
    'The window of SPAWN.STRIP.WINDOW or SPAWN.HATCH.WINDOW for water that changes.',
  ),
  valid: `${VALID}. Windows were published for latency and incubation only`,
  sources: [...SOURCES, 'AUDU23', 'UKAKALU', 'WORLDAQ25'],
  cautions: ['HORMONE'],
  help: `${HELP} Each edge is when that share of the stage is done.`,
  examples: [
    {
      args: [46000, TIMES, STEADY, 25, 'latency'],
      gives: [['46000.3819', '46000.5241', '46000.6047']],
      because: 'At a steady 25 °C the same as SPAWN.STRIP.WINDOW.',
    },
    {
      args: [46000, TIMES, STEADY, 25, 'yolk gone'],
      fails: { code: '#N/A', says: 'latency and incubation' },
      because: 'No spread was published for the yolk.',
    },
  ],
  compute: (args) => {
    const got = windowOf(args);
    return got === undefined
      ? outside(
          'stage: a window was published for latency and incubation only, and not for every ' +
            'species. SPAWN.LOG.FINISH gives one time.',
        )
      : isError(got)
        ? got
        : { ...got };
  },
});

/** Curves by base, so that a range of times over one base sums the log once. */
const curves = new Map<number, RateCurve>();
const curveAbove = (base: number): RateCurve => {
  let curve = curves.get(base);
  if (!curve) {
    if (curves.size > 100) curves.clear();
    curves.set(base, (curve = warmthCurve(base)));
  }
  return curve;
};

export const logDegreeHours = defineFunction({
  id: 'LOG.DEGREE.HOURS',
  family: 'Timing',
  summary: 'Degree-hours above a base temperature, summed over a temperature log.',
  questions: ['degree hours from a temperature log', 'temperature log', 'sum degree hours from readings'],
  params: {
    ...logParams,
    base: num(celsius, {
      min: -5,
      max: 40,
      doc: 'Base temperature; nothing counts below it. 15.4 °C for eggs and larvae of African catfish.',
    }),
    from: num(moment, {
      ...SERIALS,
      optional: true,
      doc: 'Count from here; left out, from the first reading.',
    }),
    to: num(moment, { ...SERIALS, optional: true, doc: 'Count up to here; left out, to the last reading.' }),
    longestGap,
  },
  returns: value(degreeHours, 'Warmth above the base.'),
  valid: 'Any log; comparable between temperatures only when the base is that of the species and stage',
  sources: ['KAMLER02', 'PROKES15', 'SALMAN23', 'CHANNELDD'],
  help:
    'Base zero misleads: over the handbook latency table 0-based degree-hours run from ' +
    '420 °C·h at 20 °C to 210 °C·h at 30 °C, a factor of two, while above 15.4 °C they ' +
    'stay within about a tenth. ' +
    ('So a 0-based figure holds only near the temperature it was measured at. Published ' +
      '0-based figures also differ by a third between hormones in one species. ') +
    ('Channel catfish in ponds were ready to spawn after 57 to 172 degree-days above 21 ' +
      '°C, half of them by 99 (multiply by 24 for degree-hours).'),
  examples: [
    { args: [TIMES, [[26], [26], [26]], 15.4], gives: '127.2', because: '12 h at 10.6 °C above the base.' },
    {
      args: [TIMES, [[12], [18], [18]], 15],
      gives: '22.5',
      because:
        'The slope from 12 to 18 °C counts only its upper half: 3 h at 1.5 °C on average, then 6 h at 3 °C.',
    },
    {
      args: [[[46000], [46002]], [[26], [26]], 15.4],
      fails: { code: '#N/A', says: '48 h' },
      because: 'Two days without a reading are not bridged.',
    },
  ],
  compute: ({ times, temperatures, base, from, to, longestGap: longest }): number | CellError => {
    const track = trackFor(curveAbove(base), times, temperatures);
    if (isError(track)) return track;
    const begin = from ?? times[0] ?? NaN;
    const end = to ?? times[times.length - 1] ?? NaN;
    if (end < begin) return say.endsBeforeStart(begin, end);
    const last = times[times.length - 1] ?? NaN;
    const ahead =
      (end - last) * 24 > longest ? say.tooLongAGap(last, end, (end - last) * 24, longest) : undefined;
    return (
      obstacle(track, temperatures, undefined, begin, end, longest) ??
      ahead ??
      warmthBetween(track, begin, end)
    );
  },
});

const cellNumber = (written: string): number | undefined =>
  written.trim() === '' ? undefined : Number(written);

export const logCheck = defineFunction({
  id: 'LOG.CHECK',
  family: 'Timing',
  summary: 'Lists what cannot be right in a temperature log: order, gaps, °F, jumps, text.',
  questions: ['check my temperature log', 'gaps in the temperature log', 'what is wrong with my logger file'],
  params: {
    times: texts({ pair: 'log', doc: 'Dates and times of the readings.' }),
    temperatures: texts({ pair: 'log', doc: 'The readings, as they stand in the log.' }),
    longestGap,
  },
  returns: rows(
    {
      reading: column('Reading', count, 'Counted from the first filled row.'),
      time: column('Time', text),
      finding: column('Finding', text),
      advice: column('What to do', text),
    },
    'One row for each fault; one row that says so when there is none.',
  ),
  valid: 'Any two columns of the same length; nothing is changed',
  sources: ['PRACTICE'],
  help:
    'A jump is more than 4 °C within an hour (common practice, no source). No reading is ' +
    'ever changed or left out by this function.',
  examples: [
    {
      args: [TIMES, [[25], [77], [25]]],
      gives: [
        ['2', '9 Dec 2025 06:00', 'too hot for water with fish', 'That looks like °F: it would be 25 °C.'],
      ],
      because: '77 °F is 25 °C.',
    },
    {
      args: [[[46000], [46001]], [[25]]],
      fails: { code: '#VALUE!', says: 'Each row needs both' },
      because: 'Columns of different length do not belong together.',
    },
  ],
  compute: ({ times, temperatures, longestGap: longest }) => {
    const serials = times.map(cellNumber);
    const faults = logFaults(serials, temperatures.map(cellNumber), longest);
    if (faults.length === 0)
      return [{ reading: times.length, time: '', finding: 'no fault found', advice: '' }];
    return faults.map((fault) => {
      const time = serials[fault.index];
      return {
        reading: fault.index + 1,
        time: time !== undefined && Number.isFinite(time) ? momentText(time) : (times[fault.index] ?? ''),
        ...say.faultText(fault, serials[fault.index - 1] ?? NaN),
      };
    });
  },
});
