// Long: what the readings say of the water, as figures and as a curve, from one reading of the log.
import { gram, meqPerLitre, mgPerLitre, pH, ratio, share, text } from '../../../../units/quantities';
import { isError, noSolution } from '../../../../base/values';
import type { CellError } from '../../../../base/values';
import type { Advice } from '../../titration/advise';
import { advise, CEILING, doubtsOf, figures } from '../../titration/advise';
import type { MeterName } from '../../titration/beliefs';
import { METERS, riskFor } from '../../titration/beliefs';
import { airedReach } from '../../titration/nextDose';
import { chanceOrganic } from '../../titration/cloud';
import { NIGHT_HOURS } from '../../titration/log';
import type { Log } from '../../titration/log';
import { posterior } from '../../titration/posterior';
import type { Beliefs, Series } from '../../titration/series';
import { likelierProduct, pathOf } from '../../titration/outlook';
import { column, defineFunction, fields, rows } from '../../../../functions/define';
import { num } from '../../../../functions/params';
import { volumeParam } from './bufferDose';
import { column1, readingsExample } from './bufferNext';
import { gramsOf, materialOf, mgFromMmolCO2 } from '../inputs';
import type { TitrationInputs } from './titrationInputs';
import {
  beliefsOf,
  common,
  dosesParam,
  logOf,
  NEAR_TARGET_PH,
  notebook,
  readingsParam,
} from './titrationInputs';
import { remarksFor } from './titrationWords';

/** Without anything but doses between the readings they are one series, from the first to the last. */
const wholeOf = (log: Log): Series | undefined =>
  log.every(({ event, hours = 0 }) => event === '' && hours < NIGHT_HOURS)
    ? { doses: log.map(({ dose }) => dose), readings: log.map(({ reading }) => reading) }
    : undefined;

/**
 * Errors of a reading with what the model leaves out (gas lost unevenly, mixing, a meter's slope), pH: chosen on
 * simulated vats so that 90 of 100 is held (tests/long/water/ranges). The advice itself is more careful.
 */
export const FIT_ERRORS: Readonly<Record<MeterName, { readonly noise: number; readonly offset: number }>> = {
  good: { noise: 0.053, offset: 0.08 },
  cheap: { noise: 0.065, offset: 0.1 },
  strips: METERS.strips,
};
const withFitErrors = (b: Beliefs, meter: MeterName): Beliefs => {
  const { noise, offset } = FIT_ERRORS[meter];
  return { ...b, noise, offset: Math.min(b.offset, offset) };
};

/** The readings as the advice sees them, with the window most vats are led into. */
const readingsOf = (a: TitrationInputs): Advice | CellError => {
  const b = beliefsOf(a);
  if (isError(b)) return b;
  const log = logOf(a);
  if (isError(log)) return log;
  const risk = riskFor(a.meter, materialOf(a.material));
  return advise(b, log, {
    target: 7,
    bottom: 6.5,
    top: 7.5,
    step: 1,
    near: NEAR_TARGET_PH,
    risk,
    canAir: true,
    isStocked: false,
  });
};

export const bufferFit = defineFunction({
  id: 'BUFFER.FIT',
  version: 5,
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
  params: { volume: volumeParam, doses: dosesParam, readings: readingsParam, ...common, ...notebook },
  later: ['events', 'again', 'at', 'dosesAre', 'bufferRead', 'bufferValue'],
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
      aired: column('pH once aired', pH, 'With what has been given so far.'),
    },
    'Middle estimates with 5 % and 95 % ends.',
  ),
  valid: 'Fresh water, 0 to 40 °C, products that raise pH, up to 40 readings of one dosing',
  sources: ['PLBU82', 'KOHL00', 'PRACTICE'],
  cautions: ['SODA_ASH', 'LIME'],
  examples: [
    {
      args: [
        1000,
        column1(readingsExample, 0),
        column1(readingsExample, 1),
        25,
        'soda ash',
        1,
        'unknown',
        null,
        0,
        'good',
        null,
        [[''], [''], ['']],
        [[4.86], [5.65], [6.1]],
        [[46000.3], [46000.32], [46000.34]],
      ],
      gives: [['-0.001', '-0.010', '0.013', '17', '11', '33', '-0.005', '0.08', '0.14', '0.4', '', '7.4']],
      because: 'An independent solver made these readings from a water of 0 meq/L and 13.9 mg/L of CO2.',
    },
    {
      args: [1000, [[0], [6], [4]], [[4.6], [5.5], [5.9]]],
      fails: { code: '#VALUE!', says: 'running totals' },
      because: 'Running totals cannot fall.',
    },
  ],
  compute: (a) => {
    const advice = readingsOf(a);
    if (isError(advice)) return advice;
    const { segment } = advice;
    const log = logOf(a);
    const b = beliefsOf(a);
    const whole = isError(log) || isError(b) ? undefined : wholeOf(log);
    const cloud = whole && !isError(b) ? posterior(b, whole) : advice.cloud;
    const series = whole ?? segment.series;
    const { offset, loss } = figures(cloud);
    const { alkalinity, carbonDioxide } = figures(
      posterior(withFitErrors(whole && !isError(b) ? b : segment.beliefs, a.meter), series),
    );
    // What had gone in before this stretch began is taken off again.
    const before = whole ? 0 : segment.beliefs.equivalents * segment.base;
    return {
      alkalinity: alkalinity.likely - before,
      alkalinityLow: alkalinity.low - before,
      alkalinityHigh: alkalinity.high - before,
      carbonDioxide: mgFromMmolCO2(carbonDioxide.likely),
      carbonDioxideLow: mgFromMmolCO2(carbonDioxide.low),
      carbonDioxideHigh: mgFromMmolCO2(carbonDioxide.high),
      offset,
      lost: loss,
      organic: chanceOrganic(cloud),
      misfit: cloud.misfit,
      remark: remarksFor(
        a,
        { reasons: doubtsOf(series, cloud) },
        likelierProduct(isError(b) ? segment.beliefs : b, series, cloud, a.material),
      ),
      aired: advice.airedUntouched.likely,
    };
  },
});

export const bufferCurve = defineFunction({
  id: 'BUFFER.CURVE',
  version: 4,
  family: 'Water',
  summary:
    'pH against further product, with its range, from the readings so far: the curve to ' +
    'draw beside the window.',
  questions: ['ph curve', 'ph vs dose table', 'chart pH as I add'],
  params: {
    volume: volumeParam,
    doses: dosesParam,
    readings: readingsParam,
    highest: num(pH, {
      min: 5,
      max: CEILING + 1,
      default: CEILING,
      doc: 'pH at which the curve ends, freshly mixed.',
    }),
    ...common,
    ...notebook,
  },
  later: ['events', 'again', 'at', 'dosesAre', 'bufferRead', 'bufferValue'],
  returns: rows(
    {
      total: column('Total product', gram),
      low: column('pH at least', pH),
      likely: column('pH likely', pH),
      high: column('pH at most', pH),
      airedLow: column('Aired at least', pH),
      aired: column('Aired likely', pH),
      airedHigh: column('Aired at most', pH),
    },
    'Thirteen points from the product given so far upwards.',
  ),
  valid: 'Fresh water, 0 to 40 °C, products that raise pH, up to 40 readings of one dosing',
  sources: ['PLBU82', 'KOHL00', 'PRACTICE'],
  examples: [
    {
      args: [
        1000,
        column1(readingsExample, 0),
        column1(readingsExample, 1),
        null,
        25,
        'soda ash',
        1,
        'unknown',
        null,
        0,
        'good',
        null,
        [[''], [''], ['']],
        [[4.86], [5.65], [6.1]],
        [[46000.3], [46000.32], [46000.34]],
      ],
      gives: [
        ['8.54', '6.0', '6.1', '6.2', '7.0', '7.4', '7.4'],
        ['11.1', '6.1', '6.3', '6.5', '7.1', '7.5', '7.5'],
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
    const advice = readingsOf(a);
    if (isError(advice)) return advice;
    const { segment } = advice;
    // What the advice believes of a one-decimal meter is wider than the curve needs.
    const cloud =
      a.meter === 'cheap' ? posterior(withFitErrors(segment.beliefs, a.meter), segment.series) : advice.cloud;
    const path = pathOf(segment.beliefs, cloud, a.highest);
    if (path.length === 0)
      return noSolution(
        `There is no curve, because the water is already at pH ${a.highest} or above, or the product cannot take it there.`,
      );
    const grams = (moles: number): number => gramsOf(materialOf(a.material), moles, a.volume, a.purity);
    const given = grams(segment.base + (segment.series.doses.at(-1) ?? 0));
    return path.map(({ dose, reach }) => {
      const aired = airedReach(segment.beliefs, cloud, dose);
      return {
        total: given + grams(dose),
        ...reach,
        airedLow: aired.low,
        aired: aired.likely,
        airedHigh: aired.high,
      };
    });
  },
});
