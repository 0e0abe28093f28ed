import { readFileSync, writeFileSync } from 'node:fs';
import { bundleSizes } from './bundle';
import { auditTimings } from './audit';
import { openTimings } from './auditOpen';
import type { Timing } from './catalogue';
import { catalogueTimings } from './catalogue';
import { engineTimings } from './engine';
import { freezeTimings, WITNESS } from './freeze';
import { learnTimings } from './learn';
import { localSheetTimings } from './localSheet';
import { rowTimings } from './rows';
import { seasonTimings } from './season';

/**
 * npm run bench: every promise about speed and size, measured side by side in one run. Ends with code 1 when
 * one is missed.
 * --readme writes the figures into README.md and DEVELOPERS.md.
 */
const timings: Timing[] = [
  ...catalogueTimings(),
  ...rowTimings(),
  ...engineTimings(),
  ...bundleSizes(),
  ...(await freezeTimings()),
  ...(await localSheetTimings()),
  ...auditTimings(),
  ...openTimings(),
  ...learnTimings(),
  ...seasonTimings(),
];
/**
 * The aims in seconds were set on a machine on which the witness took 1.64 s ÷ 0.19 (both stood in the README of
 * 25 November 2026). The same two cores were two to three times slower on other days, by the witness too. A time
 * is therefore judged at the pace of that machine, and shown as it was and as judged.
 */
const FIRST_WITNESS_SECONDS = 8.63;
const witness = timings.find(({ name }) => name === WITNESS)?.value ?? FIRST_WITNESS_SECONDS;
const pace = witness / FIRST_WITNESS_SECONDS;
const TIMES: ReadonlySet<string> = new Set(['s', 'ms', 'µs']);
const judged = ({ value, unit, limit }: Timing): number =>
  limit !== undefined && TIMES.has(unit) ? value / pace : value;

const rounded = (value: number, unit: string): string => `${Number(value.toPrecision(3))} ${unit}`;
const isMissed = (timing: Timing): boolean => timing.limit !== undefined && judged(timing) > timing.limit;
const aim = ({ limit, unit }: Timing): string => (limit === undefined ? '' : `≤ ${limit} ${unit}`);

for (const timing of timings)
  console.log(
    `${isMissed(timing) ? 'MISS' : 'ok  '} ${timing.name.padEnd(62)} ${rounded(timing.value, timing.unit).padStart(10)}  at the first pace ${rounded(judged(timing), timing.unit).padStart(10)}   ${aim(timing)}`,
  );

const table = (rows: readonly Timing[]): string =>
  [
    '| What | Measured | At the first pace | Aim |',
    '|---|---|---|---|',
    ...rows.map(
      (t) =>
        `| ${t.name} | ${rounded(t.value, t.unit)} | ${rounded(judged(t), t.unit)}${isMissed(t) ? ' (missed)' : ''} | ${aim(t)} |`,
    ),
  ].join('\n');
/** The front page shows what a user feels; DEVELOPERS.md shows all. */
const PAGES: readonly (readonly [path: string, rows: readonly Timing[]])[] = [
  ['README.md', timings.filter(({ isForReadme }) => isForReadme)],
  ['DEVELOPERS.md', timings],
];
if (process.argv.includes('--readme'))
  for (const [path, rows] of PAGES)
    writeFileSync(
      path,
      readFileSync(path, 'utf8').replace(
        /<!-- bench:start -->[\s\S]*<!-- bench:end -->/,
        `<!-- bench:start -->\n${table(rows)}\n<!-- bench:end -->`,
      ),
    );
process.exitCode = timings.some(isMissed) ? 1 : 0;
