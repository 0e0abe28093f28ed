// Long: records of one kind of question, one after the other; each stands alone.
import {
  gram,
  meqPerLitre,
  mgPerLitre,
  mmolPerLitre,
  pH,
  ratio,
  share,
  text,
} from '../../../../units/quantities';
import { isError, outside } from '../../../../base/values';
import { alkalinityOf, solve } from '../../carbonate/carbonate';
import { intensityAt } from '../../carbonate/conditions';
import { pressureOfCO2 } from '../../carbonate/constants';
import { afterDose } from '../../carbonate/dose';
import { column, defineFunction, fields, value } from '../../../../functions/define';
import { choice, num } from '../../../../functions/params';
import { phParam, volumeParam } from './bufferDose';
import {
  airOf,
  airParam,
  alkalinityParam,
  carbonDioxideParam,
  dissolvedInParam,
  dissolvedParam,
  hardnessParam,
  materialOf,
  materialParam,
  mgFromMmolCO2,
  modeParam,
  molesOf,
  purityParam,
  SALT_LIMIT,
  temperatureParam,
  waterBehind,
} from '../inputs';
import { misuse } from '../refusals';

const doseParam = num(gram, { min: 0, max: 1e7, doc: 'Product given, g, for the whole volume.' });

const afterwards = {
  alkalinity: alkalinityParam,
  temperature: temperatureParam,
  material: materialParam,
  purity: purityParam,
  carbonDioxide: carbonDioxideParam,
};
const background = {
  hardness: hardnessParam,
  dissolved: dissolvedParam,
  dissolvedIn: dissolvedInParam,
  airCarbonDioxide: airParam,
};
const VALID = 'Fresh and lightly salted water, 0 to 40 °C, up to about 29 g/L of salt; nothing precipitates';
const tooMuch = outside('dose: so much product is outside what the method holds for. Check volume and dose.');

export const bufferPH = defineFunction({
  id: 'BUFFER.PH',
  family: 'Water',
  summary: 'pH after a dose of a product, right after mixing or in balance with the air.',
  questions: [
    'ph after adding soda',
    'effect of 20 g lime',
    'will the water turn cloudy',
    'if I put 5 spoon wetin the ph go be',
  ],
  params: {
    volume: volumeParam,
    dose: doseParam,
    ph: phParam,
    ...afterwards,
    mode: modeParam,
    ...background,
  },
  returns: value(pH, 'pH after the dose.'),
  valid: VALID,
  sources: ['PLBU82', 'PHREEQC', 'NOAACO2'],
  cautions: ['SODA_ASH', 'LIME', 'CAUSTIC', 'ACID', 'AMMONIA'],
  help:
    'Agricultural lime dissolves only until the water is saturated with calcite; what is ' +
    'over stays as powder. Real lime also takes hours to days. Without alkalinity or ' +
    'carbon dioxide the water is taken as aerated.',
  examples: [
    {
      args: [1000, 5, 5.6, 0],
      gives: '9.4',
      because: 'Rain water in balance with the air leaps to 9.4 on 5 mg/L of soda ash.',
    },
    {
      args: [1000, 5, 4.6, null, 25, 'soda ash', 1, null, 'open'],
      gives: '7.03',
      because: "The field rule's water after airing.",
    },
    {
      args: [1000, 1000, 6, null, 25, 'agricultural lime', 1, null, 'open'],
      gives: '8.20',
      because: 'Lime in excess stops at calcite saturation, pH 8.2 in outdoor air.',
    },
    { args: [1000, -1, 6], fails: { code: '#VALUE!', says: '0' }, because: 'No negative dose.' },
    {
      args: [1, 1e5, 6, 0.1],
      fails: { code: '#VALUE!', says: 'more than dissolves' },
      because: 'A hundred kilograms in a litre.',
    },
  ],
  compute: ({ volume, dose, material, purity, mode, ...readings }) => {
    const known =
      misuse({ material, grams: dose, volume, purity }) ?? waterBehind(readings, mode === 'closed');
    if (isError(known)) return known;
    const { state } = afterDose(
      known.k,
      known.water,
      materialOf(material),
      molesOf(materialOf(material), dose, volume, purity),
      airOf(mode, readings.airCarbonDioxide),
    );
    return state.ionicStrength > SALT_LIMIT ? tooMuch : state.ph;
  },
});

export const bufferOutcome = defineFunction({
  id: 'BUFFER.OUTCOME',
  family: 'Water',
  summary:
    'What a dose does, both answers: right after mixing and in balance with the air, ' +
    'with alkalinity, CO2 and clouding.',
  questions: [
    'where does the ph end after a dose',
    'what will the pH be if I add 10 g',
    'what pH after 24 hours',
  ],
  params: { volume: volumeParam, dose: doseParam, ph: phParam, ...afterwards, ...background },
  returns: fields(
    {
      now: column('pH now', pH),
      later: column('pH once aired', pH),
      alkalinity: column('Alkalinity', meqPerLitre),
      carbonDioxide: column('Carbon dioxide now', mgPerLitre),
      calcite: column('Saturation index now', ratio, 'Above 0.5 expect clouding; blank without hardness.'),
      dissolved: column('Share dissolved', share),
      direction: column('What follows', text),
    },
    'The water after the dose.',
  ),
  valid: VALID,
  sources: ['PLBU82', 'PHREEQC', 'NOAACO2'],
  cautions: ['SODA_ASH', 'LIME', 'CAUSTIC', 'ACID', 'AMMONIA'],
  examples: [
    {
      args: [1000, 24.4, 5.81, 0.1, 26],
      gives: [['7.01', '7.94', '0.560', '5.1', '', '1', 'pH goes on rising as carbon dioxide leaves.']],
      because: 'Dosed to 7 before airing, a water rich in CO2 climbs to 7.9 afterwards: aerate first.',
    },
    {
      args: [1000, 5, 15],
      fails: { code: '#VALUE!', says: 'from 3 to 11' },
      because: 'No vat stands there.',
    },
  ],
  compute: ({ volume, dose, material, purity, ...readings }) => {
    const known = misuse({ material, grams: dose, volume, purity }) ?? waterBehind(readings, true);
    if (isError(known)) return known;
    const moles = molesOf(materialOf(material), dose, volume, purity);
    const after = afterDose(known.k, known.water, materialOf(material), moles, 'closed');
    if (after.state.ionicStrength > SALT_LIMIT) return tooMuch;
    const later = afterDose(
      known.k,
      known.water,
      materialOf(material),
      moles,
      pressureOfCO2(readings.airCarbonDioxide),
    ).state.ph;
    const move = later - after.state.ph;
    return {
      now: after.state.ph,
      later,
      alkalinity: after.state.alkalinity,
      carbonDioxide: mgFromMmolCO2(after.state.carbonDioxide),
      calcite: Number.isFinite(after.state.saturationIndex) ? after.state.saturationIndex : null,
      dissolved: moles > 0 ? after.dissolved / moles : 1,
      direction:
        Math.abs(move) < 0.1
          ? 'pH stays about there.'
          : move > 0
            ? 'pH goes on rising as carbon dioxide leaves.'
            : 'pH sinks again as carbon dioxide comes in from the air.',
    };
  },
});

const solidChoice = (doc: string): ReturnType<typeof choice<typeof solids>> => choice(solids, { doc });
const solids = [
  'soda ash',
  'soda ash monohydrate',
  'washing soda',
  'baking soda',
  'agricultural lime',
  'hydrated lime',
  'quicklime',
  'caustic soda',
] as const;

export const bufferEquivalent = defineFunction({
  id: 'BUFFER.EQUIVALENT',
  family: 'Water',
  summary: 'Grams of one base that bring the same alkalinity as grams of another.',
  questions: [
    'soda ash instead of baking soda',
    'how much baking soda equals soda ash',
    'no soda ash can I use baking soda',
    'equivalent lime',
    'I no get soda ash, I fit use baking soda?',
  ],
  params: {
    dose: doseParam,
    from: solidChoice('Product the grams are of.'),
    to: solidChoice('Product to use instead.'),
    fromPurity: purityParam,
    toPurity: purityParam,
  },
  returns: value(gram, 'Grams of the other product.'),
  valid:
    'Same alkalinity, which is the same pH once aired; freshly mixed the pH differs, ' +
    'because soda brings carbon and lime does not',
  sources: ['DEFINITION'],
  cautions: ['SODA_ASH', 'LIME'],
  examples: [
    {
      args: [5, 'soda ash', 'washing soda'],
      gives: '13.5',
      because: 'Washing soda is 37 % sodium carbonate.',
    },
    {
      args: [1, 'agricultural lime', 'hydrated lime'],
      gives: '0.740',
      because: 'Neutralising value 135 % of limestone.',
    },
    {
      args: [5, 'soda ash', 'salt'],
      fails: { code: '#VALUE!', says: 'expected one of' },
      because: 'Salt brings no alkalinity.',
    },
  ],
  compute: ({ dose, from, to, fromPurity, toPurity }) => {
    const a = materialOf(from);
    const b = materialOf(to);
    return (dose * fromPurity * a.equivalents * b.molarMass) / (a.molarMass * b.equivalents * toPurity);
  },
});

export const waterState = defineFunction({
  id: 'WATER.STATE',
  family: 'Water',
  summary:
    'What a water holds: alkalinity, carbon dioxide, total carbon, its pH once aired and ' +
    'how hard its pH is to move.',
  questions: [
    'everything about my water from ph and alkalinity',
    'how much CO2 in my water',
    'what pH goes with this alkalinity',
  ],
  params: {
    ph: phParam,
    alkalinity: alkalinityParam,
    temperature: temperatureParam,
    carbonDioxide: carbonDioxideParam,
    ...background,
  },
  returns: fields(
    {
      alkalinity: column('Alkalinity', meqPerLitre),
      carbonDioxide: column('Carbon dioxide', mgPerLitre),
      carbon: column('Total carbon', mmolPerLitre),
      aired: column('pH once aired', pH),
      buffering: column(
        'Alkalinity per pH unit',
        meqPerLitre,
        'meq/L that move the pH by one unit here; small is touchy.',
      ),
      calcite: column(
        'Saturation index',
        ratio,
        'Above 0 the water can lay down scale; blank without hardness.',
      ),
    },
    'The solved water.',
  ),
  valid: VALID,
  sources: ['PLBU82', 'PHREEQC', 'NOAACO2'],
  examples: [
    {
      args: [7, 1],
      gives: [['1', '9.5', '1.22', '8.17', '0.41', '']],
      because: 'Table value of CO2 for 50 mg/L at pH 7, 25 °C: 9.85 mg/L without activity.',
    },
    {
      args: [4.2, 0.5],
      fails: { code: '#N/A', says: 'below pH 5.2' },
      because: 'Carbon is not to be had from pH and alkalinity there.',
    },
  ],
  compute: (readings) => {
    const known = waterBehind(readings, true);
    if (isError(known)) return known;
    const { k, water } = known;
    const now = solve(k, water, { kind: 'at', ph: readings.ph });
    return {
      alkalinity: alkalinityOf(water),
      carbonDioxide: mgFromMmolCO2(now.carbonDioxide),
      carbon: water.carbon,
      aired: solve(k, water, { kind: 'open', pressure: pressureOfCO2(readings.airCarbonDioxide) }).ph,
      buffering: intensityAt(now.conditions, readings.ph, water.carbon),
      calcite: Number.isFinite(now.saturationIndex) ? now.saturationIndex : null,
    };
  },
});
