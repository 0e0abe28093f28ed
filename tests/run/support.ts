import type { PlanForm, OneRunPlan } from '../../shared/run';
import { planSeason, readPlanForm } from '../../shared/run';
import { nameOf } from '../../shared/run/results';
import type { NameKey } from '../../shared/run/results';
import { parseArea, splitReference, addressOf } from '../../shared/sheet/formula/address';
import type { CellModel, WorkbookModel } from '../../shared/sheet/workbook/model';

/** An order of an invented hatchery; every test changes what it is about. */
export const ORDER = {
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

export const formOf = (changes: object = {}): PlanForm => {
  const read = readPlanForm({ ...ORDER, ...changes });
  if ('faults' in read) throw new Error(read.faults.map(({ message }) => message).join(' '));
  return read.form;
};
export const planOf = (changes: object = {}): OneRunPlan => planSeason(formOf(changes));

const placeOf = (
  model: WorkbookModel,
  key: NameKey,
): { readonly sheet: string; readonly address: string } => {
  const name = model.names.find((n) => n.name === nameOf(key));
  const { sheet = '', area: text } = splitReference(name?.refersTo ?? '');
  const area = parseArea(text);
  if (!area) throw new Error(`no cell is named for ${key}`);
  return { sheet, address: addressOf(area.top, area.left) };
};

export const cellNamed = (model: WorkbookModel, key: NameKey): CellModel => {
  const { sheet, address } = placeOf(model, key);
  return model.sheets.find((s) => s.name === sheet)?.cells[address] ?? {};
};

/** The workbook after somebody typed into named cells; undefined clears one. */
export const typedInto = (
  model: WorkbookModel,
  values: Partial<Record<NameKey, number | string | undefined>>,
): WorkbookModel => ({
  ...model,
  sheets: model.sheets.map((sheet) => {
    const cells = { ...sheet.cells };
    for (const [key, value] of Object.entries(values)) {
      const place = placeOf(model, key as NameKey);
      if (place.sheet !== sheet.name) continue;
      const rest: CellModel = Object.fromEntries(
        Object.entries(cells[place.address] ?? {}).filter(([part]) => part !== 'value'),
      );
      cells[place.address] = value === undefined ? rest : { ...rest, value };
    }
    return { ...sheet, cells };
  }),
});
