// Long: seven pictures, one after the other.
import type { Child, VNode } from '../frame/draw';
import { h } from '../frame/draw';
import { grouped } from '../values/show';
import type { Span } from './base';
import { framed, LEFT, line, linear, marksOf, RIGHT, round, rules, shortNumber, textAt, WIDTH } from './base';
import type {
  CashData,
  DeathsData,
  DotsData,
  FunnelData,
  GrowthData,
  PathData,
  PictureWords,
  VatsData,
} from './types';

const ACROSS: Span = [LEFT, WIDTH - RIGHT];
const percent = (share: number): string => `${grouped(share * 100, share < 0.1 ? 1 : 0)} %`;

/** A season a dot: round and full where the whole order came, an open triangle where it did not. */
export function dotsPicture({ orders }: DotsData, { words }: PictureWords): VNode | undefined {
  const most = Math.max(1, ...orders.flatMap(({ wanted, seasons }) => [wanted, ...seasons]));
  const x = linear([0, most], ACROSS);
  const ROW = 34;
  const height = orders.length * ROW + 22;
  const marks = marksOf([0, most], 4).filter((mark) => mark <= most);
  const whole = (order: DotsData['orders'][number]): number =>
    order.seasons.filter((n) => n >= order.wanted - 0.5).length;
  if (orders.length === 0) return undefined;
  const dot = (n: number, wanted: number, cy: number, i: number): VNode => {
    const [cx, y] = [x(n), cy + ((i % 3) - 1) * 4];
    return n >= wanted - 0.5
      ? h('circle', { class: 'dot', cx, cy: y, r: 3.4 })
      : h('path', {
          class: 'dot open',
          d: `${line([
            [cx, y + 4],
            [cx + 4, y - 3.5],
            [cx - 4, y - 3.5],
          ])}Z`,
        });
  };
  return framed(
    {
      id: 'picture-dots',
      title: words.dots,
      says: orders
        .slice(0, 4)
        .map((order) => words.dotsSays(whole(order), order.seasons.length, order.name))
        .join(' '),
      height,
      asTable: words.asTable,
      table: {
        head: [words.order, words.wanted, ...(orders[0]?.seasons ?? []).map((_, i) => words.season(i + 1))],
        rows: orders.map(({ name, wanted, seasons }) => [
          name,
          grouped(wanted),
          ...seasons.map((n) => grouped(n)),
        ]),
      },
    },
    orders.map(({ name, wanted, seasons }, i) => {
      const cy = i * ROW + 22;
      return [
        textAt(2, cy - 10, name, 'start', 'name'),
        h('line', { class: 'rule', x1: LEFT, x2: WIDTH - RIGHT, y1: cy, y2: cy }),
        h('line', { class: 'goal', x1: x(wanted), x2: x(wanted), y1: cy - 9, y2: cy + 9 }),
        seasons.map((n, k) => dot(n, wanted, cy, k)),
      ];
    }),
    marks.map((mark) => textAt(x(mark), height - 4, shortNumber(mark), 'middle')),
  );
}

/** Longer than this a night is too thin to be seen. */
const NIGHTS_UP_TO = 15;
const NIGHT = [18 / 24, 30 / 24] as const;
const FILLS: Readonly<Record<string, string>> = { eggs: 'points', fry: '', nursing: 'lines' };

/** Vats one under the other, what they hold from day to day; nights are shaded, each bar bears its batch. */
export function vatsPicture(
  { from, to, now, vats }: VatsData,
  { words, day }: PictureWords,
  stageOf: (stage: string) => string = (stage) => stage,
): VNode {
  const ROW = 26;
  const TOP = 6;
  const bottom = TOP + vats.length * ROW;
  const x = linear([from, to], [70, WIDTH - RIGHT]);
  const days = Array.from(
    { length: Math.max(0, Math.ceil(to) - Math.floor(from)) },
    (_, i) => Math.floor(from) + i,
  );
  const inside = (at: number): number => Math.min(to, Math.max(from, at));
  const every = Math.max(1, Math.ceil(days.length / 5));
  const nights = to - from <= NIGHTS_UP_TO ? [Math.floor(from) - 1, ...days] : [];
  const busy = vats.filter(({ stays }) => stays.some((s) => s.from <= now && now < s.to)).length;
  const id = 'picture-vats';
  const bar = (stay: VatsData['vats'][number]['stays'][number], i: number): Child => {
    const [a, b] = [x(inside(stay.from)), x(inside(stay.to))];
    const y = TOP + i * ROW + 4;
    const fill = FILLS[stay.stage] ?? '';
    return [
      h('rect', { class: `bar ${stay.stage}`, x: a, y, width: Math.max(2, b - a), height: ROW - 8, rx: 3 }),
      fill &&
        h('rect', {
          x: a,
          y,
          width: Math.max(2, b - a),
          height: ROW - 8,
          fill: `url(#${id}-${fill})`,
          rx: 3,
        }),
      b - a > stay.batch.length * 7 + 6 && [
        h('rect', {
          class: 'plate',
          x: a + 3,
          y: y + 2,
          width: stay.batch.length * 7 + 4,
          height: ROW - 12,
          rx: 2,
        }),
        textAt(a + 5, y + 13, stay.batch, 'start', 'name'),
      ],
    ];
  };
  return framed(
    {
      id,
      title: words.vats,
      says: words.vatsSays(busy, vats.length),
      height: bottom + 20,
      asTable: words.asTable,
      table: {
        head: [words.vat, words.batch, words.stage, words.from, words.to],
        rows: vats.flatMap(({ name, stays }) =>
          stays.map((s) => [name, s.batch, stageOf(s.stage), day(s.from), day(s.to)]),
        ),
      },
    },
    nights.map((night) => {
      const [a, b] = [x(inside(night + NIGHT[0])), x(inside(night + NIGHT[1]))];
      return b > a && h('rect', { class: 'night', x: a, y: TOP, width: b - a, height: bottom - TOP });
    }),
    vats.map(({ name, stays }, i) => [
      textAt(2, TOP + i * ROW + 17, name.length > 10 ? `${name.slice(0, 9)}…` : name, 'start', 'name'),
      h('line', {
        class: 'rule',
        x1: 70,
        x2: WIDTH - RIGHT,
        y1: TOP + (i + 1) * ROW,
        y2: TOP + (i + 1) * ROW,
      }),
      stays.map((stay) => bar(stay, i)),
    ]),
    h('line', { class: 'now', x1: x(now), x2: x(now), y1: 0, y2: bottom }),
    days.map((d, i) => i % every === 0 && textAt(x(Math.max(d, from)), bottom + 14, day(d), 'start')),
  );
}

/** Readings as full points, expectations as a bar between their ends; the limit is a line with its word. */
export function pathPicture({ points, wanted, most }: PathData, { words }: PictureWords): VNode | undefined {
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return undefined;
  const all = [...points.flatMap(({ ph, low = ph, high = ph }) => [ph, low, high]), wanted, most];
  const [TOP, BOTTOM] = [16, 150];
  const marks = marksOf([Math.min(...all) - 0.2, Math.max(...all) + 0.1], 5);
  const y = linear([marks[0] ?? 0, marks.at(-1) ?? 14], [BOTTOM, TOP]);
  const x = linear([-0.5, points.length - 0.5], ACROSS);
  const two = (n: number | undefined): string => (n === undefined ? '' : grouped(n, 1));
  const every = Math.ceil(points.length / 6);
  return framed(
    {
      id: 'picture-path',
      title: words.path,
      says: words.pathSays(two(first.ph), two(last.ph)),
      height: BOTTOM + 24,
      asTable: words.asTable,
      table: {
        head: [words.reading, 'pH', words.least, words.most],
        rows: points.map(({ label, ph, low, high }) => [label, two(ph), two(low), two(high)]),
      },
    },
    rules(marks, y, 'pH', (mark) => grouped(mark, 1)),
    h('line', { class: 'limit', x1: LEFT, x2: WIDTH - RIGHT, y1: y(most), y2: y(most) }),
    textAt(WIDTH - RIGHT, y(most) - 3, words.never(two(most)), 'end', 'name'),
    h('line', { class: 'goal', x1: LEFT, x2: WIDTH - RIGHT, y1: y(wanted), y2: y(wanted) }),
    textAt(LEFT + 3, y(wanted) - 3, `${words.wanted} ${two(wanted)}`, 'start', 'name'),
    h('path', { class: 'way', d: line(points.map(({ ph }, i) => [x(i), y(ph)])) }),
    points.map(({ ph, low, high, label }, i) => [
      low !== undefined &&
        high !== undefined && [
          h('line', { class: 'reach', x1: x(i), x2: x(i), y1: y(low), y2: y(high) }),
          [low, high].map((end) =>
            h('line', { class: 'reach', x1: x(i) - 4, x2: x(i) + 4, y1: y(end), y2: y(end) }),
          ),
        ],
      h('circle', { class: low === undefined ? 'dot' : 'dot open', cx: x(i), cy: y(ph), r: 3.6 }),
      i % every === 0 && textAt(x(i), BOTTOM + 16, label, 'middle'),
    ]),
  );
}

/** Steps as bars: planned as an outline, counted full; the number stands beside. */
export function funnelPicture({ steps }: FunnelData, { words }: PictureWords): VNode | undefined {
  const [first, last] = [steps[0], steps.at(-1)];
  if (!first || !last || first.planned <= 0) return undefined;
  const most = Math.max(...steps.flatMap(({ planned, counted = 0 }) => [planned, counted]));
  const x = linear([0, most], [0, WIDTH - 2]);
  const ROW = 44;
  return framed(
    {
      id: 'picture-funnel',
      title: words.funnel,
      says: words.funnelSays(grouped((100 * last.planned) / first.planned, 0)),
      height: steps.length * ROW + 4,
      asTable: words.asTable,
      table: {
        head: [words.step, words.planned, words.counted, words.ofBefore],
        rows: steps.map(({ name, planned, counted }, i) => {
          const before = steps[i - 1];
          const of =
            before &&
            (counted !== undefined && before.counted ? counted / before.counted : planned / before.planned);
          return [
            name,
            grouped(planned),
            counted === undefined ? '' : grouped(counted),
            of === undefined ? '' : percent(of),
          ];
        }),
      },
    },
    steps.map(({ name, planned, counted }, i) => {
      const top = i * ROW;
      const before = steps[i - 1];
      const share = before && planned / before.planned;
      const number = `${shortNumber(planned)} ${words.planned}${counted === undefined ? '' : `, ${shortNumber(counted)} ${words.counted}`}`;
      return [
        textAt(0, top + 12, `${name}: ${number}`, 'start', 'name'),
        share !== undefined && textAt(WIDTH - 2, top + 12, percent(share), 'end'),
        h('rect', {
          class: 'outline',
          x: 1,
          y: top + 18,
          width: Math.max(2, x(planned) - 1),
          height: 16,
          rx: 3,
        }),
        counted !== undefined &&
          h('rect', {
            class: 'bar fry',
            x: 1,
            y: top + 21,
            width: Math.max(2, x(counted) - 1),
            height: 10,
            rx: 2,
          }),
      ];
    }),
  );
}

/** The planned weight as a line, what was weighed as points; the axis grows in equal ratios. */
export function growthPicture(
  { planned, weighed }: GrowthData,
  { words, day }: PictureWords,
): VNode | undefined {
  const all = [...planned, ...weighed];
  const [first, last] = [planned[0], planned.at(-1)];
  if (!first || !last || all.some(({ grams }) => grams <= 0)) return undefined;
  const [TOP, BOTTOM] = [16, 150];
  const low = Math.floor(Math.log10(Math.min(...all.map(({ grams }) => grams))));
  const high = Math.ceil(Math.log10(Math.max(...all.map(({ grams }) => grams))));
  const y = (grams: number): number =>
    linear([low, Math.max(high, low + 1)], [BOTTOM, TOP])(Math.log10(grams));
  const x = linear([first.at, Math.max(last.at, first.at + 1, ...weighed.map(({ at }) => at))], ACROSS);
  const marks = Array.from({ length: Math.max(high, low + 1) - low + 1 }, (_, i) => 10 ** (low + i));
  const now = weighed.at(-1);
  const planAt = (at: number): number =>
    planned.reduce((best, one) => (Math.abs(one.at - at) < Math.abs(best.at - at) ? one : best), first).grams;
  const fine = (n: number): string => grouped(n, n < 0.1 ? 3 : n < 10 ? 2 : 1);
  return framed(
    {
      id: 'picture-growth',
      title: words.growth,
      says: now ? words.growthSays(fine(now.grams), fine(planAt(now.at))) : words.growthNone,
      height: BOTTOM + 22,
      asTable: words.asTable,
      table: {
        head: [words.day, words.planned, words.weighed],
        rows: [
          ...planned.map(({ at, grams }) => [day(at), fine(grams), '']),
          ...weighed.map(({ at, grams }) => [day(at), fine(planAt(at)), fine(grams)]),
        ],
      },
    },
    rules(marks, y, words.grams, (mark) => (mark >= 1 ? grouped(mark) : String(Number(mark.toPrecision(1))))),
    h('path', { class: 'way', d: line(planned.map(({ at, grams }) => [x(at), y(grams)])) }),
    weighed.map(({ at, grams }) => h('circle', { class: 'dot', cx: x(at), cy: y(grams), r: 4 })),
    [first, last].map(({ at }, i) => textAt(x(at), BOTTOM + 16, day(at), i === 0 ? 'start' : 'end')),
  );
}

/** Money week by week; the low week bears its mark and its number. */
export function cashPicture({ weeks }: CashData, { words, day }: PictureWords): VNode | undefined {
  const [first, last] = [weeks[0], weeks.at(-1)];
  if (!first || !last) return undefined;
  const low = weeks.reduce((least, week) => (week.left < least.left ? week : least), first);
  const all = weeks.map(({ left }) => left);
  const [TOP, BOTTOM] = [16, 140];
  const marks = marksOf([Math.min(0, ...all), Math.max(1, ...all)], 4);
  const y = linear([marks[0] ?? 0, marks.at(-1) ?? 1], [BOTTOM, TOP]);
  const x = linear([first.from, Math.max(last.from, first.from + 1)], ACROSS);
  const [cx, cy] = [x(low.from), y(low.left)];
  return framed(
    {
      id: 'picture-cash',
      title: words.cash,
      says: words.cashSays(grouped(low.left), day(low.from)),
      height: BOTTOM + 22,
      asTable: words.asTable,
      table: {
        head: [words.week, words.left],
        rows: weeks.map(({ from, left }) => [day(from), grouped(left)]),
      },
    },
    rules(marks, y, ''),
    h('line', { class: 'axis', x1: LEFT, x2: WIDTH - RIGHT, y1: y(0), y2: y(0) }),
    h('path', {
      class: 'way',
      // A week keeps its money to its end.
      d: line(
        weeks
          .flatMap(({ from, left }, i): Span[] => [
            [x(from), y(left)],
            [x(weeks[i + 1]?.from ?? from + 7), y(left)],
          ])
          .map(([a, b]): Span => [Math.min(a, WIDTH - RIGHT), b]),
      ),
    }),
    h('path', {
      class: 'dot odd',
      d: `${line([
        [cx, cy + 6],
        [cx + 6, cy - 5],
        [cx - 6, cy - 5],
      ])}Z`,
    }),
    textAt(
      Math.min(WIDTH - 60, Math.max(LEFT + 4, cx + 8)),
      Math.max(TOP + 8, cy - 6),
      grouped(low.left),
      'start',
      'name',
    ),
    [first, last].map(({ from }, i) => textAt(x(from), BOTTOM + 16, day(from), i === 0 ? 'start' : 'end')),
  );
}

/**
 * Upper limit of a count a day: mean + 3 roots of the mean, the control chart of counts (NIST/SEMATECH
 * e-Handbook of Statistical Methods, 6.3.3.1).
 */
export const deathLimit = (mean: number): number => mean + 3 * Math.sqrt(mean);

/** Dead of each day as bars, with the limit; a day above it bears a mark. */
export function deathsPicture({ days }: DeathsData, { words, day }: PictureWords): VNode | undefined {
  const [first, last] = [days[0], days.at(-1)];
  if (!first || !last) return undefined;
  const mean = days.reduce((sum, { dead }) => sum + dead, 0) / days.length;
  const limit = deathLimit(mean);
  const over = days.filter(({ dead }) => dead > limit);
  const [TOP, BOTTOM] = [22, 130];
  const marks = marksOf([0, Math.max(1, limit, ...days.map(({ dead }) => dead))], 4);
  const y = linear([0, marks.at(-1) ?? 1], [BOTTOM, TOP]);
  const x = linear([first.day, last.day + 1], ACROSS);
  const width = Math.max(2, x(first.day + 1) - x(first.day) - 2);
  return framed(
    {
      id: 'picture-deaths',
      title: words.deaths,
      says: `${words.deathsSays(grouped(mean, mean < 10 ? 1 : 0), grouped(Math.floor(limit)))}${over.length > 0 ? ` ${words.deathsOver(over.length)}` : ''}`,
      height: BOTTOM + 22,
      asTable: words.asTable,
      table: {
        head: [words.day, words.dead, words.limit],
        rows: days.map((one) => [day(one.day), grouped(one.dead), one.dead > limit ? '▲' : '']),
      },
    },
    rules(marks, y, ''),
    days.map((one) => [
      h('rect', {
        class: one.dead > limit ? 'bar over' : 'bar fry',
        x: x(one.day) + 1,
        y: y(one.dead),
        width,
        height: round(BOTTOM - y(one.dead)),
      }),
      one.dead > limit && textAt(x(one.day) + width / 2, y(one.dead) - 4, '▲', 'middle', 'name'),
    ]),
    h('line', { class: 'limit', x1: LEFT, x2: WIDTH - RIGHT, y1: y(limit), y2: y(limit) }),
    textAt(WIDTH - RIGHT, y(limit) - 3, `${words.limit} ${grouped(Math.floor(limit))}`, 'end', 'name'),
    [first, last].map((one, i) =>
      textAt(i === 0 ? x(one.day) : WIDTH - RIGHT, BOTTOM + 16, day(one.day), i === 0 ? 'start' : 'end'),
    ),
  );
}
