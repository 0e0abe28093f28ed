import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { livingBook } from '../../../shared/books/living';
import { freeze, verify } from '../../../shared/catalogue/sharing';
import { writeXlsx } from '../../../shared/files';
import { planBatches, readOrderBook } from '../../../shared/season';
import type { OrderBook } from '../../../shared/season/book/orderBook';
import { BACKYARD, COMMERCIAL } from '../../../templates/season.template';
import { unzip, zip } from '../../files/share/support/parts';
import { differences, valuesOf } from '../../files/share/support/read';
import { hasSoffice, startJudge } from '../../files/share/support/soffice';

/**
 * A season is shown to a bank without its buyers and without its prices: the rest still stands, no part of the
 * file holds a name or a price, and a program that knows nothing of Spawnbook works on with it.
 */
const PAGE = 'Where numbers come from';
/** Buyer and price on the sheet Orders. */
const LEFT_OUT = ['Orders!C', 'Orders!H'];
const file = new Uint8Array(readFileSync(join(__dirname, '../../../templates/season-commercial.xlsx')));
const share = (bytes: Uint8Array) => {
  const result = freeze(bytes, {
    date: '14 March 2027',
    workbook: 'season.xlsx',
    blank: LEFT_OUT,
    personal: true,
  });
  if (result.kind !== 'made') throw new Error(`${result.kind}: ${result.sentence}`);
  return result;
};
const { bytes: copy, report } = share(file);
const orders = COMMERCIAL.orders as readonly { readonly name: string; readonly price: number }[];

/** Python's own zip and XML readers: [part, place, what]. */
function searched(bytes: Uint8Array, words: readonly string[], numbers: readonly number[]) {
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-bank-'));
  try {
    writeFileSync(join(folder, 'copy.xlsx'), bytes);
    const said = execFileSync('python3', [join(__dirname, 'searchParts.py'), join(folder, 'copy.xlsx')], {
      input: JSON.stringify({ words, numbers }),
      encoding: 'utf8',
      maxBuffer: 1e8,
    });
    return JSON.parse(said) as readonly (readonly [string, string, string | number])[];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
const NAMES = orders.map(({ name }) => name);
const PRICES = [...new Set(orders.map(({ price }) => price))];
/** Sheets by the names of their parts. */
const sheetNames = (bytes: Uint8Array): string[] =>
  [...(unzip(bytes)['xl/workbook.xml'] ?? '').matchAll(/<sheet [^>]*name="([^"]+)"/g)].map(
    ([, name = '']) => name,
  );

test('the proof is clean; an independent search of every part finds no name and no price', () => {
  expect(report.proof).toMatchObject({ places: [], more: 0 });
  expect(PRICES).toEqual([0.045, 0.12]);
  // The search itself finds names and prices where they are.
  const backyard = new Uint8Array(readFileSync(join(__dirname, '../../../templates/season-backyard.xlsx')));
  const before = searched(backyard, ['Neighbours', 'School pond'], [0.04, 0.12]);
  expect(new Set(before.map(([, , what]) => what))).toEqual(
    new Set(['neighbours', 'school pond', 0.04, 0.12]),
  );
  const found = searched(copy, NAMES, PRICES);
  expect(found.filter(([, , what]) => typeof what === 'string')).toEqual([]);
  // 0.12 is also a figure of the method: it stands where it stood, never on a sheet that knows orders or money.
  const sheets = sheetNames(copy);
  const where = new Set(
    found.map(([part]) => sheets[Number(/sheet(\d+)\.xml/.exec(part)?.[1] ?? 0) - 1] ?? part),
  );
  for (const name of ['Orders', 'Shares', 'Shopping and money', 'Promises', 'Today', 'Setup', 'Checks'])
    expect([...where]).not.toContain(name);
}, 240_000);

test('the rest of the season still stands', async () => {
  const [before, after] = [await valuesOf(file), await valuesOf(copy)];
  const gone = [...before.keys()].filter((place) => !after.has(place));
  const changed = differences(before, after, PAGE).filter((line) => !/→ undefined$|: new$/.test(line));
  console.log(
    `${gone.length} of ${before.size} cells are empty in the copy (before orders had keys: 24,282)`,
  );
  expect(changed).toEqual([]);
  expect(before.size).toBeGreaterThan(40_000);
  // 40 names, 40 prices, what is fetched by name, what is worked out from a price.
  expect(gone.length).toBeLessThanOrEqual(600);
  const bySheet = new Map<string, number>();
  for (const place of gone) {
    const sheet = place.split('!')[0] ?? '';
    bySheet.set(sheet, (bySheet.get(sheet) ?? 0) + 1);
  }
  expect([...bySheet.keys()].sort()).toEqual(
    ['Calendar', 'Orders', 'Shares', 'Shopping and money', 'Today'].sort(),
  );
}, 240_000);

test('two seasons that differ only in buyers and prices give the same copy', async () => {
  const read = readOrderBook(BACKYARD);
  if ('faults' in read) throw new Error(JSON.stringify(read.faults));
  const plan = planBatches(read.book, { draws: 200, explains: false });
  const other: OrderBook = {
    ...read.book,
    orders: read.book.orders.map((order, i) => ({
      ...order,
      name: `Somebody else ${i}`,
      price: 3 + 7.77 * i,
    })),
  };
  const renamed = new Map(read.book.orders.map(({ name }, i) => [name, other.orders[i]?.name ?? '']));
  const rename = (name: string): string => renamed.get(name) ?? name;
  const copies = await Promise.all(
    [
      livingBook(read.book, plan),
      livingBook(other, {
        ...plan,
        orders: plan.orders.map((one) => ({ ...one, order: { ...one.order, name: rename(one.order.name) } })),
        allocations: plan.allocations.map((one) => ({ ...one, order: rename(one.order) })),
        findings: plan.findings.map((one) => ({
          ...one,
          message: one.message.replace(/^[^:,]+(?=[:,])/, rename),
        })),
      }),
    ].map((model) => valuesOf(share(writeXlsx(model)).bytes)),
  );
  const [one = new Map<string, unknown>(), two = new Map<string, unknown>()] = copies;
  expect(one.size).toBeGreaterThan(3000);
  // Sums over three orders and more stay: sales in all, and the checks that hold them against each other.
  const told = differences(one, two, PAGE).filter(
    (line) => !/^(Shopping and money!(6|8|9),3|Checks!(5,4|6,[34])):/.test(line),
  );
  expect(told).toEqual([]);
}, 240_000);

test('the copy can be checked against its digest, and shared again it is the same', () => {
  expect(verify(copy, report.digest)).toMatchObject({ kind: 'checked', matches: true });
  expect(freeze(copy, { date: 'x', workbook: 'x' }).kind).toBe('unchanged');
});

(hasSoffice ? describe : describe.skip)('LibreOffice', () => {
  const judge = hasSoffice ? startJudge(true) : undefined;
  afterAll(() => {
    judge?.close();
  });
  test('opens it; one input changed there moves what hangs on it, and nothing else', async () => {
    const sheets = sheetNames(copy);
    const part = `xl/worksheets/sheet${sheets.indexOf('Orders') + 1}.xml`;
    const parts = unzip(copy);
    // Fish of the first order: 18,000 become 10,000.
    const typed = /(<c r="E5"[^>]*><v>)18000(<)/;
    expect(parts[part]).toMatch(typed);
    const changed = zip({ ...parts, [part]: (parts[part] ?? '').replace(typed, '$110000$2') });
    const [was, is] = [copy, changed].map((bytes) => judge?.save(bytes) ?? new Uint8Array());
    const [before, after] = [await valuesOf(was ?? copy), await valuesOf(is ?? copy)];
    // What follows the day of opening; a difference of two sums, in its last digit.
    const byDay = /^(Today|Task list|Vat use|Feed by batch)!|^Checks!\d+,5:/;
    const own = differences(await valuesOf(copy), before, PAGE, 1e-9).filter((line) => !byDay.test(line));
    expect(own).toEqual([]);
    const moved = differences(before, after, PAGE, 1e-9).map((line) => line.split(':')[0]);
    // The order itself, the fish it is still owed, the fish its batch gives to orders, the check of the promise.
    expect(moved).toContain('Orders!5,5');
    expect(moved.some((place) => place?.startsWith('Shares!'))).toBe(true);
    expect(moved.some((place) => place?.startsWith('Batches!'))).toBe(true);
    expect(moved.some((place) => place?.startsWith('Shopping and money!'))).toBe(true);
    expect(moved.length).toBeLessThan(60);
  }, 240_000);
});
