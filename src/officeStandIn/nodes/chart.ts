import { formatReference } from '../address';
import type { StandInArea, AxisState, ChartSeriesState, ChartState } from '../book';
import { fail } from '../failure';
import { asNumber, asText, checkColor } from '../input';
import type { Env, ObjectNode } from '../node';
import { chartPartNodes } from './chartParts';
import { placeArgument, placeOf, sheetById } from './find';
import { guardChange } from './guard';
import { seriesFrom } from './chartSource';

export interface ChartHandle {
  readonly env: Env;
  readonly sheet: string;
  readonly current: () => Promise<ChartState>;
  readonly change: (patch: Partial<ChartState>) => Promise<void>;
}

const handle = (env: Env, sheet: string, id: string): ChartHandle => {
  const current = async (): Promise<ChartState> =>
    (await env.book.charts(sheet)).find((c) => c.id === id) ?? fail('ItemNotFound', 'The chart is gone.');
  return {
    env,
    sheet,
    current,
    change: async (patch) => {
      await guardChange(env.book, sheet, 'objects');
      await env.book.putChart(sheet, { ...(await current()), ...patch });
    },
  };
};

export const changeAxis = async (
  chart: ChartHandle,
  which: 'category' | 'value',
  patch: Partial<AxisState>,
): Promise<void> => chart.change({ [which]: { ...(await chart.current())[which], ...patch } });

/** Reference text of a range argument, as a series stores it. */
async function referenceOf(chart: ChartHandle, given: unknown): Promise<string> {
  const place = placeOf(given) ?? fail('InvalidArgument', 'A series takes a range.');
  return formatReference((await sheetById(chart.env.book, place.sheet)).name, place.area);
}

function seriesNode(chart: ChartHandle, at: () => number): ObjectNode {
  const current = async (): Promise<ChartSeriesState> =>
    (await chart.current()).series[at()] ?? fail('ItemNotFound', 'There is no such series.');
  const change = async (patch: (s: ChartSeriesState) => ChartSeriesState): Promise<void> => {
    const changed = patch(await current());
    await chart.change({ series: (await chart.current()).series.map((s, i) => (i === at() ? changed : s)) });
  };
  const fill: ObjectNode = {
    type: 'ChartFill',
    scalars: {},
    methods: {
      SetSolidColor: (color) => {
        const checked = checkColor(color);
        return change((s) => ({ ...s, fill: checked }));
      },
      Clear: () => change((s) => ({ ...s, fill: 'none' })),
    },
  };
  const format: ObjectNode = { type: 'ChartSeriesFormat', scalars: {}, links: { Fill: () => fill } };
  return {
    type: 'ChartSeries',
    scalars: { Name: async () => (await current()).name },
    setters: {
      Name: (given) => {
        const name = asText(given, 'name');
        return change((s) => ({ ...s, name }));
      },
    },
    links: { Format: () => format },
    methods: {
      SetValues: async (range) => {
        const values = await referenceOf(chart, range);
        await change((s) => ({ ...s, values }));
      },
      SetXAxisValues: async (range) => {
        const categories = await referenceOf(chart, range);
        await change((s) => ({ ...s, categories }));
      },
      Delete: async () => {
        await current();
        await chart.change({ series: (await chart.current()).series.filter((_, i) => i !== at()) });
      },
    },
  };
}

function seriesCollection(chart: ChartHandle): ObjectNode {
  const itemAt = async (index: unknown): Promise<ObjectNode> => {
    const at = asNumber(index, 'index');
    if (!(await chart.current()).series[at]) return fail('ItemNotFound', `There is no series ${at}.`);
    return seriesNode(chart, () => at);
  };
  return {
    type: 'ChartSeriesCollection',
    scalars: { Count: async () => (await chart.current()).series.length },
    items: async () => (await chart.current()).series.map((_, i) => seriesNode(chart, () => i)),
    methods: {
      GetItemAt: itemAt,
      GetCount: async () => (await chart.current()).series.length,
      Add: async (name) => {
        const { series } = await chart.current();
        await chart.change({
          series: [
            ...series,
            {
              name: typeof name === 'string' ? name : `Series${series.length + 1}`,
              values: '',
              categories: series[0]?.categories ?? '',
            },
          ],
        });
        return seriesNode(chart, () => series.length);
      },
    },
  };
}

function chartNode(env: Env, sheet: string, id: string): ObjectNode {
  const chart = handle(env, sheet, id);
  const parts = chartPartNodes(chart);
  return {
    type: 'Chart',
    identity: () => ({ Id: id }),
    scalars: {
      Id: () => id,
      Name: async () => (await chart.current()).name,
      ChartType: async () => (await chart.current()).type,
    },
    setters: {
      Name: (given) => chart.change({ name: asText(given, 'name') }),
      ChartType: (given) => chart.change({ type: asText(given, 'chartType') }),
    },
    links: { ...parts, Series: () => seriesCollection(chart) },
    methods: {
      SetPosition: async (from, to) => {
        const first = (await placeArgument(env.book, sheet, from)).area;
        const last =
          to === null || to === undefined ? first : (await placeArgument(env.book, sheet, to)).area;
        const place: StandInArea = {
          row: first.row,
          column: first.column,
          rows: last.row + last.rows - first.row,
          columns: last.column + last.columns - first.column,
        };
        if (place.rows < 1 || place.columns < 1)
          fail('InvalidArgument', 'The end cell lies before the start cell.');
        await chart.change({ place });
      },
      Delete: async () => {
        await guardChange(env.book, sheet, 'objects');
        await env.book.deleteChart(sheet, id);
      },
    },
  };
}

async function addChart(
  env: Env,
  sheet: string,
  type: unknown,
  source: unknown,
  seriesBy: unknown,
): Promise<ObjectNode> {
  const place = placeOf(source) ?? fail('InvalidArgument', 'A chart takes its data from a range.');
  await guardChange(env.book, sheet, 'objects');
  const taken = await env.book.charts(sheet);
  let n = taken.length + 1;
  while (taken.some((c) => c.id === `chart${n}`)) n += 1;
  const axis: AxisState = { reversed: false };
  await env.book.putChart(sheet, {
    id: `chart${n}`,
    name: `Chart ${n}`,
    type: asText(type, 'type'),
    legend: { visible: true, position: 'Bottom' },
    category: axis,
    value: axis,
    series: await seriesFrom(env, place, seriesBy),
  });
  return chartNode(env, sheet, `chart${n}`);
}

export function chartsNode(env: Env, sheet: string): ObjectNode {
  const find = async (key: unknown): Promise<ObjectNode | null> => {
    const chart = (await env.book.charts(sheet)).find((c) => c.id === key || c.name === key);
    return chart ? chartNode(env, sheet, chart.id) : null;
  };
  const item = async (key: unknown): Promise<ObjectNode> =>
    (await find(key)) ?? fail('ItemNotFound', `There is no chart ${String(key)}.`);
  return {
    type: 'ChartCollection',
    scalars: { Count: async () => (await env.book.charts(sheet)).length },
    item,
    items: async () => (await env.book.charts(sheet)).map((c) => chartNode(env, sheet, c.id)),
    methods: {
      Add: (type, source, seriesBy) => addChart(env, sheet, type, source, seriesBy),
      GetItem: item,
      GetItemOrNullObject: find,
      GetCount: async () => (await env.book.charts(sheet)).length,
    },
  };
}
