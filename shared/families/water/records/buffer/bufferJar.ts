import { gram, meqPerLitre, pH, text } from '../../../../units/quantities';
import { isError } from '../../../../base/values';
import { alkalinityOf } from '../../carbonate/carbonate';
import { constantsAt, pressureOfCO2 } from '../../carbonate/constants';
import { afterDose, doseTo } from '../../carbonate/dose';
import { raisesPH } from '../../carbonate/materials';
import { airedWater } from '../../carbonate/readings';
import { column, defineFunction, fields, value } from '../../../../functions/define';
import { num } from '../../../../functions/params';
import { stockedParam, targetParam, volumeParam } from './bufferDose';
import {
  airedModeParam,
  airOf,
  airParam,
  backgroundOf,
  dissolvedInParam,
  dissolvedParam,
  gramsOf,
  hardnessParam,
  materialOf,
  materialParam,
  purityParam,
  temperatureParam,
  unreachable,
} from '../inputs';
import { misuse } from '../refusals';

const jar = {
  temperature: temperatureParam,
  hardness: hardnessParam,
  dissolved: dissolvedParam,
  dissolvedIn: dissolvedInParam,
  airCarbonDioxide: airParam,
};
const jarParam = num(pH, {
  min: 3,
  max: 10,
  doc: 'pH of a jar of the water after an hour of strong aeration.',
});

export const alkalinityAerated = defineFunction({
  id: 'ALKALINITY.AERATED',
  family: 'Water',
  summary: 'Alkalinity of a water from the pH of a jar of it that was aerated for an hour.',
  questions: ['alkalinity from an aired jar and its ph', 'aerated jar', 'alkalinity from aerated pH'],
  params: { jar: jarParam, ...jar },
  returns: value(meqPerLitre, 'Alkalinity; negative is mineral acid.'),
  valid:
    'Water in balance with the air; 0.1 pH of error is 26 % of the answer, stale air in a shed up to 0.38 pH',
  sources: ['PLBU82', 'NOAACO2'],
  help:
    'The cheapest way to an alkalinity without a kit: air fixes the carbon dioxide, so ' +
    'the pH tells the alkalinity. Use fresh outdoor air or give the carbon dioxide of ' +
    'the room.',
  examples: [
    { args: [7], gives: '0.064', because: '0.064 meq/L at 417 ppm and 25 °C by an independent solver.' },
    { args: [8], gives: '0.66', because: '0.659 meq/L at 417 ppm and 25 °C by an independent solver.' },
    {
      args: [12],
      fails: { code: '#VALUE!', says: 'from 3 to 10' },
      because: 'No fresh water stands there after aeration.',
    },
  ],
  compute: ({ jar: ph, airCarbonDioxide, ...rest }) => {
    const back = backgroundOf(rest);
    return isError(back)
      ? back
      : alkalinityOf(airedWater(constantsAt(rest.temperature), back, ph, airCarbonDioxide));
  },
});

export const bufferJar = defineFunction({
  id: 'BUFFER.JAR',
  version: 2,
  family: 'Water',
  summary:
    'Dose from an aerated jar of the water: grams that bring the whole vat to the ' +
    'target, with the range of a 0.1 pH error.',
  questions: [
    'dose from a jar test',
    'jar of aerated water dose',
    'test jar to whole vat',
    'shake a bottle and measure pH',
  ],
  params: {
    volume: volumeParam,
    jar: jarParam,
    target: targetParam,
    material: materialParam,
    purity: purityParam,
    mode: airedModeParam,
    ...jar,
    stocked: stockedParam,
  },
  later: ['stocked'],
  returns: fields(
    {
      dose: column('Dose', gram),
      low: column('If the jar reads 0.1 low', gram, 'Dose if its true pH is 0.1 higher.'),
      high: column('If the jar reads 0.1 high', gram, 'Dose if its true pH is 0.1 lower.'),
      alkalinity: column('Alkalinity', meqPerLitre),
      now: column('pH now', pH, 'Freshly mixed into a vat aired like the jar.'),
      aired: column('pH once aired', pH),
      action: column('Action', text, '"dose", or "done" where the jar stands at the target or above.'),
    },
    'For the pH once aired, whether the vat is aired yet or not.',
  ),
  valid: 'Water in balance with the air, 0 to 40 °C',
  sources: ['PLBU82', 'NOAACO2'],
  cautions: ['SODA_ASH', 'LIME', 'CAUSTIC', 'ACID', 'AMMONIA'],
  examples: [
    {
      args: [1000, 5.5, 7],
      gives: [['3.47', '3.40', '3.53', '-0.001', '9.1', '7.00', 'dose']],
      because: 'Near pH 5.6 aerated water has no alkalinity; 0.065 meq/L brings it to 7.',
    },
    {
      args: [1000, 8, 7],
      gives: [['0', '0', '0', '0.66', '8.00', '8.00', 'done']],
      because: 'Air alone brings this water above the target: no product.',
    },
    {
      args: [1000, 5.5, 7, 'quicklime', 1, 'open', 25, 0, 0, 'µS/cm', 420, null, true],
      fails: { code: '#VALUE!', says: 'never put quicklime' },
      because: 'Fish are in.',
    },
  ],
  compute: ({ volume, jar: ph, target, material, purity, mode, airCarbonDioxide, stocked, ...rest }) => {
    const back = backgroundOf(rest);
    if (isError(back)) return back;
    const k = constantsAt(rest.temperature);
    const at = (p: number): ReturnType<typeof doseTo> =>
      doseTo(
        k,
        airedWater(k, back, p, airCarbonDioxide),
        materialOf(material),
        target,
        airOf(mode, airCarbonDioxide),
      );
    const substance = materialOf(material);
    const dose = raisesPH(substance) && ph >= target ? 0 : at(ph);
    if (typeof dose !== 'number') return unreachable(dose, material, target, mode);
    const grams = (moles: ReturnType<typeof doseTo>): number =>
      typeof moles === 'number' ? gramsOf(substance, moles, volume, purity) : 0;
    const water = airedWater(k, back, ph, airCarbonDioxide);
    const wrong = misuse({ material, grams: grams(dose), volume, purity, stocked });
    if (wrong) return wrong;
    return {
      dose: grams(dose),
      low: dose === 0 ? 0 : grams(at(ph + 0.1)),
      high: dose === 0 ? 0 : grams(at(ph - 0.1)),
      alkalinity: alkalinityOf(water),
      now: afterDose(k, water, substance, dose, 'closed').state.ph,
      aired: afterDose(k, water, substance, dose, pressureOfCO2(airCarbonDioxide)).state.ph,
      action: dose === 0 ? 'done' : 'dose',
    };
  },
});
