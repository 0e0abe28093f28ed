import { planSeason, readPlanForm, seasonWorkbook } from '../shared/run';
import type { WorkbookModel } from '../shared/sheet/workbook/model';

/**
 * An invented hatchery in an invented valley: a shed with eight vats beside a brook of soft, slightly sour
 * water.
 */
export const SEASON_PLAN_FORM = {
  hatchery: 'Willow Ford Hatchery',
  product: 'fingerlings',
  wanted: 40_000,
  wantedOn: '2027-04-24',
  plannedOn: '2027-02-15',
  females: 6,
  femaleWeight: 1.2,
  males: 4,
  vats: 8,
  vatLitres: 1000,
  temperature: 26.5,
  ph: 5.8,
  phWanted: 7,
  alkalinity: 0.4,
  material: 'soda ash',
  preparation: 'ready-made solution',
  stripHour: '7:00',
} as const;

export function seasonPlanTemplate(): WorkbookModel {
  const read = readPlanForm(SEASON_PLAN_FORM);
  if ('faults' in read) throw new Error(read.faults.map(({ message }) => message).join(' '));
  return seasonWorkbook(planSeason(read.form));
}
