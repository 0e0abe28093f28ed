import type { Near } from '../../base/near';
import { isError } from '../../base/values';
import { invoke } from '../../functions/invoke';
import { logFaults } from './kernels/logFaults';
import { incubationHours } from './records/hatching';

/** What is said of a kept temperature log changes at numbers somebody chose; no bundle holds this file. */
/** What is wrong with a second reading, so many hours after one of 27 °C. */
const second = (reading: number, hours = 1): string | undefined =>
  logFaults([46_000, 46_000 + hours / 24], [27, reading], 24)[0]?.kind;
const alone = (reading: number): string | undefined => logFaults([46_000], [reading], 24)[0]?.kind;
const edge = (
  number: string,
  value: number,
  [below, above]: readonly [below: () => unknown, above: () => unknown],
  answers: Near['answers'],
): Near => ({ number, value, below, above, answers });

/** Hours to the hatch at 25 °C by a table of one's own. */
const byTable = (...rows: readonly (readonly [celsius: number, hours: number])[]): unknown => {
  const got = invoke(incubationHours, [25, null, rows.map(([t]) => [t]), rows.map(([, h]) => [h])]);
  return isError(got) ? got.message?.slice(0, 44) : Number(got).toFixed(1);
};

export const NEAR: readonly Near[] = [
  edge('Coldest water in °C', 0, [() => alone(-0.1), () => alone(0.1)], ['impossible', undefined]),
  edge('Warmest water in °C', 45, [() => alone(44.9), () => alone(45.1)], [undefined, 'fahrenheit']),
  edge('Degrees an hour water changes', 4, [() => second(30.9), () => second(31.1)], [undefined, 'jump']),
  edge(
    'Hours after which a leap is no leap',
    2,
    [() => second(37, 1.95), () => second(37, 2.05)],
    ['jump', undefined],
  ),
  edge(
    'Part of an hour two readings count apart',
    0.5,
    [() => second(28.95, 0.1), () => second(29.05, 0.1)],
    [undefined, 'jump'],
  ),
  edge(
    'Coldest water that °F mean',
    7,
    [() => alone(45.2), () => alone(113.1)],
    ['fahrenheit', 'impossible'],
  ),
  edge(
    'Rows of a table that hours can be read between',
    2,
    [() => byTable([25, 30]), () => byTable([25, 30], [28, 24])],
    ['ownTemperatures: a table of your own needs a', '30.0'],
  ),
];
