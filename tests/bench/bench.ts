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
 * --readme writes the figures into README.md.
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

for (const timing of timings)
  console.log(
    `${timing.value <= timing.limit ? 'ok  ' : 'MISS'} ${timing.name.padEnd(62)} ${shown(timing).padStart(10)}   (limit ${timing.limit} ${timing.unit})`,
  );

if (process.argv.includes('--readme')) {
  const table = [
    '| What | Measured | Promised |',
    '|---|---|---|',
    ...timings.map((t) => `| ${t.name} | ${shown(t)} | ≤ ${t.limit} ${t.unit} |`),
  ].join('\n');
  const readme = readFileSync('README.md', 'utf8');
  writeFileSync(
    'README.md',
    readme.replace(
      /<!-- bench:start -->[\s\S]*<!-- bench:end -->/,
      `<!-- bench:start -->\n${table}\n<!-- bench:end -->`,
    ),
  );
}
process.exitCode = timings.every(({ value, limit }) => value <= limit) ? 0 : 1;
