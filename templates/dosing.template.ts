import type { DosingReading, Vat } from '../shared/dosing/ask';
import { dosingWorkbook } from '../shared/books/dosing/sheet';
import type { WorkbookModel } from '../shared/sheet/workbook/model';
import type { TemplateLanguage } from './languages';

/** An invented vat of sour soft water, aired for an hour, one part-dose in. */
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
  origin: 'unknown',
  meter: 'good',
};
const DAY = 46_027;
const row = (
  hour: number,
  what: string,
  ph: number,
  grams: number | null,
  again: number | null,
): DosingReading => ({
  at: DAY + hour / 24,
  vat: '1',
  what,
  grams,
  ph,
  again,
  celsius: 26,
  who: 'A.',
});
/** pH 5.6 with 1.4 mg/L of carbon dioxide after airing; 1.25 g more give 6.21 by BUFFER.PH. */
const READINGS = [
  row(7.2, 'reading', 5.1, null, 5.12),
  row(8.25, 'aired', 5.6, null, 5.62),
  row(8.6, 'reading', 6.21, 1.25, 6.2),
];

export const dosingTemplate = (language?: TemplateLanguage): WorkbookModel =>
  dosingWorkbook(VAT, READINGS, language);
