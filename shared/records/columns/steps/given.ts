import type { FieldName } from '../../fields';
import type { Candidate, Looked } from './looked';

/** What each column is read as so far. */
export type Given = Map<Looked, Candidate>;
export const holderOf = (given: Given, field: FieldName): Looked | undefined =>
  [...given].find(([, one]) => one.field === field)?.[0];

export const at = (list: Float64Array | undefined, i: number): number => list?.[i] ?? NaN;
export const LEAST_LINES = 4;
export const MOSTLY = 0.8;
export const LINES = 200;
/** Share of the lines that say both in which the test holds; 0 where too few do. */
export function shareOf(length: number, test: (line: number) => boolean | undefined): number {
  let [tried, held] = [0, 0];
  for (let line = 0; line < Math.min(LINES, length); line++) {
    const answer = test(line);
    if (answer === undefined) continue;
    tried++;
    if (answer) held++;
  }
  return tried < LEAST_LINES ? 0 : held / tried;
}
