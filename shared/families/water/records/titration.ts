// Long: records of one subject, each with its texts, questions and examples.
import {
  gram,
  meqPerLitre,
  mgPerLitre,
  microsiemens,
  pH,
  ratio,
  share,
  text,
  count,
} from '../../../units/quantities';
import type { CellError } from '../../../base/values';
import { isError, noSolution, outside, refuse } from '../../../base/values';
import { constantsAt } from '../carbonate/constants';
import type { MaterialName } from '../carbonate/materials';
import { raisesPH } from '../carbonate/materials';
import type { Advice } from '../titration/advise';
import { advise, chanceOrganic, figures } from '../titration/advise';
import type { MeterName, OriginName } from '../titration/beliefs';
import { beliefsFrom, riskFor } from '../titration/beliefs';
import { forecast, likelierProduct, pathOf } from '../titration/outlook';
import type { Aim } from '../titration/nextDose';
import type { Beliefs, Series } from '../titration/series';
import { column, defineFunction, fields, rows } from '../../../functions/define';
import { choice, flag, num, series } from '../../../functions/params';
import { volumeParam } from './bufferDose';
import {
  backgroundOf,
  gramsOf,
  materialOf,
  materialParam,
  mgFromMmolCO2,
  molesOf,
  purityParam,
  temperatureParam,
} from './inputs';
import { flagsFor, todoFor } from './titrationWords';

const MOST_READINGS = 40;

const dosesParam = series(gram, {
  min: 0,
  max: 1e7,
  pair: 'readings',
  doc: 'Running total of product given since the start, g, one per reading; the first is 0.',
});
const readingsParam = series(pH, {
  min: 0,
  max: 14,
  pair: 'readings',
  doc: 'pH read after each dose, once mixed and steady; the first before any product.',
});
export const originParam = choice(['unknown', 'aerated', 'well'] as const, {
  default: 'unknown',
  doc:
    'Where the water comes from: "aerated" after an hour of strong air, "well" for well ' +
    'or borehole water, rich in carbon dioxide.',
  aliases: { borehole: 'well', rain: 'aerated', aired: 'aerated' },
});
export const meterParam = choice(['good', 'cheap', 'strips'] as const, {
  default: 'good',
  doc: 'How pH is read: "good" two decimals and calibrated, "cheap" one decimal, "strips" paper.',
});
const kitParam = num(meqPerLitre, {
  min: -5,
  max: 20,
  optional: true,
  doc: 'Alkalinity of the untouched water from a kit, if measured.',
});
const conductivityParam = num(microsiemens, {
  min: 0,
  max: 20000,
  default: 0,
  doc: 'Conductivity of the untouched water, if measured; it limits the alkalinity there can be.',
});

const common = {
  temperature: temperatureParam,
  material: materialParam,
  purity: purityParam,
  origin: originParam,
  alkalinity: kitParam,
  conductivity: conductivityParam,
  meter: meterParam,
};

interface Given {
  readonly volume: number;
  readonly doses: readonly number[];
  readonly readings: readonly number[];
  readonly temperature: number;
  readonly material: MaterialName;
  readonly purity: number;
  readonly origin: OriginName;
  readonly alkalinity: number | undefined;
  readonly conductivity: number;
  readonly meter: MeterName;
}

export const beliefsOf = (
  given: Omit<Given, 'volume' | 'doses' | 'readings' | 'purity'>,
): Beliefs | CellError => {
  const back = backgroundOf({
    temperature: given.temperature,
    hardness: 0,
    dissolved: given.conductivity,
    dissolvedIn: 'µS/cm',
  });
  if (isError(back)) return back;
  return beliefsFrom({
    k: constantsAt(given.temperature),
    back,
    material: materialOf(given.material),
    meter: given.meter,
    origin: given.origin,
    kit: given.alkalinity,
    conductivity: given.conductivity,
    airPpm: 420,
  });
};

/** The notebook's columns as a series, or the sentence that says what is wrong with them. */
const seriesOf = ({ volume, doses, readings, material, purity }: Given): Series | CellError => {
  if (!raisesPH(materialOf(material)))
    return refuse(
      `material: ${material} lowers pH; this method follows doses that raise it. Use BUFFER.DOSE downwards, in small parts.`,
    );
  if (readings.length > MOST_READINGS)
    return outside(
      `readings: one dosing has up to ${MOST_READINGS} readings, got ${readings.length}. Give the rows of this vat's dosing only.`,
    );
  if (doses[0] !== 0)
    return refuse(
      `doses, row 1: expected 0 g with the pH before any product, got ${doses[0] ?? 'nothing'}. Put that reading first.`,
    );
  const back = doses.findIndex((dose, i) => i > 0 && dose < (doses[i - 1] ?? 0));
  if (back > 0)
    return refuse(
      `doses, row ${back + 1}: ${doses[back] ?? ''} g is less than ${doses[back - 1] ?? ''} g in the row above. Give running totals since the start, in the order they were given.`,
    );
  return { doses: doses.map((grams) => molesOf(materialOf(material), grams, volume, purity)), readings };
};

const aimParams = {
  bottom: num(pH, { min: 4, max: 10, default: 6.5, doc: 'Lower edge of the pH window.' }),
  top: num(pH, { min: 4, max: 10, default: 7.5, doc: 'Upper edge of the pH window, not to be passed.' }),
  step: num(pH, { above: 0, max: 2, default: 0.6, doc: 'Most pH units in one part-dose.' }),
  stocked: flag(false, 'TRUE when fish or eggs are in the water: steps of no more than 0.3 pH.'),
};
const STOCKED_STEP = 0.3;
const NEAR = 0.2;

const aimOf = (a: {
  target: number;
  bottom: number;
  top: number;
  step: number;
  stocked: boolean;
  meter: MeterName;
  material: MaterialName;
}): Aim | CellError =>
  a.bottom < a.target && a.target < a.top
    ? {
        target: a.target,
        bottom: a.bottom,
        top: a.top,
        step: a.stocked ? Math.min(a.step, STOCKED_STEP) : a.step,
        near: Math.min(NEAR, a.target - a.bottom),
        risk: riskFor(a.meter, materialOf(a.material)),
      }
    : refuse(
        `target: expected a pH between the edges of the window (${a.bottom} to ${a.top}), got ${a.target}.`,
      );

const targetOf = num(pH, { min: 4, max: 10, default: 7, doc: 'pH wanted.' });

const readingsExample: readonly (readonly number[])[] = [
  [0, 4.86],
  [3.66, 5.65],
  [8.54, 6.09],
];
const column1 = (rowsOf: readonly (readonly number[])[], i: number): number[][] =>
  rowsOf.map((r) => [r[i] ?? 0]);

export const bufferNext = defineFunction({
  id: 'BUFFER.NEXT',
  family: 'Water',
  summary:
    'Next part-dose at the vat from the doses and pH readings so far: grams, spoons, pH ' +
    'to expect, what to do.',
  questions: [
    'next dose',
    'how much more to add',
    'ph after first dose',
    'step by step ph',
    'how much more soda',
    'dose and check',
    'I don add 2 spoon, remain how many',
    'how much remain to put',
    'when I go stop to put soda',
  ],
  params: {
    volume: volumeParam,
    doses: dosesParam,
    readings: readingsParam,
    target: targetOf,
    spoon: num(gram, {
      above: 0,
      max: 1000,
      optional: true,
      doc: 'Weight of one level measure of the product in your own spoon.',
    }),
    ...common,
    ...aimParams,
  },
  returns: rows(
    {
      step: column('Step', count),
      todo: column('What to do', text),
      dose: column('Dose', gram),
      spoons: column('Spoons', ratio),
      total: column('Total by then', gram, 'Write this in the dose column beside the next reading.'),
      low: column('pH at least', pH, '5 of 100 readings lie lower.'),
      likely: column('pH likely', pH),
      high: column('pH at most', pH, '5 of 100 readings lie higher.'),
      remark: column('Remark', text),
    },
    'First row: what to do now. Rows below: how it is likely to go on; each new reading changes them.',
  ),
  valid: 'Fresh water, 0 to 40 °C, products that raise pH, up to 40 readings of one dosing',
  sources: ['PLBU82', 'KOHL00', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME', 'AMMONIA'],
  help:
    'A pH meter alone cannot tell how much carbon dioxide a water holds, but its answer ' +
    'to the first small doses can. The readings are weighed against everything the water ' +
    'may be: its carbon dioxide, its acids, a meter that reads off, gas that escapes, ' +
    'acids of peat and leaves. The part-dose is then the smallest of what reaches the ' +
    'target, what moves one step, and what keeps the chance of passing the top of the ' +
    'window at 3 in 100 (1 in 100 with a cheap meter, strips, or lime). Simulated on a ' +
    'thousand waters below pH 6.4, 99 of 100 dosings ended between 6.5 and 7.5 in fewer ' +
    'than four steps on average, and fewer than 1 in 100 ever passed 7.5. Dissolve, pour ' +
    'where the water moves, wait the same time each step, measure, write down, look ' +
    'again. Beliefs before the first reading are judgement, not published figures.',
  examples: [
    {
      args: [1000, column1(readingsExample, 0), column1(readingsExample, 1), 7, 5],
      gives: [
        [
          '1',
          'Dissolve this dose in a bucket, pour it in where the water moves, mix, wait, ' +
            'measure, write the pH down. One step, no more.',
          '11.7',
          '2.3',
          '20.3',
          '6.54',
          '6.70',
          '6.88',
          '',
        ],
      ],
      because:
        'Soft water rich in CO2 at pH 6.1: one step ends near 6.7. The independent solver ' +
        'that made the water needs 12.2 g to 6.8.',
    },
    {
      args: [1000, [[0]], [[6.95]]],
      gives: [
        [
          '0',
          'Stop: pH 6.95 is near enough to the target. Aerate and measure again tomorrow.',
          '0',
          '',
          '0',
          '6.82',
          '6.95',
          '7.08',
          'One reading only: the dose rests on what such waters usually hold, and is kept ' +
            'small. The next reading tells far more.',
        ],
      ],
      because: 'Within 0.2 of the target: no more.',
    },
    {
      args: [1000, [[0], [6], [4]], [[4.6], [5.5], [5.9]]],
      fails: { code: '#VALUE!', says: 'running totals' },
      because: 'Running totals cannot fall.',
    },
    {
      args: [1000, [[2], [4]], [[4.6], [5.5]]],
      fails: { code: '#VALUE!', says: 'before any product' },
      because: 'The reading before the first dose is needed.',
    },
    {
      args: [1000, [[0]], [[4.6]], 7, null, 25, 'hydrochloric acid'],
      fails: { code: '#VALUE!', says: 'lowers pH' },
      because: 'An acid cannot raise pH.',
    },
  ],
  compute: (a) => {
    const b = beliefsOf(a);
    if (isError(b)) return b;
    const s = seriesOf(a);
    if (isError(s)) return s;
    const aim = aimOf(a);
    if (isError(aim)) return aim;
    const advice = advise(b, s, aim);
    const remark = flagsFor(a, s, advice, likelierProduct(b, s, advice.cloud, a.material));
    const grams = (moles: number): number => gramsOf(materialOf(a.material), moles, a.volume, a.purity);
    const spoons = (g: number): number | null => (a.spoon === undefined ? null : g / a.spoon);
    const given = a.doses.at(-1) ?? 0;
    const now = grams(advice.dose);
    const firstRow = {
      step: advice.action === 'dose' ? 1 : 0,
      todo: todoFor(advice, aim),
      dose: now,
      spoons: spoons(now),
      total: given + now,
      ...advice.after,
      remark,
    };
    if (advice.action !== 'dose') return [firstRow];
    const later = forecast(b, advice, aim).map(({ dose, reach }, i) => {
      const g = grams(dose);
      return {
        step: i + 2,
        todo: 'Likely next. The coming reading decides and narrows the range.',
        dose: g,
        spoons: spoons(g),
        total: 0,
        ...reach,
        remark: '',
      };
    });
    let total = given + now;
    return [firstRow, ...later.map((row) => ({ ...row, total: (total += row.dose) }))];
  },
});

export const bufferFit = defineFunction({
  id: 'BUFFER.FIT',
  family: 'Water',
  summary:
    'What a series of doses and pH readings says about the water: its alkalinity and ' +
    'carbon dioxide, with ranges.',
  questions: [
    'what do my readings say about alkalinity',
    'is my meter wrong',
    'water takes a lot of soda',
    'titration from my doses',
    'why ph no dey move',
  ],
  params: { volume: volumeParam, doses: dosesParam, readings: readingsParam, ...common },
  returns: fields(
    {
      alkalinity: column('Alkalinity', meqPerLitre, 'Of the untouched water.'),
      alkalinityLow: column('Alkalinity at least', meqPerLitre),
      alkalinityHigh: column('Alkalinity at most', meqPerLitre),
      carbonDioxide: column('Carbon dioxide', mgPerLitre, 'Of the untouched water.'),
      carbonDioxideLow: column('Carbon dioxide at least', mgPerLitre),
      carbonDioxideHigh: column('Carbon dioxide at most', mgPerLitre),
      offset: column('Meter reads off by', pH),
      lost: column('Gas lost per step', share, 'Share of the carbon dioxide above that of the air.'),
      organic: column('Chance of organic acids', share),
      misfit: column('Misfit', ratio, 'In reading errors; above 3 the readings do not go together.'),
      remark: column('Remark', text),
    },
    'Middle estimates with 5 % and 95 % ends.',
  ),
  valid: 'Fresh water, 0 to 40 °C, products that raise pH, up to 40 readings of one dosing',
  sources: ['PLBU82', 'KOHL00', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME'],
  examples: [
    {
      args: [1000, column1(readingsExample, 0), column1(readingsExample, 1)],
      gives: [['-0.002', '-0.009', '0.007', '15.0', '11.3', '22.9', '-0.001', '0.05', '0.29', '0.2', '']],
      because: 'An independent solver made these readings from a water of 0 meq/L and 13.9 mg/L of CO2.',
    },
    {
      args: [1000, [[0], [6], [4]], [[4.6], [5.5], [5.9]]],
      fails: { code: '#VALUE!', says: 'running totals' },
      because: 'Running totals cannot fall.',
    },
  ],
  compute: (a) => {
    const b = beliefsOf(a);
    if (isError(b)) return b;
    const s = seriesOf(a);
    if (isError(s)) return s;
    const advice: Advice = advise(b, s, {
      target: 7,
      bottom: 6.5,
      top: 7.5,
      step: 0.6,
      near: NEAR,
      risk: riskFor(a.meter, materialOf(a.material)),
    });
    const { alkalinity, carbonDioxide, offset, loss } = figures(advice.cloud);
    return {
      alkalinity: alkalinity.likely,
      alkalinityLow: alkalinity.low,
      alkalinityHigh: alkalinity.high,
      carbonDioxide: mgFromMmolCO2(carbonDioxide.likely),
      carbonDioxideLow: mgFromMmolCO2(carbonDioxide.low),
      carbonDioxideHigh: mgFromMmolCO2(carbonDioxide.high),
      offset,
      lost: loss,
      organic: chanceOrganic(advice.cloud),
      misfit: advice.cloud.misfit,
      remark: flagsFor(a, s, advice, likelierProduct(b, s, advice.cloud, a.material)),
    };
  },
});

export const bufferCurve = defineFunction({
  id: 'BUFFER.CURVE',
  family: 'Water',
  summary:
    'pH against further product, with its range, from the readings so far: the curve to ' +
    'draw beside the window.',
  questions: ['ph curve', 'ph vs dose table', 'chart pH as I add'],
  params: {
    volume: volumeParam,
    doses: dosesParam,
    readings: readingsParam,
    highest: num(pH, { min: 5, max: 10, default: 8, doc: 'pH at which the curve ends.' }),
    ...common,
  },
  returns: rows(
    {
      total: column('Total product', gram),
      low: column('pH at least', pH),
      likely: column('pH likely', pH),
      high: column('pH at most', pH),
    },
    'Thirteen points from the product given so far upwards.',
  ),
  valid: 'Fresh water, 0 to 40 °C, products that raise pH, up to 40 readings of one dosing',
  sources: ['PLBU82', 'KOHL00', 'PRACTICE'],
  examples: [
    {
      args: [1000, column1(readingsExample, 0), column1(readingsExample, 1)],
      gives: [
        ['8.54', '5.99', '6.10', '6.20'],
        ['10.9', '6.13', '6.24', '6.35'],
      ],
      because: 'The curve starts at the 8.54 g given.',
    },
    {
      args: [1000, [[0]], [[8.5]]],
      fails: { code: '#NUM!', says: 'already' },
      because: 'Nothing to draw above the end of the curve.',
    },
  ],
  compute: (a) => {
    const b = beliefsOf(a);
    if (isError(b)) return b;
    const s = seriesOf(a);
    if (isError(s)) return s;
    const path = pathOf(b, s, a.highest);
    if (path.length === 0)
      return noSolution(
        `There is no curve, because the water is already at pH ${a.highest} or above, or the product cannot take it there.`,
      );
    const given = a.doses.at(-1) ?? 0;
    return path.map(({ dose, reach }) => ({
      total: given + gramsOf(materialOf(a.material), dose, a.volume, a.purity),
      ...reach,
    }));
  },
});
