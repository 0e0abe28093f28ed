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
  'The preparations 20 to 33 °C, tried between 22 and 28 °C and carried beyond with base 15.4 °C, which is ' +
  'thinner; other fish a degree or two around where they were measured; the handbook table 20 to 30 °C';
const HELP =
  'One table does not fit all hormones: at 26 °C a ready-made solution measured 10.2 h and pituitary extract in ' +
  'the same trial 12.4 h; with tilapia glands it is half as long again as with its own. The hours are the middle ' +
  'of what trials measured or found best. ' +
  ('In one female eggs come out over 3 to 4 hours: stripping early costs number, not quality. ' +
    'SPAWN.STRIP.WINDOW gives the first look and the last hour tried, SPAWN.STRIP.EVIDENCE the trials. ') +
  'The table "handbook pituitary" is recalled from memory: every pituitary trial seen at 26 to 28 °C took longer. ' +
  'Store your own correction as offset; after three runs trust it more than any table.';
const SOURCES = [
  'OKER15',
  'WORLDAQ25',
  'OLUBIYI05',
  'GADISSA13',
  'MOSHAAND',
  'CLARIIDPAGE',
  'TILAPIAGLAND',
  'LEGENDRE95',
  'LONGIHCG',
  'BIDOR04',
  'SHARAF12',
  'GRAAF96',
  'SALMAN23',
  'SILVERLAT',
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
  fails: { code: '#N/A', says: '20 to 33 °C' },
  because: 'Nobody tried so warm, and hours are never stretched that far.',
} as const;

export const latencyHours = defineFunction({
  id: 'LATENCY.HOURS',
  family: 'Timing',
  summary: 'Hours from injection to stripping at one temperature, by hormone preparation.',
  questions: [
    'hours to ovulation at 27 degrees',
    'when will the female be ready',
    'female not ready',
    'inducing to stripping hours',
    'how many hour before egg ready',
  ],
  params: { temperature: water, preparation, ...ownTable },
  returns: value(hours, 'Hours from injection to the strip: the middle of the best ones.'),
  valid: VALID,
  version: 2,
  sources: SOURCES,
  cautions: ['HORMONE'],
  help: HELP,
  examples: [
    {
      args: [26],
      gives: '11.39',
      because: 'Middle of 10.2 h (measured at 26.0 °C) and 12 h (best at 26 to 27 °C).',
    },
    { args: [31], gives: '7.74', because: 'Carried with base 15.4 °C: no trial is so warm.' },
    {
      args: [28, 'own-species pituitary'],
      gives: '10.1',
      because: 'Between the check at 13.5 h at 23 °C and 12 h at 28 °C.',
    },
    {
      args: [26.5, 'handbook pituitary'],
      gives: '9.47',
      because: 'Rate halfway between 1/10 and 1/9 per hour, turned back to hours.',
    },
    {
      args: [25, 'carp pituitary', [[22], [28]], [[16], [9]]],
      gives: '11.52',
      because: "A hatchery's own two rows: rate halfway between 1/16 and 1/9.",
    },
    {
      args: [33.5],
      fails: { code: '#N/A', says: 'strip at night' },
      because: 'Nobody tried so warm, and hours are never stretched that far.',
    },
    { args: [79], fails: { code: '#VALUE!', says: '26.1 °C' }, because: 'A thermometer set to °F.' },
  ],
  compute: latencyOf,
});

export const stripTime = defineFunction({
  id: 'STRIP.TIME',
  version: 2,
  family: 'Timing',
  summary: 'Date and time to strip after an injection, at one water temperature.',
  questions: [
    'when do I strip',
    'time to strip eggs',
    'injected at 10pm when to strip',
    'striping time',
    'ovullation time',
    'how many hours before I strip',
    'how many hours after I inject',
  ],
  params: { injected, temperature: water, preparation, offset, ...ownTable },
  returns: value(moment, 'When eggs should flow: the middle of a window, see SPAWN.STRIP.WINDOW.'),
  valid: VALID,
  sources: SOURCES,
  cautions: ['HORMONE'],
  help: HELP,
  examples: [
    {
      args: [46000.875, 26],
      gives: '46001.3496',
      because: 'Injected at 21:00, 11.4 h at 26 °C: strip at 08:24.',
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
  summary: 'First look, best time and the last hour anybody tried, for stripping after an injection.',
  questions: ['first and last hour to strip', 'stripping time', 'best time to strip'],
  params: { injected, temperature: water, preparation, offset, ...ownTable },
  returns: fields(
    {
      firstCheck: column('First look', moment, 'Press gently for eggs from now on, every half hour.'),
      best: column('Best', moment, 'Middle of the measured or best hours.'),
      lastTested: column('Last tried', moment, 'Good eggs were still had then. Nobody tested later well.'),
    },
    'The window in which trials had good eggs. Strip when eggs run freely at a light press, not before.',
  ),
  valid: VALID,
  version: 2,
  sources: [...SOURCES, 'AUDU23'],
  cautions: ['HORMONE'],
  help:
    `${HELP} The window is the envelope of the trials of the preparation, as warmth over 15.4 °C. ` +
    'Where a table prints one hour only, its width comes from one trial at an unstated temperature: 11 and 15 h ' +
    'were still good where 13 h was best. ' +
    'After the last hour tried eggs may be good or over-ripe: no trial with a known temperature says. One ' +
    'without a temperature lost nearly all at 17 h.',
  examples: [
    {
      args: [46000, 26],
      gives: [['46000.3459', '46000.4746', '46000.5477']],
      because: '8.3, 11.4 and 13.1 h at 26 °C.',
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
    return { firstCheck: at(window.firstCheck), best: at(window.best), lastTested: at(window.lastTested) };
  },
});

export const injectionTime = defineFunction({
  id: 'INJECTION.TIME',
  version: 2,
  family: 'Timing',
  summary: 'Date and time to inject so that stripping falls at a wished time.',
  questions: [
    'when to inject',
    'injection time for morning stripping',
    'I want to strip at 6 in the morning',
    'which time I go inject make I strip for morning',
  ],
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
      args: [46001.3333333333, 26],
      gives: '46000.8587',
      because: 'Strip at 08:00, 11.4 h at 26 °C: inject at 20:36 the evening before.',
    },
    {
      args: [46001.3333333333, 25, 'handbook pituitary'],
      gives: '46000.8750',
      because: 'The handbook hours, 11 at 25 °C: inject at 21:00.',
    },
    OUT_OF_TABLE,
  ],
  compute: (args) => {
    const span = withOffset(args);
    return isError(span) ? span : args.strip - daysFromHours(span);
  },
});
