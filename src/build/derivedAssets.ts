import { CATALOGUE } from '../../shared/catalogue';
import { SOURCES } from '../../shared/families/sources';
import { functionPages } from '../../taskpane/help/pages';
import { functionsJsonText } from '../shell/functionsJson';

/** Files of the built add-in that are derived from the catalogue: the list of functions, and their help pages. */
export const derivedAssets = (base: string): readonly { readonly name: string; readonly text: string }[] => [
  { name: 'functions.json', text: functionsJsonText(CATALOGUE, `${base}/help`) },
  ...functionPages(CATALOGUE, SOURCES).map(({ name, text }) => ({ name: `help/${name}`, text })),
];
