import { freeze } from '../../../shared/catalogue/sharing';
import type { FreezeOptions, FreezeReport } from '../../../shared/catalogue/sharing';
import { HEAD, MAIN, OPTIONS, relations, simpleBook, unzip, worksheet } from './support/parts';
import { season } from './support/season';

const made = (
  file: Uint8Array,
  options: Partial<FreezeOptions>,
): { parts: Record<string, string>; report: FreezeReport; bytes: Uint8Array } => {
  const result = freeze(file, { ...OPTIONS, ...options });
  if (result.kind !== 'made') throw new Error(`${result.kind}: ${result.sentence}`);
  return { parts: unzip(result.bytes), report: result.report, bytes: result.bytes };
};

/** Words as they may stand anywhere: whole, cut into runs, in other letter case. */
const holds = (parts: Record<string, string>, word: string): string[] =>
  Object.entries(parts)
    .filter(
      ([, text]) =>
        text.toLowerCase().includes(word.toLowerCase()) ||
        text
          .replace(/<[^>]*>/g, '')
          .toLowerCase()
          .includes(word.toLowerCase()),
    )
    .map(([name]) => name);

const C = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const A = 'http://schemas.openxmlformats.org/drawingml/2006/main';

/** An invented buyers' book: names and telephone numbers in every place a workbook can hide them. */
function buyers(): Uint8Array {
  const sheet = worksheet(
    {
      A1: { t: 's', v: 0 },
      B1: { t: 's', v: 1 },
      C1: { t: 's', v: 2 },
      D1: { v: 'Fee' },
      A2: { t: 's', v: 3 },
      B2: { t: 's', v: 4 },
      C2: { v: 1200 },
      D2: { f: 'C2*0.1', v: 120 },
      A3: { t: 's', v: 5 },
      B3: { v: 4799123456 },
      C3: { v: 800 },
      D3: { f: 'IF(A3="","",C3*0.1)', v: 80 },
      A4: { t: 'str', v: 'Ola Fjelde' },
      B4: { v: 4795555777 },
      C4: { v: 5 },
      D4: { f: '_xldudf_SPAWN_AMMONIA_SHARE(8,C4+20)', v: 0.0537 },
      F2: { f: 'A2&" pays"', v: 'Marit Solum pays' },
      F3: { f: 'LEFT(A3,3)', v: 'Jon' },
      F4: { f: 'IF(A4="","none","named")', v: 'named' },
      G2: { f: 'LEN(B2)', v: 15 },
      G3: { f: 'B3+0', v: 4799123456 },
      G4: { f: 'COUNTA(A2:A4)', v: 3 },
      G5: { f: 'F3&"!"', v: 'Jon!' },
      G6: { f: 'SUM(C2:C4)', v: 2005 },
      H2: { v: 'ask Marit Solum about the lorry' },
      H3: { v: 'marit' },
      H4: { v: '+47 (991) 23 456' },
      I2: { f: 'A2', how: 't="shared" ref="I2:I3" si="0"', v: 'Marit Solum' },
      I3: { how: 't="shared" si="0"', v: 'Jon Berge' },
    },
    '<autoFilter ref="A1:D4"><filterColumn colId="0"><filters><filter val="Marit ' +
      'Solum"/></filters></filterColumn></autoFilter>' +
      ('<conditionalFormatting sqref="C2"><cfRule type="expression" dxfId="0" ' +
        'priority="1"><formula>$A2="Jon Berge"</formula></cfRule></conditionalFormatting>') +
      ('<dataValidations count="2"><dataValidation type="list" sqref="J2"><formula1>"Marit ' +
        'Solum,Jon Berge"</formula1></dataValidation><dataValidation type="whole" ' +
        'promptTitle="Number" prompt="fish wanted" ' +
        'sqref="C2"><formula1>0</formula1><formula2>9</formula2></dataValidation></dataValidations>') +
      ('<hyperlinks><hyperlink ref="A2" r:id="rId5" tooltip="write"/><hyperlink ref="H2" ' +
        'location="Sheet2!A1" display="Marit Solum"/><hyperlink ref="D1" ' +
        'r:id="rId6"/></hyperlinks><headerFooter><oddHeader>&amp;LFor Ola Fjelde ' +
        'only</oddHeader></headerFooter><drawing r:id="rId1"/><legacyDrawing r:id="rId3"/>'),
  );
  const sst = `${HEAD}<sst xmlns="${MAIN}"><si><t>Buyer</t></si><si><t>Telephone</t></si><si><t>Fish</t></si><si><t>Marit Solum</t></si><si><t>+47 911 22 333</t></si><si><r><t>Jon </t></r><r><rPr><b/></rPr><t>Berge</t></r></si><si><t>Marit Solum</t></si></sst>`;
  const cache = (values: readonly string[]): string =>
    `<c:strCache><c:ptCount val="${values.length}"/>${values.map((v, i) => `<c:pt idx="${i}"><c:v>${v}</c:v></c:pt>`).join('')}</c:strCache>`;
  const chart = `${HEAD}<c:chartSpace xmlns:c="${C}" xmlns:a="${A}"><c:chart><c:title><c:tx><c:rich><a:bodyPr/><a:p><a:r><a:t>Orders of Marit </a:t></a:r><a:r><a:t>Solum</a:t></a:r></a:p></c:rich></c:tx></c:title><c:plotArea><c:barChart><c:barDir val="col"/><c:ser><c:idx val="0"/><c:order val="0"/><c:cat><c:strRef><c:f>Orders!$A$2:$A$4</c:f>${cache(['Marit Solum', 'Jon Berge', 'Ola Fjelde'])}</c:strRef></c:cat><c:val><c:numRef><c:f>Orders!$C$2:$C$4</c:f><c:numCache><c:ptCount val="1"/><c:pt idx="0"><c:v>1200</c:v></c:pt></c:numCache></c:numRef></c:val></c:ser><c:axId val="1"/><c:axId val="2"/></c:barChart></c:plotArea></c:chart></c:chartSpace>`;
  const drawing = `${HEAD}<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="${A}"><xdr:oneCellAnchor><xdr:sp><xdr:nvSpPr><xdr:cNvPr id="2" name="Box" descr="photo of Jon Berge"/></xdr:nvSpPr><xdr:txBody><a:p><a:r><a:t>Call 911 22 333</a:t></a:r></a:p></xdr:txBody></xdr:sp></xdr:oneCellAnchor></xdr:wsDr>`;
  const comments = `${HEAD}<comments xmlns="${MAIN}"><authors><author>Kaja Lund</author></authors><commentList><comment ref="B2" authorId="0"><text><t>only in the evening</t></text></comment><comment ref="C2" authorId="0"><text><t>Kaja Lund: Jon Berge wants more</t></text></comment><comment ref="C3" authorId="0"><text><t>Kaja Lund:\npaid</t></text></comment></commentList></comments>`;
  const pivotCache = `${HEAD}<pivotCacheDefinition xmlns="${MAIN}" refreshedBy="Kaja Lund"><cacheSource type="worksheet"><worksheetSource ref="A1:D4" sheet="Orders"/></cacheSource><cacheFields count="1"><cacheField name="Buyer"><sharedItems><s v="Marit Solum"/><s v="Jon Berge"/></sharedItems></cacheField></cacheFields></pivotCacheDefinition>`;
  return simpleBook({
    sheets: {
      Orders: sheet,
      Sums: worksheet({
        A1: { f: 'SUM(Orders!C2:C4)', v: 2005 },
        A2: { f: 'VLOOKUP("x",Orders!A2:C4,1)', v: 'Marit Solum' },
        B2: { t: 's', v: 6 },
        A3: { f: 'fishTotal', v: 2005 },
      }),
    },
    after:
      '<definedNames><definedName name="_xlnm.Print_Area" ' +
      'localSheetId="1">Sums!$A$1:$B$9</definedName><definedName name="best">"Marit ' +
      'Solum"</definedName><definedName ' +
      'name="fishTotal">SUM(Orders!$C$2:$C$4)</definedName></definedNames><pivotCaches><pivotCache ' +
      'cacheId="1" r:id="rId81"/></pivotCaches>',
    bookRelations: [
      ['rId80', 'sharedStrings', 'sharedStrings.xml'],
      ['rId81', 'pivotCacheDefinition', 'pivotCache/pivotCacheDefinition1.xml'],
    ],
    packageRelations: [
      [
        'rId3',
        'http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties',
        'docProps/core.xml',
      ],
      ['rId4', 'extended-properties', 'docProps/app.xml'],
      ['rId7', 'custom-properties', 'docProps/custom.xml'],
    ],
    extra: {
      'xl/sharedStrings.xml': sst,
      'xl/charts/chart1.xml': chart,
      'xl/drawings/drawing1.xml': drawing,
      'xl/comments1.xml': comments,
      'xl/pivotCache/pivotCacheDefinition1.xml': pivotCache,
      'xl/worksheets/_rels/sheet1.xml.rels': relations([
        ['rId1', 'drawing', '../drawings/drawing1.xml'],
        ['rId4', 'comments', '../comments1.xml'],
        ['rId5', 'hyperlink', 'mailto:marit@solum.example', true],
        ['rId6', 'hyperlink', 'https://example.org', true],
      ]),
      'xl/drawings/_rels/drawing1.xml.rels': relations([['rId1', 'chart', '../charts/chart1.xml']]),
      'docProps/core.xml': `${HEAD}<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:creator>Kaja Lund</dc:creator><dc:title>Orders, also Ola Fjelde</dc:title></cp:coreProperties>`,
      'docProps/app.xml': `${HEAD}<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties" xmlns:vt="v"><TitlesOfParts><vt:vector size="2" baseType="lpstr"><vt:lpstr>Orders</vt:lpstr><vt:lpstr>Sums</vt:lpstr></vt:vector></TitlesOfParts></Properties>`,
      'docProps/custom.xml': `${HEAD}<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/custom-properties" xmlns:vt="v"><property pid="2" name="Owner"><vt:lpwstr>Kaja Lund</vt:lpwstr></property><property pid="3" name="MSIP_Label_1_Name"><vt:lpwstr>Internal</vt:lpwstr></property></Properties>`,
    },
  });
}

describe('blanked columns', () => {
  const file = buyers();
  const { parts, report, bytes } = made(file, { blank: ['Orders!A', "'Orders'!B1:B9"] });
  const sheet = parts['xl/worksheets/sheet1.xml'] ?? '';
  const cell = (address: string): string =>
    new RegExp(`<c r="${address}"(?:[^>]*/>|[^]*?</c>)`).exec(sheet)?.[0] ?? '';

  test('the fixture really holds the words everywhere', () => {
    expect(holds(unzip(file), 'Solum').length).toBeGreaterThan(6);
    expect(holds(unzip(file), '911 22 333').length).toBeGreaterThan(1);
  });

  test('what nobody asked to take out stays and is named by its place', () => {
    expect(report.proof?.places).toEqual(
      expect.arrayContaining([
        'Orders!H2',
        'Orders!H4',
        'sheet1.xml',
        'workbook.xml',
        'chart1.xml',
        'drawing1.xml',
        'comments1.xml',
        'core.xml',
      ]),
    );
    expect(report.left.join('\n')).toMatch(/Values equal to some of the \d+ left out stand in: Orders!H2/);
    expect(cell('H2')).toContain('ask Marit Solum');
    expect(cell('H3')).toContain('<v>marit</v>');
    for (const word of ['4799123456', '4795555777', 'Telephone', 'evening'])
      expect([word, holds(parts, word)]).toEqual([word, []]);
    expect(report.proof?.places).not.toContain('Orders!H3');
  });

  test('whatever is worked out from what is left out is empty, all else keeps its value', () => {
    for (const address of ['D3', 'F2', 'F3', 'F4', 'G2', 'G3', 'G5', 'I2', 'I3'])
      expect([address, cell(address)]).toEqual([address, `<c r="${address}"/>`]);
    expect(cell('G4')).toBe('<c r="G4"><v>3</v></c>');
    expect(cell('D2')).toBe('<c r="D2"><f>C2*0.1</f><v>120</v></c>');
    expect(cell('D4')).toBe('<c r="D4"><v>0.0537</v></c>');
    expect(cell('G6')).toContain('<f>SUM(C2:C4)</f>');
    expect(parts['xl/worksheets/sheet2.xml']).toContain('<c r="A2"/>');
  });

  test('neighbours that read nothing of it stay', () => {
    expect(sheet).toContain('prompt="fish wanted"');
    expect(sheet).toContain('<dataValidations count="2">');
    expect(sheet).not.toContain('cfRule');
    expect(sheet).not.toContain('filterColumn');
    expect(sheet).toContain('<hyperlink ref="D1" r:id="rId6"/>');
    expect(parts['xl/worksheets/_rels/sheet1.xml.rels']).not.toContain('mailto');
    expect(parts['xl/comments1.xml']).toContain('paid');
    expect(parts['xl/charts/chart1.xml']).toContain('1200');
    expect(parts['xl/charts/chart1.xml']).not.toContain('Jon Berge');
    expect(parts['xl/workbook.xml']).toContain('fishTotal');
    expect(parts['xl/workbook.xml']).not.toMatch(/pivotCache/);
    expect(report.removed.join('\n')).toMatch(
      /cells were emptied[^]*Orders!D3, F2:F4, G2:G3, G5, I2:I3: worked out from[^]*Notes on emptied cells/,
    );
  });

  test('doing it again changes nothing', () => {
    expect(freeze(bytes, { ...OPTIONS, blank: ['Orders!A', 'Orders!B1:B9'] }).kind).toBe('unchanged');
  });

  test('a wish that cannot be meant is refused with the names there are', () => {
    expect(freeze(file, { ...OPTIONS, blank: ['Ordres!A'] })).toMatchObject({
      kind: 'refused',
      sentence: 'There is no sheet "Ordres" to blank "Ordres!A" on. The sheets are: Orders, Sums.',
    });
    expect(freeze(file, { ...OPTIONS, blank: ['Orders!?'] })).toMatchObject({
      kind: 'refused',
      sentence: expect.stringContaining('neither a column'),
    });
  });
});

test('filters of a table forget, addresses that look like a blanked number stay', () => {
  const table = `${HEAD}<table xmlns="${MAIN}" id="1" name="T" displayName="T" ref="A1:B1034567"><autoFilter ref="A1:B1034567"><filterColumn colId="0"><filters><filter val="Marit Solum"/></filters></filterColumn></autoFilter><tableColumns count="2"><tableColumn id="1" name="Who" totalsRowLabel="Marit Solum"/><tableColumn id="2" name="Fish"/></tableColumns></table>`;
  const file = simpleBook({
    sheets: {
      Orders: worksheet(
        {
          A1: { v: 'Who' },
          B1: { v: 'Fish' },
          A2: { v: 'Marit Solum' },
          A3: { v: 1034567 },
          A4: { v: 'Who' },
          C1: { v: 11034567 },
          C2: { v: 1034567 },
          C3: { v: 10345678 },
        },
        '<conditionalFormatting sqref="B2:B1034567"><cfRule type="expression" dxfId="0" ' +
          'priority="1"><formula>B1034567&gt;1</formula></cfRule></conditionalFormatting><tableParts ' +
          'count="1"><tablePart r:id="rId1"/></tableParts>',
      ),
    },
    extra: {
      'xl/worksheets/_rels/sheet1.xml.rels': relations([['rId1', 'table', '../tables/table1.xml']]),
      'xl/tables/table1.xml': table,
    },
  });
  const { parts, report } = made(file, { blank: ['Orders!A'] });
  expect(parts['xl/tables/table1.xml']).toContain(
    '<autoFilter ref="A1:B1034567"></autoFilter><tableColumns count="2"><tableColumn ' +
      'id="1" name="Who" totalsRowLabel="Marit Solum"/>',
  );
  expect(report.proof?.places).toEqual(['Orders!A1', 'Orders!C2', 'table1.xml']);
  expect(parts['xl/worksheets/sheet1.xml']).toContain('<formula>B1034567&gt;1</formula>');
  expect(parts['xl/worksheets/sheet1.xml']).toContain('<c r="A1" t="str"><v>Who</v></c>');
  expect(parts['xl/worksheets/sheet1.xml']).toContain('<v>10345678</v>');
});

describe('chosen sheets', () => {
  const { parts, report } = made(buyers(), { sheets: ['Sums'] });

  test('the other sheets are gone with all they held', () => {
    expect(Object.keys(parts).filter((name) => /sheet1|drawing|chart|comments|pivot/.test(name))).toEqual([]);
    for (const word of ['Jon Berge', 'Ola Fjelde', '911 22 333', 'Telephone', 'evening'])
      expect([word, holds(parts, word)]).toEqual([word, word === 'Ola Fjelde' ? ['docProps/core.xml'] : []]);
    expect(parts['docProps/app.xml']).not.toContain('Orders');
    expect(report.removed).toContain('One sheet is left out.');
    expect(holds(parts, 'Orders').filter((name) => name !== 'xl/styles.xml')).toEqual(['docProps/core.xml']);
  });

  test('what is worked out from them goes, but for sums over three or more; names are counted anew', () => {
    expect(parts['xl/worksheets/sheet2.xml']).toContain('<c r="A1"><v>2005</v></c>');
    expect(parts['xl/worksheets/sheet2.xml']).toContain('<c r="A3"/>');
    expect(report.removed).toContain('Sums!A2:A3: worked out from what is left out.');
    // Typed or named outside what is left out: they are named, not taken.
    expect(report.proof?.places).toEqual(['Sums!B2', 'workbook.xml', 'core.xml']);
    expect(parts['xl/workbook.xml']).toContain('<definedName name="_xlnm.Print_Area" localSheetId="0">');
    expect(parts['xl/workbook.xml']).not.toContain('fishTotal');
  });

  test('results stay as values when that is asked for, and the search names where they tell', () => {
    const kept = made(buyers(), { sheets: ['Sums'], keepResults: true });
    expect(kept.parts['xl/worksheets/sheet2.xml']).toContain('<c r="A3"><v>2005</v></c>');
    expect(kept.parts['xl/worksheets/sheet2.xml']).not.toContain('<f>');
    expect(kept.report.proof?.places).toEqual(expect.arrayContaining(['Sums!A1', 'Sums!A3']));
  });

  test('a number typed beside them that equals one of theirs is named by its place', () => {
    const file = simpleBook({
      sheets: {
        Prices: worksheet({ A1: { v: 4817.25 }, A2: { v: 731.5 }, A3: { v: 12 } }),
        Show: worksheet({
          A1: { v: 1 },
          A2: { v: 731.5 },
          A3: { f: 'Prices!A1*B3', v: 9634.5 },
          B3: { v: 2 },
          A4: { f: 'IF(B3>1,4817.25,0)', v: 4817.25 },
          A5: { f: 'SUM(Prices!A1:A3)', v: 5560.75 },
          A6: { f: 'SUM(Prices!A1:A2)', v: 5548.75 },
        }),
      },
    });
    const { parts: show, report: said, bytes } = made(file, { sheets: ['Show'] });
    const text = show['xl/worksheets/sheet2.xml'] ?? '';
    expect(text).toContain('<c r="A3"/>');
    expect(text).toContain('<c r="A5"><v>5560.75</v></c>');
    expect(text).toContain('<c r="A6"/>');
    expect(said.proof).toMatchObject({
      values: 2,
      short: 1,
      places: ['Show!A2', 'Show!A4'],
    });
    expect(freeze(bytes, { ...OPTIONS, sheets: ['Show'] }).kind).toBe('unchanged');
  });

  test('a chart that drew from them forgets what it drew, or keeps it inside when results stay', () => {
    const file = simpleBook({
      sheets: {
        Data: worksheet({ A1: { v: 'Fry' }, A2: { v: 11 }, A3: { v: 22 } }),
        Show: worksheet({ A1: { v: 1 } }, '<drawing r:id="rId1"/>'),
      },
      extra: {
        'xl/worksheets/_rels/sheet2.xml.rels': relations([['rId1', 'drawing', '../drawings/drawing1.xml']]),
        'xl/drawings/drawing1.xml': `${HEAD}<xdr:wsDr xmlns:xdr="x"/>`,
        'xl/drawings/_rels/drawing1.xml.rels': relations([['rId1', 'chart', '../charts/chart1.xml']]),
        'xl/charts/chart1.xml': `${HEAD}<c:chartSpace xmlns:c="${C}"><c:ser><c:tx><c:strRef><c:f>Data!$A$1</c:f><c:strCache><c:ptCount val="1"/><c:pt idx="0"><c:v>Fry</c:v></c:pt></c:strCache></c:strRef></c:tx><c:val><c:numRef><c:f>Data!$A$2:$A$3</c:f><c:numCache><c:ptCount val="2"/><c:pt idx="0"><c:v>11</c:v></c:pt></c:numCache></c:numRef></c:val></c:ser></c:chartSpace>`,
      },
    });
    expect(made(file, { sheets: ['Show'] }).parts['xl/charts/chart1.xml']).toBe(
      `${HEAD}<c:chartSpace xmlns:c="${C}"><c:ser><c:val><c:numLit><c:ptCount val="2"/></c:numLit></c:val></c:ser></c:chartSpace>`,
    );
    expect(made(file, { sheets: ['Show'], keepResults: true }).parts['xl/charts/chart1.xml']).toBe(
      `${HEAD}<c:chartSpace xmlns:c="${C}"><c:ser><c:tx><c:v>Fry</c:v></c:tx><c:val><c:numLit><c:ptCount val="2"/><c:pt idx="0"><c:v>11</c:v></c:pt></c:numLit></c:val></c:ser></c:chartSpace>`,
    );
  });

  test('sparklines and links that lead to them go, with the groups they leave empty', () => {
    const group = (from: string): string =>
      `<x14:sparklineGroup><x14:colorSeries rgb="FF000000"/><x14:sparklines><x14:sparkline><xm:f>${from}</xm:f><xm:sqref>B1</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup>`;
    const extension = (groups: string): string =>
      `<extLst><ext uri="{05C60535-1F16-4fd2-B633-F4F36F0B64E0}"><x14:sparklineGroups>${groups}</x14:sparklineGroups></ext></extLst>`;
    const links =
      '<hyperlinks><hyperlink ref="A1" location="Data!A1"/><hyperlink ref="A2" ' +
      'location="Show!A1"/></hyperlinks>';
    const sheet = (groups: string): Uint8Array =>
      simpleBook({
        sheets: {
          Data: worksheet({ A1: { v: 1 } }),
          Show: worksheet({ A1: { v: 1 }, A2: { v: 2 } }, links + extension(groups)),
        },
      });
    const one =
      made(sheet(group('Data!A1:A3') + group('Show!A1:A2')), { sheets: ['Show'] }).parts[
        'xl/worksheets/sheet2.xml'
      ] ?? '';
    expect(one).toContain(
      `<hyperlinks><hyperlink ref="A2" location="Show!A1"/></hyperlinks>${extension(group('Show!A1:A2'))}</worksheet>`,
    );
    const none =
      made(sheet(group('Data!A1:A3')), { sheets: ['Show'] }).parts['xl/worksheets/sheet2.xml'] ?? '';
    expect(none).toContain('</hyperlinks></worksheet>');
  });

  test('a sheet kept with its pivot table keeps it, a wish for an unknown sheet is refused', () => {
    const kept = made(season(), { sheets: ['Log'] }).parts;
    expect(
      Object.keys(kept).filter(
        (name) => /sheet1\.xml|calcChain|drawing|table1/i.test(name) && !/pivot/.test(name),
      ),
    ).toEqual([]);
    expect(kept['xl/pivotTables/pivotTable1.xml']).toBeDefined();
    expect(freeze(season(), { ...OPTIONS, sheets: ['Nowhere'] })).toMatchObject({
      kind: 'refused',
      sentence: expect.stringContaining('There is no sheet "Nowhere"'),
    });
  });
});

describe('personal data', () => {
  const { parts, report, bytes } = made(season(), { personal: true });

  test('authors, paths, companies and printers are in no part', () => {
    for (const word of ['Runa Holt', 'C:\\Users\\runa', 'Holt &amp; Sons', 'Holt'])
      expect([word, holds(parts, word)]).toEqual([word, []]);
    expect(parts['xl/comments1.xml']).toContain('probe read after a minute');
    expect(Object.keys(parts).filter((name) => /printer/i.test(name))).toEqual([]);
    expect(parts['xl/worksheets/sheet1.xml']).toContain('<pageSetup orientation="landscape"/>');
    expect(report.removed.join('\n')).toMatch(
      /Author[^]*Manager[^]*folder[^]*wrote notes[^]*refreshed pivot[^]*printer/,
    );
    expect(report.left).toEqual([
      '1 picture: look whether they show people, and remember that photographs may hold the place and time.',
      expect.stringContaining('says nothing of any person'),
    ]);
  });

  test('without the wish they stay and are listed as left', () => {
    expect(made(season(), {}).report.left.join('\n')).toMatch(
      /picture[^]*author[^]*Notes[^]*folder[^]*printer/,
    );
  });

  test('doing it again changes nothing', () => {
    expect(freeze(bytes, { ...OPTIONS, personal: true }).kind).toBe('unchanged');
  });

  test('own properties go, a sensitivity label stays and is named', () => {
    const copy = made(buyers(), { personal: true });
    expect(copy.parts['docProps/custom.xml']).toContain('MSIP_Label_1_Name');
    expect(holds(copy.parts, 'Kaja Lund')).toEqual([]);
    expect(copy.report.left.join('\n')).toContain('sensitivity label');
  });
});
