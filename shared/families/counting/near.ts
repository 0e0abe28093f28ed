import type { Near } from '../../base/near';
import { clusteredShare } from './kernels/clusteredShare';
import { subsamplesFor } from './kernels/sampleSize';

/** What is said of counted samples changes at numbers somebody chose; no bundle holds this file. */
const isClumped = (good: readonly number[], of: readonly number[]): boolean =>
  clusteredShare(good, of, 0.95).isClumped;
/** Samples for ± so large a part of the answer, where one sample strays by the whole of it. */
const isPractical = (half: number): boolean => Number.isFinite(subsamplesFor(1, half, 0.95));

export const NEAR: readonly Near[] = [
  {
    number: 'Samples from which on they can differ among themselves',
    value: 2,
    below: () => [isClumped([5], [10]), clusteredShare([5], [10], 0.95).low.toFixed(4)],
    above: () => [isClumped([1, 9], [10, 10]), clusteredShare([1, 9], [10, 10], 0.95).low.toFixed(4)],
    answers: [
      // One sample: Wilson alone.
      [false, '0.2366'],
      [true, '0.0000'],
    ],
  },
  {
    number: 'Samples in all that nobody takes',
    value: 100_000,
    below: () => isPractical(0.0062),
    above: () => isPractical(0.006_19),
    answers: [true, false],
  },
];
