import { readFileSync } from 'node:fs';
import { CATALOGUE } from '../../shared/catalogue';
import { functionsJsonText } from '../functionsJson';
import { withFunctionTable } from './readmeTable';

export interface GeneratedFile {
  readonly path: string;
  readonly text: () => string;
}

/** The files that are derived from the code and kept in the repository. */
export const GENERATED: readonly GeneratedFile[] = [
  { path: 'tests/golden/functions.json', text: () => functionsJsonText(CATALOGUE) },
  { path: 'README.md', text: () => withFunctionTable(readFileSync('README.md', 'utf8')) },
];
