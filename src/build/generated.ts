import { CATALOGUE } from '../../shared/catalogue';
import { functionsJsonText } from '../functionsJson';

export interface GeneratedFile {
  readonly path: string;
  readonly text: () => string;
}

/** The files that are derived from the code and kept in the repository. */
export const GENERATED: readonly GeneratedFile[] = [{ path: 'tests/golden/functions.json', text: () => functionsJsonText(CATALOGUE) }];
