import { gram, meqPerLitre, pH, text } from '../../../../units/quantities';
import { isError } from '../../../../base/values';
import type { Needed } from '../../aired/needed';
import { neededOnceAired } from '../../aired/needed';
import { alkalinityOf, solve } from '../../carbonate/carbonate';
import { pressureOfCO2 } from '../../carbonate/constants';
import type { Unreachable } from '../../carbonate/dose';
import { raisesPH } from '../../carbonate/materials';
import { airedWater, compose } from '../../carbonate/readings';
import { column, defineFunction, fields } from '../../../../functions/define';
import { num } from '../../../../functions/params';
import { stockedParam, targetParam, volumeParam } from './bufferDose';
import {
  gramsOf,
  materialOf,
  materialParam,
  purityParam,
  temperatureParam,
  unreachable,
  waterBehind,
} from '../inputs';
import { misuse } from '../refusals';

export const bufferKit = defineFunction({
  id: 'BUFFER.KIT',
  version: 2,
  family: 'Water',
  summary: 'With pH and an alkalinity kit: the dose, and how far the errors of meter and kit can carry it.',
  questions: ['I have alkalinity kit', 'alkalinity test result to soda', 'dose from pH and KH'],
  params: {
    volume: volumeParam,
    ph: num(pH, { min: 5.2, max: 11, doc: 'pH of the water now; below 5.2 a kit does not tell the dose.' }),
    target: targetParam,
    alkalinity: num(meqPerLitre, {
      above: 0,
      max: 20,
      doc: 'Alkalinity by the kit, meq/L (ALKALINITY.CONVERT turns dKH or mg/L into it).',
    }),
    temperature: temperatureParam,
    material: materialParam,
    purity: purityParam,
    kitStep: num(meqPerLitre, {
      above: 0,
      max: 2,
      default: 0.36,
      doc: 'What one drop or one mark of the kit stands for. 0.36 meq/L is 1 dKH.',
    }),
    meterError: num(pH, { above: 0, max: 1, default: 0.1, doc: 'How far the meter may be off.' }),
    stocked: stockedParam,
  },
  later: ['stocked'],
  returns: fields(
    {
      dose: column('Dose', gram),
      low: column('At least', gram, 'Half a kit mark less alkalinity and the meter reading low.'),
      high: column('At most', gram, 'Half a kit mark more alkalinity and the meter reading high.'),
      advice: column('What to do', text),
      action: column('Action', text, '"air first" or "dose".'),
      now: column('pH now', pH, 'Freshly mixed, with the dose.'),
      airedLow: column('Aired at least', pH, 'With the dose, by the errors of the kit.'),
      aired: column('Aired likely', pH),
      airedHigh: column('Aired at most', pH),
    },
    'Grams for the whole volume, for the pH once aired.',
  ),
  valid: 'Fresh water, 0 to 40 °C, pH 5.2 and above',
  sources: ['PLBU82', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME', 'CAUSTIC', 'ACID', 'AMMONIA'],
  examples: [
    {
      args: [1000, 6.5, 7, 1, 26],
      gives: [
        [
          '0',
          '0',
          '0',
          'Air first: once aired this water stands near pH 8.2 without product.',
          'air first',
          '6.50',
          '8.10',
          '8.18',
          '8.25',
        ],
      ],
      because: 'An independent solver airs 1 meq/L to 8.2; 35 g before airing would have led to 8.4.',
    },
    {
      args: [1000, 7.5, 7, 1],
      fails: { code: '#VALUE!', says: 'only raises pH' },
      because: 'A base cannot lower pH.',
    },
  ],
  compute: ({
    volume,
    ph,
    target,
    alkalinity,
    temperature,
    material,
    purity,
    kitStep,
    meterError,
    stocked,
  }) => {
    const substance = materialOf(material);
    if (ph >= target && raisesPH(substance))
      return unreachable({ reason: 'already past', ph }, material, target, 'closed');
    const wrong = misuse({ material, grams: 0, volume, purity, stocked });
    if (wrong) return wrong;
    const readings = { ...PLAIN, ph, alkalinity, temperature };
    const known = waterBehind(readings, true);
    if (isError(known)) return known;
    const { k, back } = known;
    const pressure = pressureOfCO2(PLAIN.airCarbonDioxide);
    // No water at this pH holds less alkalinity than one with the gas of the air alone.
    const least = alkalinityOf(airedWater(k, back, ph - meterError, PLAIN.airCarbonDioxide));
    const at = (alk: number): Needed | Unreachable =>
      neededOnceAired({
        k,
        water: compose(back, alk, known.water.carbon),
        material: substance,
        target,
        bottom: Math.min(target, BOTTOM),
        pressure,
      });
    const [poor, likely, rich] = [
      Math.max(least, alkalinity - kitStep / 2),
      alkalinity,
      alkalinity + kitStep / 2,
    ].map(at);
    if (!likely || 'reason' in likely)
      return unreachable(likely ?? { reason: 'never' }, material, target, 'open');
    const grams = (one: Needed | Unreachable | undefined): number =>
      one && 'moles' in one ? gramsOf(substance, one.moles, volume, purity) : 0;
    const airedAt = (alk: number): number =>
      solve(k, compose(back, alk + substance.equivalents * likely.moles, 0), { kind: 'open', pressure }).ph;
    return {
      dose: grams(likely),
      low: grams(rich),
      high: grams(poor),
      advice: kitAdvice(grams(likely), grams(poor), likely.airedPH),
      action: likely.moles === 0 ? 'air first' : 'dose',
      now: likely.nowAfter,
      airedLow: airedAt(Math.max(least, alkalinity - kitStep / 2)),
      aired: likely.airedAfter,
      airedHigh: airedAt(alkalinity + kitStep / 2),
    };
  },
});

/** From here up aired water is left alone. */
const BOTTOM = 6.5;
const PLAIN = {
  carbonDioxide: undefined,
  hardness: 0,
  dissolved: 0,
  dissolvedIn: 'µS/cm',
  airCarbonDioxide: 420,
} as const;

const kitAdvice = (likely: number, high: number, airedPH: number): string =>
  likely === 0
    ? `Air first: once aired this water stands near pH ${airedPH.toFixed(1)} without product.` +
      (high > 0 ? ' The kit may be half a mark off: read again after airing before anything is given.' : '')
    : 'Air first, read again, then give half, measure, and go on with BUFFER.NEXT.';
