import { readFileSync } from 'node:fs';
import { lintManifest } from '../../../src/build/manifest/manifestLint';
import { fr } from '../../../taskpane/words/fr';
import { assetSize } from '../../../src/build/icons/pngSize';

const manifest = readFileSync('manifest.xml', 'utf8');
const lint = (text: string): string[] => lintManifest(text, assetSize);

test('the manifest keeps every rule', () => {
  expect(lint(manifest)).toEqual([]);
});

test('in French every label and tip has its text, and places are called what the pane calls them', () => {
  const texts = [...manifest.matchAll(/<bt:String id="([\w.]+)" DefaultValue="([^"]*)"(\/?)>/g)];
  const without = texts.filter(([, , , end]) => end === '/').map(([, id]) => id);
  expect(without).toEqual(['Functions.Namespace']);
  const french = new Map(
    [
      ...manifest.matchAll(
        /id="([\w.]+)" DefaultValue="[^"]*">\s*<bt:Override Locale="fr-FR" Value="([^"]*)"/g,
      ),
    ].map(([, id = '', text = '']) => [id, text]),
  );
  for (const place of ['today', 'plan', 'vat', 'why'] as const) {
    const id = `${place[0]?.toUpperCase() ?? ''}${place.slice(1)}.Label`;
    expect([id, french.get(id)]).toEqual([id, fr.places[place]]);
  }
});

test('each environment may live under its own path', () => {
  expect(lint(manifest.replaceAll('https://localhost:3000', 'https://example.org/a/b'))).toEqual([]);
});

/** One mistake each, and a word of the sentence it must cause. */
const swap =
  (from: string | RegExp, to: string) =>
  (text: string): string => {
    const changed = text.replace(from, to);
    if (changed === text) throw new Error('the mistake was not made');
    return changed;
  };
const block = (name: string): RegExp => new RegExp(`<${name}[ >][\\s\\S]*?</${name}>`);
const moved =
  (name: string, before: string) =>
  (text: string): string => {
    const found = block(name).exec(text)?.[0] ?? '';
    return swap(before, `${found}\n${before}`)(swap(found, '')(text));
  };

test.each<readonly [string, (text: string) => string, string]>([
  [
    'a label too long in another language',
    swap('Value="Au bac"', `Value="${'a'.repeat(126)}"`),
    'must have 1 to 125 characters, has 126',
  ],
  ['not XML', swap('</Hosts>', '</Host>'), 'not well-formed'],
  ['a comment with two hyphens', swap('<!-- One', '<!-- One -- two'), 'not well-formed'],
  ['an attribute given twice', swap('lifetime="long"', 'lifetime="long" lifetime="long"'), 'not well-formed'],
  [
    'a command the pane does not know',
    swap('<FunctionName>showWhy', '<FunctionName>showHow'),
    'none the pane knows',
  ],
  ['another kind of add-in', swap('xsi:type="TaskPaneApp"', 'xsi:type="ContentApp"'), 'outermost'],
  ['no version', swap(/<Version>.*<\/Version>/, ''), '<Version> is missing'],
  ['requirements before hosts', moved('Requirements', '<Hosts>\n    <Host Name'), 'too late'],
  ['runtimes after the form factors', moved('AllFormFactors', '<Runtimes>'), 'too late'],
  ['namespace before metadata', moved('Metadata', '<Script>'), 'too late'],
  [
    'an element from nowhere',
    swap('<ProviderName>', '<Nonsense/><ProviderName>'),
    '<Nonsense> does not belong',
  ],
  ['an id that is no GUID', swap(/<Id>.*<\/Id>/, '<Id>spawnbook</Id>'), 'not a GUID'],
  [
    'an id in capitals',
    (text) =>
      text.replace(
        /<Id>(.*)<\/Id>/,
        (_all, id: string) => `<Id>${id.toUpperCase().replace(/[0-9]/g, 'A')}</Id>`,
      ),
    'not a GUID',
  ],
  [
    'a version with letters',
    swap(/<Version>.*<\/Version>/, '<Version>1.0-beta</Version>'),
    'not three or four numbers',
  ],
  [
    'a version with a leading zero',
    swap(/<Version>.*<\/Version>/, '<Version>1.00.1</Version>'),
    'not three or four numbers',
  ],
  [
    'a reference to nothing',
    swap('<Label resid="Group.Label"/>', '<Label resid="Nowhere"/>'),
    'points at nothing',
  ],
  [
    'a reference into the wrong list',
    swap('<Description resid="Button.Tip"/>', '<Description resid="Button.Label"/>'),
    'not bt:LongStrings',
  ],
  [
    'a resource nobody uses',
    swap('<Label resid="Group.Label"/>', '<Label resid="Button.Label"/>'),
    '"Group.Label" is used nowhere',
  ],
  [
    'a resource given twice',
    swap('<bt:String id="Group.Label"', '<bt:String id="Button.Label"'),
    'given twice',
  ],
  [
    'a resource id too long',
    (text) => text.replaceAll('Button.Tip', 'Button.Tip.That.Goes.On.For.Far.Too.Long'),
    '1 to 32 characters',
  ],
  [
    'a short string too long',
    swap('DefaultValue="Hatchery"', `DefaultValue="${'x'.repeat(126)}"`),
    'short string "Group.Label"',
  ],
  ['an empty short string', swap('DefaultValue="Hatchery"', 'DefaultValue=""'), 'short string "Group.Label"'],
  [
    'a long string too long',
    swap(/(id="Button.Tip" DefaultValue=")[^"]*/, `$1${'x'.repeat(251)}`),
    'long string "Button.Tip"',
  ],
  [
    'a description too long',
    swap(/<Description DefaultValue="[^"]*"/, `<Description DefaultValue="${'x'.repeat(251)}"`),
    'Description must have',
  ],
  [
    'a plain http address',
    swap('https://localhost:3000/functions.js"', 'http://localhost:3000/functions.js"'),
    'not an https address',
  ],
  [
    'addresses on two hosts',
    swap('https://localhost:3000/functions.js"', 'https://localhost:4000/functions.js"'),
    'several hosts',
  ],
  ['a runtime that ends', swap('lifetime="long"', 'lifetime="short"'), 'lifetime="long"'],
  [
    'another page for the functions',
    swap(/(<Page>\s*<SourceLocation resid=")Pane.Url/, '$1Functions.Script.Url'),
    'the functions page must carry',
  ],
  [
    'another function file',
    swap('<FunctionFile resid="Pane.Url"/>', '<FunctionFile resid="Functions.Script.Url"/>'),
    'the function file must carry',
  ],
  [
    'another page behind the button',
    swap(/(<Action xsi:type="ShowTaskpane">\s*<SourceLocation resid=")Pane.Url/, '$1Functions.Script.Url'),
    'the pane button must carry',
  ],
  [
    'a pane id',
    swap('<Action xsi:type="ShowTaskpane">', '<Action xsi:type="ShowTaskpane"><TaskpaneId>x</TaskpaneId>'),
    'no TaskpaneId',
  ],
  [
    'no shared runtime asked for',
    swap('Name="SharedRuntime" MinVersion="1.1"', 'Name="ExcelApi" MinVersion="1.1"'),
    'SharedRuntime 1.1 is missing',
  ],
  ['another namespace', swap('DefaultValue="SPAWN"', 'DefaultValue="FISH"'), 'the namespace is "FISH"'],
  ['more rights than needed', swap('ReadWriteDocument', 'ReadWriteMailbox'), 'Permissions must be'],
  ['another host', swap('<Host Name="Workbook"/>', '<Host Name="Document"/>'), 'must be Workbook'],
  ['an equivalent add-in', swap('</Resources>', '</Resources><EquivalentAddins/>'), 'under other names'],
  [
    'an icon of the wrong size',
    swap('assets/icon-32.png"/>\n  <High', 'assets/icon-48.png"/>\n  <High'),
    '48 × 48, not 32 × 32',
  ],
  [
    'an icon that is not there',
    swap(
      'id="Icon.80" DefaultValue="https://localhost:3000/assets/icon-80.png"',
      'id="Icon.80" DefaultValue="https://localhost:3000/assets/lost.png"',
    ),
    'there is no picture',
  ],
  [
    'an icon list without a needed size',
    swap(/<bt:Image size="80" resid="Icon.80"\/>/, ''),
    'lacks the size 80',
  ],
])('%s is found', (_what, breaking, sentence) => {
  expect(lint(breaking(manifest)).join('\n')).toContain(sentence);
});
