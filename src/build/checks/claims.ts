import type { MeasuredFigure } from '../../../taskpane/help/trust';

export type Figures = Readonly<Record<string, MeasuredFigure>>;

/** Numbers that are names: versions of programs, sizes of paper, standards, addresses of the own machine. */
const NAMES =
  /\b(Node|Excel|Microsoft|Windows|ISO|WCAG|localhost:|[Ll]ibreOffice|Chromium|Debian|level)\s?\d[\d.]*(\s?(AA|or newer))?|\bA[45]\b/g;
const MARKER = /<!-- fig:([\w.-]+) -->([^<]*)<!-- \/fig -->/g;

/** The text without what holds no claim: code, addresses, tables that a program writes, names. */
const claimsOf = (markdown: string): string =>
  markdown
    .replace(/<!-- (\w+):start -->[\s\S]*?<!-- \1:end -->/g, '')
    .replace(/```[\s\S]*?```/g, '')
    .replace(MARKER, '')
    .replace(/`[^`\n]*`/g, '')
    .replace(/\]\([^)]*\)/g, ']')
    .replace(/<[^>]*>/g, '')
    .replace(NAMES, '');

/**
 * Numbers of a text that nothing measured: each must stand between the marks of a figure, in code that a test
 * runs, in a table that a program writes, or be the name of something.
 */
export function claimFaults(path: string, markdown: string, figures: Figures): string[] {
  const faults: string[] = [];
  for (const [, key = '', text] of markdown.matchAll(MARKER)) {
    const figure = figures[key];
    if (!figure) faults.push(`${path} quotes the figure ${key}, which no test writes`);
    else if (figure.text !== text)
      faults.push(`${path} says "${text}" for ${key}; ${figure.test} measured "${figure.text}"`);
  }
  for (const line of claimsOf(markdown).split('\n'))
    for (const [number] of line.matchAll(/\d[\d.,]*\d|\d/g))
      faults.push(
        `${path} claims ${number} ("${line.trim().slice(0, 60)}"): measure it (tests/support/figures.ts) and put it between <!-- fig:key --> and <!-- /fig -->`,
      );
  return faults;
}
