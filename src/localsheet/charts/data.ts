import type { Cell } from '../../../shared/base/values';
import { SERIES_COLORS } from '../../../shared/sheet/workbook/styles';
import type { StandInBook, ChartState } from '../../officeStandIn/book';
import { referenceOf } from '../areas';
import { formatted } from './numbers';

/** A chart with its numbers: what is drawn, and what the table beside it says in words. */
export interface ChartData {
  readonly id: string;
  readonly title: string;
  readonly kind: 'line' | 'column' | 'bar';
  readonly isStacked: boolean;
  readonly labels: readonly string[];
  readonly series: readonly SeriesData[];
  readonly xTitle: string;
  readonly yTitle: string;
  readonly isReversed: boolean;
  readonly hasLegend: boolean;
  readonly valueFormat: string;
  readonly min: number | undefined;
  readonly max: number | undefined;
}

export interface SeriesData {
  readonly name: string;
  readonly values: readonly (number | null)[];
  /** As the cells show them. */
  readonly texts: readonly string[];
  readonly color: string;
  /** Only holds the bars behind it away from the axis. */
  readonly isSpacer: boolean;
}

interface Column {
  readonly values: readonly Cell[];
  readonly texts: readonly string[];
  readonly format: string;
}
const NOTHING: Column = { values: [], texts: [], format: '' };

/** Charts of whole columns stop at this many points. */
const MOST_POINTS = 2000;

async function column(book: StandInBook, reference: string, home: string): Promise<Column> {
  const found = referenceOf(reference);
  if (!found) return NOTHING;
  const sheets = await book.sheets();
  const sheet =
    found.sheet === undefined
      ? home
      : sheets.find((s) => s.name.toLowerCase() === found.sheet?.toLowerCase())?.id;
  if (sheet === undefined) return NOTHING;
  const area = {
    ...found.area,
    rows: Math.min(found.area.rows, MOST_POINTS),
    columns: Math.min(found.area.columns, MOST_POINTS),
  };
  const [values, texts, formats] = [
    await book.read(sheet, area, 'values'),
    await book.read(sheet, area, 'text'),
    await book.read(sheet, { ...area, rows: 1, columns: 1 }, 'formats'),
  ];
  return { values: values.flat(), texts: texts.flat(), format: formats[0]?.[0] ?? '' };
}

const kindOf = (type: string): Pick<ChartData, 'kind' | 'isStacked'> => ({
  kind:
    type.startsWith('Line') || type.startsWith('XY') || type.startsWith('Area')
      ? 'line'
      : type.startsWith('Bar')
        ? 'bar'
        : 'column',
  isStacked: type.includes('Stacked'),
});

const labelsOf = ({ values, texts }: Column, format: string | undefined, length: number): string[] =>
  Array.from({ length }, (_, i) => {
    const value = values[i];
    return format && typeof value === 'number' ? formatted(format, value) : (texts[i] ?? String(i + 1));
  });

export async function chartData(book: StandInBook, sheet: string, chart: ChartState): Promise<ChartData> {
  const columns = await Promise.all(chart.series.map((s) => column(book, s.values, sheet)));
  const categories = await column(book, chart.series[0]?.categories ?? '', sheet);
  const length = Math.max(0, ...columns.map((c) => c.values.length));
  let drawn = 0;
  const series = chart.series.map((s, i): SeriesData => {
    const isSpacer = s.fill === 'none';
    const { values, texts } = columns[i] ?? NOTHING;
    const automatic = `#${SERIES_COLORS[(isSpacer ? 0 : drawn++) % SERIES_COLORS.length] ?? '12454F'}`;
    return {
      name: s.name,
      values: values.map((v) => (typeof v === 'number' ? v : null)),
      texts,
      isSpacer,
      color: s.fill && !isSpacer ? s.fill : automatic,
    };
  });
  const { kind, isStacked } = kindOf(chart.type);
  return {
    id: chart.id,
    title: chart.title ?? chart.name,
    kind,
    isStacked,
    series,
    labels: labelsOf(categories, chart.category.format, length),
    xTitle: chart.category.title ?? '',
    yTitle: chart.value.title ?? '',
    isReversed: chart.category.reversed,
    hasLegend: chart.legend.visible,
    valueFormat: chart.value.format ?? columns[0]?.format ?? '',
    min: chart.value.min,
    max: chart.value.max,
  };
}

/** The same numbers as words, for who cannot see the picture. */
export const summary = (data: ChartData): string => {
  const shown = data.series.filter((s) => !s.isSpacer);
  const range = (s: SeriesData): string => {
    const numbers = s.values.filter((v): v is number => v !== null);
    if (numbers.length === 0) return `${s.name}: no numbers`;
    const at = (n: number): string => s.texts[s.values.indexOf(n)] ?? String(n);
    return `${s.name}: ${numbers.length} values, from ${at(Math.min(...numbers))} to ${at(Math.max(...numbers))}`;
  };
  return `${data.title}. ${shown.map(range).join('; ')}.`;
};
