import { parseAddress } from '../../../shared/sheet/formula/address';
import type {
  ChartModel,
  SheetModel,
  ValidationModel,
  WorkbookModel,
} from '../../../shared/sheet/workbook/model';
import type { UniverBook } from '../univer/book';
import { given } from './optional';
import type { StandInArea, StandInBook, ChartState, ValidationState } from '../../officeStandIn/book';

/** What stands beside the cells, both ways: input rules, colouring rules, charts. */

const CHART_TYPES: Readonly<Record<ChartModel['kind'], string>> = {
  line: 'Line',
  column: 'ColumnClustered',
  occupancy: 'BarStacked',
};

export function validationState(rule: ValidationModel): ValidationState {
  const error = { title: '', message: rule.message, style: 'Stop' as const, show: true };
  if (rule.kind === 'list')
    return {
      rule: { kind: 'list', source: rule.items.join(','), dropDown: true },
      ignoreBlanks: true,
      error,
    };
  return {
    rule: { kind: rule.kind, operator: 'Between', formula1: rule.min, formula2: rule.max },
    ignoreBlanks: true,
    error,
  };
}

/** The add-in writes the bounds of days as formulas, "=46000", so that no program takes them for text. */
const boundOf = (bound: string | number | undefined): number =>
  bound === undefined || bound === '' ? NaN : Number(String(bound).replace(/^=/, ''));

export function validationModel(state: ValidationState, range: string): ValidationModel | undefined {
  const message = state.error?.message ?? '';
  const { rule } = state;
  if (rule.kind === 'list')
    return rule.source.startsWith('=')
      ? undefined
      : { range, message, kind: 'list', items: rule.source.split(',').map((item) => item.trim()) };
  if (rule.kind === 'decimal' || rule.kind === 'whole' || rule.kind === 'date') {
    const [min, max] = [boundOf(rule.formula1), boundOf(rule.formula2)];
    if (rule.operator === 'Between' && Number.isFinite(min) && Number.isFinite(max))
      return { range, message, kind: rule.kind, min, max };
  }
  return undefined;
}

const corner = (text: string): { row: number; column: number } => parseAddress(text) ?? { row: 0, column: 0 };

export function chartState(chart: ChartModel, id: string): ChartState {
  const [from, to] = [corner(chart.from), corner(chart.to)];
  const shown = chart.series.filter((s) => !s.isHidden);
  return {
    id,
    name: chart.title,
    title: chart.title,
    type: CHART_TYPES[chart.kind],
    legend: { visible: shown.length > 1, position: 'Bottom' },
    category: {
      reversed: chart.kind === 'occupancy',
      ...(chart.xTitle ? { title: chart.xTitle } : {}),
      ...(chart.categoryFormat ? { format: chart.categoryFormat } : {}),
    },
    value: {
      reversed: false,
      ...(chart.yTitle ? { title: chart.yTitle } : {}),
      ...(chart.valueFormat ? { format: chart.valueFormat } : {}),
      ...(chart.valueRange ? { min: chart.valueRange[0], max: chart.valueRange[1] } : {}),
    },
    series: chart.series.map((s) => ({
      name: s.name,
      values: s.values,
      categories: chart.categories,
      ...(s.isHidden ? { fill: 'none' } : s.color ? { fill: `#${s.color.replace('#', '')}` } : {}),
    })),
    place: {
      row: from.row,
      column: from.column,
      rows: to.row - from.row + 1,
      columns: to.column - from.column + 1,
    },
  };
}

const kindOf = (type: string): ChartModel['kind'] | undefined => {
  if (type === 'BarStacked') return 'occupancy';
  if (type.startsWith('Line')) return 'line';
  return type.startsWith('Column') && !type.includes('Stacked') ? 'column' : undefined;
};

/** undefined when the model has no such chart. */
export function chartModel(
  chart: ChartState,
  corners: (place: StandInArea) => readonly [string, string],
): ChartModel | undefined {
  const kind = kindOf(chart.type);
  const [first] = chart.series;
  if (!kind || !first) return undefined;
  const [from, to] = corners(chart.place ?? { row: 1, column: 1, rows: 15, columns: 7 });
  const { category, value } = chart;
  return {
    kind,
    from,
    to,
    title: chart.title ?? chart.name,
    categories: first.categories,
    series: chart.series.map((s) => ({
      name: s.name,
      values: s.values,
      ...(s.fill === 'none' ? { isHidden: true } : given('color', s.fill?.replace('#', ''))),
    })),
    ...given('xTitle', category.title),
    ...given('yTitle', value.title),
    ...given('valueFormat', value.format),
    ...given('categoryFormat', category.format),
    ...(value.min !== undefined && value.max !== undefined
      ? { valueRange: [value.min, value.max] as const }
      : {}),
  };
}

async function addSheetFeatures(book: StandInBook, sheet: string, model: SheetModel): Promise<void> {
  for (const [i, chart] of (model.charts ?? []).entries())
    await book.putChart(sheet, chartState(chart, `chart${i + 1}-${sheet}`));
  const { landscape = false, titleRows } = model.print ?? {};
  await book.setPage(sheet, {
    landscape,
    ...(titleRows ? { titleRows: [titleRows[0] - 1, titleRows[1] - 1] as const } : {}),
  });
  // Last: it refuses what comes after.
  if (model.isProtected)
    await book.setProtection(sheet, {
      isOn: true,
      options: { allowFormatColumns: true, allowFormatRows: true },
    });
}

/** What the engine has no place for; names, rules, tables and notes come inside the snapshot. */
export async function addFeatures({ book, beside }: UniverBook, model: WorkbookModel): Promise<void> {
  const sheets = await book.sheets();
  for (const [i, sheet] of model.sheets.entries()) {
    const id = sheets[i]?.id;
    if (id === undefined) continue;
    if (sheet.print) beside.put(id, { print: sheet.print });
    await addSheetFeatures(book, id, sheet);
  }
}
