import { addressOf, parseArea, splitReference } from '../../sheet/formula/address';
import type { Cell } from '../../base/values';
import type { ChartModel, ChartSeries, WorkbookModel } from '../../sheet/workbook/model';
import { SERIES_COLORS } from '../../sheet/workbook/styles';
import { escapeXml } from '../text';

/** Values behind a range, for the copy a chart carries so that it shows before anything is calculated. */
function valuesOf(range: string, model: WorkbookModel): readonly Cell[] {
  const { sheet: name, area: text } = splitReference(range);
  const sheet = model.sheets.find((s) => s.name === name);
  const area = parseArea(text);
  if (!sheet || !area) return [];
  const values: Cell[] = [];
  for (let row = area.top; row <= area.bottom; row++)
    for (let column = area.left; column <= area.right; column++)
      values.push(sheet.cells[addressOf(row, column)]?.value ?? null);
  return values;
}

const points = (values: readonly Cell[], isNumber: boolean): string =>
  values
    .map((value, i) =>
      (
        isNumber
          ? typeof value === 'number' && Number.isFinite(value)
          : value !== null && typeof value !== 'object'
      )
        ? `<c:pt idx="${i}"><c:v>${escapeXml(String(value))}</c:v></c:pt>`
        : '',
    )
    .join('');

const numbersXml = (range: string, model: WorkbookModel, format: string): string => {
  const values = valuesOf(range, model);
  return `<c:numRef><c:f>${escapeXml(range)}</c:f><c:numCache><c:formatCode>${escapeXml(format)}</c:formatCode><c:ptCount val="${values.length}"/>${points(values, true)}</c:numCache></c:numRef>`;
};
const textsXml = (range: string, model: WorkbookModel): string => {
  const values = valuesOf(range, model);
  return `<c:strRef><c:f>${escapeXml(range)}</c:f><c:strCache><c:ptCount val="${values.length}"/>${points(values, false)}</c:strCache></c:strRef>`;
};

const INK = '1F2A30';
const textProperties = (size: number, isBold: boolean, turned = ''): string =>
  `<a:bodyPr${turned}/><a:lstStyle/><a:p><a:pPr><a:defRPr sz="${size}" b="${isBold ? 1 : 0}"><a:solidFill><a:srgbClr val="${INK}"/></a:solidFill></a:defRPr></a:pPr>`;
const titleXml = (text: string, size: number, isBold: boolean, turned = ''): string =>
  `<c:title><c:tx><c:rich>${textProperties(size, isBold, turned)}<a:r><a:rPr lang="en-GB" sz="${size}" b="${isBold ? 1 : 0}"><a:solidFill><a:srgbClr val="${INK}"/></a:solidFill></a:rPr><a:t>${escapeXml(text)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;
const tickText = `<c:txPr>${textProperties(800, false)}<a:endParaRPr lang="en-GB"/></a:p></c:txPr>`;
const GRID =
  '<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr ' +
  'val="D9DEE0"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>';
const LINE = '<c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="8A949A"/></a:solidFill></a:ln></c:spPr>';

/** Dashes, not only colours, tell lines apart. */
const DASHES = ['solid', 'dash', 'sysDot', 'lgDashDot'] as const;
const colorOf = (series: ChartSeries, i: number): string =>
  series.color ?? SERIES_COLORS[i % SERIES_COLORS.length] ?? INK;
const fillXml = (color: string): string => `<a:solidFill><a:srgbClr val="${color}"/></a:solidFill>`;

function seriesXml(chart: ChartModel, series: ChartSeries, i: number, model: WorkbookModel): string {
  const color = colorOf(series, chart.kind === 'occupancy' ? i - 1 : i);
  const shape =
    chart.kind === 'line'
      ? `<c:spPr><a:ln w="25400" cap="rnd">${fillXml(color)}<a:prstDash val="${DASHES[i % DASHES.length] ?? 'solid'}"/><a:round/></a:ln></c:spPr><c:marker><c:symbol val="none"/></c:marker>`
      : `<c:spPr>${series.isHidden ? '<a:noFill/>' : fillXml(color)}<a:ln>${series.isHidden ? '<a:noFill/>' : fillXml(INK)}</a:ln></c:spPr><c:invertIfNegative val="0"/>`;
  const categories = !chart.categories.trim()
    ? ''
    : chart.categoryFormat
      ? numbersXml(chart.categories, model, chart.categoryFormat)
      : textsXml(chart.categories, model);
  return (
    `<c:ser><c:idx val="${i}"/><c:order val="${i}"/><c:tx><c:v>${escapeXml(series.name)}</c:v></c:tx>${shape}` +
    `${categories ? `<c:cat>${categories}</c:cat>` : ''}<c:val>${numbersXml(series.values, model, chart.valueFormat ?? 'General')}</c:val>${chart.kind === 'line' ? '<c:smooth val="0"/>' : ''}</c:ser>`
  );
}

const AXES = '<c:axId val="10001"/><c:axId val="10002"/>';
function plotXml(chart: ChartModel, model: WorkbookModel): string {
  const series = chart.series.map((s, i) => seriesXml(chart, s, i, model)).join('');
  if (chart.kind === 'line')
    return `<c:lineChart><c:grouping val="standard"/><c:varyColors val="0"/>${series}<c:marker val="1"/>${AXES}</c:lineChart>`;
  const isBar = chart.kind === 'occupancy';
  return `<c:barChart><c:barDir val="${isBar ? 'bar' : 'col'}"/><c:grouping val="${isBar ? 'stacked' : 'clustered'}"/><c:varyColors val="0"/>${series}<c:gapWidth val="${isBar ? 45 : 60}"/>${isBar ? '<c:overlap val="100"/>' : ''}${AXES}</c:barChart>`;
}

function categoryAxis(chart: ChartModel): string {
  const isBar = chart.kind === 'occupancy';
  const position =
    `<c:axId val="10001"/><c:scaling><c:orientation val="${isBar ? 'maxMin' : 'minMax'}"/></c:scaling><c:delete val="0"/><c:axPos val="${isBar ? 'l' : 'b'}"/>` +
    (chart.xTitle ? titleXml(chart.xTitle, 900, false) : '');
  const look = (format: string): string =>
    `<c:numFmt formatCode="${escapeXml(format)}" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="low"/>${LINE}${tickText}<c:crossAx val="10002"/><c:crosses val="autoZero"/>`;
  return chart.categoryFormat
    ? `<c:dateAx>${position}${look(chart.categoryFormat)}<c:auto val="1"/><c:lblOffset val="100"/><c:baseTimeUnit val="days"/></c:dateAx>`
    : `<c:catAx>${position}${look('General')}<c:auto val="1"/><c:lblAlgn val="ctr"/><c:lblOffset val="100"/><c:noMultiLvlLbl val="0"/></c:catAx>`;
}

function valueAxis({ kind, valueRange, yTitle, valueFormat }: ChartModel): string {
  const isBar = kind === 'occupancy';
  const scaling = `<c:scaling><c:orientation val="minMax"/>${valueRange ? `<c:max val="${valueRange[1]}"/><c:min val="${valueRange[0]}"/>` : ''}</c:scaling>`;
  return (
    `<c:valAx><c:axId val="10002"/>${scaling}<c:delete val="0"/><c:axPos val="${isBar ? 'b' : 'l'}"/>${GRID}${yTitle ? titleXml(yTitle, 900, false, isBar ? '' : ' rot="-5400000" vert="horz"') : ''}` +
    `<c:numFmt formatCode="${escapeXml(valueFormat ?? 'General')}" sourceLinked="0"/><c:majorTickMark val="none"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/>${LINE}${tickText}<c:crossAx val="10001"/>` +
    // With the first bar on top the value axis would move up: it crosses at the far end instead.
    `<c:crosses val="${isBar ? 'max' : 'autoZero'}"/><c:crossBetween val="between"/></c:valAx>`
  );
}

export function chartXml(chart: ChartModel, model: WorkbookModel): string {
  const hidden = chart.series.flatMap((s, i) =>
    s.isHidden ? [`<c:legendEntry><c:idx val="${i}"/><c:delete val="1"/></c:legendEntry>`] : [],
  );
  // Colours of occupancy bars only part one stay from the next: a legend would say nothing.
  const legend =
    chart.kind !== 'occupancy' && chart.series.filter((s) => !s.isHidden).length > 1
      ? `<c:legend><c:legendPos val="b"/>${hidden.join('')}<c:overlay val="0"/>${tickText}</c:legend>`
      : '';
  return (
    '<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" ' +
    'xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" ' +
    'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">' +
    `<c:date1904 val="0"/><c:roundedCorners val="0"/><c:chart>${titleXml(chart.title, 1200, true)}<c:autoTitleDeleted val="0"/>` +
    `<c:plotArea><c:layout/>${plotXml(chart, model)}${categoryAxis(chart)}${valueAxis(chart)}</c:plotArea>${legend}<c:plotVisOnly val="1"/><c:dispBlanksAs val="span"/></c:chart>` +
    ('<c:spPr><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill><a:ln ' +
      'w="6350"><a:solidFill><a:srgbClr ' +
      'val="B9C4C7"/></a:solidFill></a:ln></c:spPr></c:chartSpace>')
  );
}
