import type { Child, VNode } from '../frame/draw';
import { h } from '../frame/draw';
import { grouped } from '../values/show';

/**
 * What every picture is built from: scales, an axis with its unit, and a frame with a sentence above and the
 * same numbers as a table below. Nothing is told by colour alone.
 */

export const WIDTH = 320;
/** Room for the numbers of an axis on the left. */
export const LEFT = 44;
export const RIGHT = 10;

export type Span = readonly [number, number];
export const linear =
  ([from, to]: Span, [start, end]: Span) =>
  (value: number): number =>
    round(start + ((value - from) / (to - from || 1)) * (end - start));
export const round = (value: number): number => Math.round(value * 10) / 10;

const STEPS = [1, 2, 2.5, 5, 10];
/** Round numbers that cover a span, about `wanted` of them. */
export function marksOf([from, to]: Span, wanted = 4): readonly number[] {
  const rough = (to - from || Math.abs(to) || 1) / wanted;
  const size = 10 ** Math.floor(Math.log10(rough));
  const step = size * (STEPS.find((one) => one * size >= rough) ?? 10);
  const first = Math.floor(from / step);
  const last = Math.ceil(to / step - 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** 12,000 stays short beside an axis: 12 k. */
export const shortNumber = (value: number): string => {
  const size = Math.abs(value);
  if (size >= 1e6) return `${grouped(value / 1e6, size < 1e7 ? 1 : 0)} M`;
  if (size >= 1e4) return `${grouped(value / 1000)} k`;
  return grouped(value, Number.isInteger(value) ? 0 : size < 1 ? 2 : 1);
};

export const line = (points: readonly Span[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');
export const textAt = (
  x: number,
  y: number,
  text: string,
  anchor: 'start' | 'middle' | 'end' = 'start',
  kind = 'tick',
): VNode => h('text', { class: kind, x: round(x), y: round(y), 'text-anchor': anchor }, text);

/** Horizontal rules with their numbers on the left, and the unit over them. */
export const rules = (
  marks: readonly number[],
  y: (value: number) => number,
  unit: string,
  face: (value: number) => string = shortNumber,
): Child => [
  marks.map((mark) => [
    h('line', { class: 'rule', x1: LEFT, x2: WIDTH - RIGHT, y1: y(mark), y2: y(mark) }),
    textAt(LEFT - 4, y(mark) + 4, face(mark), 'end'),
  ]),
  unit && textAt(2, 10, unit),
];

export interface PictureTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
export interface PictureFrame {
  readonly id: string;
  readonly title: string;
  /** What the picture shows, in a sentence. */
  readonly says: string;
  readonly height: number;
  readonly table: PictureTable;
  readonly asTable: string;
}

/** A picture with its sentence, and the same numbers as a table for whoever reads rather than looks. */
export const framed = ({ id, title, says, height, table, asTable }: PictureFrame, ...marks: Child[]): VNode =>
  h(
    'figure',
    { class: 'picture', id },
    h('figcaption', {}, h('strong', {}, title), ' ', says),
    h(
      'svg',
      {
        class: 'plot',
        viewBox: `0 0 ${WIDTH} ${height}`,
        role: 'img',
        'aria-label': `${title}. ${says}`,
        preserveAspectRatio: 'xMinYMin meet',
      },
      h(
        'defs',
        {},
        h(
          'pattern',
          {
            id: `${id}-lines`,
            width: 5,
            height: 5,
            patternUnits: 'userSpaceOnUse',
            patternTransform: 'rotate(45)',
          },
          h('line', { class: 'hatching', x1: 0, y1: 0, x2: 0, y2: 5 }),
        ),
        h(
          'pattern',
          { id: `${id}-points`, width: 5, height: 5, patternUnits: 'userSpaceOnUse' },
          h('circle', { class: 'hatching-dot', cx: 2.5, cy: 2.5, r: 1 }),
        ),
      ),
      ...marks,
    ),
    h(
      'details',
      { class: 'more' },
      h('summary', {}, asTable),
      h(
        'div',
        { class: 'scroll', tabindex: '0', role: 'region', 'aria-label': title },
        h(
          'table',
          {},
          h(
            'thead',
            {},
            h(
              'tr',
              {},
              table.head.map((text) => h('th', { scope: 'col' }, text)),
            ),
          ),
          h(
            'tbody',
            {},
            table.rows.map((row) =>
              h(
                'tr',
                {},
                row.map((text, i) => (i === 0 ? h('th', { scope: 'row' }, text) : h('td', {}, text))),
              ),
            ),
          ),
        ),
      ),
    ),
  );
