import { strFromU8, unzipSync } from 'fflate';
import { freeze } from '../../../shared/catalogue/sharing';
import { wordless } from '../../../shared/files/share/leaveOut/personal';
import { isAddress } from '../../../shared/files/share/proof/addresses';
import { HEAD, MAIN, OPTIONS, relations, simpleBook, worksheet } from './support/parts';

/** An invented person in every place of a file, in parts named as other writers name them; searched without our code. */

const A = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const THREADS = 'http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments';
const WORDS = ['Kaja', 'Hestmo', 'kaja', 'hestmo.example', 'Users'];

function book(): Uint8Array {
  const text = '@Hestmo, Kaja please look, and @Kaja Hestmo too';
  return simpleBook({
    sheets: {
      Plan: worksheet(
        { A1: { v: 1 }, A2: { f: '_xldudf_SPAWN_AMMONIA_SHARE(8,25)', v: 0.05 } },
        '<scenarios><scenario name="wet" user="Kaja Hestmo" comment="Created by Kaja Hestmo"><inputCells r="A1" val="2"/></scenario></scenarios>' +
          '<hyperlinks><hyperlink ref="A1" r:id="rId5" display="kaja@hestmo.example"/><hyperlink ref="A2" r:id="rId6"/></hyperlinks>' +
          '<pageSetup r:id="rId7"/><headerFooter><oddHeader>&amp;L&amp;8Kaja Hestmo&amp;RPage &amp;P of &amp;N</oddHeader>' +
          '<oddFooter>&amp;CC:\\Users\\kaja\\plan.xlsx</oddFooter></headerFooter><drawing r:id="rId1"/>',
        '<!-- made by Kaja Hestmo -->',
      ),
    },
    before: '<fileSharing userName="Kaja Hestmo"/>',
    after:
      '<customWorkbookViews><customWorkbookView name="Kaja Hestmo - Personal View" guid="{0}" windowWidth="1" windowHeight="1" activeSheetId="1"/></customWorkbookViews>',
    bookRelations: [
      ['rId50', 'externalLink', 'links/other.xml'],
      ['rId51', 'revisionHeaders', 'log/heads.xml'],
      ['rId52', 'http://schemas.microsoft.com/office/2017/10/relationships/person', 'who/list.xml'],
    ],
    packageRelations: [
      [
        'rId3',
        'http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties',
        'package/meta.psmdcp.xml',
      ],
    ],
    extra: {
      'package/meta.psmdcp.xml': `${HEAD}<cp:coreProperties xmlns:cp="c" xmlns:dc="d"><dc:creator>Kaja Hestmo</dc:creator><dc:title>Plan of Kaja</dc:title></cp:coreProperties>`,
      'xl/worksheets/_rels/sheet1.xml.rels': relations([
        ['rId1', 'drawing', '../art/first.xml'],
        ['rId2', 'comments', '../words/n1.xml'],
        [
          'rId3',
          'http://schemas.microsoft.com/office/2017/10/relationships/threadedComment',
          '../words/t1.xml',
        ],
        ['rId5', 'hyperlink', 'mailto:kaja@hestmo.example', true],
        ['rId6', 'hyperlink', 'file:///C:/Users/kaja/list.xlsx', true],
        ['rId7', 'printerSettings', '../other/p1.bin'],
      ]),
      'xl/art/first.xml': `${HEAD}<xdr:wsDr xmlns:xdr="x" xmlns:a="${A}"><xdr:pic><xdr:nvPicPr><xdr:cNvPr id="2" name="Picture 1" descr="Kaja at the pond" title="Hestmo"/></xdr:nvPicPr></xdr:pic></xdr:wsDr>`,
      'xl/words/n1.xml': `${HEAD}<comments xmlns="${MAIN}"><authors><author>Kaja Hestmo</author></authors><commentList><comment ref="A1" authorId="0"><text><r><t>Kaja Hestmo:</t></r><r><t>\nthe probe reads low</t></r></text></comment><comment ref="A2" authorId="0"><text><t>Comment: ${text}</t></text></comment></commentList></comments>`,
      'xl/words/t1.xml': `${HEAD}<ThreadedComments xmlns="${THREADS}"><threadedComment ref="A2" dT="2026-01-01" personId="{1}" id="{2}"><text>${text}</text><mentions><mention mentionpersonId="{1}" mentionId="{3}" startIndex="0" length="13"/><mention mentionpersonId="{1}" mentionId="{4}" startIndex="31" length="12"/></mentions></threadedComment></ThreadedComments>`,
      'xl/who/list.xml': `${HEAD}<personList xmlns="${THREADS}"><person displayName="Kaja Hestmo" id="{1}" userId="kaja@hestmo.example" providerId="AD"/></personList>`,
      'xl/links/other.xml': `${HEAD}<externalLink xmlns="${MAIN}"/>`,
      'xl/links/_rels/other.xml.rels': relations([
        ['rId1', 'externalLinkPath', 'file:///C:/Users/kaja/prices.xlsx', true],
      ]),
      'xl/log/heads.xml': `${HEAD}<headers xmlns="${MAIN}"><header userName="Kaja Hestmo"/></headers>`,
      'xl/other/p1.bin': 'printer of Kaja Hestmo',
      'xl/left/behind.xml': `${HEAD}<a>Kaja Hestmo</a>`,
    },
  });
}

const holds = (file: Uint8Array, word: string): string[] =>
  Object.entries(unzipSync(file))
    .filter(([, bytes]) => {
      const text = strFromU8(bytes);
      return text.includes(word) || text.replace(/<[^>]*>/g, '').includes(word);
    })
    .map(([name]) => name);

const result = freeze(book(), { ...OPTIONS, personal: true });

test.each(WORDS)('%s is in no part of the copy', (word) => {
  expect(holds(book(), word).length).toBeGreaterThan(0);
  if (result.kind !== 'made') throw new Error(result.sentence);
  expect(holds(result.bytes, word)).toEqual([]);
});

test('what is no name stays, and the copy says that it holds nobody', () => {
  if (result.kind !== 'made') throw new Error(result.sentence);
  const parts = unzipSync(result.bytes);
  const text = (name: string): string => strFromU8(parts[name] ?? new Uint8Array());
  expect(text('xl/words/n1.xml')).toContain('the probe reads low');
  expect(text('xl/words/t1.xml')).toContain('<text>@ please look, and @ too</text>');
  expect(text('xl/worksheets/sheet1.xml')).toContain(
    '<oddHeader>&amp;L&amp;8 &amp;RPage &amp;P of &amp;N</oddHeader>',
  );
  expect(text('xl/links/_rels/other.xml.rels')).toContain('Target="prices.xlsx"');
  expect(result.report.left.join('\n')).toMatch(/other workbooks[^]*says nothing of any person/);
  expect(freeze(result.bytes, { ...OPTIONS, personal: true }).kind).toBe('unchanged');
});

/** The page as any unzipper sees it: its texts from the heading on people to the end. */
function pageOnPeople(file: Uint8Array): string {
  const pages = Object.values(unzipSync(file))
    .map((bytes) => strFromU8(bytes))
    .filter((text) => text.includes('Where the numbers in this copy come from'));
  expect(pages).toHaveLength(1);
  return (pages[0] ?? '').replace(/<[^>]*>/g, '\n').split('What this copy may still tell of people')[1] ?? '';
}

test('the page of the copy says so to its reader', () => {
  if (result.kind !== 'made') throw new Error(result.sentence);
  expect(pageOnPeople(result.bytes)).toMatch(/1 link to other workbooks[^]*says nothing of any person/);
  const plain = freeze(book(), OPTIONS);
  if (plain.kind !== 'made') throw new Error(plain.sentence);
  for (const sentence of plain.report.left) expect(pageOnPeople(plain.bytes)).toContain(sentence);
  expect(pageOnPeople(plain.bytes)).not.toContain('says nothing of any person');
});

test('a copy that only loses personal data has a page too', () => {
  const file = simpleBook({
    sheets: { Plan: worksheet({ A1: { v: 1 } }) },
    before: '<fileSharing userName="Kaja Hestmo"/>',
  });
  const copy = freeze(file, { ...OPTIONS, personal: true });
  if (copy.kind !== 'made') throw new Error(copy.sentence);
  expect(holds(copy.bytes, 'Kaja')).toEqual([]);
  expect(pageOnPeople(copy.bytes)).toContain('says nothing of any person');
  expect(freeze(copy.bytes, { ...OPTIONS, personal: true }).kind).toBe('unchanged');
});

test('unasked, they stay and each is named', () => {
  const plain = freeze(book(), OPTIONS);
  if (plain.kind !== 'made') throw new Error(plain.sentence);
  expect(plain.report.left.join('\n')).toMatch(
    /author[^]*comments[^]*folder[^]*printer[^]*Links to people[^]*views[^]*record of changes[^]*headers and footers/,
  );
});

test.each([
  ['&L&"Arial,Bold"&8Kaja&C&D&RPage &P of &N', '&L&"Arial,Bold"&8&C&D&RPage &P of &N'],
  ['&CTom && Ann', '&C  '],
  ['&K00-024x&F', '&K00-024&F'],
])('of %s the fields stay', (text, left) => {
  expect(wordless(text)).toBe(left);
});

describe('addresses typed into cells', () => {
  test.each([
    ['mailto:kaja@hestmo.example', true],
    ['write to kaja.lund@hestmo.example', true],
    ['tel:+47 00 00', true],
    ['C:\\Users\\kaja\\plan.xlsx', true],
    ['\\\\server\\kaja', true],
    ['file:///tmp/plan', true],
    ['/home/kaja/plan', true],
    ['two @ three a piece', false],
    ['@ noon', false],
    ['https://example.org/page', false],
    ['ratio 1:2, B2: eggs', false],
    ['Vat A/B', false],
  ])('“%s”: %s', (text, is) => {
    expect(isAddress(text)).toBe(is);
  });

  const asked = { ...OPTIONS, personal: true };
  const sheetOf = (n: number): string =>
    worksheet(
      Object.fromEntries(
        Array.from({ length: n }, (_, i) => [`B${i + 1}`, { t: 'str', v: `mailto:kaja${i}@hestmo.example` }]),
      ),
    );
  const left = (file: Uint8Array, options = asked): string => {
    const copy = freeze(file, options);
    if (copy.kind !== 'made') throw new Error(copy.sentence);
    return copy.report.left.join('\n');
  };
  const before = '<fileSharing userName="Kaja Hestmo"/>';

  test.each([
    [
      1,
      'One text in cells looks like the address of a person or a folder: Plan!B1. What was typed stays; look whether it may go.',
    ],
    [2, '2 texts in cells look like the address of a person or a folder: Plan!B1; Plan!B2. What'],
    [8, 'Plan!B5; Plan!B6 and 2 more. What'],
  ])('%d of them stay as they were typed, and are named by their places', (n, sentence) => {
    expect(left(simpleBook({ sheets: { Plan: sheetOf(n) }, before }))).toContain(sentence);
  });
  test('none, or nobody asked: nothing is said', () => {
    expect(left(simpleBook({ sheets: { Plan: worksheet({ A1: { v: 1 } }) }, before }))).not.toContain(
      'address',
    );
  });
});
