import * as convert from '../../shared/units/convert';
import * as dates from '../../shared/units/dates';
import * as quantities from '../../shared/units/quantities';
import type { Quantity } from '../../shared/units/quantities';
import { hourText, readTypedDay, readTypedHour } from '../../shared/units/typedTime';

/** Every factor, and each side of every limit of the units. */
const C = convert;

// Factors exact by definition (international yard and pound agreement 1959; US gallon of 231 cubic inches); molar
// masses by the standard atomic weights Ca 40.078, C 12.011, O 15.999, H 1.008.
const CaCO3 = 40.078 + 12.011 + 3 * 15.999;
const CaO = 40.078 + 15.999;
test.each<readonly [string, number, number]>([
  ['kelvin', C.kelvinFromCelsius(25), 298.15],
  ['celsius', C.celsiusFromKelvin(273.15), 0],
  ['boiling water', C.celsiusFromFahrenheit(212), 100],
  ['freezing water', C.celsiusFromFahrenheit(32), 0],
  ['the one temperature of both scales', C.fahrenheitFromCelsius(-40), -40],
  ['boiling water in °F', C.fahrenheitFromCelsius(100), 212],
  ['calcium carbonate of a meq', C.mgCaCO3FromMeq(2), CaCO3],
  ['meq of calcium carbonate', C.meqFromMgCaCO3(CaCO3), 2],
  ['a German degree', C.meqFromDkh(CaO), 20],
  ['German degrees', C.dkhFromMeq(20), CaO],
  ['hours', C.hoursFromDays(2), 48],
  ['days', C.daysFromHours(36), 1.5],
  ['grams of kilograms', C.gramsFromKilograms(1.5), 1500],
  ['kilograms of grams', C.kilogramsFromGrams(250), 0.25],
  ['grams of milligrams', C.gramsFromMilligrams(250), 0.25],
  ['milligrams', C.milligramsFromGrams(0.25), 250],
  ['litres of millilitres', C.litresFromMillilitres(250), 0.25],
  ['millilitres', C.millilitresFromLitres(0.25), 250],
  ['a pound', C.gramsFromPounds(1), 453.59237],
  ['pounds', C.poundsFromGrams(907.18474), 2],
  ['kilograms of pounds', C.kilogramsFromPounds(2), 0.90718474],
  ['pounds of kilograms', C.poundsFromKilograms(0.45359237), 1],
  ['an ounce', C.gramsFromOunces(16), 453.59237],
  ['ounces', C.ouncesFromGrams(453.59237), 16],
  ['a gallon', C.litresFromGallons(1), (231 * 2.54 ** 3) / 1000],
  ['gallons', C.gallonsFromLitres(7.570823568), 2],
  ['litres of cubic metres', C.litresFromCubicMetres(1.5), 1500],
  ['cubic metres', C.cubicMetresFromLitres(1500), 1.5],
  ['share', C.sharesFromPercent(80), 0.8],
  ['percent', C.percentFromShare(0.8), 80],
  ['hours of minutes', C.hoursFromMinutes(90), 1.5],
  ['minutes', C.minutesFromHours(1.5), 90],
  ['meq', C.hardnessFrom(3, 'meq/L'), 3],
  ['calcium in mmol', C.hardnessFrom(3, 'mmol/L Ca'), 6],
  ['calcium carbonate', C.hardnessFrom(CaCO3, 'mg/L CaCO3'), 2],
  ['German degrees', C.hardnessFrom(CaO, '°d'), 20],
  ['French degrees', C.hardnessFrom(CaCO3, '°f'), 20],
  ['hydrogen carbonate', C.hardnessFrom(1.008 + 12.011 + 3 * 15.999, 'mg/L HCO3'), 1],
  ['calcium', C.hardnessFrom(40.078, 'mg/L Ca'), 2],
  ['calcium oxide', C.hardnessFrom(CaO, 'mg/L CaO'), 2],
  ['back', C.hardnessTo(C.hardnessFrom(7, '°f'), '°f'), 7],
])('%s', (_, value, wanted) => {
  expect(value / (wanted || 1)).toBeCloseTo(wanted ? 1 : 0, 4);
});

describe('what a number that is out of bounds looks like', () => {
  const slip = (of: Quantity, value: number): boolean => of.slip?.(value) !== undefined;
  test.each<readonly [string, Quantity, number, boolean]>([
    ['°F', quantities.celsius, 45, false],
    ['°F', quantities.celsius, 45.1, true],
    ['°F', quantities.celsius, 114.9, true],
    ['°F', quantities.celsius, 115, false],
    ['percent', quantities.share, 1, false],
    ['percent', quantities.share, 1.01, true],
    ['percent', quantities.share, 100, true],
    ['percent', quantities.share, 100.1, false],
    ['a clock time', quantities.moment, -0.01, false],
    ['a clock time', quantities.moment, 0, true],
    ['a clock time', quantities.moment, 0.99, true],
    ['a clock time', quantities.moment, 1, false],
    ['millilitres', quantities.litre, 1e6, false],
    ['millilitres', quantities.litre, 1e6 + 1, true],
    ['metres', quantities.centimetre, 0, false],
    ['metres', quantities.centimetre, 0.5, true],
    ['metres', quantities.centimetre, 9.99, true],
    ['metres', quantities.centimetre, 10, false],
    ['grams', quantities.kilogram, 30, false],
    ['grams', quantities.kilogram, 30.1, true],
    ['thousands of millions', quantities.spermPerMillilitre, 0, false],
    ['thousands of millions', quantities.spermPerMillilitre, 0.5, true],
    ['thousands of millions', quantities.spermPerMillilitre, 999, true],
    ['thousands of millions', quantities.spermPerMillilitre, 1000, false],
    ['kilograms', quantities.fishGram, 0, false],
    ['kilograms', quantities.fishGram, 0.00049, true],
    ['kilograms', quantities.fishGram, 0.0005, false],
    ['milligrams', quantities.fishGram, 30_000, false],
    ['milligrams', quantities.fishGram, 30_001, true],
    ['a meter that is off', quantities.pH, 2.99, true],
    ['a meter that is off', quantities.pH, 3, false],
    ['a meter that is off', quantities.pH, 11, false],
    ['a meter that is off', quantities.pH, 11.01, true],
    ['calcium carbonate', quantities.meqPerLitre, 20, false],
    ['calcium carbonate', quantities.meqPerLitre, 20.1, true],
  ])('%s: %j %f', (_, of, value, looks) => {
    expect(slip(of, value)).toBe(looks);
  });
  test('and the number it is then', () => {
    expect(quantities.celsius.slip?.(81)).toContain('81 °F is 27.2 °C');
    expect(quantities.share.slip?.(80)).toContain('80 % as 0.8: type 80% or 0.8');
    expect(quantities.centimetre.slip?.(1.2)).toContain('1.2 m is 120 cm');
    expect(quantities.kilogram.slip?.(900)).toContain('900 g is 0.9 kg');
    expect(quantities.fishGram.slip?.(0.0003)).toContain('0.0003 kg is 0.3 g');
    expect(quantities.meqPerLitre.slip?.(100)).toContain('100 mg/L is 2 meq/L');
    expect(quantities.spermPerMillilitre.slip?.(5)).toContain('is 5E9');
  });
});

describe('days and hours', () => {
  // The calendar: 28 November 2026 is a Saturday; its serial by the date functions of spreadsheets is 46354.
  const SATURDAY = 46_354;
  test('serials', () => {
    expect(dates.serialOfDay(2026, 11, 28)).toBe(SATURDAY);
    expect(dates.serialOfDay(1970, 1, 1)).toBe(25_569);
    expect(dates.serialOfDay(2027, 2, 30)).toBe(dates.serialOfDay(2027, 3, 2));
    expect([dates.serialOfCalendarDay(2027, 2, 28), dates.serialOfCalendarDay(2027, 2, 29)]).toEqual([
      SATURDAY + 92,
      undefined,
    ]);
    expect(dates.dayParts(SATURDAY + 0.9)).toEqual({ year: 2026, month: 11, day: 28 });
    expect(dates.monthIndexOf(SATURDAY)).toBe(10);
    expect(dates.midnightOf(SATURDAY + 0.9).toISOString()).toBe('2026-11-28T00:00:00.000Z');
    expect(dates.dateOf(SATURDAY + 0.5 + 29 / 86_400).toISOString()).toBe('2026-11-28T12:00:00.000Z');
    expect(dates.dateOf(SATURDAY + 0.5 + 31 / 86_400).toISOString()).toBe('2026-11-28T12:01:00.000Z');
    expect(dates.serialOfLocalDay(new Date(2026, 10, 28, 23, 59))).toBe(SATURDAY);
  });
  test('weeks begin on Monday', () => {
    for (let i = 0; i < 7; i++) {
      expect(dates.weekdayOf(SATURDAY - 5 + i + 0.7)).toBe(i + 1);
      expect(dates.mondayOf(SATURDAY - 5 + i + 0.7)).toBe(SATURDAY - 5);
      expect(dates.weekdayText(SATURDAY - 5 + i)).toBe(dates.WEEKDAY_WORDS[i]);
    }
    expect([dates.weekdayOf(1), dates.weekdayOf(0), dates.weekdayOf(-5)]).toEqual([7, 6, 1]);
  });
  test('texts', () => {
    expect(dates.serialOfIsoDate(' 2026-11-28 ')).toBe(SATURDAY);
    expect(dates.serialOfIsoDate('2026-11-31')).toBeUndefined();
    expect(dates.serialOfIsoMoment('2026-11-28T06:00:00')).toBe(SATURDAY + 0.25);
    expect(dates.serialOfIsoMoment('2026-11-28')).toBe(SATURDAY);
    expect(dates.serialOfIsoMoment('2026-11-28T06:00:00+06:00')).toBe(SATURDAY);
    expect(dates.serialOfIsoMoment('soon')).toBeUndefined();
    expect(dates.isoDateOfSerial(SATURDAY + 0.99)).toBe('2026-11-28');
    expect(dates.timeText(SATURDAY + (14 + 5 / 60) / 24)).toBe('14:05');
    expect(dates.dayText(SATURDAY)).toBe('28 Nov');
    expect(dates.momentText(SATURDAY + 0.25)).toBe('28 Nov 2026 06:00');
    expect(dates.isoMomentText(SATURDAY)).toBe('2026-11-28');
    expect(dates.isoMomentText(SATURDAY + 20 / 86_400)).toBe('2026-11-28');
    expect(dates.isoMomentText(SATURDAY + 1 / 1440)).toBe('2026-11-28 00:01');
    expect([dates.monthOfWord('september'), dates.monthOfWord('JAN'), dates.monthOfWord('xyz')]).toEqual([
      9, 1, 0,
    ]);
  });
  test.each([
    ['0:00', 0],
    ['7:30', 7.5],
    ['23:59', 23 + 59 / 60],
    ['24:00', undefined],
    ['12:60', undefined],
    ['noon', undefined],
  ])('the clock time %s', (text, hour) => {
    expect(dates.hourOfClock(text)).toBe(hour);
  });
  test('a moment of this century', () => {
    expect([36_526, 36_526.1, 73_050.9, 73_051, '40000'].map(dates.isMomentCell)).toEqual([
      false,
      true,
      true,
      false,
      false,
    ]);
  });
  const hour = (text: string) => {
    const read = readTypedHour(text);
    return read.kind === 'time' ? read.value : undefined;
  };
  test.each([
    ['noon', 12],
    ['midnight', 24],
    ['24', 24],
    ['25', undefined],
    ['24:01', undefined],
    ['2359', 23 + 59 / 60],
    ['2360', undefined],
    ['7.5', 7.5],
    ['7.50', 7 + 50 / 60],
    ['7:5', 7 + 5 / 60],
    ['7:59', 7 + 59 / 60],
    ['7:60', undefined],
    ['12 am', 0],
    ['12 pm', 12],
    ['1 pm', 13],
    ['11 pm', 23],
    ['13 pm', undefined],
    ['0 pm', undefined],
    ['1 am', 1],
  ])('the hour %s', (text, value) => {
    expect(hour(text)).toBe(value);
  });
  test('an hour is shown by its minutes', () => {
    expect([22.5, 0, 9.99, 9.992].map(hourText)).toEqual(['22:30', '00:00', '09:59', '10:00']);
  });
  const day = (text: string, given: object = {}) => {
    const read = readTypedDay(text, given);
    return read.kind === 'time' ? read.value : read.kind;
  };
  test.each([
    ['36525', {}, 'none'],
    ['36526', {}, 36_526],
    ['73050', {}, 73_050],
    ['73051', {}, 'none'],
    ['28/11/26', {}, SATURDAY],
    ['11/28/2026', {}, SATURDAY],
    ['12/11/2026', {}, 'open'],
    ['12/11/2026', { order: 'day first' }, SATURDAY - 16],
    ['12/11/2026', { order: 'month first' }, SATURDAY + 13],
    ['11/11/2026', {}, SATURDAY - 17],
    ['28 Nov', { today: SATURDAY }, SATURDAY],
    ['28 Nov', { today: SATURDAY + 1 }, SATURDAY + 365],
    ['28 Nov', {}, 'none'],
    ['Nov 28, 2026', {}, SATURDAY],
    ['28 novembre 26', {}, SATURDAY],
    ['2026-11-28T00:00:00', {}, SATURDAY],
  ])('the day %s %j', (text, given, value) => {
    expect(day(text, given)).toBe(value);
  });
});

/** 0.00048 × 1000 is 0.48000000000000004 to a computer: nobody is told that. */
test.each([
  [quantities.fishGram, 0.00048, '0.00048 kg is 0.48 g.'],
  [quantities.centimetre, 0.07, '0.07 m is 7 cm.'],
  [quantities.centimetre, 1.1, '1.1 m is 110 cm.'],
  [quantities.share, 1.1, 'Excel stores 1.1 % as 0.011'],
  [quantities.kilogram, 1100.1, '1100.1 g is 1.1001 kg.'],
] as const)('a slip is told in round numbers: %#', ({ slip }, value, says) => {
  expect(slip?.(value)).toContain(says);
});
