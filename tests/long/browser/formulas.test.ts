import { evaluate } from '../../../shared/catalogue/calculation';
import { addressOf } from '../../../shared/sheet/formula/address';
import { isError, isGrid } from '../../../shared/base/values';
import type { Session } from '../../browser/support/localSheet';
import { ask, openExample, openLocalSheet, picture, typeInto } from '../../browser/support/localSheet';

/** The local sheet in a real browser: formulas typed with the keyboard, answers read back. */

let session: Session;
beforeAll(async () => {
  session = await openLocalSheet();
});
afterAll(async () => {
  await session.close();
});

test('the plan of an invented hatchery has live formulas', async () => {
  const { page } = session;
  await openExample(page, 'season');
  const names = await ask(page, 'getSheetNames');
  expect(names).toEqual(expect.arrayContaining(['Today', 'Calendar', 'Batches', 'Counts']));
  const cells: { formula: string; value: unknown }[] = [];
  for (const sheet of ['Workings', 'Counts', 'Feed by batch']) {
    const values = await ask(page, 'getValues', `'${sheet}'!A5:CZ6`);
    for (const [row, line] of values.entries()) {
      for (const [column, value] of line.entries()) {
        const formula =
          value === null ? null : await ask(page, 'getFormula', `'${sheet}'!${addressOf(row + 4, column)}`);
        if (formula?.includes('SPAWN.')) cells.push({ formula, value });
      }
    }
  }
  expect(cells.length).toBeGreaterThan(10);
  expect(cells.filter(({ value }) => isError(value))).toEqual([]);
  await picture(page, 'season-plan');
});

describe('typed with the keyboard', () => {
  beforeAll(async () => {
    const { page } = session;
    await ask(page, 'newBook');
    await page.mouse.click(300, 400);
  });

  // One or more of each family of the job; the answers must be the engine's own.
  test.each([
    ['B2', '=SPAWN.BUFFER.DOSE(1000,4.6,7)'],
    ['B3', '=SPAWN.AMMONIA.SHARE(8,25)'],
    ['B4', '=SPAWN.HATCH.TIME(46100.5,27)'],
    ['B5', '=SPAWN.INJECTION.TIME(46100.3333,26)'],
    ['B6', '=SPAWN.HORMONE.VOLUME(1.2)'],
    ['B7', '=SPAWN.FEMALES.NEEDED(200000,1.5,0.1,700)'],
    ['B8', '=SPAWN.CYSTS.NEEDED(50000,100)'],
    ['B9', '=SPAWN.FEED.DAILY(20000,0.5,0.1)'],
    ['B10', '=ROUND(SPAWN.CHAIN.START(60000,{0.8,0.6,0.5}),0)'],
    ['B11', '=spawn.growth.sgr(1,2,10)'],
  ])('%s %s', async (address, formula) => {
    await typeInto(session.page, address, formula);
    const wanted = evaluate(formula);
    expect(isGrid(wanted) ? wanted[0]?.[0] : wanted).toEqual(expect.any(Number));
    expect(await ask(session.page, 'getValue', address)).toBeCloseTo(wanted as number, 9);
  });

  test('a table spills, with its headings', async () => {
    const { page } = session;
    const formula = '=SPAWN.EGGS.BYWEIGHT(316.8,{1.5;1.6;1.9},{36;35;41},0.95,TRUE)';
    await typeInto(page, 'D2', formula);
    expect(await ask(page, 'getValues', 'D2:H3')).toEqual(evaluate(formula));
  });

  test('a range in, a column out; a blank row stays blank and a bad cell fails alone', async () => {
    const { page } = session;
    for (const [i, text] of ['7', '8', '', 'eight', '9'].entries())
      if (text) await typeInto(page, `J${i + 2}`, text);
    await typeInto(page, 'K2', '=SPAWN.AMMONIA.SHARE(J2:J6,25)');
    const got = await ask(page, 'getValues', 'K2:K6');
    expect(
      got.map(([cell]) =>
        isError(cell) ? cell.error : typeof cell === 'number' ? Number(cell.toFixed(4)) : cell || null,
      ),
    ).toEqual([0.0056, 0.0537, null, '#VALUE!', 0.3619]);
    await typeInto(page, 'J3', '7');
    expect(await ask(page, 'getValue', 'K3')).toBeCloseTo(0.0056, 4);
  });

  test('a slip is answered with a sentence', async () => {
    const { page } = session;
    await typeInto(page, 'B14', '=SPAWN.AMMONIA.SHARE(8,82)');
    expect(await ask(page, 'getErrorText', 'B14')).toContain('82 °F is 27.8 °C');
    await typeInto(page, 'A15', "'12/03/2027");
    await typeInto(page, 'B15', '=SPAWN.HATCH.TIME(A15,27)');
    expect(await ask(page, 'getErrorText', 'B15')).toContain('date stored as text');
    await picture(page, 'typed-formulas');
  });

  test('10,000 cells of ours are all answered', async () => {
    const result = await session.page.evaluate(() => window.spawnbookBench?.cells(10_000, 1));
    expect(result?.cells).toBe(10_000);
  });
});

test('nothing went wrong unseen, and nothing was asked of another machine', () => {
  expect(session.trouble).toEqual([]);
});
