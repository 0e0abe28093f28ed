import * as convert from '../../shared/units/convert';
import * as dates from '../../shared/units/dates';
import { decimalIn, readNumber } from '../../shared/units/numberText';
import * as quantities from '../../shared/units/quantities';
import type { NumberField } from '../../shared/units/typedNumber';
import { decimalOf, openSentence, readTypedNumber } from '../../shared/units/typedNumber';
import { hourText, openDaySentence, readTypedDay, readTypedHour } from '../../shared/units/typedTime';
import { writtenNumber } from '../../shared/units/writtenNumber';
import { formatNumber } from '../../shared/sheet/formula/textFormat';
import { expectKept } from '../support/kept';

/** Numbers, days and hours as people type and read them: a text a line, every field beside it. */

const NUMBERS = (
  '12|-3.5|1,250|1.250|1,250.5|1.250,5|1 250|10 000,5|1,00,000|0,5|.5|,5|5.|1e5|1.5e-3|80 %|80%|900 g|900g|1.2 kg|' +
  '2 lb|20 L|20 gal|3 US gal|500 ml|78 F|78 °F|25 °C|2.5 meq/L|100 mg/L CaCO3|7 dKH|about 30|ca. 12|~9|12 fish|12 x|' +
  'x|1,000,5|1.000.000|0,500|0.500|1,500 g|−4|+4|1’250|12/03|$ 12.50|12,50 €|1 2|00012|999,999|1.2.3'
).split('|');
const FIELDS: readonly NumberField[] = [
  {},
  { unit: 'kg', min: 0.1, max: 15 },
  { unit: 'g', min: 0, max: 5000 },
  { unit: 'L', min: 10, max: 200_000 },
  { unit: '°C', min: 10, max: 40 },
  { unit: 'fish', whole: true, min: 1, max: 5_000_000 },
  { unit: 'share (80 % is 0.8)', min: 0, max: 1 },
  { unit: 'meq/L', min: 0, max: 20 },
  { decimal: ',' },
  { decimal: '.' },
];
const HOURS = (
  '22:30|22h30|22.30|2230|10:30 pm|10 pm|12 am|12 pm|13 pm|0 am|22 h|7.5|7,5|7.05|7.75|noon|midnight|24:00|24:01|25|' +
  '7:60|7|07|0730|0760|seven|7 Uhr|7u15|7:5|'
).split('|');
const DAYS = (
  '2027-03-31|2027/3/31|31/3/2027|3/4/2027|4/4/2027|13/4/2027|4/13/2027|31.03.27|31.02.2027|31 March 2027|31 mars|' +
  'Mar 31|March 31, 2027|31st March|1 avr 27|Tuesday 2 March 2027|46477|36525|36526|73050|73051|2027-13-01|' +
  '2027-02-29|2028-02-29|31 Foo|1 de mayo de 2027|5 dez|30 feb|2027-03-31T00:00|1-2-99|'
).split('|');
const SIZES = [0, 1, -1, 0.5, 0.045, 999.5, 1000, 12_345.678, -1_234_567, 1e-7, 1e15, 1e21, 0.1 + 0.2];
const SERIALS = [
  1, 59, 60, 61, 366, 25_569, 36_526, 45_350.999_9, 45_351.25, 45_657.5, 46_022, 46_447.75, 73_050,
];

const said = (read: object): string => Object.values(read).map(String).join(' ¦ ');

test('numbers', () => {
  expectKept(
    'typed-numbers',
    NUMBERS.map((text) => [
      text,
      ...FIELDS.map((field) => {
        const read = readTypedNumber(text, field);
        return `${field.unit ?? field.decimal ?? ''}: ${said(read)}${read.kind === 'open' ? ` ${openSentence(text, read.readings)}` : ''}`;
      }),
      `${decimalIn(text) ?? '–'} ${JSON.stringify(readNumber(text, '.'))} ${JSON.stringify(readNumber(text, ','))}`,
    ]),
  );
  expect([decimalOf(['1,5', '2']), decimalOf(['1,5', '2.5']), decimalOf([])]).toEqual([
    ',',
    undefined,
    undefined,
  ]);
});

test('days and hours', () => {
  expectKept('typed-times', {
    hours: HOURS.map((text) => `${text}: ${said(readTypedHour(text))}`),
    texts: SERIALS.map((x) => hourText(((x * 7) % 24) + 0.004)),
    days: DAYS.map((text) => {
      const read = readTypedDay(text);
      return [
        text,
        `${said(read)}${read.kind === 'open' ? ` ${openDaySentence(text, read.readings)}` : ''}`,
        said(readTypedDay(text, { today: 46_477, order: 'day first' })),
        said(readTypedDay(text, { today: 46_478, order: 'month first' })),
      ].join(' / ');
    }),
    serials: SERIALS.map((x) =>
      [
        x,
        ...[dates.timeText, dates.dayText, dates.weekdayText, dates.momentText, dates.isoMomentText].map(
          (of) => of(x),
        ),
        ...[dates.isoDateOfSerial(x), dates.weekdayOf(x), dates.mondayOf(x), dates.monthIndexOf(x)],
        JSON.stringify(dates.dayParts(x)),
        dates.isMomentCell(x),
      ].join(' ¦ '),
    ),
    moments: ['2027-03-31T10:00:00', '2027-03-31', '2027-03-31T10:00:00+02:00', '2027-03-31T10:00Z', 'x'].map(
      (text) => dates.serialOfIsoMoment(text),
    ),
    months: ['January', 'mar', 'DEC', 'foo', ''].map(dates.monthOfWord),
  });
});

test('numbers as they are written, units and quantities', () => {
  const formats = [
    'General',
    '0',
    '0.00',
    '#,##0',
    '0%',
    '0.0%',
    '#,##0.00;(#,##0.00);"–"',
    '0.##',
    'd mmm yyyy',
    'h:mm am/pm',
  ];
  expectKept('written-numbers', {
    written: SIZES.map((x) => [x, writtenNumber(x), writtenNumber(x, 1), writtenNumber(x, 3)].join(' ¦ ')),
    formats: SIZES.map((x) => formats.map((format) => formatNumber(x, format)).join(' ¦ ')),
    hardness: convert.HARDNESS_UNITS.map((unit) => [
      unit,
      convert.hardnessFrom(2.5, unit),
      convert.hardnessTo(2.5, unit),
    ]),
    convert: Object.entries(convert).map(([name, value]) =>
      typeof value === 'function'
        ? [name, ...[0, 1, 2.5, 300].map((x) => (value as (of: number) => unknown)(x))]
        : [name, value],
    ),
    quantities: Object.entries(quantities).map(([name, value]) =>
      typeof value === 'object' ? `${name} ${JSON.stringify(value)}` : name,
    ),
    slips: Object.entries(quantities).flatMap(([name, value]) => {
      const slip = (value as { slip?: (x: number) => string | undefined }).slip;
      return typeof slip === 'function'
        ? [[name, ...[-5, 0.05, 1, 8, 30, 65, 85, 250, 1500, 40_000].map((x) => slip(x) ?? '')]]
        : [];
    }),
  });
});
