import { readdirSync, readFileSync } from 'node:fs';
import { CATALOGUE } from '../../shared/catalogue';
import { SOURCES } from '../../shared/families/sources';
import type { HelpTexts } from '../../taskpane/help/pages';
import { helpPages } from '../../taskpane/help/pages';
import { functionsJsonText } from '../shell/functionsJson';

const HELP = 'taskpane/help';
const read = (name: string): string => readFileSync(`${HELP}/${name}`, 'utf8');

/** A page of help is one file: its pictures are inside it. */
const withPictures = (markdown: string): string =>
  markdown.replaceAll(
    /\]\(\.\.\/(pictures\/[\w-]+\.png)\)/g,
    (_all, path: string) => `](data:image/png;base64,${readFileSync(`${HELP}/${path}`).toString('base64')})`,
  );

/** The texts of help that are files: guides and changes as Markdown, figures and comparisons as tests wrote them. */
export const helpTexts = (): HelpTexts => ({
  guides: readdirSync(`${HELP}/guides`)
    .filter((name) => name.endsWith('.md'))
    .map((name) => ({ key: name.replace(/\.md$/, ''), markdown: withPictures(read(`guides/${name}`)) })),
  changes: read('changes.md'),
  oneRun: read('one-run.md'),
  printed: JSON.parse(read('printed.json')) as HelpTexts['printed'],
  figures: JSON.parse(read('figures.json')) as HelpTexts['figures'],
  unopened: JSON.parse(read('unopened.json')) as HelpTexts['unopened'],
});

/** Files of the built add-in that are derived: the list of functions, and the pages of help. */
export const derivedAssets = (base: string): readonly { readonly name: string; readonly text: string }[] => [
  { name: 'functions.json', text: functionsJsonText(CATALOGUE, `${base}/help`) },
  ...helpPages(CATALOGUE, SOURCES, helpTexts()).map(({ name, text }) => ({ name: `help/${name}`, text })),
];
