import { isDateFormat, readStyles } from '../../shared/files/read/styles';

/** Looks as another program writes them (ISO/IEC 29500-1, 18.8), each attribute on and off. */
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(`<styleSheet>${text}</styleSheet>`);
const xf = (attributes: string, inside = ''): string => `<xf ${attributes}>${inside}</xf>`;
const PLAIN = { fonts: '<font/>', fills: '<fill/>', borders: '<border/>', formats: '' };
const cell = (parts: Partial<typeof PLAIN>, attributes: string, inside = '') => {
  const { fonts, fills, borders, formats } = { ...PLAIN, ...parts };
  return readStyles(
    bytesOf(
      `<numFmts>${formats}</numFmts><fonts>${fonts}</fonts><fills>${fills}</fills><borders>${borders}</borders>` +
        `<cellXfs>${xf(attributes, inside)}</cellXfs>`,
    ),
  ).cells[0];
};

test.each([
  [0, undefined, false],
  [1, '0', false],
  [2, '0.00', false],
  [3, '#,##0', false],
  [4, '#,##0.00', false],
  [9, '0%', false],
  [10, '0.00%', false],
  [11, '0.00E+00', false],
  [14, 'd/m/yyyy', true],
  [15, 'd-mmm-yy', true],
  [16, 'd-mmm', true],
  [17, 'mmm-yy', true],
  [18, 'h:mm AM/PM', true],
  [19, 'h:mm:ss AM/PM', true],
  [20, 'h:mm', true],
  [21, 'h:mm:ss', true],
  [22, 'd/m/yyyy h:mm', true],
  [37, '#,##0 ;(#,##0)', false],
  [38, '#,##0 ;[Red](#,##0)', false],
  [39, '#,##0.00;(#,##0.00)', false],
  [40, '#,##0.00;[Red](#,##0.00)', false],
  [45, 'mm:ss', true],
  [46, '[h]:mm:ss', true],
  [47, 'mmss.0', true],
  [48, '##0.0E+0', false],
  [49, '@', false],
  [164, 'yyyy-mm-dd', true],
  [165, undefined, false],
])('format %i: %s', (id, format, isDate) => {
  const formats =
    '<numFmt numFmtId="164" formatCode="yyyy-mm-dd"/><numFmt numFmtId="165" formatCode="General"/>';
  expect(cell({ formats }, `numFmtId="${id}"`)).toMatchObject({ format, isDate });
});
test.each([
  ['General', false],
  ['[Red]0.00', false],
  ['[h]:mm', true],
  ['[mm]:ss', true],
  ['"days" 0', false],
  ['0 \\d', false],
  ['0_d', false],
  ['0*d', false],
  ['0;d', false],
  ['d;0', true],
])('%s shows a day or an hour: %s', (format, isDate) => {
  expect(isDateFormat(format)).toBe(isDate);
});

test('fonts', () => {
  const look = (font: string) => cell({ fonts: `<font>${font}</font>` }, 'fontId="0"')?.look;
  expect(look('')).toEqual({});
  expect(look('<sz val="11"/>')).toEqual({});
  expect(look('<sz val="12"/><b/>')).toEqual({ look: { ink: '000000', isBold: true, size: 12 } });
  expect(look('<sz val="10"/><i/><b val="0"/>')).toEqual({ look: { ink: '000000', isItalic: true } });
  expect(look('<i val="false"/><b val="1"/>')).toEqual({ look: { ink: '000000', isBold: true } });
  expect(look('<sz val="12"/>')).toEqual({ look: { ink: '000000', size: 12 } });
  expect(look('<color rgb="FF12abCD"/>')).toEqual({ look: { ink: '12ABCD' } });
  expect(look('<color rgb="12ABCD"/>')).toEqual({ look: { ink: '12ABCD' } });
  expect(look('<color rgb="2ABCD"/>')).toEqual({});
  expect(look('<color rgb="FFF12ABCD"/>')).toEqual({});
  expect(look('<color theme="1"/>')).toEqual({});
});
test('fills and alignment', () => {
  const fills =
    '<fill/><fill><patternFill><fgColor rgb="FFEEDDCC"/><bgColor rgb="FF000001"/></patternFill></fill>';
  const ink = '000000';
  expect(cell({ fills }, 'fillId="1"')?.look).toEqual({ look: { ink, fill: 'EEDDCC' } });
  expect(cell({ fills }, 'fillId="0"')?.look).toEqual({});
  const set = (inside: string) => cell({}, '', inside)?.look.look;
  expect(set('<alignment horizontal="center" indent="2" wrapText="1"/>')).toEqual({
    ink,
    align: 'center',
    indent: 2,
    wraps: true,
  });
  expect(set('<alignment horizontal="right" indent="0" wrapText="true"/>')).toEqual({
    ink,
    align: 'right',
    wraps: true,
  });
  expect(set('<alignment horizontal="fill" wrapText="0"/>')).toBeUndefined();
  expect(set('<protection locked="0"/>')).toEqual({ ink, isOpen: true });
  expect(set('<protection locked="false"/>')).toEqual({ ink, isOpen: true });
  expect(set('<protection locked="1"/>')).toBeUndefined();
});
test('borders: all around thin or medium, or below alone', () => {
  const border = (...sides: readonly string[]) => {
    const inside = sides.map((side) => {
      const [name = '', style = '', color = ''] = side.split(' ');
      return `<${name} style="${style}">${color ? `<color rgb="FF${color}"/>` : ''}</${name}>`;
    });
    const { look } = cell({ borders: `<border>${inside.join('')}</border>` }, 'borderId="0"')?.look ?? {};
    return look ? [look.border, look.borderColor] : undefined;
  };
  expect(border('left thin', 'right thin', 'top thin', 'bottom thin 112233')).toEqual(['thin', '112233']);
  expect(border('start thin', 'end thin', 'top thin', 'bottom medium')).toEqual(['medium', '808080']);
  expect(border('left thin', 'right thin', 'top thin', 'bottom thick')).toEqual(['medium', '808080']);
  expect(border('right thin', 'top thin', 'bottom thin')).toEqual(['bottom', '808080']);
  expect(border('left none', 'right thin', 'top thin', 'bottom thin')).toEqual(['bottom', '808080']);
  expect(border('left thin', 'right thin', 'top thin')).toBeUndefined();
});
test.each([
  [
    '<font><color rgb="FF0B4F2A"/><b/></font><fill><patternFill><bgColor rgb="FFDFF0E3"/></patternFill></fill>',
    'good',
  ],
  ['<fill><patternFill><bgColor rgb="FFFFC7CE"/></patternFill></fill>', 'bad'],
  ['<fill><patternFill><bgColor rgb="FFFFEB9C"/></patternFill></fill>', 'warning'],
  ['<fill><patternFill><bgColor rgb="FFC6EFCE"/></patternFill></fill>', 'good'],
  ['<font><color rgb="FF9C0006"/></font>', 'bad'],
  // Red over green by more than 15 of 255, green over blue by more than 40.
  ['<fill><patternFill><bgColor rgb="FF503F00"/></patternFill></fill>', 'warning'],
  ['<fill><patternFill><bgColor rgb="FF504000"/></patternFill></fill>', 'warning'],
  ['<fill><patternFill><bgColor rgb="FF502900"/></patternFill></fill>', 'warning'],
  ['<fill><patternFill><bgColor rgb="FF502800"/></patternFill></fill>', 'bad'],
  ['<fill><patternFill><bgColor rgb="FF504128"/></patternFill></fill>', 'warning'],
  ['<fill><patternFill><bgColor rgb="FF503F28"/></patternFill></fill>', 'bad'],
  ['<fill><patternFill><bgColor rgb="FF505100"/></patternFill></fill>', 'good'],
  ['<fill><patternFill><bgColor rgb="FF505000"/></patternFill></fill>', 'warning'],
  ['<font><color theme="1"/></font>', undefined],
  // The colour of a border is not the ink.
  [
    '<font><color rgb="FF9C0006"/></font><border><left style="thin"><color rgb="FF00FF00"/></left></border>',
    'bad',
  ],
])('a rule %s is read as %s', (inside, style) => {
  expect(readStyles(bytesOf(`<dxfs><dxf>${inside}</dxf></dxfs>`)).rules).toEqual([style]);
});
test('no styles, no looks', () => {
  expect(readStyles(undefined)).toEqual({ cells: [], rules: [] });
});
