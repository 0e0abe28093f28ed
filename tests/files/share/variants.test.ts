import { writeXlsx } from 'hucre/xlsx';
import { freeze, inspect, repairCalls, runInSlices, freezeSteps } from '../../../shared/catalogue/sharing';
import type { FreezeOptions } from '../../../shared/catalogue/sharing';
import type { CellSpec } from './support/parts';
import { HEAD, MAIN, OPTIONS, REL, simpleBook, simpleParts, unzip, worksheet, zip } from './support/parts';
import { differences, valuesOf } from './support/read';
import { SEASON_CALLS, season, seasonParts } from './support/season';

const made = (file: Uint8Array, options: Partial<FreezeOptions> = {}): Record<string, string> => {
  const result = freeze(file, { ...OPTIONS, ...options });
  if (result.kind !== 'made') throw new Error(`${result.kind}: ${result.sentence}`);
  return unzip(result.bytes);
};
const sheetOf = (cells: Record<string, CellSpec>, options = {}): string =>
  made(simpleBook({ sheets: { Plan: worksheet(cells) } }), options)['xl/worksheets/sheet1.xml'] ?? '';
const call = (a: string, b: string): string => `_xldudf_SPAWN_AMMONIA_SHARE(${a},${b})`;

test('XML with its main namespace prefixed is frozen as the plain one', () => {
  const prefixed = (xml: string): string =>
    xml.replace(/<(\/?)(?![?!/])(?!\w+:)/g, '<$1x:').replace(`xmlns="${MAIN}"`, `xmlns:x="${MAIN}"`);
  const parts = seasonParts();
  for (const name of [
    'xl/workbook.xml',
    'xl/worksheets/sheet1.xml',
    'xl/worksheets/sheet2.xml',
    'xl/tables/table1.xml',
    'xl/sharedStrings.xml',
  ])
    parts[name] = prefixed(String(parts[name]));
  const [plain, other] = [made(season()), made(zip(parts))];
  expect(other['xl/worksheets/sheet1.xml']?.replaceAll('x:', '').replace('xmlns:x=', 'xmlns=')).toBe(
    plain['xl/worksheets/sheet1.xml']?.replaceAll('x:', ''),
  );
  expect(other['xl/workbook.xml']).toContain('<x:sheet name="Where numbers come from"');
  expect(other['xl/worksheets/sheet3.xml']).toBe(plain['xl/worksheets/sheet3.xml']);
});

test('strict files keep their namespaces, dates written as text stay', () => {
  const strictly = (text: string): string =>
    text
      .replaceAll(MAIN, 'http://purl.oclc.org/ooxml/spreadsheetml/main')
      .replaceAll(REL, 'http://purl.oclc.org/ooxml/officeDocument/relationships');
  const parts = simpleParts({
    sheets: {
      Plan: worksheet({
        A1: { v: '2026-03-14T08:00:00', t: 'd' },
        A2: { f: '_xldudf_SPAWN_STRIP_TIME(A1,24)', v: '2026-03-14T20:00:00', t: 'd' },
      }),
    },
  });
  const copy = made(
    zip(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strictly(String(text))]))),
  );
  expect(copy['xl/worksheets/sheet1.xml']).toContain('<c r="A2" t="d"><v>2026-03-14T20:00:00</v></c>');
  expect(copy['xl/worksheets/sheet2.xml']).toContain('xmlns="http://purl.oclc.org/ooxml/spreadsheetml/main"');
  expect(copy['xl/workbook.xml']).toContain(
    'xmlns:r="http://purl.oclc.org/ooxml/officeDocument/relationships"/></sheets>',
  );
});

test('cells without addresses, comments, CDATA, odd quotes and spaces are read as they are meant', () => {
  const body = `<row><c><v>8</v></c><c><v>25</v></c><!-- ${call('1', '2')} --><c ><f  ><![CDATA[${call('A1', 'B1')}]]></f ><v>0.05</v></c><c t='str'><f>"SPAWN.X("</f><v>SPAWN.X(</v></c></row><row r='3'><c r='B3' cm='1' s='2'><f t='array' ref='B3'>${call('A1', 'B1').replace('SPAWN', '&#83;PAWN')}</f><v>0.06</v></c></row>`;
  const copy =
    made(
      simpleBook({
        sheets: {
          Plan: `\ufeff${HEAD}<worksheet xmlns="${MAIN}"><sheetData>${body}</sheetData></worksheet>`,
        },
      }),
    )['xl/worksheets/sheet1.xml'] ?? '';
  expect(copy).toContain('<c ><v>0.05</v></c>');
  expect(copy).toContain(`<f>"SPAWN.X("</f>`);
  expect(copy).toContain("<c r='B3' s='2'><v>0.06</v></c>");
});

test('a shared formula whose text stands in a later cell, and a number used twice', () => {
  const xml = sheetOf({
    A1: { how: 't="shared" si="4"', v: 1 },
    A2: { f: `A9+${call('A9', '20')}`, how: 't="shared" ref="A1:A2" si="4"', v: 2 },
    B1: { f: 'C1*2', how: 't="shared" ref="B1:B2" si="5"', v: 3 },
    B2: { how: 't="shared" si="5"', v: 4 },
    D1: { f: call('A1', '20'), how: 't="shared" ref="D1:D2" si="5"', v: 5 },
    D2: { how: 't="shared" si="5"', v: 6 },
  });
  expect(xml).toContain('<c r="A1"><v>1</v></c>');
  expect(xml).toContain('<c r="D1"><v>5</v></c>');
  expect(xml).toContain('<c r="B1"><f t="shared" ref="B1:B2" si="5">C1*2</f><v>3</v></c>');
});

test('a spilled range reached by a name is rewritten; one that cannot be told is frozen', () => {
  const file = simpleBook({
    sheets: {
      Plan: worksheet({
        A1: { f: call('8', 'C1:C3'), how: 't="array" ref="A1:A3"', cm: true, v: 1 },
        A2: { v: 2 },
        A3: { v: 3 },
        B1: { f: 'SUM(_xlfn.ANCHORARRAY(corner))', v: 6 },
        B2: { f: 'SUM(_xlfn.ANCHORARRAY(INDEX(A1:A3,1)))', v: 6 },
        B3: { f: 'SUM(_xlfn.ANCHORARRAY(E1))', v: 0 },
      }),
    },
    after: '<definedNames><definedName name="corner">Plan!$A$1</definedName></definedNames>',
  });
  const xml = made(file)['xl/worksheets/sheet1.xml'] ?? '';
  expect(xml).toContain('<f>SUM(Plan!$A$1:$A$3)</f>');
  expect(xml).toContain('<c r="B2"><v>6</v></c>');
  expect(xml).toContain('<f>SUM(_xlfn.ANCHORARRAY(E1))</f>');
});

test('what looks like a call of ours and is none stays', () => {
  const cells: Record<string, CellSpec> = {
    A1: { f: "'SPAWN.AMMONIA.SHARE(8,25)'!B2", v: 1 },
    A2: { f: '_xldudf_SPAWNING_RATE(1)', v: 2 },
    A3: { f: 'Table1[SPAWN.X(1)]', v: 3 },
    A4: { f: 'MYSPAWN.RATE(1)', v: 4 },
    A5: { f: 'SPAWN.total', v: 5 },
  };
  const after = '<definedNames><definedName name="SPAWN.total">Plan!$A$1</definedName></definedNames>';
  expect(freeze(simpleBook({ sheets: { Plan: worksheet(cells) }, after }), OPTIONS).kind).toBe('unchanged');
});

test(
  'a file made by another writer is frozen, and its values are those an independent ' + 'reader saw',
  async () => {
    const file = await writeXlsx({
      sheets: [
        {
          name: 'Plan',
          rows: [
            ['pH', 'share'],
            [8, null],
            [7, null],
          ],
          cells: new Map([
            ['1,1', { formula: call('A2', '25'), formulaResult: 0.0537, formulaDynamic: true }],
            ['2,1', { formula: 'B2*2', formulaResult: 0.1074 }],
          ]),
        },
      ],
    });
    expect(inspect(file)).toMatchObject({ calls: 1, stops: false });
    const result = freeze(file, OPTIONS);
    if (result.kind !== 'made') throw new Error(result.sentence);
    expect(result.report).toMatchObject({ frozen: 1, kept: 1 });
    const before = await valuesOf(file);
    expect(before.get('Plan!2,2')).toBe(0.0537);
    expect(differences(before, await valuesOf(result.bytes), 'Where numbers come from')).toEqual([]);
  },
);

test('foreign books in front of calls are taken off by a repair, and nothing else is touched', () => {
  const result = repairCalls(season());
  expect(result.kind).toBe('made');
  if (result.kind !== 'made') return;
  const xml = unzip(result.bytes)['xl/worksheets/sheet1.xml'] ?? '';
  expect(xml).toContain('<c r="H3"><f>_xldudf_SPAWN_AMMONIA_SHARE(A3,B3)</f><v>0.00482</v></c>');
  expect(xml).toContain('<c r="H4"><f>_xldudf_SPAWN_AMMONIA_SHARE(A4,B4)</f>');
  expect(xml).toContain('<c r="H5"><f>_xldudf_SPAWN_AMMONIA_SHARE(A5,B5)</f>');
  expect(xml).toContain('&quot;SPAWN.AMMONIA.SHARE(&quot;');
  expect(repairCalls(result.bytes)).toMatchObject({ kind: 'unchanged' });
  expect(inspect(result.bytes).calls).toBe(SEASON_CALLS);
});

test('work in slices reports progress and can be stopped; the result is the same', async () => {
  const seen: string[] = [];
  const result = await runInSlices(freezeSteps(season(), OPTIONS), {
    pause: async () => undefined,
    onProgress: ({ step, done }) => {
      seen.push(step);
      expect(done).toBeLessThanOrEqual(1.0001);
    },
  });
  expect(result).toEqual(freeze(season(), OPTIONS));
  expect([...new Set(seen)]).toEqual(['unpack', 'read', 'write', 'page', 'pack']);
  let pauses = 0;
  expect(
    await runInSlices(freezeSteps(season(), OPTIONS), {
      pause: async () => {
        pauses++;
      },
      isCancelled: () => pauses > 2,
    }),
  ).toBeUndefined();
});
