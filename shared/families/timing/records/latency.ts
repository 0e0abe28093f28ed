import { stripWindow } from '../kernels/window';
import { daysFromHours } from '../../../units/convert';
import { hours, moment } from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError } from '../../../base/values';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num } from '../../../functions/params';
import { hoursOf, offset, ownTable, preparation, profileFor, water } from './profiles';
import * as say from './say';

const VALID =
  'Within the rows of the chosen preparation: "pituitary" 20 to 30 °C; the measured ' +
  'ones 22.9 to 30.3 °C; own-species pituitary 22 to 28 °C; the rest a degree or two ' +
  'around where they were measured';
const HELP =
  'The "pituitary" table is the handbook table recalled from memory: its printed page ' +
  'was not seen, so check it against your own strips. ' +
  ('One table does not fit all hormones: at 26 °C it says 10 h, a ready-made solution ' +
    'measured 10.2 h, pituitary extract in the same trial 12.4 h, glands of the same ' +
    'species 14.4 h. ') +
  'One trial without a named hormone did best at 14 h at 29.5 °C. Store your own correction as offset. ' +
  ('Between two rows the rate (1/hours) is read in a straight line: 26.5 °C in the ' +
    '"pituitary" table is 9.47 h.');
const SOURCES = [
  'GRAAF96',
  'OKER15',
  'CLARIIDPAGE',
  'TILAPIAGLAND',
  'BIDOR04',
  'LONGIHCG',
  'SALMAN23',
  'SILVERLAT',
  'AGBEBI',
  'PROKES15',
  'KAMLER02',
] as const;

/** Serial days people can mean: 1900 to 2199. */
export const SERIALS = { min: 1, max: 109_574 } as const;
const injected = num(moment, { ...SERIALS, doc: 'Date and time of the injection that makes them ovulate.' });

interface LatencyArgs {
  readonly temperature: number;
  readonly preparation: string;
  readonly ownTemperatures: readonly number[] | undefined;
  readonly ownHours: readonly number[] | undefined;
}
const latencyOf = (args: LatencyArgs): number | CellError =>
  hoursOf(profileFor('latency', args.preparation, args), args.temperature);

const withOffset = (args: LatencyArgs & { readonly offset: number }): number | CellError => {
  const latency = latencyOf(args);
  if (isError(latency)) return latency;
  return latency + args.offset > 0 ? latency + args.offset : say.noTimeLeft(latency, args.offset);
};

const OUT_OF_TABLE = {
  args: [46000, 36],
  fails: { code: '#N/A', says: '20 to 30 °C' },
  because: 'The table ends at 30 °C and is never stretched.',
} as const;

export const latencyHours = defineFunction({
  id: 'LATENCY.HOURS',
  family: 'Timing',
  summary: 'Hours from injection to stripping at one temperature, by hormone preparation.',
  params: { temperature: water, preparation, ...ownTable },
  returns: value(hours, 'Hours from injection until eggs flow.'),
  valid: VALID,
  sources: SOURCES,
  cautions: ['HORMONE'],
  help: HELP,
  examples: [
    { args: [25], gives: '11', because: 'A row of the handbook table (recalled from memory).' },
    { args: [26, 'ready-made solution'], gives: '10.22', because: '613 minutes measured at 26.0 °C.' },
    {
      args: [26.5],
      gives: '9.47',
      because: 'Rate halfway between 1/10 and 1/9 per hour, turned back to hours.',
    },
    {
      args: [25, 'pituitary', [[22], [28]], [[16], [9]]],
      gives: '11.52',
      because: "A hatchery's own two rows: rate halfway between 1/16 and 1/9.",
    },
    {
      args: [31],
      fails: { code: '#N/A', says: '20 to 30 °C' },
      because: 'The table ends at 30 °C and is never stretched.',
    },
    { args: [79], fails: { code: '#VALUE!', says: '26.1 °C' }, because: 'A thermometer set to °F.' },
  ],
  compute: latencyOf,
});

export const stripTime = defineFunction({
  id: 'STRIP.TIME',
  family: 'Timing',
  summary: 'Date and time to strip after an injection, at one water temperature.',
  params: { injected, temperature: water, preparation, offset, ...ownTable },
  returns: value(moment, 'When eggs should flow: the middle of a window, see SPAWN.STRIP.WINDOW.'),
  valid: VALID,
  sources: SOURCES,
  cautions: ['HORMONE'],
  help: HELP,
  examples: [
    {
      args: [46000.875, 25],
      gives: '46001.3333',
      because: 'Injected at 21:00, 11 h at 25 °C: strip at 08:00.',
    },
    OUT_OF_TABLE,
    {
      args: [0.875, 25],
      fails: { code: '#VALUE!', says: 'without its date' },
      because: 'A clock time alone gives no date to count from.',
    },
  ],
  compute: (args) => {
    const span = withOffset(args);
    return isError(span) ? span : args.injected + daysFromHours(span);
  },
});

export const stripWindowFields = defineFunction({
  id: 'STRIP.WINDOW',
  family: 'Timing',
  summary: 'First check, best time and too late for stripping after an injection.',
  params: { injected, temperature: water, preparation, offset, ...ownTable },
  returns: fields(
    {
      firstCheck: column('First check', moment, 'Press gently for eggs from now on, every half hour.'),
      best: column('Best', moment),
      tooLate: column('Too late', moment, 'Eggs age in the fish: hatch falls away from here on.'),
    },
    'The window that opens with the first check and closes when eggs are over-ripe.',
  ),
  valid: VALID,
  sources: [...SOURCES, 'AUDU23', 'WORLDAQ25'],
  cautions: ['HORMONE'],
  help:
    `${HELP} The width comes from one trial at an unstated temperature, as shares of its best hour (13 h): 11 and 15 h still fertilised 98 to 99 %, 17 h hatched only 1.99 %. ` +
    'Where a preparation was published as a range of hours, the wider of the two windows is shown.',
  examples: [
    {
      args: [46000, 25],
      gives: [['46000.3878', '46000.4583', '46000.5288']],
      because: '11 h with 11/13 and 15/13 of it: 9.31, 11 and 12.69 h.',
    },
    OUT_OF_TABLE,
  ],
  compute: (args) => {
    const span = withOffset(args);
    const profile = profileFor('latency', args.preparation, args);
    if (isError(span)) return span;
    if (isError(profile)) return profile;
    const window = stripWindow(span - args.offset, profile.spread, args.offset);
    const at = (h: number): number => args.injected + daysFromHours(Math.max(0, h));
    return { firstCheck: at(window.firstCheck), best: at(window.best), tooLate: at(window.tooLate) };
  },
});

export const injectionTime = defineFunction({
  id: 'INJECTION.TIME',
  family: 'Timing',
  summary: 'Date and time to inject so that stripping falls at a wished time.',
  params: {
    strip: num(moment, { ...SERIALS, doc: 'Wished date and time of stripping.' }),
    temperature: water,
    preparation,
    offset,
    ...ownTable,
  },
  returns: value(moment, 'When to give the resolving injection.'),
  valid: VALID,
  sources: SOURCES,
  cautions: ['HORMONE'],
  help: `${HELP} If the water will change before the strip, use SPAWN.LOG.FINISH with the readings so far. Published advice on injecting at a certain hour of the day is weak: in the trial seen the evening water was also 4 °C warmer.`,
  examples: [
    {
      args: [46001.3333333333, 22],
      gives: '46000.6875',
      because: 'Strip at 08:00, 15.5 h at 22 °C: inject at 16:30 the day before.',
    },
    { args: [46001.3333333333, 25], gives: '46000.8750', because: '11 h at 25 °C: inject at 21:00.' },
    { args: [46001.3333333333, 28], gives: '46001.0000', because: '8 h at 28 °C: inject at midnight.' },
    OUT_OF_TABLE,
  ],
  compute: (args) => {
    const span = withOffset(args);
    return isError(span) ? span : args.strip - daysFromHours(span);
  },
});
