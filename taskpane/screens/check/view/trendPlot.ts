import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { PicturePoint, TrendPicture } from '../state/trend';
import { percent, spoken } from '../state/trend';

const WIDTH = 300;
const HEIGHT = 190;
const LEFT = 34;
const RIGHT = 8;
const TOP = 8;
const BOTTOM = 30;
const MOST_TICKS = 5;
/** Letters of a name under the axis. */
const TICK_LETTERS = 8;
const STEPS = [0.02, 0.05, 0.1, 0.2, 0.25] as const;

const round = (value: number): number => Math.round(value * 10) / 10;
const line = (points: readonly (readonly [number, number])[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');

interface Scale {
  readonly x: (at: number) => number;
  readonly y: (share: number) => number;
  readonly marks: readonly number[];
  readonly column: number;
}
function scaleOf({ points, centre }: TrendPicture): Scale {
  const all = [centre, ...points.flatMap(({ share, low, high }) => [share, low, high])].filter((value) =>
    Number.isFinite(value),
  );
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const step = STEPS.find((one) => (most - least) / one <= 5) ?? 0.25;
  const low = Math.max(0, Math.floor(least / step) * step);
  const high = Math.min(1, Math.max(low + step, Math.ceil(most / step) * step));
  const column = (WIDTH - LEFT - RIGHT) / points.length;
  return {
    column,
    x: (at) => round(LEFT + (at + 0.5) * column),
    y: (share) => round(TOP + ((high - share) / (high - low)) * (HEIGHT - TOP - BOTTOM)),
    marks: Array.from({ length: Math.round((high - low) / step) + 1 }, (_, i) => low + i * step),
  };
}

const axes = ({ points }: TrendPicture, { x, y, marks }: Scale): Child => {
  const every = Math.ceil(points.length / MOST_TICKS);
  return [
    marks.map((mark) => [
      h('line', { class: 'rule', x1: LEFT, x2: WIDTH - RIGHT, y1: y(mark), y2: y(mark) }),
      h('text', { class: 'tick', x: LEFT - 4, y: y(mark) + 4, 'text-anchor': 'end' }, percent(mark)),
    ]),
    points.map(
      ({ tick }, i) =>
        i % every === 0 &&
        h(
          'text',
          { class: 'tick', x: x(i), y: HEIGHT - BOTTOM + 15, 'text-anchor': 'middle' },
          tick.length > TICK_LETTERS ? `${tick.slice(0, TICK_LETTERS - 1)}…` : tick,
        ),
    ),
  ];
};

/** Limits step with the number of eggs of each run. */
const limits = ({ points }: TrendPicture, { x, y, column }: Scale, end: 'low' | 'high'): VNode =>
  h('path', {
    class: 'limit',
    d: line(
      points.flatMap((point, i) => [
        [round(x(i) - column / 2), y(point[end])],
        [round(x(i) + column / 2), y(point[end])],
      ]),
    ),
  });

/**
 * A shape for each kind of point, so that colour says nothing alone: triangles point where the share lies.
 */
const R = 5;
const shape = ({ standsOut, share }: PicturePoint, cx: number, { y }: Scale): VNode => {
  const cy = y(share);
  if (standsOut === undefined) return h('circle', { class: 'dot', cx, cy, r: 3.5 });
  const corners =
    standsOut === 'above'
      ? [
          [0, -R - 1],
          [R, R - 1],
          [-R, R - 1],
        ]
      : standsOut === 'below'
        ? [
            [0, R + 1],
            [R, 1 - R],
            [-R, 1 - R],
          ]
        : [
            [0, -R],
            [R, 0],
            [0, R],
            [-R, 0],
          ];
  return h('path', {
    class: 'dot odd',
    d: `${line(corners.map(([dx = 0, dy = 0]) => [round(cx + dx), round(cy + dy)]))}Z`,
  });
};

interface Chosen {
  readonly point: number | undefined;
  readonly choose: (point: number) => void;
}

/** The keyboard steps from point to point; Tab leaves the picture again. */
const KEYS: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowRight: (at, last) => Math.min(last, at + 1),
  ArrowDown: (at, last) => Math.min(last, at + 1),
  ArrowLeft: (at) => Math.max(0, at - 1),
  ArrowUp: (at) => Math.max(0, at - 1),
  Home: () => 0,
  End: (_, last) => last,
};

function pointView(
  picture: TrendPicture,
  at: number,
  scale: Scale,
  { point: chosen, choose }: Chosen,
): Child {
  const point = picture.points[at];
  if (!point) return undefined;
  const { x, y, column } = scale;
  const last = picture.points.length - 1;
  const isChosen = chosen === at;
  return h(
    'g',
    {
      id: `trend-point-${at}`,
      class: isChosen ? 'point chosen-point' : 'point',
      role: 'img',
      'aria-label': point.says,
      tabindex: at === (chosen ?? last) ? '0' : '-1',
      on: {
        click: () => {
          choose(at);
        },
        focus: () => {
          choose(at);
        },
        keydown: (event) => {
          const to = KEYS[(event as KeyboardEvent).key]?.(at, last);
          if (to === undefined) return;
          event.preventDefault();
          choose(to);
        },
      },
    },
    // The whole column can be tapped: a finger is wider than a point.
    h('rect', {
      class: 'hit',
      x: round(x(at) - column / 2),
      y: TOP,
      width: round(column),
      height: HEIGHT - TOP - BOTTOM,
    }),
    !picture.isTime && [
      h('line', { class: 'reach', x1: x(at), x2: x(at), y1: y(point.low), y2: y(point.high) }),
      [point.low, point.high].map((end) =>
        h('line', { class: 'reach', x1: x(at) - 3, x2: x(at) + 3, y1: y(end), y2: y(end) }),
      ),
    ],
    shape(point, x(at), scale),
  );
}

/** Points with their limits or intervals, the centre, and what stands out by its shape. */
export function trendPlot(picture: TrendPicture, chosen: Chosen): VNode {
  const { points, centre, isTime } = picture;
  const scale = scaleOf(picture);
  const { x, y } = scale;
  const isOut = points.some(({ standsOut }) => standsOut !== undefined);
  return h(
    'figure',
    { class: 'path trend' },
    h(
      'svg',
      { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, role: 'group', 'aria-label': spoken(picture) },
      axes(picture, scale),
      isTime && (['low', 'high'] as const).map((end) => limits(picture, scale, end)),
      h('line', { class: 'centre', x1: LEFT, x2: WIDTH - RIGHT, y1: y(centre), y2: y(centre) }),
      isTime && h('path', { class: 'curve thin', d: line(points.map(({ share }, i) => [x(i), y(share)])) }),
      points.map((_, at) => pointView(picture, at, scale, chosen)),
    ),
    h(
      'figcaption',
      { 'aria-hidden': 'true' },
      h('span', { class: 'key key-dot' }, isTime ? 'a run' : 'expected, with its interval'),
      h('span', { class: 'key key-centre' }, `the farm, ${percent(centre)}`),
      isTime && h('span', { class: 'key key-limit' }, 'limits'),
      isOut &&
        h(
          'span',
          { class: 'key key-odd' },
          isTime ? 'stands out: ▲ above, ▼ below, ◆ nine in a row' : 'stands out: ▲ above, ▼ below',
        ),
    ),
  );
}
