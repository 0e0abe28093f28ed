import { readFileSync } from 'node:fs';
import { CATALOGUE } from '../../shared/catalogue';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';
import { TEMPLATES, TRANSLATED, buildTemplate } from '../../templates';
import { freeze } from '../../shared/catalogue/sharing';
import { SOURCES } from '../../shared/families/sources';
import { runEvidenceText } from '../../taskpane/help/runEvidence';
import { trustText } from '../../taskpane/help/trustText';
import { helpTexts } from './derivedAssets';
import { functionsJsonText } from '../shell/functionsJson';

export interface GeneratedFile {
  readonly path: string;
  readonly content: () => string | Uint8Array;
}

/** Eight digits: what the model says, not how this machine's exp and pow end. */
const modelText = (model: WorkbookModel): string =>
  `${JSON.stringify(model, (_key, value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(8)) : value), 1)}\n`;

/** The twin of a template for readers without Spawnbook: the same sheets, every number a value. */
function valuesOnly(name: string, file: Uint8Array): Uint8Array {
  const copy = freeze(file, { workbook: name, date: 'the day the template was made' });
  if (copy.kind !== 'made') throw new Error(`${name}: ${copy.sentence}`);
  return copy.bytes;
}

/**
 * The files that are derived from the code and kept in the repository; a reader of a change sees there what
 * it does.
 */
export const GENERATED: readonly GeneratedFile[] = [
  { path: 'tests/golden/functions.json', content: () => functionsJsonText(CATALOGUE) },
  { path: 'taskpane/help/trust.md', content: () => trustText({ ...helpTexts(), sources: SOURCES }) },
  { path: 'taskpane/help/one-run.md', content: runEvidenceText },
  ...Object.entries(TRANSLATED).map(([name, model]): GeneratedFile => ({
    path: `templates/${name}`,
    content: () => buildTemplate(model()),
  })),
  ...Object.entries(TEMPLATES).flatMap(([name, model]): GeneratedFile[] => [
    { path: `templates/${name}`, content: () => buildTemplate(model()) },
    {
      path: `templates/${name.replace(/\.xlsx$/, '-values.xlsx')}`,
      content: () => valuesOnly(name, buildTemplate(model())),
    },
    // A whole season has tens of thousands of cells: its model would say less than its tests do.
    ...(name.startsWith('season-') && name !== 'season-plan.xlsx'
      ? []
      : [{ path: `tests/golden/${name.replace(/\.xlsx$/, '.json')}`, content: () => modelText(model()) }]),
  ]),
];

/** Whether the kept file is what the code gives now. */
export const isFresh = ({ path, content }: GeneratedFile): boolean => {
  try {
    return Buffer.from(content()).equals(readFileSync(path));
  } catch {
    return false;
  }
};
