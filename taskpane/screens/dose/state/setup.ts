import type { Vat } from '../../../../shared/dosing/ask';
import { alkalinityOf, faultOf } from '../../../../shared/dosing/ask';
import type { DosingField, DosingKey } from '../../../../shared/dosing/fields';
import { DOSING_FIELDS, YES } from '../../../../shared/dosing/fields';
import type { VatSetup } from '../../../../shared/dosing/vat';
import type { MaterialName } from '../../../../shared/families/water/carbonate/materials';
import type { MeterName, OriginName } from '../../../../shared/families/water/titration/beliefs';
import type { Cell } from '../../../../shared/base/values';
import { readTypedNumber } from '../../../../shared/units/typedNumber';
import type { PaneSettings } from '../../../pane/keeping/settings';
import { readNumber } from '../../../pane/values/typed';
import { shownUnit } from '../../../pane/values/units';
import { writtenNumber } from '../../../../shared/units/writtenNumber';

/** What stands in the fields of one vat's set-up, as typed. */
export type SetupTexts = Readonly<Record<DosingKey, string>> & {
  /** Another vat that holds the same water; '' for none. */
  readonly sameAs: string;
  /** Whether it can be aired, and whether others are filled from it. */
  readonly airing: 'can' | 'cannot';
  readonly kind: 'vat' | 'tank';
  /** Fields filled while the pane showed °F and US gallons: a bare number in them counts in these. */
  readonly imperial: readonly DosingKey[];
};

const isShare = (field: DosingField): boolean => field.unit === '%';
const initialText = (field: DosingField): string =>
  field.initial === null
    ? ''
    : typeof field.initial === 'number' && isShare(field)
      ? String(field.initial * 100)
      : String(field.initial);

export const EMPTY_SETUP: SetupTexts = {
  ...(Object.fromEntries(DOSING_FIELDS.map((field) => [field.key, initialText(field)])) as Record<
    DosingKey,
    string
  >),
  sameAs: '',
  airing: 'can',
  kind: 'vat',
  imperial: [],
};

/** Units a field is shown and typed in: those it was typed in, or the person's own while it is empty. */
export const unitsOf = (
  texts: SetupTexts,
  { key }: DosingField,
  { units }: Pick<PaneSettings, 'units'>,
): PaneSettings['units'] =>
  texts[key].trim() === '' ? units : texts.imperial.includes(key) ? 'imperial' : 'metric';

/** One spoon or several: "5", "5; 2.5", "5 and 1". */
const spoonsOf = (text: string): readonly number[] =>
  text
    .replace(/(\d)\s+(?=[a-z])/gi, '$1')
    .split(/[;/]|\band\b|\bet\b|\s+/)
    .map((part) => {
      const read = readTypedNumber(part.trim(), { unit: 'g' });
      return read.kind === 'number' ? read.value : NaN;
    })
    .filter((grams) => grams > 0);

/** A number in the field's own unit; another unit may be typed behind it. */
const numberIn = (field: DosingField, text: string, units: PaneSettings['units']): number | undefined => {
  const bare = readNumber(text);
  if (bare !== undefined) return shownUnit(field.unit, { units }).toMetric(bare);
  const typed = readTypedNumber(text, { unit: field.unit });
  return typed.kind === 'number' ? typed.value : undefined;
};

function cellOf(field: DosingField, text: string, units: PaneSettings['units']): Cell {
  if (text.trim() === '') return field.part === 'more' && field.isRequired ? field.initial : null;
  if (field.choices) return text;
  if (field.key === 'spoon') return spoonsOf(text)[0] ?? text.trim();
  if (isShare(field)) {
    const typed = readNumber(text);
    return typed === undefined ? text.trim() : text.includes('%') ? typed : typed / 100;
  }
  return numberIn(field, text, units) ?? text.trim();
}

export interface SetupReading {
  readonly cells: Vat;
  readonly faults: ReadonlyMap<string, string>;
}
const known = new WeakMap<SetupTexts, SetupReading>();

const faultIn = (field: DosingField, cell: Cell): string | undefined => {
  if (isShare(field) && (typeof cell !== 'number' || cell <= 0 || cell > 1) && cell !== null)
    return `${field.label}: expected a number above 0 and up to 100 %, got ${typeof cell === 'number' ? String(Number((cell * 100).toPrecision(10))) : `“${String(cell)}”`}.`;
  return faultOf(field, cell);
};

/** The typed answers, checked by the arguments they fill. Remembered per texts, because several views ask. */
export function readSetup(texts: SetupTexts): SetupReading {
  let reading = known.get(texts);
  if (!reading) {
    const cells = Object.fromEntries(
      DOSING_FIELDS.map((field) => [
        field.key,
        cellOf(field, texts[field.key], texts.imperial.includes(field.key) ? 'imperial' : 'metric'),
      ]),
    ) as Record<DosingKey, Cell>;
    const faults = new Map(
      DOSING_FIELDS.flatMap((field): [string, string][] => {
        const fault = faultIn(field, cells[field.key]);
        return fault === undefined ? [] : [[field.key, fault]];
      }),
    );
    reading = { cells, faults };
    known.set(texts, reading);
  }
  return reading;
}

const numberOr = (cell: Cell, otherwise: number): number => (typeof cell === 'number' ? cell : otherwise);
const numberOrNull = (cell: Cell): number | null => (typeof cell === 'number' ? cell : null);

/** What was understood of a number that is not written as the log will hold it: "567.8 L". */
export const understoodOf = (field: DosingField, texts: SetupTexts): string | undefined => {
  const text = texts[field.key].trim();
  const cell = readSetup(texts).cells[field.key];
  if (field.choices || field.unit === '' || isShare(field) || typeof cell !== 'number') return undefined;
  if (!texts.imperial.includes(field.key) && Number(text) === cell) return undefined;
  const values = field.key === 'spoon' ? spoonsOf(text) : [cell];
  return values.map((value) => `${writtenNumber(Number(value.toPrecision(4)))} ${field.unit}`).join(', ');
};

/** The set-up as the engine takes it; undefined while something is missing or wrong. */
export function setupOf(name: string, texts: SetupTexts | undefined): VatSetup | undefined {
  if (!texts) return undefined;
  const { cells, faults } = readSetup(texts);
  if (faults.size > 0) return undefined;
  return {
    name,
    litres: numberOr(cells.volume, NaN),
    celsius: numberOr(cells.temperature, NaN),
    material: String(cells.material) as MaterialName,
    purity: numberOr(cells.purity, 1),
    spoons: spoonsOf(texts.spoon),
    target: numberOr(cells.target, 7),
    bottom: numberOr(cells.bottom, 6.5),
    top: numberOr(cells.top, 7.5),
    isStocked: cells.stocked === YES,
    ammonia: numberOrNull(cells.ammonia),
    alkalinity: numberOrNull(alkalinityOf(cells)),
    origin: String(cells.origin) as OriginName,
    meter: String(cells.meter) as MeterName,
    canAir: texts.airing === 'can',
    sameAs: texts.sameAs === '' ? null : texts.sameAs,
  };
}
