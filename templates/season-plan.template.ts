import { livingBook } from '../shared/books/living';
import type { BookWords } from '../shared/books/words/words';
import { planBatches } from '../shared/season/batches';
import { readOneOrder } from '../shared/season/one';
import type { WorkbookModel } from '../shared/sheet/workbook/model';
import type { TemplateLanguage } from './languages';
import { withNames } from './languages';

/**
 * An invented hatchery in an invented valley: a shed with eight vats beside a brook of soft, slightly sour
 * water. One order: a season of one run.
 */
export const SEASON_PLAN_FORM = {
  hatchery: 'Willow Ford Hatchery',
  buyer: 'Lower Weir ponds',
  product: 'fingerlings',
  wanted: 24_000,
  wantedOn: '2027-04-24',
  plannedOn: '2027-02-15',
  females: 6,
  femaleWeight: 1.2,
  males: 6,
  vats: 8,
  vatLitres: 1000,
  temperature: 26.5,
  ph: 5.8,
  phWanted: 7,
  alkalinity: 0.2,
  material: 'soda ash',
  preparation: 'ready-made solution',
  stripHour: '7:00',
} as const;

/** The book of one order as the pane writes it. */
export function oneOrderBook(form: unknown, words?: BookWords): WorkbookModel {
  const read = readOneOrder(form);
  if ('faults' in read) throw new Error(read.faults.map(({ message }) => message).join(' '));
  return livingBook(read.book, planBatches(read.book), undefined, words);
}

export const seasonPlanTemplate = (language?: TemplateLanguage): WorkbookModel =>
  oneOrderBook(language ? withNames(SEASON_PLAN_FORM, language.names) : SEASON_PLAN_FORM, language?.words);
