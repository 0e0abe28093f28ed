import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { GENERATED } from './generated';

// `npm run gen`: refreshes every derived file; `npm run check` fails when one is stale.
for (const { path, content } of GENERATED) {
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, content());
  console.log(`wrote ${path}`);
}
