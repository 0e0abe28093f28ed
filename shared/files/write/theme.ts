import { FONT } from '../../sheet/workbook/styles';

/** A plain theme: charts and a new workbook's defaults take their fonts and colours from it. */
const color = (name: string, value: string): string => `<a:${name}><a:srgbClr val="${value}"/></a:${name}>`;
const COLORS: readonly (readonly [string, string])[] = [
  ['dk1', '000000'],
  ['lt1', 'FFFFFF'],
  ['dk2', '1F2A30'],
  ['lt2', 'EEF4F4'],
  ['accent1', '12454F'],
  ['accent2', 'C8742A'],
  ['accent3', '7FA6A9'],
  ['accent4', '6B5B95'],
  ['accent5', '8A7A3A'],
  ['accent6', '4A5860'],
  ['hlink', '12454F'],
  ['folHlink', '6B5B95'],
];
const font = (name: string): string =>
  `<a:${name}><a:latin typeface="${FONT}"/><a:ea typeface=""/><a:cs typeface=""/></a:${name}>`;
const three = (item: string): string => item.repeat(3);
const FILL = '<a:solidFill><a:schemeClr val="phClr"/></a:solidFill>';

export const THEME_XML =
  '<a:theme xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" name="Plain"><a:themeElements>' +
  `<a:clrScheme name="Plain">${COLORS.map(([name, value]) => color(name, value)).join('')}</a:clrScheme>` +
  `<a:fontScheme name="Plain">${font('majorFont')}${font('minorFont')}</a:fontScheme>` +
  `<a:fmtScheme name="Plain"><a:fillStyleLst>${three(FILL)}</a:fillStyleLst><a:lnStyleLst>${three(`<a:ln w="9525">${FILL}</a:ln>`)}</a:lnStyleLst>` +
  `<a:effectStyleLst>${three('<a:effectStyle><a:effectLst/></a:effectStyle>')}</a:effectStyleLst><a:bgFillStyleLst>${three(FILL)}</a:bgFillStyleLst></a:fmtScheme>` +
  '</a:themeElements></a:theme>';
