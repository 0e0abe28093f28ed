import { readFileSync, writeFileSync } from 'node:fs';
import type { MeasuredFigure } from '../../taskpane/help/trust';

/**
 * A figure that README, help or pane quote. The test that measures it says it here: it fails when the quoted
 * text differs, and with WRITE_FIGURES=1 it writes the new text. `seen` is the text as a reader meets it.
 */
const FILE = 'taskpane/help/figures.json';

export const quotedFigures = (): Record<string, MeasuredFigure> =>
  JSON.parse(readFileSync(FILE, 'utf8')) as Record<string, MeasuredFigure>;

export function quote(key: string, text: string, what: string): void {
  const figures = quotedFigures();
  const test = (expect.getState().testPath ?? '').replace(/^.*\/tests\//, 'tests/');
  if (process.env['WRITE_FIGURES']) {
    const all = { ...figures, [key]: { text, what, test } };
    const sorted = Object.fromEntries(Object.entries(all).sort(([a], [b]) => (a < b ? -1 : 1)));
    writeFileSync(FILE, `${JSON.stringify(sorted, null, 2)}\n`);
    return;
  }
  expect({ key, ...figures[key] }).toEqual({ key, text, what, test });
}

/** A share as a reader meets it. */
export const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
