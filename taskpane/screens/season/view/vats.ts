import type { VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import { dayText } from '../../../../shared/units/dates';
import type { VatBar, VatRow } from '../state/preview';
import { rowWords } from '../state/preview';

/** Which batch is in which vat and when, vat by vat. */

const WIDTH = 280;
const NAMES = 64;
const ROW = 20;
const BAR = 14;
const AXIS = 18;
/** Letters of a vat's name that have room. */
const LETTERS = 10;
/** Rows beyond these scroll inside the picture. */
const ROWS_SEEN = 14;
const LETTER_WIDTH = 6.5;

const stepFor = (days: number): number => [7, 14, 28, 56, 84, 112].find((step) => days / step <= 5) ?? 168;
const short = (name: string): string => (name.length > LETTERS ? `${name.slice(0, LETTERS - 1)}…` : name);

interface Scale {
  readonly x: (serial: number) => number;
  readonly first: number;
  readonly marks: readonly number[];
}
function scaleOf(bars: readonly VatBar[]): Scale {
  const first = Math.floor(Math.min(...bars.map(({ from }) => from)));
  const last = Math.ceil(Math.max(...bars.map(({ to }) => to)));
  const room = WIDTH - NAMES;
  const step = stepFor(last - first);
  return {
    first,
    x: (serial) => NAMES + Math.round(((serial - first) / Math.max(1, last - first)) * room * 10) / 10,
    marks: Array.from({ length: Math.floor((last - first) / step) + 1 }, (_, i) => first + i * step),
  };
}

const barView = (
  { batch, isBefore, from, to, cleanAt }: VatBar,
  top: number,
  { x }: Scale,
): readonly (VNode | false)[] => {
  const width = Math.max(2, x(to) - x(from));
  return [
    cleanAt > to &&
      h('rect', {
        class: 'cleaning',
        x: x(to),
        y: top + BAR / 2 - 1,
        width: Math.max(0, Math.min(WIDTH, x(cleanAt)) - x(to)),
        height: 2,
      }),
    h('rect', {
      class: isBefore ? 'bar before' : 'bar',
      x: x(from),
      y: top,
      width,
      height: BAR,
      rx: 2,
    }),
    width >= batch.length * LETTER_WIDTH + 2 &&
      h(
        'text',
        {
          class: isBefore ? 'run before' : 'run',
          x: x(from) + width / 2,
          y: top + 11,
          'text-anchor': 'middle',
        },
        batch,
      ),
  ];
};

const axis = ({ marks, x }: Scale): readonly VNode[] =>
  marks.map((mark, i) =>
    h(
      'text',
      {
        class: 'tick',
        x: x(mark),
        y: 12,
        'text-anchor': i === 0 ? 'start' : x(mark) > WIDTH - 16 ? 'end' : 'middle',
      },
      dayText(mark),
    ),
  );

export function vatsPicture(rows: readonly VatRow[]): VNode | undefined {
  const bars = rows.flatMap((row) => row.bars);
  if (bars.length === 0) return undefined;
  const scale = scaleOf(bars);
  const bottom = AXIS + rows.length * ROW;
  const used = rows.filter((row) => row.bars.length > 0).length;
  const batches = new Set(bars.map(({ batch }) => batch)).size;
  const isLong = rows.length > ROWS_SEEN;
  const hasBefore = bars.some(({ isBefore }) => isBefore);
  const picture = h(
    'svg',
    {
      viewBox: `0 0 ${WIDTH} ${bottom}`,
      role: 'img',
      'aria-label': `${batches} batches in ${used} of ${rows.length} vats. The list below says the same in words.`,
    },
    axis(scale),
    scale.marks.map((mark) =>
      h('line', { class: 'rule', x1: scale.x(mark), x2: scale.x(mark), y1: AXIS - 3, y2: bottom }),
    ),
    rows.map((row, i) => [
      h('text', { class: 'vat-name', x: 0, y: AXIS + i * ROW + 13 }, short(row.vat)),
      row.bars.map((bar) => barView(bar, AXIS + i * ROW + 2, scale)),
    ]),
  );
  return h(
    'figure',
    { class: 'occupancy season-vats' },
    h(
      'figcaption',
      {},
      `B1, B2 … are batches; a gap is an empty vat, a thin line a vat being cleaned.${hasBefore ? ' Pale ones are under way already.' : ''}`,
    ),
    isLong
      ? h(
          'div',
          { class: 'vats-scroll', tabindex: '0', role: 'region', 'aria-label': 'Vats, scrolls' },
          picture,
        )
      : picture,
    h(
      'details',
      { class: 'more' },
      h('summary', {}, 'The same in words'),
      h(
        'ul',
        { class: 'plain' },
        rows.map((row) => h('li', {}, rowWords(row))),
      ),
    ),
  );
}
