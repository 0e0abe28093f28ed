import { CATALOGUE } from '../../shared/catalogue';

/**
 * `npm run new -- GAS.PRESSURE water`: writes the files of a new function, ready to be filled in, and adds it to its
 * family. Nothing that is there is written over.
 */
const FAMILIES: Readonly<Record<string, string>> = {
  water: 'Water',
  timing: 'Timing',
  brood: 'Brood fish',
  counting: 'Counting',
  feeding: 'Rearing',
  growth: 'Rearing',
  money: 'Plan and money',
};

export interface NewFiles {
  readonly files: Readonly<Record<string, string>>;
  readonly index: { readonly path: string; readonly text: string };
}

const camel = (id: string): string =>
  id
    .toLowerCase()
    .split('.')
    .map((word, i) => (i === 0 ? word : word.charAt(0).toUpperCase() + word.slice(1)))
    .join('');

const kernelText = (name: string): string => `/**
 * What it gives, in words.
 * Equation as published: y = a × x. Units: x in …, y in …. Valid: … to …. Source: KEY, equation n.
 * Example: ${name}Of(2) → 4.
 */
export const ${name}Of = (x: number): number => 2 * x;
`;

const recordText = (
  id: string,
  name: string,
  family: string,
): string => `import { defineFunction, value } from '../../../functions/define';
import { num } from '../../../functions/params';
import { share } from '../../../units/quantities';
import { ${name}Of } from '../kernels/${name}';

export const ${name} = defineFunction({
  id: '${id}',
  family: '${FAMILIES[family] ?? ''}',
  summary: 'One line: what it answers, as Excel shows it while typing.',
  params: {
    x: num(share, { min: 0, max: 1, doc: 'What the argument means.' }),
  },
  returns: value(share, 'What comes back.'),
  valid: 'Where it holds',
  sources: ['DEFINITION'],
  examples: [
    { args: [0.2], gives: '0.4', because: 'Twice the share.' },
    { args: [2], fails: { code: '#VALUE!', says: 'from 0 to 1' }, because: 'A share is 0 to 1.' },
  ],
  compute: ({ x }) => ${name}Of(x),
});
`;

const testText = (
  id: string,
  name: string,
  family: string,
): string => `import { ${name}Of } from '../../shared/families/${family}/kernels/${name}';

/**
 * ${id} against printed values. Name the publication here in full, with page or table; the printed values stand as they
 * are printed. A value that nobody here has seen printed does not belong in this folder.
 */
test('the printed table', () => {
  expect(${name}Of(0.2)).toBeCloseTo(0.4, 10);
});
`;

/** The files of a function and its family's index with it; a sentence when that cannot be. */
export function newFunction(id: string, family: string, index: string): NewFiles | string {
  if (!/^[A-Z][A-Z0-9]*(\.[A-Z][A-Z0-9]*)+$/.test(id))
    return `${id || 'Nothing'} is no id: capital words and digits joined by dots, subject first, such as GAS.PRESSURE.`;
  if (!(family in FAMILIES))
    return `${family || 'Nothing'} is no family. One of: ${Object.keys(FAMILIES).join(', ')}.`;
  if (CATALOGUE.some((fn) => fn.id === id)) return `${id} is there already.`;
  const name = camel(id);
  const list = /(export const \w+Functions: readonly SheetFunction\[\] = \[\n)([\s\S]*?)(\];)/;
  return {
    files: {
      [`shared/families/${family}/kernels/${name}.ts`]: kernelText(name),
      [`shared/families/${family}/records/${name}.ts`]: recordText(id, name, family),
      [`tests/reference/${name}.test.ts`]: testText(id, name, family),
    },
    index: {
      path: `shared/families/${family}/index.ts`,
      text: `import { ${name} } from './records/${name}';\n${index.replace(list, (_all, head: string, body: string, end: string) => `${head}${body}  ${name},\n${end}`)}`,
    },
  };
}
