import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { freeze, inspect, repairCalls, verify } from '../../../shared/catalogue/sharing';
import { OPTIONS, simpleBook, unzip, worksheet, zip } from '../../files/share/support/parts';
import { differences, valuesOf } from '../../files/share/support/read';
import { SEASON_CALLS, season } from '../../files/share/support/season';
import { hasSoffice, startJudge } from '../../files/share/support/soffice';

const PAGE = 'Where numbers come from';
const made = (file: Uint8Array, options = {}): Uint8Array => {
  const result = freeze(file, { ...OPTIONS, ...options });
  if (result.kind !== 'made') throw new Error(`${result.kind}: ${result.sentence}`);
  return result.bytes;
};

// LibreOffice is set up by npm test; where it is missing the run must not look green.
test('LibreOffice is here to judge', () => {
  expect(hasSoffice).toBe(true);
});

(hasSoffice ? describe : describe.skip)('LibreOffice', () => {
  const strict = hasSoffice ? startJudge(true) : undefined;
  const plain = hasSoffice ? startJudge(false) : undefined;
  afterAll(() => {
    strict?.close();
    plain?.close();
  });

  test('without freezing, a full recalculation loses the answers', async () => {
    const values = await valuesOf(strict?.save(season()) ?? new Uint8Array());
    expect([...values.values()].filter((value) => value === '#NAME?').length).toBeGreaterThan(10);
  }, 120_000);

  test('after freezing, a full recalculation changes no value', async () => {
    const copy = made(season());
    const before = await valuesOf(copy);
    const after = await valuesOf(strict?.save(copy) ?? new Uint8Array());
    // LibreOffice draws the pivot table anew, with headings of its own.
    expect(differences(before, after, PAGE).filter((line) => !/^Log!\d+,[56]:/.test(line))).toEqual([]);
    expect(before.size).toBeGreaterThan(100);
  }, 120_000);

  test(
    'the season plan template, kept alive where it can be, gives the same values when ' + 'calculated anew',
    async () => {
      const file = new Uint8Array(readFileSync(join(__dirname, '../../../templates/season-plan.xlsx')));
      const copy = made(file, { keepAlive: true });
      const after = await valuesOf(strict?.save(copy) ?? new Uint8Array());
      // Its logarithms and powers differ from Excel's in the last digits.
      // The first page and the counters behind it follow the day of opening.
      const byDay = /^(Today|Task list|Vat use)!/;
      expect(differences(await valuesOf(copy), after, PAGE, 1e-9).filter((one) => !byDay.test(one))).toEqual(
        [],
      );
      expect(verify(copy)).toMatchObject({ matches: true });
    },
    120_000,
  );

  test('a copy saved again by LibreOffice still verifies; one changed number does not', () => {
    const saved = plain?.save(made(season(), { sheets: ['Season'] })) ?? new Uint8Array();
    expect(verify(saved)).toMatchObject({ kind: 'checked', matches: true });
    const parts = unzip(saved);
    const name = 'xl/worksheets/sheet1.xml';
    const changed = zip({
      ...parts,
      [name]: (parts[name] ?? '').replace(/(<c r="C3"[^>]*><v>)0\.00482/, '$10.00481'),
    });
    expect(verify(changed)).toMatchObject({
      matches: false,
      sentences: expect.arrayContaining(['Numbers worked out by Spawnbook were changed in Season!C2:C6.']),
    });
    const typed = zip({ ...parts, [name]: (parts[name] ?? '').replace(/(<c r="A3"[^>]*><v>)7</, '$17.5<') });
    expect(verify(typed)).toMatchObject({
      matches: false,
      sentences: expect.arrayContaining(['Typed cells were changed, added or emptied on Season.']),
    });
  }, 120_000);

  test(
    'a live workbook saved by LibreOffice (lower-case calls, other arrays) is understood ' + 'and frozen',
    async () => {
      const saved = plain?.save(season()) ?? new Uint8Array();
      const seen = inspect(saved);
      expect(seen.calls).toBeGreaterThanOrEqual(SEASON_CALLS - 6);
      // What LibreOffice lost to #NAME? is worked out again; what it kept stays.
      const copy = made(saved, { acceptProblems: true });
      expect(
        Object.entries(unzip(copy))
          .filter(
            ([name, text]) =>
              /worksheets\/sheet[12]\.xml|workbook\.xml/.test(name) &&
              /<(?:f|formula1?|definedName)\b[^>]*>[^<"&]*spawn/i.test(text),
          )
          .map(([name]) => name),
      ).toEqual([]);
      const [lost, whole] = [await valuesOf(saved), await valuesOf(copy)];
      const places = differences(lost, whole, PAGE).map((one) => one.replace(/: .*$/, ''));
      // The fixture's numbers are made up: ordinary formulas that read a lost one follow the function's answer.
      expect(
        places.filter((place) => lost.get(place) !== '#NAME?' && !/^Season!\d,[46]$/.test(place)),
      ).toEqual([]);
      expect(places.length).toBeGreaterThan(10);
    },
    120_000,
  );

  test('the live dosing sheet saved there comes back whole, shared or live, and a circle through it changes nothing', async () => {
    const file = new Uint8Array(readFileSync(join(__dirname, '../../../templates/dosing.xlsx')));
    const saved = plain?.save(file) ?? new Uint8Array();
    const before = await valuesOf(file);
    expect(
      [...(await valuesOf(saved)).values()].filter((value) => value === '#NAME?').length,
    ).toBeGreaterThan(20);
    expect(inspect(saved)).toMatchObject({
      stops: false,
      notes: [expect.stringContaining('worked out again')],
    });
    expect(differences(before, await valuesOf(made(saved)), PAGE, 1e-9)).toEqual([]);
    const live = repairCalls(saved);
    if (live.kind !== 'made') throw new Error(live.sentence);
    expect(differences(before, await valuesOf(live.bytes), PAGE, 1e-9)).toEqual([]);
    expect(unzip(live.bytes)['xl/worksheets/sheet1.xml']).toContain('_xldudf_SPAWN_BUFFER_NEXT(');
    expect(repairCalls(live.bytes).kind).toBe('unchanged');
  }, 120_000);

  test('native twins written into the file give what the functions gave', async () => {
    const file = simpleBook({
      sheets: {
        Plan: worksheet({
          A1: { v: 3 },
          A2: { v: 0.5 },
          A3: { v: 4 },
          B1: { f: '_xldudf_SPAWN_HORMONE_VOLUME(A1,A2)', v: 1.5 },
          B2: { f: '_xldudf_SPAWN_FEED_DAILY(1000,A3,0.05)*2', v: 400 },
          C1: { f: 'B1+1', v: 2.5 },
        }),
      },
    });
    const copy = made(file, { keepAlive: true });
    expect(unzip(copy)['xl/worksheets/sheet1.xml']).toContain('<c r="B1"><f>A1*A2</f><v>1.5</v></c>');
    const changed = simpleBook({
      sheets: {
        Plan: (unzip(copy)['xl/worksheets/sheet1.xml'] ?? '').replace(
          '<c r="A1"><v>3</v></c>',
          '<c r="A1"><v>5</v></c>',
        ),
      },
    });
    const values = await valuesOf(strict?.save(changed) ?? new Uint8Array());
    expect([values.get('Plan!1,2'), values.get('Plan!2,2'), values.get('Plan!1,3')]).toEqual([2.5, 400, 3.5]);
  }, 120_000);
});
