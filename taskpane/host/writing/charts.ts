import { splitReference } from '../../../shared/sheet/formula/address';
import { SERIES_COLORS } from '../../../shared/sheet/workbook/styles';
import type { ChartModel, SheetModel } from '../../../shared/sheet/workbook/model';

const TYPES: Readonly<Record<ChartModel['kind'], Excel.ChartType>> = {
  line: 'Line' as Excel.ChartType,
  column: 'ColumnClustered' as Excel.ChartType,
  occupancy: 'BarStacked' as Excel.ChartType,
};

const rangeOf = (context: Excel.RequestContext, reference: string, home: string): Excel.Range => {
  const { sheet = home, area } = splitReference(reference.replace(/^=/, ''));
  return context.workbook.worksheets.getItem(sheet).getRange(area.replaceAll('$', ''));
};

function addSeries(context: Excel.RequestContext, chart: Excel.Chart, model: ChartModel, home: string): void {
  let color = 0;
  model.series.forEach((one, i) => {
    // A chart made from one column of cells starts with one series; the others are added.
    const series = i === 0 ? chart.series.getItemAt(0) : chart.series.add(one.name);
    series.name = one.name;
    series.setValues(rangeOf(context, one.values, home));
    series.setXAxisValues(rangeOf(context, model.categories, home));
    if (one.isHidden) series.format.fill.clear();
    else {
      const own = one.color ?? SERIES_COLORS[color++ % SERIES_COLORS.length] ?? '';
      if (own) series.format.fill.setSolidColor(`#${own.replace('#', '')}`);
    }
  });
}

function setAxes(chart: Excel.Chart, model: ChartModel): void {
  const { valueAxis, categoryAxis } = chart.axes;
  if (model.xTitle) categoryAxis.title.text = model.xTitle;
  if (model.yTitle) valueAxis.title.text = model.yTitle;
  if (model.valueFormat) valueAxis.numberFormat = model.valueFormat;
  if (model.categoryFormat) categoryAxis.numberFormat = model.categoryFormat;
  if (model.valueRange) [valueAxis.minimum, valueAxis.maximum] = model.valueRange;
  // The first row of the table is drawn on top, as it is read.
  if (model.kind === 'occupancy') categoryAxis.reversePlotOrder = true;
}

export function addCharts(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  sheet: SheetModel,
): void {
  for (const chartModel of sheet.charts ?? []) {
    const [first] = chartModel.series;
    if (!first) continue;
    const chart = worksheet.charts.add(
      TYPES[chartModel.kind],
      rangeOf(context, first.values, sheet.name),
      'Columns',
    );
    chart.name = chartModel.title;
    chart.title.text = chartModel.title;
    addSeries(context, chart, chartModel, sheet.name);
    setAxes(chart, chartModel);
    chart.legend.visible =
      chartModel.kind !== 'occupancy' && chartModel.series.filter((series) => !series.isHidden).length > 1;
    chart.setPosition(chartModel.from, chartModel.to);
  }
}
