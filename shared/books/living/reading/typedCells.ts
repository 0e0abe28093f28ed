import { openSentence, readTypedNumber } from '../../../units/typedNumber';
import type { NumberField, TypedNumber } from '../../../units/typedNumber';
import { openDaySentence, readTypedDay, readTypedHour } from '../../../units/typedTime';
import { WHOLE } from '../columns';
import type { TableColumn } from '../table';
import type { Entry } from './sheetReading';

/** Numbers, days and hours that stand in a book as text ("1 600", "900 g", "31/3/2027 7h30"), as what they mean. */

type Kind = 'text' | 'moment' | 'number';
const kindOf = ({ format }: TableColumn): Kind =>
  format === undefined ? 'text' : /d mmm/.test(format) ? 'moment' : 'number';

/** Units stand behind a comma in a heading: "Eggs, g". */
const fieldOf = ({ title, format }: TableColumn): NumberField => {
  const unit = /, (\S+)$/.exec(title)?.[1];
  return format === WHOLE ? { unit: unit ?? 'fish', whole: true } : unit === undefined ? {} : { unit };
};

/** A day, or a day and an hour behind it. */
function momentOf(text: string): number | undefined {
  const day = readTypedDay(text);
  if (day.kind === 'time') return day.value;
  const [, date = '', clock = ''] =
    /^(.*\S)[\s,T]+(?:at\s+|um\s+|à\s+)?(\d\S*(?:\s*[ap]m)?)$/i.exec(text) ?? [];
  const [on, at] = [readTypedDay(date), readTypedHour(clock)];
  return on.kind === 'time' && at.kind === 'time' ? on.value + at.value / 24 : undefined;
}
const numberOf = (column: TableColumn, text: string): TypedNumber => readTypedNumber(text, fieldOf(column));

/** An entry of a column as it is meant; text that cannot be told stays as it is. */
export function meant(column: TableColumn, value: Entry): Entry {
  if (typeof value !== 'string') return value;
  const kind = kindOf(column);
  if (kind === 'text') return value;
  if (kind === 'moment') return momentOf(value.trim()) ?? value;
  const read = numberOf(column, value);
  return read.kind === 'number' ? read.value : value;
}

/** What to say of an entry of a column of numbers or days that cannot be read; undefined when it can. */
export function doubtOf(column: TableColumn, value: Entry): string | undefined {
  if (typeof value !== 'string' || value.trim() === '' || typeof meant(column, value) === 'number')
    return undefined;
  const kind = kindOf(column);
  if (kind === 'text') return undefined;
  if (kind === 'moment') {
    const read = readTypedDay(value.trim().split(/\s+/)[0] ?? '');
    return read.kind === 'open'
      ? openDaySentence(value, read.readings)
      : `“${value.slice(0, 40)}” is no day. Type it as 2027-03-31 or 2027-03-31 07:30.`;
  }
  const read = numberOf(column, value);
  return read.kind === 'open'
    ? openSentence(value, read.readings)
    : `“${value.slice(0, 40)}” is no number. Type digits alone.`;
}
