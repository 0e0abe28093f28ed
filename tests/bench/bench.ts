import { catalogueTimings } from './catalogue';

/** npm run bench: every promise about speed, measured side by side in one run. Ends with code 1 when one is missed. */
const timings = [...catalogueTimings()];
for (const { name, value, unit, limit } of timings)
  console.log(`${value <= limit ? 'ok  ' : 'MISS'} ${name.padEnd(44)} ${value.toPrecision(3).padStart(8)} ${unit}   (limit ${limit} ${unit})`);
process.exitCode = timings.every(({ value, limit }) => value <= limit) ? 0 : 1;
