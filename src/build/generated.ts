import { readFileSync } from 'node:fs';
import { CATALOGUE } from '../../shared/catalogue';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';
import { TEMPLATES, TRANSLATED, buildTemplate } from '../../templates';
import { freeze } from '../../shared/catalogue/sharing';
import { SOURCES } from '../../shared/families/sources';
import { runEvidenceText } from '../../taskpane/help/runEvidence';
import { trustText } from '../../taskpane/help/trustText';
import { lookUp, phraseTable } from '../../shared/units/phrases';
import { phrases as fr } from '../../taskpane/words/phrases/fr';
import { phrases as frMore } from '../../taskpane/words/phrases/frMore';
import { helpTexts } from './derivedAssets';
import { functionsJsonText } from '../shell/functionsJson';

export interface GeneratedFile {
  readonly path: string;
  readonly content: () => string | Uint8Array;
}

/** Eight digits: what the model says, not how this machine's exp and pow end. */
const modelText = (model: WorkbookModel): string =>
  `${JSON.stringify(model, (_key, value: unknown) => (typeof value === 'number' ? Number(value.toPrecision(8)) : value), 1)}\n`;

const MADE_ON = { en: 'the day the template was made', fr: 'le jour où le modèle fut fait' } as const;
const SAID = {
  fr: phraseTable('fr', { ...frMore, ...fr }, () => ','),
} as const;
/** The page of a twin is in the language of its template: season-plan-fr.xlsx. */
const languageOf = (name: string): keyof typeof MADE_ON => (/-fr\.xlsx$/.test(name) ? 'fr' : 'en');

/** The twin of a template for readers without Spawnbook: the same sheets, every number a value. */
function valuesOnly(name: string, file: Uint8Array): Uint8Array {
  const language = languageOf(name);
  const copy = freeze(file, {
    workbook: name,
    date: MADE_ON[language],
    ...(language === 'en' ? {} : { language, say: (text) => lookUp(SAID[language], text) }),
  });
  if (copy.kind !== 'made') throw new Error(`${name}: ${copy.sentence}`);
  return copy.bytes;
}
/** A season takes seconds to plan and write; two files come of it. */
function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => (made ??= { value: make() }).value;
}
function filesOf([name, model]: readonly [string, () => WorkbookModel]): readonly GeneratedFile[] {
  const file = once(() => buildTemplate(model()));
  return [
    { path: `templates/${name}`, content: file },
    {
      path: `templates/${name.replace(/\.xlsx$/, '-values.xlsx')}`,
      content: () => valuesOnly(name, file()),
    },
  ];
}

/**
 * The files that are derived from the code and kept in the repository; a reader of a change sees there what
 * it does.
 */
export const GENERATED: readonly GeneratedFile[] = [
  { path: 'tests/golden/functions.json', content: () => functionsJsonText(CATALOGUE) },
  { path: 'taskpane/help/trust.md', content: () => trustText({ ...helpTexts(), sources: SOURCES }) },
  { path: 'taskpane/help/one-run.md', content: runEvidenceText },
  ...Object.entries(TRANSLATED).flatMap(filesOf),
  ...Object.entries(TEMPLATES).flatMap(([name, model]): readonly GeneratedFile[] => [
    ...filesOf([name, model]),
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
