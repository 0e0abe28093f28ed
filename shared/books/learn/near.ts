import type { Near } from '../../base/near';
import type { Trends } from '../../learn';
import { restsOn } from './ratesSheet';
import { trendVerdict } from './trendsSheet';

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

/** What is said of so many runs that differ so many times more than chance makes them. */
const said = (runs: number, sigmaZ: number): string =>
  trendVerdict({
    points: Array.from({ length: runs }),
    chart: { hasLimits: true, points: [], sigmaZ },
  } as unknown as Trends);

export const NEAR: readonly Near[] = [
  {
    number: 'Times more than chance that runs differ, from which it is said',
    value: 1.5,
    below: () => said(30, 1.45),
    above: () => said(30, 1.55),
    answers: [
      'No run stands out from the usual spread.',
      'No run stands out from the usual spread. Runs differ 1.6 times more than chance of the counting alone ' +
        'would make them, as living things do; the limits allow for it.',
    ],
  },
  {
    number: 'Runs from which on limits are no longer provisional',
    value: 20,
    below: () => said(19, 1),
    above: () => said(21, 1),
    answers: [
      'No run stands out from the usual spread. Provisional: fewer than 20 runs.',
      'No run stands out from the usual spread.',
    ],
  },
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
