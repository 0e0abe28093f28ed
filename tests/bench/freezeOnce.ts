import { readFileSync, writeFileSync } from 'node:fs';
import { freeze, verify } from '../../shared/catalogue/sharing';

/** One freeze in a process of its own, so that its peak memory is its own: freezeOnce.ts in.xlsx out.xlsx [column] */
const [, , from = '', to = '', column] = process.argv;
const file = new Uint8Array(readFileSync(from));
const start = performance.now();
const worked = process.cpuUsage();
const result = freeze(file, {
  date: '14 March 2026',
  workbook: 'bench.xlsx',
  ...(column ? { blank: [column] } : {}),
});
const ms = performance.now() - start;
const { user, system } = process.cpuUsage(worked);
const megabytes = process.resourceUsage().maxRSS / 1024;
if (result.kind !== 'made') throw new Error(result.sentence);
writeFileSync(to, result.bytes);
const again = performance.now();
const check = verify(result.bytes);
console.log(
  JSON.stringify({
    ms,
    processorMs: (user + system) / 1000,
    megabytes,
    frozen: result.report.frozen,
    blocks: result.report.blocks,
    verifyMs: performance.now() - again,
    matches: check.kind === 'checked' && check.matches,
  }),
);
