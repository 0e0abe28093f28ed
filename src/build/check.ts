import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { CATALOGUE } from '../../shared/catalogue';
import { functionsJson, functionsJsonFaults } from '../shell/functionsJson';
import { arrowFaults } from './checks/arrows';
import type { Figures } from './checks/claims';
import { claimFaults } from './checks/claims';
import { bundleFaults, gzipSize } from './checks/bundle';
import { layoutFaults } from './checks/layout';
import type { Lock } from './checks/licences';
import { licenceFaults } from './checks/licences';
import type { Released } from './checks/released';
import { releasedFaults } from './checks/released';
import { SOURCES } from '../../shared/families/sources';
import type { SourceText } from './checks/longFiles';
import { longFileFaults } from './checks/longFiles';
import type { Held, NearDebts } from './checks/near';
import { nearFaults, nearShare } from './checks/near';
import type { Debts } from './checks/sources';
import { sourceFaults } from './checks/sources';
import { GENERATED, isFresh } from './generated';
import { lintManifest } from './manifest/manifestLint';
import { assetSize } from './icons/pngSize';

// `npm run check`: what neither the compiler nor a unit test sees. Prints every fault; the exit code is 1
// when there is one.
const read = (path: string): string => readFileSync(path, 'utf8');
const hasLicenceFile = (path: string): boolean => existsSync(`${path}/LICENSE`);
const BUNDLE = 'dist/functions.js';

const FIGURES = 'taskpane/help/figures.json';
const DEBTS = 'tests/reference/debts.json';
const [HELD, NEAR_DEBTS] = ['tests/near/held.json', 'tests/near/debts.json'];
const filesIn = (folder: string, ending: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith(ending))
    .map((file) => `${folder}/${file}`);
const sources: SourceText[] = ['shared', 'src', 'taskpane', 'templates']
  .flatMap((folder) => filesIn(folder, '.ts'))
  .map((path) => ({ path, text: read(path) }));
/** A test may be named after its source. */
const referenceTests = (): string[] =>
  filesIn('tests/reference', '.test.ts').map((path) => `${path.replaceAll(/[/.]/g, ' ')}\n${read(path)}`);

const stale = (): string[] =>
  GENERATED.filter((file) => !isFresh(file)).map(({ path }) => `${path} is stale: npm run gen`);

const CHECKS: readonly (readonly [string, () => string[]])[] = [
  ['manifest', () => lintManifest(read('manifest.xml'), assetSize)],
  ['functions.json', () => functionsJsonFaults(functionsJson(CATALOGUE))],
  [
    'what was released',
    () =>
      releasedFaults(
        JSON.parse(read('tests/golden/released.json')) as Released,
        CATALOGUE,
        read('manifest.xml'),
      ),
  ],
  ['generated files', stale],
  ['packages', () => licenceFaults(JSON.parse(read('package-lock.json')) as Lock, hasLicenceFile)],
  ['layout', () => layoutFaults(readdirSync('.'))],
  ['arrows', () => arrowFaults(sources)],
  ['long files', () => longFileFaults(sources)],
  [
    'numbers somebody chose',
    () => nearFaults(sources, JSON.parse(read(HELD)) as Held, JSON.parse(read(NEAR_DEBTS)) as NearDebts),
  ],
  ['sources', () => sourceFaults(SOURCES, referenceTests(), JSON.parse(read(DEBTS)) as Debts)],
  ['claims', () => claimFaults('README.md', read('README.md'), JSON.parse(read(FIGURES)) as Figures)],
  [
    'bundle size',
    () =>
      existsSync(BUNDLE)
        ? bundleFaults(readFileSync(BUNDLE))
        : [`${BUNDLE} is not there to be looked at: npm run build`],
  ],
];

let faults = 0;
for (const [name, check] of CHECKS) {
  const found = check();
  faults += found.length;
  console.log(`${found.length === 0 ? 'ok' : 'FAILED'}  ${name}`);
  for (const fault of found) console.log(`  ${fault}`);
}
console.log(nearShare(sources, JSON.parse(read(HELD)) as Held));
if (existsSync(BUNDLE))
  console.log(
    `functions bundle: ${(gzipSize(readFileSync(BUNDLE)) / 1024).toFixed(1)} KB gzipped, ${CATALOGUE.length} functions`,
  );
process.exitCode = faults > 0 ? 1 : 0;
