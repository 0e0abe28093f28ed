import type { CellSpec } from './parts';
import { escape, HEAD, MAIN, REL, relations, simpleParts, worksheet, zip } from './parts';

/**
 * An invented season workbook with everything a real one can hold around our calls. Values of native formulas
 * are worked out by hand below.
 */

const PH = [6.5, 7, 7.5, 8, 8.5];
const WARM = [22, 23, 24, 25, 26];
/** Stand-ins for stored answers: freezing keeps what is stored, whatever it is. */
const ANSWER = [0.00142, 0.00482, 0.0164, 0.0537, 0.161];
const SUM = ANSWER.reduce((a, b) => a + b, 0);
const call = (a: string, b: string): string => `_xldudf_SPAWN_AMMONIA_SHARE(${a},${b})`;
const at = <T>(list: readonly T[], i: number): T => list[i] as T;

const perRow = (i: number): Record<string, CellSpec> => {
  const row = i + 2;
  return {
    [`A${row}`]: { v: at(PH, i) },
    [`B${row}`]: { v: at(WARM, i) },
    [`C${row}`]: {
      f: call(`A${row}`, `B${row}`),
      how: `t="array" ref="C${row}"`,
      cm: true,
      v: at(ANSWER, i),
      s: 2,
    },
    [`D${row}`]: { f: `C${row}*100`, v: at(ANSWER, i) * 100 },
    [`E${row}`]:
      i === 0
        ? { f: call('A2:A6', 'B2:B6'), how: 't="array" ref="E2:E6"', cm: true, v: at(ANSWER, 0) }
        : { v: at(ANSWER, i) },
    [`F${row}`]:
      i === 0
        ? { f: 'SUM(_xlfn.ANCHORARRAY(E2))', v: SUM }
        : i === 1
          ? { f: 'SUM(_xlfn.ANCHORARRAY($E$2))+A3', how: 't="shared" ref="F3:F6" si="1"', v: SUM + at(PH, 1) }
          : { how: 't="shared" si="1"', v: SUM + at(PH, i) },
    [`G${row}`]:
      i === 0
        ? { f: `1-${call('A2', 'B2')}`, how: 't="shared" ref="G2:G6" si="0"', v: 1 - at(ANSWER, 0) }
        : { how: 't="shared" si="0"', v: 1 - at(ANSWER, i) },
  };
};

export const seasonCells: Record<string, CellSpec> = {
  A1: { v: 'pH' },
  B1: { v: 'Temperature' },
  C1: { v: 'Share' },
  D1: { v: 'Percent' },
  E1: { v: 'Spilled' },
  F1: { v: 'Sums' },
  G1: { v: 'Rest' },
  ...(Object.assign({}, ...PH.map((_, i) => perRow(i))) as Record<string, CellSpec>),
  D7: { f: 'SUM(C2:C6)', v: SUM },
  H2: { f: '"SPAWN.AMMONIA.SHARE("&A2&")"', v: 'SPAWN.AMMONIA.SHARE(6.5)' },
  H3: { f: `[2]!${call('A3', 'B3')}`, v: at(ANSWER, 1) },
  H4: { f: `'C:\\Tools\\FUNCRES.XLAM'!${call('A4', 'B4')}`, v: at(ANSWER, 2) },
  H5: { f: 'spawn.ammonia.share(A5,B5)', v: at(ANSWER, 3) },
  H6: { f: `IF(A6>8,${call('A6', 'B6').toLowerCase()},"low")`, v: at(ANSWER, 4) },
  I2: { f: 'ours*2', v: at(ANSWER, 0) * 2 },
  I3: { f: 'TWICE(A3)', v: at(ANSWER, 1) },
  I4: { f: 'plain+1', v: at(PH, 0) + 1 },
  I5: { f: 'SUM(whole)', v: SUM },
  K2: { f: `${call('A2', 'B2')}>1`, v: false },
  K3: { f: '_xldudf_SPAWN_AMMONIA_SHARE("x",B3)', v: '#VALUE!', t: 'e', vm: true },
  K4: { f: '_xldudf_SPAWN_LABEL_TEXT(A4)', v: 'acid & "soft" <water>' },
  K5: { f: '_xldudf_SPAWN_LABEL_TEXT(A5)', v: '' },
  K6: { f: `_xlfn.MAP(A2,_xldudf_SPAWN_AMMONIA_SHARE)`, v: at(ANSWER, 0) },
  // A what-if table over B2: the formula stands in N2.
  N2: { f: call('A2', 'B2'), v: at(ANSWER, 0) },
  M3: { v: 20 },
  M4: { v: 30 },
  N3: { how: 't="dataTable" ref="N3:N4" dt2D="0" dtr="0" r1="B2"', v: 0.0012 },
  N4: { v: 0.0025 },
  A9: { v: 'Batch' },
  B9: { v: 'Share' },
  A10: { v: 1 },
  A11: { v: 2 },
  A12: { v: 'Total' },
  B10: {
    f: '_xldudf_SPAWN_AMMONIA_SHARE(8,Batches[[#This Row],[Batch]]+20)',
    how: 't="array" ref="B10"',
    cm: true,
    v: 0.0411,
  },
  B11: {
    f: '_xldudf_SPAWN_AMMONIA_SHARE(8,Batches[[#This Row],[Batch]]+20)',
    how: 't="array" ref="B11"',
    cm: true,
    v: 0.0441,
  },
  B12: { f: 'SUBTOTAL(109,Batches[Share])+_xldudf_SPAWN_LABEL_TEXT(1)', v: 0.0852 },
  C9: { v: 46095.5, s: 1 },
  C10: { f: '_xldudf_SPAWN_STRIP_TIME(C9,24)', v: 46096.041666666664, s: 1 },
};

const X14_URI = '{78C0D931-6437-407d-A8EE-F0AAD7539E65}';
const afterCells =
  `<conditionalFormatting sqref="C2:C6"><cfRule type="expression" dxfId="0" priority="1"><formula>_xldudf_SPAWN_AMMONIA_SHARE(A2,B2)&gt;0.05</formula></cfRule></conditionalFormatting>` +
  ('<conditionalFormatting sqref="D2:D6"><cfRule type="expression" dxfId="0" ' +
    'priority="2"><formula>D2&gt;SUM(_xlfn.ANCHORARRAY($E$2))</formula></cfRule><cfRule ' +
    'type="dataBar" priority="3"><dataBar><cfvo type="min"/><cfvo type="max"/><color ' +
    'rgb="FF638EC6"/></dataBar><extLst><ext ' +
    'uri="{B025F937-C7B1-47D3-B67F-A62EFF666E3E}"><x14:id>{AAAAAAAA-0000-0000-0000-000000000001}</x14:id></ext></extLst></cfRule></conditionalFormatting>') +
  ('<dataValidations count="3"><dataValidation type="list" ' +
    'sqref="A2:A6"><formula1>_xlfn.ANCHORARRAY($E$2)</formula1></dataValidation><dataValidation ' +
    'type="custom" ' +
    'sqref="B2"><formula1>spawn.ammonia.share(A2,B2)&lt;1</formula1></dataValidation><dataValidation ' +
    'type="decimal" ' +
    'sqref="B3"><formula1>0</formula1><formula2>40</formula2></dataValidation></dataValidations>') +
  ('<hyperlinks><hyperlink ref="A1" r:id="rId8"/></hyperlinks><pageSetup ' +
    'orientation="landscape" r:id="rId5"/><drawing r:id="rId1"/><legacyDrawing ' +
    'r:id="rId3"/><tableParts count="1"><tablePart r:id="rId2"/></tableParts>') +
  `<extLst><ext uri="${X14_URI}"><x14:conditionalFormattings><x14:conditionalFormatting><x14:cfRule type="dataBar" id="{AAAAAAAA-0000-0000-0000-000000000001}"><x14:dataBar><x14:cfvo type="autoMin"/><x14:cfvo type="autoMax"/></x14:dataBar></x14:cfRule><xm:sqref>D2:D6</xm:sqref></x14:conditionalFormatting>` +
  ('<x14:conditionalFormatting><x14:cfRule type="expression" priority="9" ' +
    'id="{AAAAAAAA-0000-0000-0000-000000000002}"><xm:f>_xldudf_SPAWN_AMMONIA_SHARE(A2,B2)&gt;1</xm:f></x14:cfRule><xm:sqref>E2:E6</xm:sqref></x14:conditionalFormatting></x14:conditionalFormattings></ext></extLst>');

/** The smallest picture: one grey dot. */
export const DOT = Uint8Array.from(
  atob('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg=='),
  (letter) => letter.charCodeAt(0),
);

const C = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const A = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const XDR = 'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing';
export const chart = `${HEAD}<c:chartSpace xmlns:c="${C}" xmlns:a="${A}"><c:chart><c:plotArea><c:lineChart><c:grouping val="standard"/><c:ser><c:idx val="0"/><c:order val="0"/><c:tx><c:strRef><c:f>Season!$C$1</c:f><c:strCache><c:ptCount val="1"/><c:pt idx="0"><c:v>Share</c:v></c:pt></c:strCache></c:strRef></c:tx><c:cat><c:numRef><c:f>Season!$A$2:$A$6</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="5"/>${PH.map((v, i) => `<c:pt idx="${i}"><c:v>${v}</c:v></c:pt>`).join('')}</c:numCache></c:numRef></c:cat><c:val><c:numRef><c:f>Season!$C$2:$C$6</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="5"/>${ANSWER.map((v, i) => `<c:pt idx="${i}"><c:v>${v}</c:v></c:pt>`).join('')}</c:numCache></c:numRef></c:val></c:ser><c:axId val="1"/><c:axId val="2"/></c:lineChart><c:catAx><c:axId val="1"/><c:scaling/><c:delete val="0"/><c:axPos val="b"/><c:crossAx val="2"/></c:catAx><c:valAx><c:axId val="2"/><c:scaling/><c:delete val="0"/><c:axPos val="l"/><c:crossAx val="1"/></c:valAx></c:plotArea></c:chart></c:chartSpace>`;
const frame = (column: number, body: string): string =>
  `<xdr:twoCellAnchor><xdr:from><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>14</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>${column + 4}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>28</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to>${body}<xdr:clientData/></xdr:twoCellAnchor>`;
export const drawing = (withAddin: boolean): string =>
  `${HEAD}<xdr:wsDr xmlns:xdr="${XDR}" xmlns:a="${A}" xmlns:r="${REL}">` +
  frame(
    0,
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="2" name="Chart 1"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="${C}"><c:chart xmlns:c="${C}" r:id="rId1"/></a:graphicData></a:graphic></xdr:graphicFrame>`,
  ) +
  frame(
    6,
    '<xdr:pic><xdr:nvPicPr><xdr:cNvPr id="3" name="Picture ' +
      '1"/><xdr:cNvPicPr/></xdr:nvPicPr><xdr:blipFill><a:blip ' +
      'r:embed="rId2"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:prstGeom ' +
      'prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic>',
  ) +
  (withAddin
    ? frame(
        12,
        '<mc:AlternateContent ' +
          'xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"><mc:Choice ' +
          'xmlns:we="http://schemas.microsoft.com/office/webextensions/webextension/2010/11" ' +
          'Requires="we"><xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="4" ' +
          'name="Add-in 1"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off ' +
          'x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData ' +
          'uri="http://schemas.microsoft.com/office/webextensions/webextension/2010/11"><we:webextensionref ' +
          'r:id="rId3"/></a:graphicData></a:graphic></xdr:graphicFrame></mc:Choice><mc:Fallback/></mc:AlternateContent>',
      )
    : '') +
  '</xdr:wsDr>';

const table = `${HEAD}<table xmlns="${MAIN}" id="1" name="Batches" displayName="Batches" ref="A9:B12" totalsRowCount="1"><autoFilter ref="A9:B11"/><tableColumns count="2"><tableColumn id="1" name="Batch" totalsRowLabel="Total"/><tableColumn id="2" name="Share" totalsRowFunction="custom"><calculatedColumnFormula>_xldudf_SPAWN_AMMONIA_SHARE(8,Batches[[#This Row],[Batch]]+20)</calculatedColumnFormula><totalsRowFormula>SUBTOTAL(109,Batches[Share])+_xldudf_SPAWN_LABEL_TEXT(1)</totalsRowFormula></tableColumn></tableColumns><tableStyleInfo name="TableStyleMedium2" showRowStripes="1"/></table>`;
const comments = `${HEAD}<comments xmlns="${MAIN}"><authors><author>Runa Holt</author></authors><commentList><comment ref="A1" authorId="0"><text><r><rPr><b/></rPr><t>Runa Holt:</t></r><r><t xml:space="preserve">\nprobe read after a minute</t></r></text></comment></commentList></comments>`;
const vml =
  '<xml xmlns:v="urn:schemas-microsoft-com:vml" ' +
  'xmlns:o="urn:schemas-microsoft-com:office:office" ' +
  'xmlns:x="urn:schemas-microsoft-com:office:excel"><v:shapetype id="_x0000_t202" ' +
  'coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe"/><v:shape ' +
  'id="_x0000_s1025" type="#_x0000_t202" style="visibility:hidden"><x:ClientData ' +
  'ObjectType="Note"><x:Anchor>1,15,0,2,3,15,3,16</x:Anchor><x:Row>0</x:Row><x:Column>0</x:Column></x:ClientData></v:shape></xml>';
const extension =
  '<we:webextension ' +
  'xmlns:we="http://schemas.microsoft.com/office/webextensions/webextension/2010/11" ' +
  'id="{00000000-0000-0000-0000-00000000000A}"><we:reference ' +
  'id="00000000-0000-0000-0000-00000000000b" version="1.0.0.0" store="developer" ' +
  'storeType="Registry"/><we:properties><we:property name="spawnbook.columns" ' +
  'value="&quot;{\\&quot;version\\&quot;:1,\\&quot;columns\\&quot;:[{\\&quot;sheet\\&quot;:\\&quot;Secret ' +
  'pond\\&quot;,\\&quot;header\\&quot;:\\&quot;Roe\\&quot;,\\&quot;field\\&quot;:\\&quot;eggs\\&quot;}]}&quot;"/></we:properties><we:bindings/></we:webextension>';
const panes =
  '<wetp:taskpanes ' +
  'xmlns:wetp="http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11"><wetp:taskpane ' +
  'dockstate="right" visibility="1" width="350" row="4"><wetp:webextensionref ' +
  'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" ' +
  'r:id="rId1"/></wetp:taskpane></wetp:taskpanes>';
const pivotCache = `${HEAD}<pivotCacheDefinition xmlns="${MAIN}" xmlns:r="${REL}" r:id="rId1" refreshedBy="Runa Holt" refreshedDate="46095" recordCount="2"><cacheSource type="worksheet"><worksheetSource ref="A1:B3" sheet="Log"/></cacheSource><cacheFields count="2"><cacheField name="Worker"><sharedItems count="2"><s v="Tove Brandt"/><s v="Iver Sand"/></sharedItems></cacheField><cacheField name="Fish"><sharedItems containsSemiMixedTypes="0" containsString="0" containsNumber="1" containsInteger="1" minValue="100" maxValue="250"/></cacheField></cacheFields></pivotCacheDefinition>`;
const pivotRecords = `${HEAD}<pivotCacheRecords xmlns="${MAIN}" count="2"><r><x v="0"/><n v="100"/></r><r><x v="1"/><n v="250"/></r></pivotCacheRecords>`;
const pivotTable = `${HEAD}<pivotTableDefinition xmlns="${MAIN}" name="Pivot1" cacheId="1" dataOnRows="0" applyNumberFormats="0" applyBorderFormats="0" applyFontFormats="0" applyPatternFormats="0" applyAlignmentFormats="0" applyWidthHeightFormats="1" dataCaption="Values"><location ref="E1:F4" firstHeaderRow="1" firstDataRow="1" firstDataCol="1"/><pivotFields count="2"><pivotField axis="axisRow" showAll="0"><items count="3"><item x="0"/><item x="1"/><item t="default"/></items></pivotField><pivotField dataField="1" showAll="0"/></pivotFields><rowFields count="1"><field x="0"/></rowFields><rowItems count="3"><i><x/></i><i><x v="1"/></i><i t="grand"><x/></i></rowItems><colItems count="1"><i/></colItems><dataFields count="1"><dataField name="Sum of Fish" fld="1" baseField="0" baseItem="0"/></dataFields></pivotTableDefinition>`;

const sharedStrings = `${HEAD}<sst xmlns="${MAIN}" count="6" uniqueCount="6"><si><t>Worker</t></si><si><t>Fish</t></si><si><t>Tove Brandt</t></si><si><r><t>Iver </t></r><r><rPr><b/></rPr><t>Sand</t></r></si><si><t>Row Labels</t></si><si><t>Grand Total</t></si></sst>`;
const log: Record<string, CellSpec> = {
  A1: { t: 's', v: 0 },
  B1: { t: 's', v: 1 },
  A2: { t: 's', v: 2 },
  B2: { v: 100 },
  A3: { t: 's', v: 3 },
  B3: { v: 250 },
  C2: { f: 'UPPER(A2)', v: 'TOVE BRANDT' },
  C3: { f: 'COUNTA(A2:A3)', v: 2 },
  E1: { t: 's', v: 4 },
  E2: { t: 's', v: 2 },
  E3: { t: 's', v: 3 },
  E4: { t: 's', v: 5 },
  F2: { v: 100 },
  F3: { v: 250 },
  F4: { v: 350 },
};

const REL14 = 'http://schemas.microsoft.com/office/2011/relationships';
const names = `<definedNames><definedName name="inner">_xlfn.LAMBDA(_xlpm.x,_xldudf_SPAWN_AMMONIA_SHARE(_xlpm.x,25))</definedName><definedName name="Ours">_xldudf_SPAWN_AMMONIA_SHARE(Season!$A$2,Season!$B$2)</definedName><definedName name="plain">Season!$A$2</definedName><definedName name="twice">_xlfn.LAMBDA(_xlpm.x,inner(_xlpm.x))</definedName><definedName name="whole">_xlfn.ANCHORARRAY(Season!$E$2)</definedName></definedNames>`;

export function seasonParts(
  change: { readonly is1904?: boolean; readonly withAddin?: boolean } = {},
): Record<string, string | Uint8Array> {
  const { is1904 = false, withAddin = true } = change;
  return simpleParts({
    sheets: { Season: worksheet(seasonCells, afterCells, '<dimension ref="A1:N12"/>'), Log: worksheet(log) },
    before: `<workbookPr${is1904 ? ' date1904="1"' : ''}/><mc:AlternateContent xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"><mc:Choice Requires="x15"><x15ac:absPath url="C:\\Users\\runa\\Farm\\" xmlns:x15ac="http://schemas.microsoft.com/office/spreadsheetml/2010/11/ac"/></mc:Choice></mc:AlternateContent>`,
    after: `${names}<calcPr calcId="191029"/><pivotCaches><pivotCache cacheId="1" r:id="rId93"/></pivotCaches>`,
    bookRelations: [
      ['rId92', 'sharedStrings', 'sharedStrings.xml'],
      ['rId93', 'pivotCacheDefinition', 'pivotCache/pivotCacheDefinition1.xml'],
      ['rId94', 'calcChain', 'calcChain.xml'],
    ],
    packageRelations: [
      ['rId2', `${REL14}/webextensiontaskpanes`, 'xl/webextensions/taskpanes.xml'],
      [
        'rId3',
        'http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties',
        'docProps/core.xml',
      ],
      ['rId4', 'extended-properties', 'docProps/app.xml'],
      [
        'rId5',
        'http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/origin',
        '_xmlsignatures/origin.sigs',
      ],
    ],
    extra: {
      'xl/worksheets/_rels/sheet1.xml.rels': relations([
        ['rId1', 'drawing', '../drawings/drawing1.xml'],
        ['rId2', 'table', '../tables/table1.xml'],
        ['rId3', 'vmlDrawing', '../drawings/vmlDrawing1.vml'],
        ['rId4', 'comments', '../comments1.xml'],
        ['rId5', 'printerSettings', '../printerSettings/printerSettings1.bin'],
        ['rId8', 'hyperlink', 'https://example.org/ph', true],
      ]),
      'xl/worksheets/_rels/sheet2.xml.rels': relations([
        ['rId1', 'pivotTable', '../pivotTables/pivotTable1.xml'],
      ]),
      'xl/pivotTables/pivotTable1.xml': pivotTable,
      'xl/pivotTables/_rels/pivotTable1.xml.rels': relations([
        ['rId1', 'pivotCacheDefinition', '../pivotCache/pivotCacheDefinition1.xml'],
      ]),
      'xl/pivotCache/pivotCacheDefinition1.xml': pivotCache,
      'xl/pivotCache/pivotCacheRecords1.xml': pivotRecords,
      'xl/pivotCache/_rels/pivotCacheDefinition1.xml.rels': relations([
        ['rId1', 'pivotCacheRecords', 'pivotCacheRecords1.xml'],
      ]),
      'xl/sharedStrings.xml': sharedStrings,
      'xl/drawings/drawing1.xml': drawing(withAddin),
      'xl/drawings/vmlDrawing1.vml': vml,
      'xl/comments1.xml': comments,
      'xl/tables/table1.xml': table,
      'xl/drawings/_rels/drawing1.xml.rels': relations([
        ['rId1', 'chart', '../charts/chart1.xml'],
        ['rId2', 'image', '../media/image1.png'],
        ...(withAddin
          ? [['rId3', `${REL14}/webextension`, '../webextensions/webextension2.xml'] as const]
          : []),
      ]),
      'xl/charts/chart1.xml': chart,
      'xl/media/image1.png': DOT,
      'xl/printerSettings/printerSettings1.bin': Uint8Array.of(1, 2, 3, 4),
      'xl/calcChain.xml': `${HEAD}<calcChain xmlns="${MAIN}"><c r="C2" i="1"/></calcChain>`,
      'xl/webextensions/taskpanes.xml': panes,
      'xl/webextensions/_rels/taskpanes.xml.rels': relations([
        ['rId1', `${REL14}/webextension`, 'webextension1.xml'],
      ]),
      'xl/webextensions/webextension1.xml': extension,
      ...(withAddin ? { 'xl/webextensions/webextension2.xml': extension } : {}),
      '_xmlsignatures/origin.sigs': new Uint8Array(0),
      '_xmlsignatures/_rels/origin.sigs.rels': relations([
        [
          'rId1',
          'http://schemas.openxmlformats.org/package/2006/relationships/digital-signature/signature',
          'sig1.xml',
        ],
      ]),
      '_xmlsignatures/sig1.xml': '<Signature xmlns="http://www.w3.org/2000/09/xmldsig#"/>',
      'docProps/core.xml': `${HEAD}<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/"><dc:creator>Runa Holt</dc:creator><cp:lastModifiedBy>Runa Holt</cp:lastModifiedBy></cp:coreProperties>`,
      'docProps/app.xml': `${HEAD}<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties"><Application>Microsoft Excel</Application><Manager>Runa Holt</Manager><Company>Holt ${escape('&')} Sons</Company></Properties>`,
    },
  });
}

export const season = (change?: Parameters<typeof seasonParts>[0]): Uint8Array => zip(seasonParts(change));
/** Our formulas in the season workbook. */
export const SEASON_CALLS = 27;
