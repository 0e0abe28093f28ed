/** The members of the published enumerations that scripts here use; each is just its text. */
export const ENUMS = {
  SheetVisibility: { visible: 'Visible', hidden: 'Hidden', veryHidden: 'VeryHidden' },
  ClearApplyTo: { all: 'All', formats: 'Formats', contents: 'Contents' },
  CalculationType: { recalculate: 'Recalculate', full: 'Full', fullRebuild: 'FullRebuild' },
  ConditionalFormatType: { custom: 'Custom' },
  PageOrientation: { portrait: 'Portrait', landscape: 'Landscape' },
  BorderIndex: {
    edgeTop: 'EdgeTop', edgeBottom: 'EdgeBottom', edgeLeft: 'EdgeLeft', edgeRight: 'EdgeRight', insideVertical: 'InsideVertical', insideHorizontal: 'InsideHorizontal',
  },
  BorderLineStyle: { none: 'None', continuous: 'Continuous', dash: 'Dash', dot: 'Dot', double: 'Double' },
  HorizontalAlignment: { general: 'General', left: 'Left', center: 'Center', right: 'Right', centerAcrossSelection: 'CenterAcrossSelection' },
  VerticalAlignment: { top: 'Top', center: 'Center', bottom: 'Bottom' },
  ChartType: { line: 'Line', lineMarkers: 'LineMarkers', columnClustered: 'ColumnClustered', barStacked: 'BarStacked', barClustered: 'BarClustered' },
  ChartSeriesBy: { auto: 'Auto', columns: 'Columns', rows: 'Rows' },
  ChartLegendPosition: { top: 'Top', bottom: 'Bottom', left: 'Left', right: 'Right' },
  DataValidationOperator: {
    between: 'Between', notBetween: 'NotBetween', equalTo: 'EqualTo', notEqualTo: 'NotEqualTo', greaterThan: 'GreaterThan', lessThan: 'LessThan',
    greaterThanOrEqualTo: 'GreaterThanOrEqualTo', lessThanOrEqualTo: 'LessThanOrEqualTo',
  },
  DataValidationAlertStyle: { stop: 'Stop', warning: 'Warning', information: 'Information' },
  RangeValueType: { empty: 'Empty', string: 'String', double: 'Double', boolean: 'Boolean', error: 'Error' },
} as const;
