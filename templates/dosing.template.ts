import type { Vat } from '../shared/dosing/ask';
import { dosingWorkbook } from '../shared/books/dosing/sheet';
import type { WorkbookModel } from '../shared/sheet/workbook/model';

/** An invented vat of sour well water, three readings in. */
const VAT: Vat = {
  volume: 1200,
  material: 'soda ash',
  purity: 0.98,
  spoon: 5,
  temperature: 26,
  target: 7,
  stocked: 'no',
  ammonia: null,
  alkalinity: null,
  kit: '°d',
  bottom: 6.5,
  top: 7.5,
  origin: 'well',
  meter: 'good',
};
const READINGS = [
  { grams: 0, ph: 5.2 },
  { grams: 4, ph: 5.43 },
  { grams: 16, ph: 5.83 },
];

export const dosingTemplate = (): WorkbookModel => dosingWorkbook(VAT, READINGS);
