import { faultsOf } from '../../taskpane/screens/season/state/faults';
import { SEASON_FIELDS, ORDER_KEYS } from '../../taskpane/screens/season/state/fields';
import { exampleForm } from '../../taskpane/screens/season/state/season';
import { exampleTexts, initialPlan, readForm } from '../../taskpane/screens/plan/state/plan';
import { EMPTY_SETUP, readSetup } from '../../taskpane/screens/dose/state/setup';
import { DOSING_FIELDS } from '../../shared/dosing/fields';
import { planFieldList } from '../../shared/season/one';
import { TODAY } from './support/seasonModel';

/** Every sentence that wrong answers bring out beside the fields of both plans and of a dosing. */

const WRONG = [
  '',
  'many',
  '-5',
  '1e12',
  '0',
  '1.234',
  '1,234',
  '99:99',
  '02/04/2027',
  '31/02/2027',
  '12 furlongs',
  '150 %',
  'x'.repeat(300),
  '5',
  '1999-01-01',
] as const;
const LINES = [
  '',
  'A',
  'A; many',
  'A; 1',
  'A; 1000\nA; 1000',
  'A; 1000; odd',
  'A; 1,234',
  'A; 1000; out from 02/04/2027',
  'A; 1000; out from 2027-02-02 to 2027-01-01',
  'F1; 1.2; a; 02/04/2027',
  'F1; 1.2; a; 31/02/2027',
  'F1; 999',
  'F1; 1.2; gone 02/04/2027',
  '; ; ;',
];

export function formFaults(): ReadonlySet<string> {
  const said = new Set<string>();
  const form = exampleForm(TODAY);
  const hear = (change: Partial<typeof form>): void => {
    for (const list of faultsOf({ ...form, ...change }).values()) for (const one of list) said.add(one);
  };
  for (const { path } of SEASON_FIELDS)
    for (const text of WRONG) hear({ texts: { ...form.texts, [path]: text } });
  for (const list of ['vats', 'females', 'males'] as const)
    for (const text of LINES) hear({ lists: { ...form.lists, [list]: text } });
  for (const daysOff of WRONG) hear({ daysOff });
  for (const key of ORDER_KEYS)
    for (const text of WRONG)
      hear({
        orders: form.orders.map((order, i) =>
          i === 1 ? { ...order, texts: { ...order.texts, [key]: text } } : order,
        ),
      });
  hear({ weekdays: [] });
  hear({ orders: [] });
  const texts = exampleTexts(initialPlan(TODAY).texts);
  for (const { key } of planFieldList)
    for (const text of WRONG)
      for (const one of readForm({ ...texts, [key]: text }).faults.values()) said.add(one);
  for (const { key } of DOSING_FIELDS)
    for (const text of WRONG)
      for (const one of readSetup({ ...EMPTY_SETUP, [key]: text }).faults.values()) said.add(one);
  return said;
}
