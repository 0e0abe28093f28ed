import { hatchWindow } from '../kernels/window';
import { daysFromHours } from '../../../units/convert';
import { hours, moment } from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError, outside } from '../../../base/values';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { num } from '../../../functions/params';
import { SERIALS } from './latency';
import {
  feedingSpecies,
  hatchingSpecies,
  hoursOf,
  ownTable,
  profileFor,
  water,
  yolkSpecies,
} from './profiles';

const VALID =
  'Within the rows of the chosen table: "African catfish" 20 to 30 °C, "African ' +
  'catfish to 33 °C" 25 to 33 °C, "common carp" 26 to 33 °C, "Karonga tilapia" 25 to ' +
  '29 °C, the rest around the one temperature measured. Eggs of African catfish die ' +
  'below 17.5 and above 35.1 °C';
const HELP =
  'The "African catfish" table is the handbook table recalled from memory: its printed ' +
  'page was not seen. Measured times differ a little: 23.5 to 25.0 h at 28 °C against ' +
  'its 22 h, and 30 h at 25 °C in another list against its 27 h. ' +
  ('A teaching table that gives 70 to 80 h at 20 to 22 °C contradicts it and is not ' +
    'used. Between two rows the rate (1/hours) is read in a straight line. ') +
  'A wide daily swing spoils the hatch: tanks in the sun at 19 to 37 °C hatched nothing in one trial.';
const SOURCES = [
  'GRAAF96',
  'AMPCLARIAS',
  'ACEH19',
  'BIDORLARV14',
  'RANACONE',
  'KARONGA',
  'CARPZERO',
  'PROKES15',
  'KAMLER02',
  'SWING',
] as const;
const fertilised = num(moment, { ...SERIALS, doc: 'Date and time water was added to eggs and milt.' });
const hatched = num(moment, { ...SERIALS, doc: 'Date and time most of them had hatched.' });

interface Lists {
  readonly ownTemperatures: readonly number[] | undefined;
  readonly ownHours: readonly number[] | undefined;
}
const after = (start: number, span: number | CellError): number | CellError =>
  isError(span) ? span : start + daysFromHours(span);
const hatchHours = (
  args: Lists & { readonly temperature: number; readonly species: string },
): number | CellError => hoursOf(profileFor('incubation', args.species, args), args.temperature);

const TOO_WARM = {
  args: [46000, 36],
  fails: { code: '#N/A', says: '35.1 °C' },
  because: 'Eggs of African catfish die above 35.1 °C.',
} as const;

export const incubationHours = defineFunction({
  id: 'INCUBATION.HOURS',
  family: 'Timing',
  summary: 'Hours from fertilisation to hatching at one temperature, by species.',
  params: { temperature: water, species: hatchingSpecies, ...ownTable },
  returns: value(hours, 'Hours until the first of them hatch.'),
  valid: VALID,
  sources: SOURCES,
  help: HELP,
  examples: [
    { args: [25], gives: '27', because: 'A row of the handbook table (recalled from memory).' },
    { args: [33, 'African catfish to 33 °C'], gives: '13.92', because: '0.58 d at 33 °C.' },
    { args: [28, 'Nile tilapia'], gives: '78', because: 'Middle of 72 to 84 h at 28 °C.' },
    {
      args: [36],
      fails: { code: '#N/A', says: '35.1 °C' },
      because: 'Eggs of African catfish die above 35.1 °C.',
    },
    {
      args: [24, 'Nile tilapia'],
      fails: { code: '#N/A', says: '27.5 to 28.5 °C' },
      because: 'Published at 28 °C only.',
    },
  ],
  compute: hatchHours,
});

export const hatchTime = defineFunction({
  id: 'HATCH.TIME',
  family: 'Timing',
  summary: 'Date and time of hatching after fertilisation, at one water temperature.',
  params: { fertilised, temperature: water, species: hatchingSpecies, ...ownTable },
  returns: value(moment, 'When the first of them hatch; SPAWN.HATCH.WINDOW gives the last.'),
  valid: VALID,
  sources: SOURCES,
  help: `${HELP} If the water changes, use SPAWN.LOG.FINISH with the readings.`,
  examples: [
    {
      args: [46001.375, 27],
      gives: '46002.3333',
      because: 'Fertilised at 09:00, 23 h at 27 °C: 08:00 next day.',
    },
    TOO_WARM,
  ],
  compute: (args) => after(args.fertilised, hatchHours(args)),
});

export const hatchWindowFields = defineFunction({
  id: 'HATCH.WINDOW',
  family: 'Timing',
  summary: 'First and last hatch after fertilisation, at one water temperature.',
  params: { fertilised, temperature: water, species: hatchingSpecies, ...ownTable },
  returns: fields(
    { first: column('First hatch', moment), last: column('Last hatch', moment) },
    'The stretch over which a batch hatches.',
  ),
  valid: `${VALID}. Only where a spread was published: the catfishes and the two tilapias of one incubator trial`,
  sources: [...SOURCES, 'UKAKALU', 'SPREAD01'],
  help:
    `${HELP} The last hatch is 1.35 times the first, from one study that saw 24.1 to 25.3 h and 32.6 to 33.9 h. ` +
    ('In another, 2.3 % hatched in the first hour, about 80 % by 4 to 5 h, and those ' +
      'after 6 h lived worst: the early few run ahead and eat the rest, so grade.'),
  examples: [
    {
      args: [46001, 24],
      gives: [['46002.2083', '46002.6304']],
      because: '29 h, and 1.349 times that: 39.1 h.',
    },
    {
      args: [46001, 28, 'Nile tilapia'],
      gives: [['46004.00', '46004.50']],
      because: 'Published as 72 to 84 h.',
    },
    {
      args: [46001, 30, 'common carp'],
      fails: { code: '#N/A', says: 'no spread' },
      because: 'No spread was published with the carp times.',
    },
  ],
  compute: (args) => {
    const profile = profileFor('incubation', args.species, args);
    const span = hatchHours(args);
    if (isError(profile)) return profile;
    if (isError(span)) return span;
    const window = hatchWindow(span, profile.spread, profile.species);
    if (!window)
      return outside(
        `species: no spread from first to last hatch was found for "${profile.name}". SPAWN.HATCH.TIME gives its one time.`,
      );
    return { first: after(args.fertilised, window.first), last: after(args.fertilised, window.last) };
  },
});

const LARVA_VALID =
  'African catfish 22.9 to 30.3 °C (larvae die below 18.9 and above 33.2 °C), Nile tilapia 24 to 30 °C';
const LARVA_HELP =
  'African catfish: measured at 27.5 to 28.6 °C (first food at 36 h, yolk gone at 68 h ' +
  'after hatching) and carried to other temperatures with the published base of 15.4 ' +
  '°C, so it is computed away from 28 °C. ' +
  ('The handbook, recalled from memory, starts feeding 72 to 96 h after hatching: the ' +
    'two agree on feeding before the yolk is gone, not on when to begin. Offer live food ' +
    'from the earlier time and look for full bellies.');

export const feedingStart = defineFunction({
  id: 'FEEDING.START',
  family: 'Timing',
  summary: 'Date and time larvae take their first food, after hatching.',
  params: { hatched, temperature: water, species: feedingSpecies, ...ownTable },
  returns: value(moment, 'When the first larvae take food, with yolk still left.'),
  valid: LARVA_VALID,
  sources: ['HOU15', 'PROKES15', 'RANATEMP', 'GRAAF96', 'KAMLER02'],
  help: LARVA_HELP,
  examples: [
    { args: [46002, 28.05], gives: '46003.5000', because: '36 h at the middle of 27.5 to 28.6 °C.' },
    {
      args: [46002, 28, 'Nile tilapia'],
      gives: '46007.0',
      because: 'Onset of feeding 5 d after hatch at 28 °C.',
    },
    {
      args: [46002, 34],
      fails: { code: '#N/A', says: '33.2 °C' },
      because: 'Larvae of African catfish die above 33.2 °C.',
    },
  ],
  compute: (args) =>
    after(args.hatched, hoursOf(profileFor('first feed', args.species, args), args.temperature)),
});

export const yolkGone = defineFunction({
  id: 'YOLK.GONE',
  family: 'Timing',
  summary: 'Date and time the yolk is used up, after hatching: the latest moment to be feeding.',
  params: { hatched, temperature: water, species: yolkSpecies, ...ownTable },
  returns: value(moment, 'When the yolk is gone.'),
  valid: 'African catfish 22.9 to 30.3 °C; larvae die below 18.9 and above 33.2 °C',
  sources: ['HOU15', 'PROKES15', 'GRAAF96', 'KAMLER02'],
  help: LARVA_HELP,
  examples: [
    { args: [46002, 28.05], gives: '46004.8333', because: '68 h at the middle of 27.5 to 28.6 °C.' },
    {
      args: [46002, 18],
      fails: { code: '#N/A', says: '18.9' },
      because: 'Larvae of African catfish die below 18.9 °C.',
    },
  ],
  compute: (args) =>
    after(args.hatched, hoursOf(profileFor('yolk gone', args.species, args), args.temperature)),
});
