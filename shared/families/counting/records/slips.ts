import type { CellError } from '../../../base/values';
import { refuse } from '../../../base/values';
import { gramsFromKilograms } from '../../../units/convert';

/** Sentences for counts that cannot be right, each naming the likely slip. */

const plain = (x: number): string => String(Number(x.toPrecision(6)));
const sum = (list: readonly number[]): number => list.reduce((total, x) => total + x, 0);

/** Samples whose number per unit differs more than this from the rest were hardly typed in one unit. */
const HARDLY_ONE_UNIT = 10;

const oddOneOut = (
  sizes: readonly number[],
  counts: readonly number[],
  names: SampleNames,
): CellError | undefined => {
  const ratios = sizes.map((size, i) => (counts[i] ?? 0) / size);
  const middle = [...ratios].sort((a, b) => a - b)[Math.floor(ratios.length / 2)] ?? 0;
  const row = ratios.findIndex((r) => r > middle * HARDLY_ONE_UNIT || r * HARDLY_ONE_UNIT < middle);
  if (ratios.length < 2 || row < 0) return undefined;
  return refuse(
    `${names.sizes}, row ${row + 1}: ${plain(ratios[row] ?? 0)} per ${names.unit}, while the other samples are near ${plain(middle)}. Was this one typed in another unit, or a count in the wrong row?`,
  );
};

export interface SampleNames {
  readonly total: string;
  readonly sizes: string;
  readonly unit: string;
  /** What a total a thousand times too small was typed in. */
  readonly thousandfold: string;
}

/** Why these subsamples cannot stand for that lot, or nothing. */
export const sampleSlip = (
  lot: number,
  sizes: readonly number[],
  counts: readonly number[],
  names: SampleNames,
): CellError | undefined => {
  const size = sum(sizes);
  if (sum(counts) === 0)
    return refuse('sampleCounts: nothing was counted in any sample. Take larger samples.');
  if (lot < size * (1 - 1e-12)) {
    const thousand = ` That looks like ${names.thousandfold}: multiply it by 1000`;
    const swapped = 'were the two typed the wrong way round, or a sample weighed with its dish?';
    const likely =
      lot < size / 2 && gramsFromKilograms(lot) >= size ? `${thousand}.` : `${thousand}; or ${swapped}`;
    return refuse(
      `${names.total}: ${plain(lot)} ${names.unit} is less than the samples together, ${plain(size)} ${names.unit}.${likely}`,
    );
  }
  return oddOneOut(sizes, counts, names);
};

/** What the interval of a lot rests on. */
export const intervalBasis = (samples: number): string =>
  samples === 1
    ? 'one sample: chance of the count only (Poisson), the true error is larger; take 3 or more'
    : `${samples} samples: spread around the ratio of sums, t with ${samples - 1} ${samples === 2 ? 'degree' : 'degrees'} of freedom`;

/** k of n where k is larger, in the words of the stage. */
export const moreThanSample = (k: number, n: number, many: string, sample: string, why: string): CellError =>
  refuse(`${many}: ${plain(k)} is more than ${sample}, ${plain(n)}. ${why}`);
