import type { NumericField } from '../fields';
import type { Link } from './links';

/** What a found relation may mean: the result, its inputs in order, and the sign of each. */
export interface MeaningPattern {
  readonly kind: Link['kind'];
  readonly result: NumericField;
  readonly inputs: readonly NumericField[];
  readonly signs?: readonly number[];
  readonly isRunning?: true;
  /** Of a product, all in the units of the fields: grams × pieces ÷ 1000 = kilograms. NaN where these have no unit. */
  readonly scale?: number;
}

const product = (result: NumericField, ...inputs: NumericField[]): MeaningPattern => ({
  kind: 'product',
  result,
  inputs,
});
const running = (result: NumericField, plus: NumericField, ...minus: NumericField[]): MeaningPattern => ({
  kind: 'sum',
  result,
  inputs: [plus, ...minus],
  signs: [1, ...minus.map(() => -1)],
  isRunning: true,
});
const sum = (
  result: NumericField,
  plus: readonly NumericField[],
  minus: readonly NumericField[] = [],
): MeaningPattern => ({
  kind: 'sum',
  result,
  inputs: [...plus, ...minus],
  signs: [...plus.map(() => 1), ...minus.map(() => -1)],
});

export const PATTERNS: readonly MeaningPattern[] = [
  product('eggs', 'eggWeight', 'eggsPerGram'),
  product('eggs', 'eggVolume', 'eggsPerMl'),
  product('hatched', 'eggs', 'hatchShare'),
  product('hatched', 'fertilised', 'hatchShare'),
  product('fertilised', 'eggs', 'fertilisedShare'),
  product('sampleGood', 'sampleSize', 'fertilisedShare'),
  product('fry', 'hatched', 'survival'),
  product('fingerlings', 'hatched', 'survival'),
  product('fingerlings', 'fry', 'survival'),
  product('alive', 'stocked', 'survival'),
  product('fish', 'stocked', 'survival'),
  product('hormoneVolume', 'femaleWeight', 'hormoneDose'),
  { kind: 'part', result: 'hormoneVolume', inputs: ['femaleWeight'] },
  product('doseFirst', 'femaleWeight', 'rateFirst'),
  product('doseSecond', 'femaleWeight', 'rateSecond'),
  { ...product('degreeHours', 'temperature', 'latency'), scale: NaN },
  { ...product('biomass', 'fish', 'weight'), scale: 1e-3 },
  { ...product('feed', 'biomass', 'ration'), scale: 1e3 },
  product('sampleWeight', 'sampleCount', 'weight'),
  { ...product('treatAmount', 'volume', 'treatRate'), scale: 1e-3 },
  product('amount', 'sold', 'priceEach'),
  { ...product('amount', 'sold', 'priceThousand'), scale: 1e-3 },
  product('amount', 'quantity', 'unitPrice'),
  product('feedTotal', 'feed', 'days'),
  sum('due', ['amount'], ['paid']),
  sum('due', ['amount'], ['deposit']),
  sum('due', ['amount'], ['deposit', 'paid']),
  sum('closing', ['opening', 'stocked'], ['dead', 'sold']),
  sum('closing', ['opening', 'movedIn'], ['dead', 'sold']),
  sum('closing', ['opening', 'stocked', 'movedIn'], ['dead', 'sold', 'movedOut']),
  sum('closing', ['opening', 'stocked', 'movedIn'], ['dead', 'movedOut', 'sold']),
  sum('closing', ['opening', 'movedIn'], ['movedOut', 'dead', 'sold']),
  sum('closing', ['opening'], ['dead', 'sold']),
  sum('closing', ['opening'], ['dead']),
  sum('alive', ['stocked'], ['dead']),
  sum('graded', ['gradeSmall', 'gradeMiddle', 'gradeBig', 'gradeCull']),
  sum('graded', ['gradeSmall', 'gradeMiddle', 'gradeBig']),
  sum('graded', ['gradeSmall', 'gradeBig']),
  running('balance', 'income', 'expense'),
  running('dueRunning', 'due'),
  running('dueRunning', 'amount', 'paid'),
  running('deadRunning', 'dead'),
  running('deadRunning', 'deadTotal'),
  { kind: 'carry', result: 'opening', inputs: ['closing'] },
];
