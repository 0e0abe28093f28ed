import { claimFaults } from '../../../src/build/checks/claims';

const FIGURES = {
  'water.high': { text: '0.4 %', what: 'vats that end above the limit', test: 'tests/a.test.ts' },
};

test('a number between the marks of its figure, in code or in a name is no claim without ground', () => {
  const text = [
    'Of vats <!-- fig:water.high -->0.4 %<!-- /fig --> end too high. Needs Node 20 or newer, prints on A4.',
    '`=SPAWN.BUFFER.AIRED(1000, 4.6)` and [a page](https://example.org/1).',
    '```\nnpm run calc -- 12\n```',
    '<!-- bench:start -->\n| 12 |\n<!-- bench:end -->',
  ].join('\n');
  expect(claimFaults('README.md', text, FIGURES)).toEqual([]);
});

test('a bare number, a figure that moved and one that nobody measures are faults', () => {
  expect(claimFaults('README.md', 'It finds 85 % of faults.', FIGURES)).toEqual([
    expect.stringContaining('claims 85'),
  ]);
  expect(claimFaults('README.md', '<!-- fig:water.high -->0.3 %<!-- /fig -->', FIGURES)).toEqual([
    expect.stringContaining('measured "0.4 %"'),
  ]);
  expect(claimFaults('README.md', '<!-- fig:none -->1<!-- /fig -->', FIGURES)).toEqual([
    expect.stringContaining('which no test writes'),
  ]);
});
