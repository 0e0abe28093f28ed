import { unzipSync } from 'fflate';
import { freeze, inspect, verify } from '../../../shared/catalogue/sharing';
import type { FreezeReport } from '../../../shared/catalogue/sharing';
import { readContainer } from '../../../shared/files/package/container';
import { OPTIONS, simpleBook, unzip, worksheet } from './support/parts';
import { SEASON_CALLS, season, seasonParts, seasonCells } from './support/season';

const made = (file: Uint8Array, options = {}): { bytes: Uint8Array; report: FreezeReport } => {
  const result = freeze(file, { ...OPTIONS, ...options });
  if (result.kind !== 'made') throw new Error(`${result.kind}: ${result.sentence}`);
  return result;
};

describe('freezing a workbook with everything in it', () => {
  const file = season();
  const before = file.slice();
  const { bytes, report } = made(file);
  const was = unzip(file);
  const is = unzip(bytes);
  const sheet = is['xl/worksheets/sheet1.xml'] ?? '';
  const cell = (address: string): string => new RegExp(`<c r="${address}"[^]*?</c>`).exec(sheet)?.[0] ?? '';

  test('every call of ours is a value and nothing else changed its value', () => {
    expect(report.frozen).toBe(SEASON_CALLS);
    for (const [address, spec] of Object.entries(seasonCells)) {
      const value = spec.v;
      const stored = /<v>([^]*?)<\/v>/.exec(cell(address))?.[1];
      if (value !== undefined)
        expect([address, stored]).toEqual([
          address,
          String(typeof value === 'boolean' ? Number(value) : value)
            .replaceAll('&', '&amp;')
            .replaceAll('<', '&lt;')
            .replaceAll('>', '&gt;')
            .replaceAll('"', '&quot;'),
        ]);
    }
    const formulas = [...sheet.matchAll(/<f[^>]*>([^<]*)<\/f>/g)].map((match) => match[1]);
    expect(formulas.filter((text) => /spawn/i.test((text ?? '').replace(/&quot;.*?&quot;/g, '')))).toEqual(
      [],
    );
    expect(sheet).not.toContain('cm="1"');
    expect(cell('K3')).toBe('<c r="K3" t="e"><v>#VALUE!</v></c>');
  });

  test('native formulas stay, spilled ranges in them become ranges', () => {
    expect(cell('D2')).toBe('<c r="D2"><f>C2*100</f><v>0.14200000000000002</v></c>');
    expect(cell('F2')).toContain('<f>SUM(E2:E6)</f>');
    expect(cell('F3')).toContain('<f>SUM($E$2:$E$6)+A3</f>');
    expect(cell('F6')).toContain('<f>SUM($E$2:$E$6)+A6</f>');
    expect(cell('H2')).toContain('&quot;SPAWN.AMMONIA.SHARE(&quot;&amp;A2');
    expect(cell('I4')).toContain('<f>plain+1</f>');
    expect(cell('N3')).toBe('<c r="N3"><v>0.0012</v></c>');
  });

  test('names, rules and tables hold no call any more', () => {
    const book = is['xl/workbook.xml'] ?? '';
    expect(book).toContain('<definedName name="Ours">#N/A</definedName>');
    expect(book).toContain('<definedName name="inner">#N/A</definedName>');
    expect(book).toContain('<definedName name="twice">#N/A</definedName>');
    expect(book).toContain('<definedName name="whole">Season!$E$2:$E$6</definedName>');
    expect(sheet).toContain('<formula>D2&gt;SUM($E$2:$E$6)</formula>');
    expect(sheet).toContain(
      '<dataValidations count="2"><dataValidation type="list" sqref="A2:A6"><formula1>$E$2:$E$6</formula1>',
    );
    expect(sheet).not.toContain('sqref="C2:C6"');
    expect(sheet).toContain('{AAAAAAAA-0000-0000-0000-000000000001}');
    expect(sheet).not.toContain('{AAAAAAAA-0000-0000-0000-000000000002}');
    expect(is['xl/tables/table1.xml']).toContain('<tableColumn id="2" name="Share"></tableColumn>');
    expect(report.removed.filter((line) => /conditional format|validation/.test(line))).toHaveLength(3);
  });

  test('calculation order, add-in and signature are gone from every list', () => {
    const gone = Object.keys(was).filter((name) => !(name in is));
    expect(gone.toSorted()).toEqual([
      '_xmlsignatures/_rels/origin.sigs.rels',
      '_xmlsignatures/origin.sigs',
      '_xmlsignatures/sig1.xml',
      'xl/calcChain.xml',
      'xl/webextensions/_rels/taskpanes.xml.rels',
      'xl/webextensions/taskpanes.xml',
      'xl/webextensions/webextension1.xml',
      'xl/webextensions/webextension2.xml',
    ]);
    for (const part of [
      '[Content_Types].xml',
      '_rels/.rels',
      'xl/_rels/workbook.xml.rels',
      'xl/drawings/_rels/drawing1.xml.rels',
      'xl/drawings/drawing1.xml',
    ])
      expect([
        part,
        /calcChain|webextension|signature/i.test((is[part] ?? '').replace(/<Default [^>]*>/g, '')),
      ]).toEqual([part, false]);
  });

  test('what the pane remembered of columns goes with the add-in: no part of the copy holds it', () => {
    const holding = (parts: Readonly<Record<string, string>>): string[] =>
      Object.entries(parts)
        .filter(([, text]) => /spawnbook\.columns|Secret pond/.test(text))
        .map(([name]) => name);
    expect(holding(was).toSorted()).toEqual([
      'xl/webextensions/webextension1.xml',
      'xl/webextensions/webextension2.xml',
    ]);
    expect(holding(is)).toEqual([]);
  });

  test('every part nobody had to touch is the same to the last packed byte', () => {
    const packed = (container: Uint8Array): Map<string, Uint8Array> =>
      new Map(readContainer(container).map((entry) => [entry.name, entry.packed]));
    const [old, now] = [packed(file), packed(bytes)];
    const touched = [
      '[Content_Types].xml',
      '_rels/.rels',
      'xl/workbook.xml',
      'xl/_rels/workbook.xml.rels',
      'xl/worksheets/sheet1.xml',
      'xl/tables/table1.xml',
      'xl/drawings/drawing1.xml',
      'xl/drawings/_rels/drawing1.xml.rels',
    ];
    for (const [name, content] of old)
      if (now.has(name) && !touched.includes(name)) expect([name, now.get(name)]).toEqual([name, content]);
    expect([...old.keys()].filter((name) => now.has(name) && !touched.includes(name)).length).toBeGreaterThan(
      15,
    );
  });

  test('the input is not changed, equal input gives equal bytes, a second freeze changes nothing', () => {
    expect(file).toEqual(before);
    expect(made(season()).bytes).toEqual(bytes);
    const again = freeze(bytes, OPTIONS);
    expect(again).toMatchObject({
      kind: 'unchanged',
      sentence: 'This copy is frozen already: no formula of Spawnbook is left in it.',
    });
    expect(again.kind === 'unchanged' && again.bytes).toBe(bytes);
  });

  test('other unzip programs read the copy', () => {
    expect(Object.keys(unzipSync(bytes))).toContain('xl/worksheets/sheet3.xml');
  });

  test('the page lists each block once, with formula, inputs, version and source', () => {
    const page = is['xl/worksheets/sheet3.xml'] ?? '';
    const lines = [...page.matchAll(/<row [^]*?<\/row>/g)].map((row) =>
      [...row[0].matchAll(/<c [^]*?<\/c>/g)].map((one) => /<(?:t|v)[^>]*>([^<]*)</.exec(one[0])?.[1] ?? ''),
    );
    const line = (cells: string): string[] => lines.find((one) => one[1] === cells) ?? [];
    expect(line('C2:C6').slice(0, 8)).toEqual([
      'Season',
      'C2:C6',
      '5',
      '=SPAWN.AMMONIA.SHARE(A2,B2)',
      'value',
      'SPAWN.AMMONIA.SHARE, version 1',
      'share',
      'A2:A6, B2:B6',
    ]);
    expect(line('C2:C6').slice(8, 11)).toEqual(['0.00142', '0.00142', '0.161']);
    expect(line('C2:C6')[12]).toBe('1');
    expect(lines.find((one) => one[0] === '1' && /Emerson/.test(one[2] ?? ''))?.[1]).toMatch(
      /read in the publication|from memory/,
    );
    expect(line('C2:C6')[11]).toMatch(/^[0-9a-f]{16}$/);
    expect(line('E2:E6')[3]).toBe('=SPAWN.AMMONIA.SHARE(A2:A6,B2:B6)');
    expect(line('E2:E6')[7]).toBe('A2:A6, B2:B6');
    expect(line('B10:B11')[3]).toBe('=SPAWN.AMMONIA.SHARE(8,Batches[@Batch]+20)');
    expect(line('H3')[3]).toBe('=SPAWN.AMMONIA.SHARE(A3,B3)');
    expect(line('I3')[5]).toBe('through a name of the workbook');
    expect(line('K4:K5')[5]).toContain('not known to this version');
    expect(page).toContain('<c r="I');
    expect(report.page).toBe('Where numbers come from');
  });

  test('the digest verifies, and one changed number anywhere breaks it', () => {
    expect(verify(bytes)).toMatchObject({
      kind: 'checked',
      matches: true,
      digest: report.digest,
      workbook: 'season.xlsx',
      date: '14 March 2026',
    });
    expect(verify(bytes, report.digest)).toMatchObject({ matches: true });
    expect(verify(bytes, '00')).toMatchObject({ matches: false });
    expect(verify(file)).toMatchObject({ kind: 'noPage' });
  });

  test('an inspection tells the same before anything is made', () => {
    const seen = inspect(season());
    expect(seen).toMatchObject({ refused: undefined, calls: SEASON_CALLS, stops: false });
    expect(seen.problems.map((problem) => problem.sentence)).toEqual([
      expect.stringContaining('Season!K3: #VALUE! is its last value and is kept'),
    ]);
    expect(seen.notes.join('\n')).toMatch(
      /The name Ours[^]*conditional format[^]*what-if table becomes[^]*signed/,
    );
  });
});

test('1904 dates and prefixed XML are frozen alike', () => {
  const plain = unzip(made(season()).bytes)['xl/worksheets/sheet1.xml'];
  expect(unzip(made(season({ is1904: true })).bytes)['xl/worksheets/sheet1.xml']).toBe(plain);
  expect(Object.keys(seasonParts()).length).toBeGreaterThan(25);
});

test('cells that were never calculated or are stuck stop the copy, with a sentence each', () => {
  const file = simpleBook({
    sheets: {
      Plan: worksheet({
        A1: { f: '_xldudf_SPAWN_AMMONIA_SHARE(8,25)' },
        A2: { f: 'SPAWN.NOT.THERE(8,25)', v: '#NAME?', t: 'e' },
        A3: { f: 'SPAWN.AMMONIA.SHARE(8,26)', v: 0.06 },
      }),
    },
  });
  expect(inspect(file)).toMatchObject({
    calls: 3,
    stops: true,
    problems: [
      { cell: 'A1', stops: true },
      { cell: 'A2', stops: true },
    ],
  });
  const result = freeze(file, OPTIONS);
  expect(result).toMatchObject({
    kind: 'refused',
    sentence: expect.stringContaining('Plan!A1: never calculated'),
  });
  const copy = made(file, { acceptProblems: true });
  const sheet = unzip(copy.bytes)['xl/worksheets/sheet1.xml'] ?? '';
  expect(sheet).toContain('<c r="A1"></c><');
  expect(sheet).toContain('<c r="A3"><v>0.06</v></c>');
});

test('a workbook without a call of ours is handed back as it is, with a sentence', () => {
  const file = simpleBook({ sheets: { Plan: worksheet({ A1: { f: '1+1', v: 2 } }) } });
  expect(freeze(file, OPTIONS)).toEqual({
    kind: 'unchanged',
    bytes: file,
    sentence: 'No formula of Spawnbook is in this workbook: it can be shared as it is.',
  });
});

test.each([
  [1, 'Plan!A1: a conditional format was removed.'],
  [2, 'Plan!A1; Plan!A2: a conditional format was removed from each.'],
  [6, 'Plan!A5; Plan!A6: a conditional format was removed from each.'],
  [7, 'Plan!A5; Plan!A6 and 1 more: a conditional format was removed from each.'],
])('%d rules alike that told what is left out are said in one line', (n, ending) => {
  const rules = Array.from(
    { length: n },
    (_, i) =>
      `<conditionalFormatting sqref="A${i + 1}"><cfRule type="expression" priority="${i + 1}"><formula>$C$1&gt;4711</formula></cfRule></conditionalFormatting>`,
  ).join('');
  const file = simpleBook({
    sheets: { Plan: worksheet({ A1: { v: 1 }, C1: { v: 4711 }, C2: { v: 12 } }, rules) },
  });
  const copy = freeze(file, { ...OPTIONS, blank: ['Plan!C1:C2'] });
  if (copy.kind !== 'made') throw new Error(copy.sentence);
  const said = copy.report.removed.filter((line) => line.includes('conditional format'));
  expect(said).toEqual([expect.stringContaining(ending)]);
  expect(said[0]).toMatch(/^Plan!A1/);
});
