import { gridOf } from '../../shared/sheet/workbook/grid';
import { readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { isUnreadable, readXlsx } from '../../shared/files';
import { asOf, booksIn, readBook } from '../../shared/books/living';
import type { OrderBook } from '../../shared/season/book/orderBook';
import { readOrderBook } from '../../shared/season/book/orderBook';
import { planBatches } from '../../shared/season/batches';
import { seasonSchemas } from '../../shared/season/batches/answer/schema';
import type { SeasonPlan } from '../../shared/season/types';
import { verdictText } from '../../shared/maths/verdict';
import { dayText, isoDateOfSerial, serialOfLocalDay, timeText } from '../../shared/units/dates';
import { readTypedDay } from '../../shared/units/typedTime';

/** A season planned in the terminal: npm run season -- book.json */

const USAGE = `Plans a season from an order book and prints the plan.
  npm run season -- book.json                    the plan in words
  npm run season -- book.xlsx                    a season's own workbook, planned again from today
  npm run season -- book.json --json             the whole plan as JSON: batches, stays, allocations, odds, purchases, cash
  npm run season -- --schema                     the form of an order book and of a plan (JSON schema)
--today 2027-03-01 plans from that day. --certainty 80% asks how sure it must be. --out plan.json writes instead of printing.
A book that cannot be read gets its sentences, and the exit code is 2; a book that cannot be met whole has exit code 0 and says so.
`;
const OPTIONS = {
  json: { type: 'boolean' },
  schema: { type: 'boolean' },
  today: { type: 'string' },
  certainty: { type: 'string' },
  out: { type: 'string' },
  help: { type: 'boolean' },
} as const;
type Values = ReturnType<typeof parseArgs<{ options: typeof OPTIONS; allowPositionals: true }>>['values'];
type Input = { readonly input: Record<string, unknown> } | { readonly faults: readonly string[] };

const UNREADABLE = 2;
const complain = (lines: readonly string[]): number => {
  for (const line of lines) process.stderr.write(`${line}\n`);
  return UNREADABLE;
};

function fromWorkbook(path: string, bytes: Uint8Array, today: number): Input {
  const result = readXlsx(bytes);
  if (isUnreadable(result)) return { faults: [`${path}: ${result.fault}`] };
  const { sheets } = result.model;
  const found = booksIn(sheets.map(({ name }) => name));
  const [suffix] = found;
  if (suffix === undefined) return { faults: [`${path}: there is no season of Spawnbook in this workbook.`] };
  if (found.length > 1)
    return {
      faults: [`${path}: there are ${found.length} seasons in this workbook. Keep one, and plan again.`],
    };
  const read = readBook(sheets.map(gridOf), suffix);
  if (read.kind === 'unreadable') return { faults: read.faults };
  for (const sentence of read.missing) process.stderr.write(`${sentence}\n`);
  return { input: { ...asOf(read, today) } };
}

function fromJson(path: string, text: string): Input {
  try {
    const input: unknown = JSON.parse(text);
    if (typeof input === 'object' && input !== null && !Array.isArray(input)) return { input: { ...input } };
    return { faults: [`${path}: expected an order book, { "orders": … }; --schema prints its form.`] };
  } catch (error) {
    return { faults: [`${path}: is no JSON (${error instanceof Error ? error.message : String(error)}).`] };
  }
}

function readInput(path: string, today: number): Input {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(readFileSync(path));
  } catch (error) {
    return {
      faults: [
        `${path}: the file cannot be read (${error instanceof Error ? error.message : String(error)}).`,
      ],
    };
  }
  return /\.xls[xm]$/i.test(path)
    ? fromWorkbook(path, bytes, today)
    : fromJson(path, new TextDecoder().decode(bytes));
}

/** Nothing is 0, whatever its sign. */
const many = (x: number): string => (Math.round(x) || 0).toLocaleString('en');
const percent = (x: number): string => `${Math.round(x * 100)} %`;
/** Odds short of what was asked for never read as the same number. */
const shortPercent = (x: number, wanted: number): string =>
  x < wanted && percent(x) === percent(wanted) ? `${(Math.floor(1000 * x) / 10).toFixed(1)} %` : percent(x);

function inWords(book: OrderBook, plan: SeasonPlan): string {
  const lines = [
    `${book.hatchery}, planned on ${isoDateOfSerial(plan.plannedOn)}, to be ${percent(plan.wanted)} sure.`,
    `Promise ${many(plan.promise)} fish, hope for ${many(plan.hope)}. All orders together: ${verdictText(plan.verdict)}.`,
    '',
    'Batches',
    ...plan.batches.map(
      (b) =>
        `  ${b.name} (${b.state}): inject ${dayText(b.injectAt)} ${timeText(b.injectAt)}, strip ${dayText(b.stripAt)} ${timeText(b.stripAt)}, hatch ${dayText(b.hatchAt)} ${timeText(b.hatchAt)}; ${b.pairs.map(({ female, male }) => `${female} × ${male}`).join(', ')}; ${many(b.eggs)} eggs; ${many(b.promised)} promised, ${many(b.extra)} more expected.`,
    ),
    '',
    'Orders',
    ...plan.orders.map(
      (o) =>
        `  ${o.order.name}, ${isoDateOfSerial(o.order.due)}: promise ${many(o.promise)} of ${many(o.order.number)} ${o.order.product}, whole in ${shortPercent(o.certainty, plan.wanted)} of seasons, ${verdictText(o.verdict)}${o.batches.length > 0 ? `, from ${o.batches.join(', ')}` : ''}${o.why === undefined ? '' : ` (${o.why})`}.`,
    ),
    '',
    'Vats',
    ...plan.stays.map(
      (s) =>
        `  ${s.vat}: ${s.batch} ${s.stage}, ${dayText(s.from)} ${timeText(s.from)} to ${dayText(s.to)} ${timeText(s.to)}.`,
    ),
    '',
    'To order',
    ...plan.purchases.map(
      (p) =>
        `  week of ${isoDateOfSerial(p.week)}: ${p.item} ${p.amount.toPrecision(3)} ${p.unit}, ${p.cost.toFixed(2)}.`,
    ),
    '',
    `Money: sales ${many(plan.money.sales)}, costs ${many(plan.money.cost)}, profit ${many(plan.money.profit)}${plan.odds ? ` (poor ${many(plan.odds.profit.p10)}, good ${many(plan.odds.profit.p90)}; a profit in ${percent(plan.odds.gain)} of seasons)` : ''}; at the least ${many(plan.money.leastBalance)} at hand.`,
    ...plan.findings.map(({ message }) => message),
  ];
  return `${lines.join('\n')}\n`;
}

function put(text: string, out: string | undefined): number {
  if (out === undefined) {
    process.stdout.write(text);
    return 0;
  }
  try {
    writeFileSync(out, text);
    return 0;
  } catch (error) {
    return complain([
      `${out}: the file cannot be written (${error instanceof Error ? error.message : String(error)}).`,
    ]);
  }
}

function plan(path: string, { json, today: typed, certainty, out }: Values): number {
  const day = typed === undefined ? undefined : readTypedDay(typed);
  if (day && day.kind !== 'time')
    return complain([`--today: expected a day such as 2027-03-01, got “${typed ?? ''}”.`]);
  const today = day?.value ?? serialOfLocalDay(new Date());
  const read = readInput(path, today);
  if ('faults' in read) return complain(read.faults);
  const checked = readOrderBook({
    ...read.input,
    ...(day ? { plannedOn: today } : {}),
    ...(certainty === undefined ? {} : { certainty }),
  });
  if ('faults' in checked)
    return complain(
      checked.faults.map(({ field, message }) => (field === '' ? message : `${field}: ${message}`)),
    );
  const made = planBatches(checked.book);
  return put(json ? `${JSON.stringify(made, null, 1)}\n` : inWords(checked.book, made), out);
}

function main(): number {
  try {
    const { values, positionals } = parseArgs({ options: OPTIONS, allowPositionals: true });
    if (values.schema) return put(`${JSON.stringify(seasonSchemas(), null, 1)}\n`, values.out);
    const [path, more] = positionals;
    if (values.help || path === undefined) {
      process.stdout.write(USAGE);
      return values.help ? 0 : UNREADABLE;
    }
    return more === undefined ? plan(path, values) : complain([`One book at a time; got also ${more}.`]);
  } catch (error) {
    return complain([error instanceof Error ? error.message : String(error)]);
  }
}
process.exitCode = main();
