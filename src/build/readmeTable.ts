import { CATALOGUE } from '../../shared/catalogue';
import { returnsText, signature } from '../../shared/functions/describe';

/** The README's function table, derived from the catalogue. */

const START = '<!-- functions:start -->';
const END = '<!-- functions:end -->';

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

export function functionTable(): string {
  const families = [...new Set(CATALOGUE.map((fn) => fn.family))];
  return families
    .map((family) => {
      const lines = CATALOGUE.filter((fn) => fn.family === family).map(
        (fn) => `| \`${signature(fn)}\` | ${cell(fn.summary)} | ${cell(returnsText(fn.returns))} |`,
      );
      return [
        `### ${family}`,
        '',
        '| Function | What it answers | Unit or columns |',
        '|---|---|---|',
        ...lines,
      ].join('\n');
    })
    .join('\n\n');
}

/** The README with its table made anew. */
export function withFunctionTable(readme: string): string {
  const from = readme.indexOf(START);
  const to = readme.indexOf(END);
  if (from < 0 || to < from) throw new Error(`README.md has lost its markers ${START} and ${END}`);
  return `${readme.slice(0, from + START.length)}\n${functionTable()}\n${readme.slice(to)}`;
}
