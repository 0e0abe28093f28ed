import {
  celsius,
  meqPerLitre,
  microsiemens,
  mgPerLitreCaCO3,
  partsPerMillion,
  pH,
  ratio,
} from '../../../units/quantities';
import { hardnessFrom, HARDNESS_UNITS, hardnessTo } from '../../../units/convert';
import { AIR_CO2_PPM, constantsAt, pressureOfCO2 } from '../carbonate/constants';
import { limeLimit } from '../carbonate/lime';
import { column, defineFunction, fields, value } from '../../../functions/define';
import { choice, num } from '../../../functions/params';

const aliases = {
  dKH: '°d',
  dGH: '°d',
  '°dH': '°d',
  '°dKH': '°d',
  'mg/L': 'mg/L CaCO3',
  ppm: 'mg/L CaCO3',
  '°fH': '°f',
  '°f': '°f',
  'meq/l': 'meq/L',
  HCO3: 'mg/L HCO3',
  Ca: 'mg/L Ca',
  CaO: 'mg/L CaO',
} as const;

const convert = (
  id: 'ALKALINITY.CONVERT' | 'HARDNESS.CONVERT',
  noun: string,
  questions: readonly string[],
): ReturnType<typeof defineFunction> =>
  defineFunction({
    id,
    family: 'Water',
    summary: `Turns ${noun} from one unit into another: meq/L, mg/L CaCO3, German or French degrees and more.`,
    questions,
    params: {
      amount: num(ratio, { min: -1000, max: 100000, doc: `The ${noun} as printed by the kit.` }),
      from: choice(HARDNESS_UNITS, {
        doc: 'Unit of the amount; "°d" is the German degree (dKH, dGH).',
        aliases,
      }),
      to: choice(HARDNESS_UNITS, { doc: 'Unit wanted; meq/L when left out.', default: 'meq/L', aliases }),
    },
    returns: value(ratio, `The ${noun} in the unit wanted.`),
    valid: 'Exact; a KH kit measures total alkalinity, a GH kit calcium and magnesium: do not mix the two',
    sources: ['DEFINITION'],
    examples: [
      { args: [3, 'dKH'], gives: '1.070', because: 'One German degree is 10 mg/L of CaO, 0.3567 meq/L.' },
      { args: [50.04, 'mg/L CaCO3', 'meq/L'], gives: '1.000', because: 'One meq/L is 50.04 mg/L CaCO3.' },
      {
        args: [1, 'grain'],
        fails: { code: '#VALUE!', says: 'expected one of' },
        because: 'A unit not in the list.',
      },
    ],
    compute: ({ amount, from, to }) => hardnessTo(hardnessFrom(amount, from), to),
  });

export const alkalinityConvert = convert('ALKALINITY.CONVERT', 'alkalinity', [
  'convert alkalinity',
  'dKH to ppm',
  'mg/L CaCO3 to meq/L',
  'alkalinity kit degrees to meq',
]);
export const hardnessConvert = convert('HARDNESS.CONVERT', 'hardness', [
  'convert hardness',
  'GH degrees to mg per litre',
  'hardness in French degrees',
]);

/** Rise of conductivity per °C, from memory. */
const PER_DEGREE = 0.02;

export const conductivityAt25 = defineFunction({
  id: 'CONDUCTIVITY.STANDARD',
  family: 'Water',
  summary: 'Conductivity at 25 °C from a reading without temperature compensation.',
  questions: [
    'conductivity at 25 degrees',
    'correct ec reading for temperature',
    'ec meter without compensation',
  ],
  params: {
    reading: num(microsiemens, { min: 0, max: 100000, doc: "Reading at the water's own temperature." }),
    temperature: num(celsius, { min: 0, max: 40, doc: 'Temperature of the water when read.' }),
  },
  returns: value(microsiemens, 'Conductivity at 25 °C.'),
  valid: '10 to 35 °C; 2 % per °C is from memory',
  sources: ['ECMEM'],
  examples: [
    { args: [110, 30], gives: '100', because: 'Ten percent less for five degrees.' },
    { args: [110, 86], fails: { code: '#VALUE!', says: '°F' }, because: 'A reading in °F.' },
  ],
  compute: ({ reading, temperature }) => reading / (1 + PER_DEGREE * (temperature - 25)),
});

export const limeLimitFunction = defineFunction({
  id: 'LIME.LIMIT',
  family: 'Water',
  summary:
    'Where agricultural lime stops dissolving in soft water open to the air: pH, alkalinity and hardness.',
  questions: ['lime not dissolving', 'how far can limestone go', 'oyster shell limit'],
  params: {
    temperature: num(celsius, { min: 0, max: 40, default: 25, doc: 'Water temperature. 25 when left out.' }),
    airCarbonDioxide: num(partsPerMillion, {
      min: 100,
      max: 20000,
      default: AIR_CO2_PPM,
      doc: 'Carbon dioxide in the air over the water.',
    }),
  },
  returns: fields(
    {
      ph: column('pH', pH),
      alkalinity: column('Alkalinity', meqPerLitre),
      hardness: column('Hardness', mgPerLitreCaCO3),
    },
    'Calcite saturation; more lime stays as powder.',
  ),
  valid: '0 to 40 °C, soft water, days of contact; real lime is slower than that',
  sources: ['PLBU82'],
  examples: [
    {
      args: [25, 417],
      gives: [['8.20', '1.08', '54']],
      because: 'pH 8.20 and 1.08 meq/L at 25 °C and 417 ppm by an independent calculation.',
    },
    {
      args: [28, 1000],
      gives: [['7.95', '1.39', '70']],
      because: 'In stale air; 7.95 and 1.38 meq/L by an independent calculation.',
    },
    {
      args: [25, 0],
      fails: { code: '#VALUE!', says: 'from 100' },
      because: 'Air holds some carbon dioxide.',
    },
  ],
  compute: ({ temperature, airCarbonDioxide }) => {
    const { ph, alkalinity } = limeLimit(
      constantsAt(temperature),
      temperature,
      pressureOfCO2(airCarbonDioxide),
    );
    return { ph, alkalinity, hardness: hardnessTo(alkalinity, 'mg/L CaCO3') };
  },
});
