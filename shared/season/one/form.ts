import * as z from 'zod';
import type { FieldKey, FormNumber } from './fields';
import { preparationWord } from '../../families/preparations';
import { MATERIALS, PREPARATIONS, PRODUCTS } from '../../run/fields';
import { PLAN_FIELDS } from './fields';
import { assumptionSchema } from '../../families/assumptions';
import { isoDateOfSerial } from '../../units/dates';
import { openSentence, readTypedNumber } from '../../units/typedNumber';
import { openDaySentence, readTypedDay, readTypedHour } from '../../units/typedTime';
import { writtenNumber } from '../../units/writtenNumber';

const shown = (value: unknown): string =>
  value === undefined || value === null || value === ''
    ? 'nothing'
    : typeof value === 'string'
      ? `"${value.slice(0, 40)}"`
      : String(value as number);

type NumberKey = { [K in FieldKey]: (typeof PLAN_FIELDS)[K] extends FormNumber ? K : never }[FieldKey];

const limits = (field: FormNumber): string => {
  const unit = field.unit && field.kind !== 'date' && field.kind !== 'hour' ? ` ${field.unit}` : '';
  if (field.kind === 'date')
    return `a date from ${isoDateOfSerial(field.min)} to ${isoDateOfSerial(field.max)}`;
  if (field.kind === 'hour') return 'a clock time from 00:00 to 23:59';
  return `${field.kind === 'whole' ? 'a whole number' : 'a number'} from ${writtenNumber(field.min)} to ${writtenNumber(field.max)}${unit}`;
};

/** What a person typed, as the number meant: dates and clock times may be text. */
const typed =
  (field: FormNumber) =>
  (value: unknown): unknown => {
    if (value === '' || value === null) return undefined;
    if (typeof value !== 'string') return value;
    const read =
      field.kind === 'date'
        ? readTypedDay(value)
        : field.kind === 'hour'
          ? readTypedHour(value)
          : readTypedNumber(value, { ...field, whole: field.kind === 'whole' });
    return 'value' in read ? read.value : value;
  };

const numberOf = (key: NumberKey) => {
  const field: FormNumber = PLAN_FIELDS[key];
  const fits = (n: unknown): boolean =>
    typeof n === 'number' &&
    n >= field.min &&
    n <= field.max &&
    (field.kind !== 'whole' && field.kind !== 'date' ? true : Number.isInteger(n));
  return { field, fits };
};
const sentence = (field: FormNumber, got: unknown): string => {
  if (field.kind === 'date' && typeof got === 'string') {
    const day = readTypedDay(got);
    if (day.kind === 'open') return `${field.label}: ${openDaySentence(got, day.readings)}`;
  }
  const read =
    typeof got === 'string' && field.kind !== 'date' && field.kind !== 'hour'
      ? readTypedNumber(got, { ...field, whole: field.kind === 'whole' })
      : undefined;
  if (read?.kind === 'open') return `${field.label}: ${openSentence(String(got), read.readings)}`;
  return `${field.label}: expected ${limits(field)}, got ${shown(got)}.`;
};

const required = (key: NumberKey) => {
  const { field, fits } = numberOf(key);
  return z.preprocess(
    typed(field),
    z.custom<number>(fits, { error: (issue) => sentence(field, issue.input) }),
  );
};
const optional = (key: NumberKey) => {
  const { field, fits } = numberOf(key);
  return z.preprocess(
    typed(field),
    z.custom<number | undefined>((n) => n === undefined || fits(n), {
      error: (issue) => sentence(field, issue.input),
    }),
  );
};
const withInitial = (key: NumberKey) => {
  const { field, fits } = numberOf(key);
  return z.preprocess(
    (value) => typed(field)(value) ?? field.initial,
    z.custom<number>(fits, { error: (issue) => sentence(field, issue.input) }),
  );
};
const oneOf = <const C extends readonly string[]>(key: 'product' | 'preparation' | 'material', choices: C) =>
  z
    .enum(choices as unknown as [C[number], ...C[number][]], {
      error: (issue) =>
        `${PLAN_FIELDS[key].label}: expected one of ${choices.map((c) => `"${c}"`).join(', ')}, got ${shown(issue.input)}.`,
    })
    .default(PLAN_FIELDS[key].initial as C[number] as never);

const named = (key: 'hatchery' | 'buyer', wish: string) =>
  z.preprocess(
    (value) => (value === undefined || value === null ? PLAN_FIELDS[key].initial : value),
    z
      .string({ error: () => `${PLAN_FIELDS[key].label}: expected a name.` })
      .trim()
      .min(1, { error: () => `${PLAN_FIELDS[key].label}: type a name; ${wish}.` })
      .max(PLAN_FIELDS[key].longest, {
        error: () => `${PLAN_FIELDS[key].label}: at most ${PLAN_FIELDS[key].longest} characters.`,
      }),
  );

/** One order and what there is to make it with. Dates may be serials or 2027-03-31, hours numbers or 7:30. */
export const planFormSchema = z.strictObject({
  wanted: required('wanted'),
  product: oneOf('product', PRODUCTS),
  wantedOn: required('wantedOn'),
  females: required('females'),
  femaleWeight: required('femaleWeight'),
  males: required('males'),
  vats: required('vats'),
  vatLitres: required('vatLitres'),
  temperature: required('temperature'),
  hatchery: named('hatchery', 'it is printed on every page'),
  buyer: named('buyer', 'the book calls the order by it'),
  grams: optional('grams'),
  price: optional('price'),
  certainty: withInitial('certainty'),
  plannedOn: required('plannedOn'),
  ph: optional('ph'),
  phWanted: withInitial('phWanted'),
  alkalinity: optional('alkalinity'),
  material: oneOf('material', MATERIALS),
  /** An older plan may say "pituitary"; the list knows that word. */
  preparation: z.preprocess(preparationWord, oneOf('preparation', PREPARATIONS)),
  stripHour: withInitial('stripHour'),
  leadHormone: withInitial('leadHormone'),
  leadFeed: withInitial('leadFeed'),
  /** The hatchery's own figures in place of the ones in assumptions.ts. */
  assumptions: assumptionSchema.default({}),
});

export type PlanForm = z.output<typeof planFormSchema>;

export interface FieldFault {
  readonly field: string;
  readonly message: string;
}

/** The form checked: the form, or one sentence per field that cannot be used. */
export function readPlanForm(
  input: unknown,
): { readonly form: PlanForm } | { readonly faults: readonly FieldFault[] } {
  const result = planFormSchema.safeParse(input);
  if (result.success) return { form: result.data };
  return {
    faults: result.error.issues.map((issue) => ({ field: issue.path.join('.'), message: issue.message })),
  };
}
