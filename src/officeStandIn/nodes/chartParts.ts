import { asFlag, asNumber, asOneOf, asText } from '../input';
import type { ObjectNode } from '../node';
import type { ChartHandle } from './chart';
import { changeAxis } from './chart';

/** Title, legend and axes of a chart. */

const titleNode = (chart: ChartHandle): ObjectNode => ({
  type: 'ChartTitle',
  scalars: {
    Text: async () => (await chart.current()).title ?? '',
    Visible: async () => (await chart.current()).title !== undefined,
  },
  setters: {
    Text: (given) => chart.change({ title: asText(given, 'text') }),
    Visible: async (given) => {
      const { title, ...rest } = await chart.current();
      await chart.env.book.putChart(
        chart.sheet,
        asFlag(given, 'visible') ? { ...rest, title: title ?? '' } : rest,
      );
    },
  },
});

const POSITIONS = ['Top', 'Bottom', 'Left', 'Right', 'Corner'] as const;
const legendNode = (chart: ChartHandle): ObjectNode => ({
  type: 'ChartLegend',
  scalars: {
    Visible: async () => (await chart.current()).legend.visible,
    Position: async () => (await chart.current()).legend.position,
  },
  setters: {
    Visible: async (given) =>
      chart.change({ legend: { ...(await chart.current()).legend, visible: asFlag(given, 'visible') } }),
    Position: async (given) =>
      chart.change({
        legend: { ...(await chart.current()).legend, position: asOneOf(given, POSITIONS, 'position') },
      }),
  },
});

const axisNode = (chart: ChartHandle, which: 'category' | 'value'): ObjectNode => {
  const title: ObjectNode = {
    type: 'ChartAxisTitle',
    scalars: {
      Text: async () => (await chart.current())[which].title ?? '',
      Visible: async () => (await chart.current())[which].title !== undefined,
    },
    setters: {
      Text: (given) => changeAxis(chart, which, { title: asText(given, 'text') }),
      Visible: async (given) => {
        const { title: text, ...rest } = (await chart.current())[which];
        await chart.change({ [which]: asFlag(given, 'visible') ? { ...rest, title: text ?? '' } : rest });
      },
    },
  };
  // '' is automatic.
  const bound =
    (key: 'min' | 'max') =>
    async (given: unknown): Promise<void> => {
      const { min, max, ...rest } = (await chart.current())[which];
      const bounds = { min, max, [key]: given === '' ? undefined : asNumber(given, key) };
      const set = Object.fromEntries(Object.entries(bounds).filter(([, value]) => value !== undefined));
      await chart.change({ [which]: { ...rest, ...set } });
    };
  return {
    type: 'ChartAxis',
    scalars: {
      NumberFormat: async () => (await chart.current())[which].format ?? 'General',
      ReversePlotOrder: async () => (await chart.current())[which].reversed,
      Minimum: async () => (await chart.current())[which].min ?? '',
      Maximum: async () => (await chart.current())[which].max ?? '',
    },
    setters: {
      NumberFormat: (given) => changeAxis(chart, which, { format: asText(given, 'numberFormat') }),
      ReversePlotOrder: (given) => changeAxis(chart, which, { reversed: asFlag(given, 'reversePlotOrder') }),
      Minimum: bound('min'),
      Maximum: bound('max'),
    },
    links: { Title: () => title },
  };
};

export const chartPartNodes = (chart: ChartHandle): NonNullable<ObjectNode['links']> => {
  const axes: ObjectNode = {
    type: 'ChartAxes',
    scalars: {},
    links: { CategoryAxis: () => axisNode(chart, 'category'), ValueAxis: () => axisNode(chart, 'value') },
  };
  return { Title: () => titleNode(chart), Legend: () => legendNode(chart), Axes: () => axes };
};
