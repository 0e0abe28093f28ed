export type { Estimate } from '../families/learning/kernels/estimate';
export type { FarmRate, FarmRates, LearnSettings } from './learn';
export { learnRates, learnSteps, rateOf } from './learn';
export type { Observed, ObserveSettings, TemperatureLog } from './observe';
export { observe } from './observe';
export type { RateKey, RateSpec } from '../families/learning/rates';
export { RATES, RATE_KEYS, rateSpec } from '../families/learning/rates';
export type { RatesRead, ReadRate } from './readRates';
export { ratesFromCells } from './readRates';
export type { LearnedFigure, PlannedRate, PlannedWith } from './toAssumptions';
export {
  femaleSpreadOf,
  figuresFrom,
  latencyOffsetsOf,
  ratesToAssumptions,
  ratesToFigures,
} from './toAssumptions';
export type { ControlChart, Signal } from '../families/learning/kernels/controlChart';
export { controlChart } from '../families/learning/kernels/controlChart';
export type { TrendGroup, TrendRate, Trends, TrendView } from './trends';
export { trendsOf, trendSteps } from './trends';
