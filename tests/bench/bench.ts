import { readFileSync, writeFileSync } from 'node:fs';
import { bundleSizes } from './bundle';
import { auditTimings } from './audit';
import { openTimings } from './auditOpen';
import type { Timing } from './catalogue';
import { catalogueTimings } from './catalogue';
import { engineTimings } from './engine';
import { freezeTimings } from './freeze';
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
const shown = ({ value, unit }: Pick<Timing, 'value' | 'unit'>): string =>
  `${Number(value.toPrecision(3))} ${unit}`;
const isMissed = ({ value, limit }: Timing): boolean => limit !== undefined && value > limit;
const aim = ({ limit, unit }: Timing): string => (limit === undefined ? '' : `≤ ${limit} ${unit}`);

for (const timing of timings)
  console.log(
    `${isMissed(timing) ? 'MISS' : 'ok  '} ${timing.name.padEnd(62)} ${shown(timing).padStart(10)}   ${aim(timing)}`,
  );

const table = (rows: readonly Timing[]): string =>
  [
    '| What | Measured | Aim |',
    '|---|---|---|',
    ...rows.map((t) => `| ${t.name} | ${shown(t)}${isMissed(t) ? ' (missed)' : ''} | ${aim(t)} |`),
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
