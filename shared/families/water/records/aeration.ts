// Long: records of one subject, each with its texts, questions and examples.
import {
  hours,
  meqPerLitre,
  mgPerLitre,
  mmolPerLitre,
  partsPerMillion,
  pH,
  perHour,
} from '../../../units/quantities';
import { isError } from '../../../base/values';
import { solve } from '../carbonate/carbonate';
import { AIR_CO2_PPM, constantsAt, pressureOfCO2 } from '../carbonate/constants';
import type { DriftMoment, TankName } from '../carbonate/drift';
import { drift, TANKS } from '../carbonate/drift';
import { compose } from '../carbonate/readings';
import { column, defineFunction, rows, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';
import { phParam } from './buffer/bufferDose';
import type { Known } from './inputs';
import {
  airParam,
  alkalinityParam,
  backgroundOf,
  carbonDioxideParam,
  dissolvedInParam,
  dissolvedParam,
  hardnessParam,
  mgFromMmolCO2,
  temperatureParam,
  waterBehind,
} from './inputs';

const background = {
  hardness: hardnessParam,
  dissolved: dissolvedParam,
  dissolvedIn: dissolvedInParam,
  airCarbonDioxide: airParam,
};

export const aerationPH = defineFunction({
  id: 'AERATION.PH',
  family: 'Water',
  summary: 'pH a water comes to once fully aerated, with nothing added.',
  questions: [
    'pH after aeration',
    'pH drops overnight why',
    'why does pH come back down',
    'ph dey come down for night',
  ],
  params: {
    ph: phParam,
    alkalinity: alkalinityParam,
    temperature: temperatureParam,
    carbonDioxide: carbonDioxideParam,
    ...background,
  },
  returns: value(pH, 'pH in balance with the air.'),
  valid: 'Fresh and lightly salted water, 0 to 40 °C, no fish breathing in it',
  sources: ['PLBU82', 'NOAACO2'],
  cautions: ['AMMONIA'],
  help:
    'Aerate water rich in carbon dioxide before dosing, and measure again: often no dose ' +
    "is needed. The room's air matters: 1000 ppm instead of 417 ends 0.38 pH lower.",
  examples: [
    {
      args: [5.81, 0.1, 26],
      gives: '7.20',
      because: 'Soft well water with 15 mg/L of CO2 needs air, not soda ash.',
    },
    {
      args: [6.53, 1, 26],
      gives: '8.18',
      because: 'With 50 mg/L of alkalinity aeration alone goes above 8.',
    },
    {
      args: [4.2, 0.5],
      fails: { code: '#VALUE!', says: 'cannot be at pH' },
      because: 'There is no alkalinity at pH 4.2.',
    },
  ],
  compute: (readings) => {
    const known = waterBehind(readings, false);
    return isError(known)
      ? known
      : solve(known.k, known.water, { kind: 'open', pressure: pressureOfCO2(readings.airCarbonDioxide) }).ph;
  },
});

const tankParam = choice(['still', 'gentle', 'vigorous'] as const, {
  default: 'gentle',
  doc: 'How the tank takes and gives gas: "still" and deep, shallow or "gentle" air, "vigorous" bubbling.',
});
const rateParam = num(perHour, {
  above: 0,
  max: 20,
  optional: true,
  doc: 'Your own exchange rate of carbon dioxide, per hour, in place of the tank type.',
});
const rateOf = (tank: TankName, rate: number | undefined): number => rate ?? TANKS[tank];
const DRIFT_VALID =
  'Nothing breathes, grows or precipitates; rates by tank type (0.05, 0.3, 2 per hour) ' +
  'are from memory, not measured';

const driftParams = {
  alkalinity: alkalinityParam,
  temperature: temperatureParam,
  carbonDioxide: carbonDioxideParam,
  tank: tankParam,
  rate: rateParam,
  ...background,
};
const follow = (known: Known, ppm: number, rate: number, at: readonly number[]): readonly DriftMoment[] =>
  drift(known.k, known.water, pressureOfCO2(ppm), rate, at);

export const driftPH = defineFunction({
  id: 'DRIFT.PH',
  family: 'Water',
  summary: 'pH some hours after dosing or filling, as carbon dioxide is exchanged with the air.',
  help:
    'Alkalinity does not change on the way, so the dose after some hours of aeration is ' +
    'BUFFER.DOSE(volume, DRIFT.PH(hours, ph, alkalinity), target, alkalinity).',
  questions: [
    'ph some hours after dosing',
    'how much will the ph creep up overnight',
    'ph tomorrow morning',
    'ph drift',
  ],
  params: {
    after: num(hours, { min: 0, max: 720, doc: 'Time since the pH was read.' }),
    ph: phParam,
    ...driftParams,
  },
  returns: value(pH, 'pH then.'),
  valid: DRIFT_VALID,
  sources: ['PLBU82', 'PRACTICE'],
  cautions: ['AMMONIA'],
  examples: [
    {
      args: [1, 5.81, 0.1, 26, null, 'vigorous'],
      gives: '6.57',
      because: "An hour of strong air takes half a well water's excess CO2 out.",
    },
    { args: [8, 6.53, 1, 26], gives: '7.48', because: 'Gentle air, eight hours.' },
    { args: [-1, 6.5, 1], fails: { code: '#VALUE!', says: 'from 0' }, because: 'Time runs forward.' },
  ],
  compute: ({ after, tank, rate, ...readings }) => {
    const known = waterBehind(readings, true);
    return isError(known)
      ? known
      : (follow(known, readings.airCarbonDioxide, rateOf(tank, rate), [after])[0]?.ph ?? NaN);
  },
});

export const driftTable = defineFunction({
  id: 'DRIFT.TABLE',
  family: 'Water',
  summary: 'pH and carbon dioxide hour by hour after dosing or filling.',
  questions: [
    'ph hour by hour after dosing',
    'table of ph through the night',
    'how the ph drifts',
    'pH changes after hours',
  ],
  params: {
    ph: phParam,
    ...driftParams,
    last: num(hours, { above: 0, max: 720, default: 24, doc: 'Hours the table spans.' }),
    every: num(hours, { above: 0.01, max: 240, default: 2, doc: 'Hours between rows.' }),
  },
  returns: rows(
    {
      after: column('After', hours),
      ph: column('pH', pH),
      carbonDioxide: column('Carbon dioxide', mgPerLitre),
    },
    'One row per time, from 0.',
  ),
  valid: DRIFT_VALID,
  sources: ['PLBU82', 'PRACTICE'],
  cautions: ['AMMONIA'],
  help:
    'Soda ash or lime in water poor in carbon dioxide overshoots and then sinks; water ' +
    'rich in carbon dioxide dosed to 7 goes on climbing: aerate first, measure, then ' +
    'dose. To follow a dosed water give the pH right after mixing and its alkalinity.',
  examples: [
    {
      args: [6.53, 1, 26, null, 'gentle', null, 0, 0, 'µS/cm', 420, 8, 4],
      gives: [
        ['0', '6.53', '27.8'],
        ['4', '7.03', '8.8'],
        ['8', '7.48', '3.1'],
      ],
      because: 'A well water on gentle air.',
    },
    {
      args: [6.53, 1, 26, null, 'gentle', null, 0, 0, 'µS/cm', 420, 720, 0.5],
      fails: { code: '#N/A', says: 'rows' },
      because: 'No more than 1000 rows.',
    },
  ],
  compute: ({ tank, rate, last, every, ...readings }) => {
    const known = waterBehind(readings, true);
    if (isError(known)) return known;
    const n = Math.floor(last / every + 1e-9);
    if (n > 1000)
      return {
        error: '#N/A' as const,
        message: `every: ${n} rows are too many, 1000 are the most. Take a longer time between rows.`,
      };
    return follow(
      known,
      readings.airCarbonDioxide,
      rateOf(tank, rate),
      Array.from({ length: n + 1 }, (_, i) => i * every),
    ).map(({ hours: after, ph, carbonDioxide }) => ({
      after,
      ph,
      carbonDioxide: mgFromMmolCO2(carbonDioxide),
    }));
  },
});

export const carbonDioxide = defineFunction({
  id: 'CARBON.DIOXIDE',
  family: 'Water',
  summary: 'Dissolved carbon dioxide from pH and alkalinity, mg/L.',
  questions: [
    'how much co2 is in my water',
    'carbon dioxide from ph and alkalinity',
    'is there too much carbon dioxide',
    'free carbon dioxide',
  ],
  params: {
    ph: num(pH, {
      min: 5.2,
      max: 11,
      doc: 'pH of the water; below 5.2 carbon dioxide cannot be had from pH and alkalinity.',
    }),
    alkalinity: num(meqPerLitre, { above: 0, max: 20, doc: 'Alkalinity, meq/L (50 mg/L CaCO3 is 1 meq/L).' }),
    temperature: temperatureParam,
    ...background,
  },
  returns: value(mgPerLitre, 'Dissolved CO2.'),
  valid: 'pH 5.2 and above, 0 to 40 °C; 0.1 pH of error is 26 % of the answer',
  sources: ['PLBU82', 'TUCK84'],
  examples: [
    {
      args: [7, 1],
      gives: '9.5',
      because: '9.85 mg/L by the table factor 0.197 × 50, which leaves ion activity out.',
    },
    {
      args: [6, 0.1, 26],
      gives: '9.8',
      because: 'A tenth of the alkalinity at ten times the acidity is the same CO2.',
    },
    { args: [4.5, 1], fails: { code: '#VALUE!', says: '5.2' }, because: 'Not identifiable there.' },
  ],
  compute: (readings) => {
    const known = waterBehind({ ...readings, carbonDioxide: undefined }, true);
    return isError(known)
      ? known
      : mgFromMmolCO2(solve(known.k, known.water, { kind: 'at', ph: readings.ph }).carbonDioxide);
  },
});

export const carbonDioxideAir = defineFunction({
  id: 'CARBON.DIOXIDE.AIR',
  family: 'Water',
  summary: 'Dissolved carbon dioxide of water in balance with the air, mg/L.',
  questions: [
    'co2 of water in balance with air',
    'carbon dioxide after long aeration',
    'co2 of aired water',
    'carbon dioxide in borehole water',
  ],
  params: {
    temperature: temperatureParam,
    airCarbonDioxide: num(partsPerMillion, {
      above: 0,
      max: 20000,
      default: AIR_CO2_PPM,
      doc: 'Carbon dioxide in the air.',
    }),
  },
  returns: value(mgPerLitre, 'Dissolved CO2.'),
  valid: '0 to 40 °C, sea level',
  sources: ['PLBU82', 'NOAACO2'],
  examples: [
    { args: [25, 417], gives: '0.625', because: 'An independent solver gives 0.624 to 0.625.' },
    { args: [82], fails: { code: '#VALUE!', says: '°F' }, because: 'A reading in °F.' },
  ],
  compute: ({ temperature, airCarbonDioxide }) =>
    mgFromMmolCO2(1000 * constantsAt(temperature).kh * pressureOfCO2(airCarbonDioxide)),
});

export const waterPH = defineFunction({
  id: 'WATER.PH',
  family: 'Water',
  summary: 'pH of a water from its alkalinity and total inorganic carbon.',
  questions: [
    'ph from alkalinity and carbon',
    'ph of a water by its carbon',
    'work out ph from chemistry',
    'co2 from ph and alkalinity',
  ],
  params: {
    alkalinity: num(meqPerLitre, { min: -5, max: 40, doc: 'Alkalinity, meq/L; negative is mineral acid.' }),
    carbon: num(mmolPerLitre, {
      min: 0,
      max: 60,
      doc: 'Total inorganic carbon: CO2, bicarbonate and carbonate together.',
    }),
    temperature: temperatureParam,
    hardness: hardnessParam,
    dissolved: dissolvedParam,
    dissolvedIn: dissolvedInParam,
  },
  returns: value(pH, 'pH.'),
  valid: 'Fresh and lightly salted water, 0 to 40 °C, up to about 29 g/L of salt',
  sources: ['PLBU82', 'PHREEQC'],
  examples: [
    {
      args: [100, 100],
      fails: { code: '#VALUE!', says: 'mg/L CaCO3' },
      because: 'An alkalinity typed in mg/L.',
    },
    { args: [10, 10], gives: '8.25', because: 'Baking soda at 10 mmol/L: 8.249 by an independent solver.' },
  ],
  compute: ({ alkalinity, carbon, temperature, hardness, dissolved, dissolvedIn }) => {
    const back = backgroundOf({ temperature, hardness, dissolved, dissolvedIn });
    return isError(back)
      ? back
      : solve(constantsAt(temperature), compose(back, alkalinity, carbon), { kind: 'closed' }).ph;
  },
});
