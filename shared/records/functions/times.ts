import { PREPARATION_WORDS } from '../../families/preparations';
import { INCUBATION_PROFILES } from '../../families/timing/kernels/incubationProfiles';
import { LATENCY_PROFILES } from '../../families/timing/kernels/latencyProfiles';
import { celsius, moment } from '../../units/quantities';
import { defineFunction } from '../../functions/define';
import { choice, num } from '../../functions/params';
import { isFahrenheit } from '../rules/figures/slips';
import { HELP, verdict, verdictOf } from './verdict';

const when = (doc: string) => num(moment, { optional: true, doc });
const water = num(celsius, { optional: true, doc: 'Water temperature.' });
const preparation = choice(
  LATENCY_PROFILES.map(({ name }) => name),
  {
    optional: true,
    aliases: PREPARATION_WORDS,
    doc: 'Hormone preparation; all of African catfish when left out.',
  },
);
const species = choice([...new Set(INCUBATION_PROFILES.map(({ species: name }) => name))], {
  optional: true,
  doc: 'Species by its Latin name; African catfish when left out.',
});

export const checkLatency = defineFunction({
  id: 'CHECK.LATENCY',
  family: 'Checks',
  summary: 'Do injection and strip time fit the water temperature?',
  questions: [
    'do injection and strip times fit the temperature',
    'check hours from injection to strip',
    'latency in my book looks wrong',
  ],
  params: {
    injected: when('Date and time of the injection.'),
    stripped: when('Date and time of the strip.'),
    temperature: water,
    preparation,
  },
  returns: verdict,
  valid: 'Temperatures of the published tables; outside them nothing is said',
  sources: ['GRAAF96', 'OKER15', 'AUDU23', 'PROKES15'],
  help: `${HELP} The window is that of the preparation, or of all of them, widened by 15 %. The handbook table in it is recalled from memory.`,
  examples: [
    {
      args: [46_000.875, 46_001.3333, 25],
      gives: 'ok',
      because: '11 h at 25 °C, the handbook table (from memory).',
    },
    {
      args: [46_000.875, 46_001.875, 28, 'pituitary'],
      gives:
        '24 h from injection to strip does not fit 28 °C: 5.75 h to 20.7 h would (own-species pituitary, ' +
        'carp pituitary, tilapia pituitary, handbook pituitary).',
      because: 'A day too many.',
    },
    {
      args: [46_001.9, 46_001.3, 27],
      gives: 'Strip time is before the injection time: 10 Dec 2025 07:12, but 10 Dec 2025 21:36.',
      because: 'The date was not moved on past midnight.',
    },
    { args: ['evening', 46_001.3, 27], fails: { code: '#VALUE!', says: 'injected' }, because: 'No date.' },
  ],
  compute: (args) => verdictOf(['LATENCY.FIT', 'DATE.ORDER', 'DATE.CENTURY', 'SLIP.FAHRENHEIT'], args),
});

export const checkHatchTime = defineFunction({
  id: 'CHECK.HATCHTIME',
  family: 'Checks',
  summary: 'Do fertilisation and hatch time fit the water temperature?',
  questions: [
    'does my hatch time fit the temperature',
    'check hatching hours in my book',
    'hatched too early to be true',
    'hatch over 100%',
  ],
  params: {
    fertilised: when('Date and time of fertilisation.'),
    hatched: when('Date and time of the hatch.'),
    temperature: water,
    species,
  },
  returns: verdict,
  valid: 'Temperatures of the published tables; outside them nothing is said',
  sources: ['GRAAF96', 'ACEH19', 'AMPCLARIAS', 'UKAKALU'],
  help: `${HELP} The span runs from the first hatch of the fastest table to the last of the slowest.`,
  examples: [
    { args: [46_001, 46_002, 28], gives: 'ok', because: '24 h at 28 °C: 23.5 to 25.0 h are published.' },
    {
      args: [46_001, 46_003.5, 28],
      gives: '60 h from fertilisation to hatch does not fit 28 °C: 17.8 h to 32.7 h would.',
      because: 'Two days and a half.',
    },
    { args: [46_001, 'soon', 28], fails: { code: '#VALUE!', says: 'hatched' }, because: 'No date.' },
  ],
  compute: ({ fertilised, hatched, temperature, species: kind }) =>
    verdictOf(['HATCH.FIT', 'DATE.ORDER', 'DATE.CENTURY', 'TEMPERATURE.LETHAL', 'SLIP.FAHRENHEIT'], {
      fertilisedAt: fertilised,
      hatchedAt: hatched,
      incubationTemperature: temperature,
      species: kind,
    }),
});

export const checkDates = defineFunction({
  id: 'CHECK.DATES',
  family: 'Checks',
  summary: 'Are the moments of a run in the order they must happen, and in this century?',
  questions: [
    'are my dates in the right order',
    'strip before injection in my book',
    'check the hours of a run',
    'is this number right',
    'this number correct?',
  ],
  params: {
    injected: when('Injection.'),
    stripped: when('Strip.'),
    fertilised: when('Fertilisation.'),
    hatched: when('Hatch.'),
    fed: when('First feed.'),
  },
  returns: verdict,
  valid: 'Dates from 1990 to 2099',
  sources: ['DEFINITION', 'PRACTICE'],
  help: HELP,
  examples: [
    { args: [46_000.875, 46_001.3333, 46_001.34, 46_002.3], gives: 'ok', because: 'In order.' },
    {
      args: [9570],
      gives: 'Injection time lies in the year 1926: probably 2026.',
      because: 'Two digits of a year read as 19...',
    },
    { args: [true], fails: { code: '#VALUE!', says: 'injected' }, because: 'No date.' },
  ],
  compute: ({ injected, stripped, fertilised, hatched, fed }) =>
    verdictOf(['DATE.ORDER', 'DATE.CENTURY'], {
      injected,
      stripped,
      fertilisedAt: fertilised,
      hatchedAt: hatched,
      feedingAt: fed,
    }),
});

export const checkTemperature = defineFunction({
  id: 'CHECK.TEMPERATURE',
  family: 'Checks',
  summary: 'Can a water temperature be right, or was the thermometer set to °F?',
  questions: [
    'can this temperature be right',
    'fahrenheit written as celsius',
    'check thermometer reading in my book',
    'was the thermometer in Fahrenheit',
  ],
  params: { temperature: num(celsius, { doc: 'Reading as written down.' }) },
  returns: verdict,
  valid: 'Water of warm-water hatcheries',
  sources: ['PROKES15', 'PRACTICE'],
  help: HELP,
  examples: [
    {
      args: [79],
      gives: 'Water temperature of 79 looks like °F: that is 26.1 °C.',
      because: 'No fish lives at 79 °C.',
    },
    { args: [27], gives: 'ok', because: 'A usual temperature.' },
    { args: ['warm'], fails: { code: '#VALUE!', says: 'temperature' }, because: 'No number.' },
  ],
  compute: ({ temperature }) =>
    isFahrenheit(temperature)
      ? verdictOf(['SLIP.FAHRENHEIT'], { temperature })
      : verdictOf(['VALUE.RANGE', 'SLIP.FAHRENHEIT'], { temperature }),
});
