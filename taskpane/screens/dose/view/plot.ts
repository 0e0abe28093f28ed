import type { DosingReading } from '../../../../shared/dosing/ask';
import type { Dosing } from '../../../../shared/dosing/judge';
import { gramsText } from '../../../../shared/dosing/judge';
import type { Child, VNode } from '../../../pane/draw';
import { h } from '../../../pane/draw';

const WIDTH = 300;
const HEIGHT = 210;
const LEFT = 24;
const BOTTOM = 30;
const TOP = 6;
const RIGHT = 8;

export interface Window {
  readonly bottom: number;
  readonly top: number;
  readonly target: number;
}

/** Round steps along the grams, as many as have room. */
const stepFor = (most: number): number => {
  const rough = most / 4;
  const power = 10 ** Math.floor(Math.log10(rough));
  return power * ([1, 2, 5, 10].find((n) => n * power >= rough) ?? 10);
};

const ph = (value: number): string => value.toFixed(2);
const round = (value: number): number => Math.round(value * 10) / 10;

/** What the picture shows, for whoever does not see it. */
const spoken = (readings: readonly DosingReading[], dosing: Dosing, window: Window): string => {
  const path = readings.map((reading) => `${gramsText(reading.grams)} g, pH ${reading.ph}`).join('; ');
  const next =
    dosing.expected && dosing.total !== undefined
      ? ` After the next part-dose, ${gramsText(dosing.total)} g in all, pH ${ph(dosing.expected.likely)} is likely, ${ph(dosing.expected.low)} to ${ph(dosing.expected.high)} possible.`
      : '';
  return `The path of the pH. Readings: ${path}.${next} The window is pH ${window.bottom} to ${window.top}, wanted is ${window.target}.`;
};

interface Scale {
  readonly x: (grams: number) => number;
  readonly y: (level: number) => number;
  readonly most: number;
  readonly low: number;
  readonly high: number;
}

const scaleOf = (readings: readonly DosingReading[], dosing: Dosing, window: Window): Scale => {
  const levels = [...readings.map((reading) => reading.ph), window.bottom, window.top];
  const low = Math.floor((Math.min(...levels) - 0.2) * 2) / 2;
  const high = Math.ceil((Math.max(...levels) + 0.3) * 2) / 2;
  const most =
    Math.max(
      ...readings.map((reading) => reading.grams),
      ...dosing.curve.map((point) => point.total),
      dosing.total ?? 0,
    ) || 1;
  const y = (level: number): number =>
    round(TOP + ((high - Math.min(high, Math.max(low, level))) / (high - low)) * (HEIGHT - TOP - BOTTOM));
  return { low, high, most, y, x: (grams) => round(LEFT + (grams / most) * (WIDTH - LEFT - RIGHT)) };
};

const line = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');

const axes = ({ x, y, most, low, high }: Scale): Child => {
  const step = stepFor(most);
  const marks = Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step);
  const levels = Array.from({ length: Math.floor(high - Math.ceil(low)) + 1 }, (_, i) => Math.ceil(low) + i);
  return [
    levels.map((level) => [
      h('line', { class: 'rule', x1: LEFT, x2: WIDTH - RIGHT, y1: y(level), y2: y(level) }),
      h('text', { class: 'tick', x: LEFT - 5, y: y(level) + 4, 'text-anchor': 'end' }, level),
    ]),
    marks.map((mark) => [
      h('line', { class: 'rule', x1: x(mark), x2: x(mark), y1: HEIGHT - BOTTOM, y2: HEIGHT - BOTTOM + 4 }),
      h(
        'text',
        { class: 'tick', x: x(mark), y: HEIGHT - BOTTOM + 15, 'text-anchor': 'middle' },
        gramsText(Number(mark.toPrecision(6))),
      ),
    ]),
    h(
      'text',
      { class: 'tick', x: WIDTH - RIGHT, y: HEIGHT - 3, 'text-anchor': 'end' },
      'g of product in all',
    ),
  ];
};

const forecast = ({ curve, expected, total }: Dosing, { x, y }: Scale): Child => [
  curve.length > 1 && [
    h('path', {
      class: 'band',
      d: `${line([...curve.map((p) => [x(p.total), y(p.high)] as const), ...curve.toReversed().map((p) => [x(p.total), y(p.low)] as const)])}Z`,
    }),
    h('path', { class: 'curve', d: line(curve.map((p) => [x(p.total), y(p.likely)])) }),
  ],
  expected &&
    total !== undefined && [
      h('line', { class: 'reach', x1: x(total), x2: x(total), y1: y(expected.low), y2: y(expected.high) }),
      h('circle', { class: 'next', cx: x(total), cy: y(expected.likely), r: 4.5 }),
    ],
];

/** The readings, the curve to come with its band, and the window. */
export function dosePlot(readings: readonly DosingReading[], dosing: Dosing, window: Window): VNode {
  const scale = scaleOf(readings, dosing, window);
  const { x, y } = scale;
  return h(
    'figure',
    { class: 'path' },
    h(
      'svg',
      { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: 'img', 'aria-label': spoken(readings, dosing, window) },
      h('rect', {
        class: 'window',
        x: LEFT,
        y: y(window.top),
        width: WIDTH - LEFT - RIGHT,
        height: round(y(window.bottom) - y(window.top)),
      }),
      h(
        'text',
        { class: 'window-name', x: WIDTH - RIGHT - 4, y: y(window.bottom) - 5, 'text-anchor': 'end' },
        'window',
      ),
      axes(scale),
      forecast(dosing, scale),
      h('path', { class: 'readings', d: line(readings.map((reading) => [x(reading.grams), y(reading.ph)])) }),
      readings.map((reading) =>
        h('circle', { class: 'reading', cx: x(reading.grams), cy: y(reading.ph), r: 4 }),
      ),
    ),
    h(
      'figcaption',
      { 'aria-hidden': 'true' },
      h('span', { class: 'key key-reading' }, 'read'),
      dosing.expected && h('span', { class: 'key key-next' }, 'next, likely'),
      dosing.curve.length > 1 && h('span', { class: 'key key-band' }, '9 of 10 waters'),
    ),
  );
}
