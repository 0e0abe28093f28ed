import { FIRST_DAY, LAST_DAY, isoDateOfSerial } from '../../units/dates';
import { openSentence, readTypedNumber } from '../../units/typedNumber';
import { openDaySentence, readTypedDay, readTypedHour } from '../../units/typedTime';
import * as z from 'zod';
import { writtenNumber } from '../../units/writtenNumber';

/**
 * Readers of one entry of an order book: what a person typed, checked, with a sentence when it cannot be
 * used.
 */

const shown = (value: unknown): string =>
  value === undefined || value === null || value === ''
    ? 'nothing'
    : typeof value === 'string'
      ? `"${value.slice(0, 40)}"`
      : String(value as number);

const typedNumber =
  (limits: FieldLimits) =>
  (value: unknown): unknown => {
    if (value === '' || value === null) return undefined;
    if (typeof value !== 'string') return value;
    const read = readTypedNumber(value, limits);
    return read.kind === 'number' ? read.value : read.kind === 'blank' ? undefined : value;
  };
const typedDay = (value: unknown): unknown => {
  if (value === null || value === '') return undefined;
  if (typeof value !== 'string') return value;
  const read = readTypedDay(value);
  return read.kind === 'time' ? read.value : value;
};
const typedHour = (value: unknown): unknown => {
  if (value === null || value === '') return undefined;
  if (typeof value !== 'string') return value;
  const read = readTypedHour(value);
  return read.kind === 'time' ? read.value : value;
};

export interface FieldLimits {
  readonly min: number;
  readonly max: number;
  readonly unit?: string;
  readonly whole?: boolean;
  readonly slip?: (n: number) => string | undefined;
}
const fits = (n: unknown, { min, max, whole }: FieldLimits): n is number =>
  typeof n === 'number' && n >= min && n <= max && (!whole || Number.isInteger(n));
const sentence = (label: string, limits: FieldLimits, got: unknown): string => {
  const read = typeof got === 'string' ? readTypedNumber(got, limits) : undefined;
  if (read?.kind === 'open') return `${label}: ${openSentence(String(got), read.readings)}`;
  const range = `${limits.whole ? 'a whole number' : 'a number'} from ${writtenNumber(limits.min)} to ${writtenNumber(limits.max)}${limits.unit ? ` ${limits.unit}` : ''}`;
  const slip = typeof got === 'number' ? limits.slip?.(got) : undefined;
  return `${label}: expected ${range}, got ${shown(got)}.${slip ? ` ${slip}` : ''}`;
};

/** What a JSON schema says of an entry: numbers may also be typed as text. */
const aboutNumber = (
  label: string,
  { min, max, unit, whole }: FieldLimits,
  usual?: number,
): Record<string, unknown> => ({
  title: label,
  type: [whole ? 'integer' : 'number', 'string'],
  minimum: min,
  maximum: max,
  ...(unit === undefined ? {} : { description: unit }),
  ...(usual === undefined ? {} : { default: usual }),
});
const aboutDay = (label: string): Record<string, unknown> => ({
  title: label,
  type: ['integer', 'string'],
  description: 'a date as 2027-03-31, or the number a sheet keeps for it',
});

export const numberOf = (label: string, limits: FieldLimits) =>
  z.preprocess(
    typedNumber(limits),
    z
      .custom<number>((n) => fits(n, limits), { error: (issue) => sentence(label, limits, issue.input) })
      .meta(aboutNumber(label, limits)),
  );
export const numberOr = (label: string, usual: number, limits: FieldLimits) =>
  z.preprocess(
    (value) => typedNumber(limits)(value) ?? usual,
    z
      .custom<number>((n) => fits(n, limits), { error: (issue) => sentence(label, limits, issue.input) })
      .meta(aboutNumber(label, limits, usual)),
  );
export const maybeNumber = (label: string, limits: FieldLimits) =>
  z
    .preprocess(
      typedNumber(limits),
      z
        .custom<number | undefined>((n) => n === undefined || fits(n, limits), {
          error: (issue) => sentence(label, limits, issue.input),
        })
        .meta(aboutNumber(label, limits)),
    )
    .optional();

const isDay = (n: unknown): n is number =>
  typeof n === 'number' && Number.isInteger(n) && n >= FIRST_DAY && n <= LAST_DAY;
const daySentence = (label: string, got: unknown): string => {
  const read = typeof got === 'string' ? readTypedDay(got) : undefined;
  if (read?.kind === 'open') return `${label}: ${openDaySentence(String(got), read.readings)}`;
  return `${label}: expected a date from ${isoDateOfSerial(FIRST_DAY)} to ${isoDateOfSerial(LAST_DAY)}, got ${shown(got)}.`;
};
export const dayOf = (label: string) =>
  z.preprocess(
    typedDay,
    z.custom<number>(isDay, { error: (issue) => daySentence(label, issue.input) }).meta(aboutDay(label)),
  );
export const maybeDay = (label: string) =>
  z
    .preprocess(
      typedDay,
      z
        .custom<number | undefined>((n) => n === undefined || isDay(n), {
          error: (issue) => daySentence(label, issue.input),
        })
        .meta(aboutDay(label)),
    )
    .optional();

const isHour = (n: unknown): n is number => typeof n === 'number' && n >= 0 && n <= 24;
export const hourOr = (label: string, usual: number) =>
  z.preprocess(
    (value) => typedHour(value) ?? usual,
    z
      .custom<number>(isHour, {
        error: (issue) =>
          `${label}: expected a clock time from 00:00 to 23:59 or an hour from 0 to 24, got ${shown(issue.input)}.`,
      })
      .meta({
        title: label,
        type: ['number', 'string'],
        description: 'hour 0 to 24, or 7:30',
        default: usual,
      }),
  );

export const nameOf = (label: string, longest = 60) =>
  z
    .string({ error: (issue) => `${label}: expected a name, got ${shown(issue.input)}.` })
    .trim()
    .min(1, { error: () => `${label}: type a name.` })
    .max(longest, { error: () => `${label}: at most ${longest} characters.` });

export const oneOf = <const C extends readonly [string, ...string[]]>(label: string, choices: C) =>
  z.enum(choices, {
    error: (issue) =>
      `${label}: expected one of ${choices.map((c) => `"${c}"`).join(', ')}, got ${shown(issue.input)}.`,
  });

export const listOf = <T extends z.ZodType>(label: string, item: T, least: number, most: number) =>
  z
    .array(item, { error: () => `${label}: expected a list.` })
    .min(least, { error: () => `${label}: the list is empty; at least ${least} is needed.` })
    .max(most, { error: () => `${label}: at most ${writtenNumber(most)}.` });
