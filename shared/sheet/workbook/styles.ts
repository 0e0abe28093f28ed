import { VERDICT_LOOKS } from '../../maths/verdict';
import type { Verdict } from '../../maths/verdict';
import type { CellStyle, StyleName } from './model';

const INK = '1F2A30';
const DEEP = '12454F';
const QUIET = '4A5860';
const LINE = 'B9C4C7';

const verdict = (word: Verdict): CellStyle => {
  const ink = VERDICT_LOOKS[word].ink.slice(1).toUpperCase();
  return {
    ink,
    fill: VERDICT_LOOKS[word].ground.slice(1).toUpperCase(),
    isBold: true,
    border: 'thin',
    borderColor: ink,
    wraps: true,
  };
};

export const FONT = 'Calibri';
export const FONT_SIZE = 10;

/**
 * What each look means, for every renderer. Calm ground, dark ink, contrast of at least 7:1; what a colour
 * says is also said by weight, border or a word in the cell, so the page works printed in grey.
 */
export const STYLES: Readonly<Record<StyleName, CellStyle>> = {
  title: { ink: DEEP, isBold: true, size: 18 },
  subtitle: { ink: QUIET, size: 11 },
  section: { ink: DEEP, isBold: true, size: 12, border: 'bottom', borderColor: DEEP },
  heading: {
    ink: 'FFFFFF',
    fill: DEEP,
    isBold: true,
    border: 'thin',
    borderColor: '7FA6A9',
    wraps: true,
    align: 'center',
  },
  label: { ink: INK, border: 'bottom', borderColor: 'DDE3E4', wraps: true },
  input: { ink: '1B2F6B', fill: 'FFF8DC', border: 'medium', borderColor: '8A7A3A', isOpen: true },
  result: { ink: INK, fill: 'EEF4F4', isBold: true, border: 'thin', borderColor: LINE },
  big: {
    ink: DEEP,
    fill: 'EEF4F4',
    isBold: true,
    size: 14,
    border: 'medium',
    borderColor: DEEP,
    align: 'center',
  },
  cell: { ink: INK, border: 'thin', borderColor: LINE },
  text: { ink: INK, border: 'thin', borderColor: LINE, wraps: true, align: 'left', indent: 1 },
  blank: { ink: INK, border: 'thin', borderColor: '8A949A', isOpen: true },
  quiet: { ink: QUIET, wraps: true },
  unit: { ink: QUIET, align: 'left', indent: 1 },
  good: { ink: '0B4F2A', fill: 'DFF0E3', isBold: true, border: 'thin', borderColor: '0B4F2A', wraps: true },
  warning: {
    ink: '5A3A00',
    fill: 'FBE9C6',
    isBold: true,
    border: 'thin',
    borderColor: '5A3A00',
    wraps: true,
  },
  bad: { ink: '7A1010', fill: 'F9DEDC', isBold: true, border: 'medium', borderColor: '7A1010', wraps: true },
  safe: verdict('safe'),
  likely: verdict('likely'),
  toss: verdict('a coin toss'),
  unlikely: verdict('unlikely'),
};

/** Colours of chart series, told apart in grey as well: dark, middle, light. */
export const SERIES_COLORS = ['12454F', 'C8742A', '7FA6A9', '6B5B95'] as const;

export type { CellStyle };
