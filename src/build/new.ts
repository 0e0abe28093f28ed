import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { newFunction } from './newFunction';

const [id = '', family = ''] = process.argv.slice(2);
const indexPath = `shared/families/${family}/index.ts`;
const made = newFunction(id, family, existsSync(indexPath) ? readFileSync(indexPath, 'utf8') : '');
const there = typeof made === 'string' ? [] : Object.keys(made.files).filter((path) => existsSync(path));
if (typeof made === 'string' || there.length > 0) {
  process.stderr.write(
    `${typeof made === 'string' ? made : `Not written: ${there.join(', ')} is there already.`}\n`,
  );
  process.stderr.write('Use: npm run new -- GAS.PRESSURE water\n');
  process.exitCode = 1;
} else {
  for (const [path, text] of Object.entries({ ...made.files, [made.index.path]: made.index.text })) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
    process.stdout.write(`wrote ${path}\n`);
  }
  process.stdout.write(
    `Next: fill them in, then npm run gen, and npm test -- --selectProjects unit -t ${id}\n`,
  );
}
