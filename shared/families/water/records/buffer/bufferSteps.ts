import { count, gram, pH, ratio } from '../../../../units/quantities';
import type { CellError } from '../../../../base/values';
import { isError, outside } from '../../../../base/values';
import { solve } from '../../carbonate/carbonate';
import type { Water } from '../../carbonate/carbonate';
import { pressureOfCO2 } from '../../carbonate/constants';
import { afterDose, doseTo, withDose } from '../../carbonate/dose';
import { raisesPH } from '../../carbonate/materials';
import { column, defineFunction, rows } from '../../../../functions/define';
import { num } from '../../../../functions/params';
import { phParam, stockedParam, targetParam, volumeParam } from './bufferDose';
import type { Known } from '../inputs';
import {
  airedModeParam,
  airParam,
  alkalinityParam,
  carbonDioxideParam,
  dissolvedInParam,
  dissolvedParam,
  gramsOf,
  hardnessParam,
  materialOf,
  materialParam,
  purityParam,
  temperatureParam,
  unreachable,
  waterBehind,
} from '../inputs';
import { misuse } from '../refusals';

const MOST_STEPS = 40;
/** No part-dose takes a freshly mixed vat past this on its way (the window's top unless more is asked for). */
const TOP = 7.5;

/** One part-dose, mmol/L, with the pH right after it and once aired. */
interface Part {
  readonly moles: number;
  readonly now: number;
  readonly aired: number;
}

interface Ask {
  readonly known: Known;
  readonly material: ReturnType<typeof materialOf>;
  readonly target: number;
  readonly step: number;
  readonly pressure: number;
}

const dose = (answer: ReturnType<typeof doseTo>): number => (typeof answer === 'number' ? answer : 0);

/** Part-doses with air between them: each lifts the aired pH by a step at most, and none passes the top. */
const airedParts = ({ known: { k, water }, material, target, step, pressure }: Ask): Part[] => {
  const parts: Part[] = [];
  let at: Water = water;
  let aired = solve(k, water, { kind: 'open', pressure }).ph;
  while (Math.abs(target - aired) > 1e-3 && parts.length <= MOST_STEPS) {
    const goal = target > aired ? Math.min(target, aired + step) : Math.max(target, aired - step);
    const open = dose(doseTo(k, at, material, goal, pressure));
    const fresh = raisesPH(material) ? dose(doseTo(k, at, material, Math.max(TOP, target), 'closed')) : open;
    const moles = Math.min(open, fresh);
    if (!(moles > 1e-9)) break;
    const now = afterDose(k, at, material, moles, 'closed').state.ph;
    const dosed = withDose(at, material, moles);
    const rest = solve(k, dosed, { kind: 'open', pressure });
    aired = rest.ph;
    at = { ...dosed, carbon: rest.carbon };
    parts.push({ moles, now, aired });
  }
  return parts;
};

/** Part-doses without air between them, a step of the freshly mixed pH each. */
const closedParts = (
  { known: { k, water }, material, target, step, pressure }: Ask,
  ph: number,
): Part[] | ReturnType<typeof doseTo> => {
  const legs = Math.max(1, Math.ceil(Math.abs(target - ph) / step - 1e-9));
  const parts: Part[] = [];
  let before = 0;
  for (let i = 1; i <= Math.min(legs, MOST_STEPS + 1); i++) {
    const now = i >= legs ? target : ph + i * step * Math.sign(target - ph);
    const moles = doseTo(k, water, material, now, 'closed');
    if (typeof moles !== 'number') return moles;
    parts.push({
      moles: moles - before,
      now,
      aired: afterDose(k, water, material, moles, pressure).state.ph,
    });
    before = moles;
  }
  return parts;
};

const tooManySteps = (step: number): CellError =>
  outside(`step: ${step} pH makes more than ${MOST_STEPS} part-doses. Take a larger step.`);

export const bufferSteps = defineFunction({
  id: 'BUFFER.STEPS',
  family: 'Water',
  version: 2,
  summary: 'Splits a dose for a known water into part-doses, air between them, up to the target once aired.',
  questions: ['split the dose', 'dose in parts', 'spoons per step', 'how I go divide the soda'],
  params: {
    volume: volumeParam,
    ph: phParam,
    target: targetParam,
    alkalinity: alkalinityParam,
    temperature: temperatureParam,
    material: materialParam,
    purity: purityParam,
    carbonDioxide: carbonDioxideParam,
    step: num(pH, {
      above: 0.02,
      max: 2,
      default: 0.5,
      doc: 'pH units per part-dose: 0.3 or less with fish in the water.',
    }),
    spoon: num(gram, {
      above: 0,
      max: 1000,
      optional: true,
      doc: 'Weight of one level measure of the product in your own spoon.',
    }),
    hardness: hardnessParam,
    dissolved: dissolvedParam,
    dissolvedIn: dissolvedInParam,
    airCarbonDioxide: airParam,
    mode: airedModeParam,
    stocked: stockedParam,
  },
  later: ['mode', 'stocked'],
  returns: rows(
    {
      step: column('Step', count, '0 where air alone is enough.'),
      dose: column('Dose', gram),
      spoons: column('Spoons', ratio),
      total: column('Total by then', gram),
      ph: column('pH then', pH, 'Right after mixing.'),
      aired: column('pH once aired', pH),
    },
    'One row per part-dose.',
  ),
  valid: 'Fresh and lightly salted water, 0 to 40 °C, up to about 29 g/L of salt; nothing precipitates',
  sources: ['PLBU82', 'PHREEQC'],
  cautions: ['SODA_ASH', 'LIME', 'CAUSTIC', 'ACID', 'AMMONIA'],
  help:
    'For a water whose alkalinity or carbon dioxide is known. Each part lifts the aired pH by ' +
    'a step at most and keeps the freshly mixed pH at 7.5 or below; air for an hour between ' +
    'parts. When only the pH is known use BUFFER.NEXT, which learns from each reading. ' +
    'Measure after each part-dose all the same.',
  examples: [
    {
      args: [1000, 6, 7, 0.1, 26],
      gives: [['0', '0', '', '0', '6.00', '7.20']],
      because: 'Air alone takes this water past 7; dosed as drawn it took 14.9 g and ended at 7.77.',
    },
    {
      args: [1000, 6, 7, 0.1, 26, 'soda ash', 1, null, 0.5, null, 0, 0, 'µS/cm', 420, null, 'closed'],
      gives: [
        ['1', '6.8', '', '6.8', '6.50', '7.55'],
        ['2', '8.0', '', '14.9', '7.00', '7.77'],
      ],
      because: 'Without air between: two steps of 0.5.',
    },
    {
      args: [1000, 7, 6, 0.1, 26, 'soda ash', 1, null, 0.5, null, 0, 0, 'µS/cm', 420, null, 'closed'],
      fails: { code: '#VALUE!', says: 'only raises pH' },
      because: 'A base cannot lower pH.',
    },
  ],
  compute: ({ volume, target, material, purity, step, spoon, mode, stocked, ...readings }) => {
    const known = waterBehind(readings, true);
    if (isError(known)) return known;
    const substance = materialOf(material);
    const pressure = pressureOfCO2(readings.airCarbonDioxide);
    const ask: Ask = { known, material: substance, target, step, pressure };
    const parts = mode === 'closed' ? closedParts(ask, readings.ph) : airedParts(ask);
    if (typeof parts === 'number') return [];
    if ('reason' in parts) return unreachable(parts, material, target, 'closed');
    if (parts.length > MOST_STEPS) return tooManySteps(step);
    const grams = (moles: number): number => gramsOf(substance, moles, volume, purity);
    const whole = grams(parts.reduce((sum, { moles }) => sum + moles, 0));
    const wrong = misuse({ material, grams: whole, volume, purity, stocked });
    if (wrong) return wrong;
    if (parts.length === 0) {
      const aired = solve(known.k, known.water, { kind: 'open', pressure }).ph;
      return [{ step: 0, dose: 0, spoons: null, total: 0, ph: readings.ph, aired }];
    }
    let total = 0;
    return parts.map(({ moles, now, aired }, i) => {
      const each = grams(moles);
      total += each;
      return {
        step: i + 1,
        dose: each,
        spoons: spoon === undefined ? null : each / spoon,
        total,
        ph: now,
        aired,
      };
    });
  },
});
