import type { VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Bar } from '../state/run';
import { dayText, isoMomentText } from '../../../../shared/units/dates';

const WIDTH = 280;
const ROW = 34;
const TOP = 4;
const AXIS = 22;

/** Days between marks under the picture: as many as have room. */
const stepFor = (days: number): number => [1, 2, 5, 7, 14, 28, 56].find((step) => days / step <= 5) ?? 112;

const spoken = (bar: Bar): string =>
  `${bar.label}: ${bar.vats} ${bar.vats === 1 ? 'vat' : 'vats'} from ${isoMomentText(bar.from)} to ${isoMomentText(bar.to)}`;

/** Which vats are full and when; the same in words for whoever does not see it. */
export function occupancy(bars: readonly Bar[], vats: number): VNode | undefined {
  if (bars.length === 0) return undefined;
  const first = Math.floor(Math.min(...bars.map((bar) => bar.from)));
  const last = Math.ceil(Math.max(...bars.map((bar) => bar.to)));
  const x = (serial: number): number => Math.round(((serial - first) / (last - first)) * WIDTH * 10) / 10;
  const step = stepFor(last - first);
  const marks = Array.from({ length: Math.floor((last - first) / step) + 1 }, (_, i) => first + i * step);
  const bottom = TOP + bars.length * ROW;
  return h(
    'figure',
    { class: 'occupancy' },
    h('figcaption', {}, `Vats in use; you have ${vats}`),
    h(
      'svg',
      {
        viewBox: `-2 0 ${WIDTH + 4} ${bottom + AXIS}`,
        role: 'img',
        'aria-label': bars.map(spoken).join('. '),
      },
      marks.map((mark) => h('line', { class: 'rule', x1: x(mark), x2: x(mark), y1: TOP, y2: bottom })),
      bars.map((bar, i) => [
        h(
          'text',
          { class: 'bar-label', x: 0, y: TOP + i * ROW + 12 },
          `${bar.label}: ${bar.vats} ${bar.vats === 1 ? 'vat' : 'vats'}${bar.vats > vats ? ' – too many' : ''}`,
        ),
        h('rect', {
          class: bar.vats > vats ? 'bar over' : 'bar',
          x: x(bar.from),
          y: TOP + i * ROW + 16,
          width: Math.max(3, x(bar.to) - x(bar.from)),
          height: 12,
          rx: 2,
        }),
      ]),
      marks.map((mark, i) =>
        h(
          'text',
          {
            class: 'tick',
            x: x(mark),
            y: bottom + 14,
            'text-anchor': i === 0 ? 'start' : x(mark) > WIDTH - 16 ? 'end' : 'middle',
          },
          dayText(mark),
        ),
      ),
    ),
  );
}
