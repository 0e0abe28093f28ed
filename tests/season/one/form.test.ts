import { hourOfClock, isoDateOfSerial, serialOfIsoDate } from '../../../shared/units/dates';
import type { PlanForm } from '../../../shared/season/one';
import { planFieldList, readOneOrder, readPlanForm } from '../../../shared/season/one';
import { ORDER, bookOf } from '../../run/support';

const formOf = (changes: object = {}): PlanForm => bookOf(changes).form;

const faultsOf = (changes: object): readonly string[] => {
  const read = readOneOrder({ ...ORDER, ...changes });
  return 'faults' in read ? read.faults.map(({ field, message }) => `${field} | ${message}`) : [];
};

test('dates and clock times may be typed as text', () => {
  // 1 January 2000 is day 36526 of a spreadsheet.
  expect(serialOfIsoDate('2000-01-01')).toBe(36526);
  expect(isoDateOfSerial(36526.9)).toBe('2000-01-01');
  expect(serialOfIsoDate('2027-02-29')).toBeUndefined();
  expect(serialOfIsoDate('31.3.2027')).toBeUndefined();
  expect([
    hourOfClock('7:30'),
    hourOfClock('00:00'),
    hourOfClock('24:00'),
    hourOfClock('7:60'),
    hourOfClock('seven'),
  ]).toEqual([7.5, 0, undefined, undefined, undefined]);
  expect(formOf().wantedOn).toBe(serialOfIsoDate('2027-04-24'));
  expect(formOf({ stripHour: '16:45' }).stripHour).toBe(16.75);
});

test('numbers may come from a text box, with a decimal comma too', () => {
  expect(formOf({ ph: '5,8', femaleWeight: ' 1.25 ', females: '6' })).toMatchObject({
    ph: 5.8,
    femaleWeight: 1.25,
    females: 6,
  });
});

test('fields left empty take what the form says', () => {
  const form = formOf({
    phWanted: undefined,
    alkalinity: '',
    stripHour: '',
  });
  expect(form).toMatchObject({ phWanted: 7, stripHour: 8, certainty: 80 });
  expect(form.alkalinity).toBeUndefined();
});

test.each([
  [{ wanted: 0 }, 'wanted | Fish wanted: expected a whole number from 1 to 5\u202f000\u202f000 fish, got 0.'],
  [
    { wanted: 1000.5 },
    'wanted | Fish wanted: expected a whole number from 1 to 5\u202f000\u202f000 fish, got 1000.5.',
  ],
  [
    { wanted: '40.000 kg' },
    'wanted | Fish wanted: expected a whole number from 1 to 5\u202f000\u202f000 fish, got "40.000 kg".',
  ],
  [
    { wantedOn: '31.31.2027' },
    'wantedOn | Wanted on: expected a date from 2000-01-01 to 2099-12-31, got "31.31.2027".',
  ],
  [
    { females: '' },
    'females | Ripe females you have: expected a whole number from 0 to 500 females, got nothing.',
  ],
  [{ temperature: 82 }, 'temperature | Water temperature: expected a number from 10 to 40 °C, got 82.'],
  [{ stripHour: '25:00' }, 'stripHour | Strip at: expected a clock time from 00:00 to 23:59, got "25:00".'],
  [{ product: 'eggs' }, 'product | What is sold: expected one of "fry", "fingerlings", got "eggs".'],
  [{ hatchery: '  ' }, 'hatchery | Hatchery: type a name; it is printed on every page.'],
  [
    { assumptions: { hatch: 59 } },
    'assumptions.hatch | Eggs that hatch: expected a number from 0.01 to 1 (80 % is 0.8), got 59.',
  ],
  [
    { assumptions: { rearingDays: 12.5 } },
    'assumptions.rearingDays | Days from first feed to weaned fry: expected a whole ' +
      'number from 7 to 30 d, got 12.5.',
  ],
])('%j', (changes, sentence) => {
  expect(faultsOf(changes)).toEqual([sentence]);
});

test('every wrong field gets its sentence at once, and unknown fields are refused', () => {
  expect(faultsOf({ wanted: -1, vats: -1, ph: 20 })).toHaveLength(3);
  expect(faultsOf({ wantedBy: '2027-04-24' })).toHaveLength(1);
  expect(readPlanForm(undefined)).toHaveProperty('faults');
  expect(readPlanForm([])).toHaveProperty('faults');
});

test('every field of the list is a field of the form', () => {
  for (const { key, isOptional } of planFieldList) expect(isOptional === true || key in formOf()).toBe(true);
});
