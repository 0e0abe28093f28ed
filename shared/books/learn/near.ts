import type { Near } from '../../base/near';
import { restsOn } from './ratesSheet';

/** What is said of a rate, by how much of it the own runs weigh, changes at numbers somebody chose. */
const edge = (
  number: string,
  value: number,
  runs: number,
  [below, above]: readonly [below: number, above: number],
  answers: readonly [below: string, above: string],
): Near => ({
  number,
  value,
  below: () => restsOn({ runs, ownWeight: below }),
  above: () => restsOn({ runs, ownWeight: above }),
  answers,
});

export const NEAR: readonly Near[] = [
  edge(
    'Weight of other runs of the farm',
    0.005,
    0,
    [0.0049, 0.0051],
    ['literature only', "the farm's other runs"],
  ),
  edge('Weight of own runs that is most', 0.5, 9, [0.49, 0.51], ['mostly literature', 'mostly own runs']),
  edge('Weight of own runs that is nearly all', 0.9, 9, [0.89, 0.91], ['mostly own runs', 'own runs']),
];
