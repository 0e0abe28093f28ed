/**
 * Stocking trials with African catfish, figures of their abstracts, transcribed by the project:
 * YONG08 – Yong-Sulem S. et al. 2008. Tropicultura 26(1):39-42: at most 480 eggs per litre of standing water.
 * MAKERERE – dissertation: 50 per L 88.0 % alive after 28 days, growth 12.5 %/d; 150 per L 64.0 % and 11.1
 * %/d. GRAAF95 – de Graaf G.J. et al. 1995. Aquaculture Research 26(4):233-242: 100 larvae per m², 40 days:
 * 32.3 per m² fenced, 5.0 open.
 */
import { STOCKING_STUDIES } from '../../../shared/families/growth/kernels/stockingDensity';
import { call, number } from '../../support/call';
import { rowsOf } from '../../support/sheet';

const trial = (source: string, density: number, stage = ''): (typeof STOCKING_STUDIES)[number] | undefined =>
  STOCKING_STUDIES.find(
    (row) => row.source === source && row.density === density && row.stage.includes(stage),
  );

test.each([
  ['MAKERERE', 50, '', '88.0', '12.5'],
  ['MAKERERE', 150, '', '64.0', '11.1'],
])('%s at %d per litre', (source, density, stage, alive, growth) => {
  const row = trial(source, density, stage);
  expect((row?.survival ?? NaN) * 100).toAgreeWithPrinted(alive);
  expect(row?.note).toContain(`${growth} %/d`);
});

test.each([
  ['fenced', '32.3'],
  ['open', '5.0'],
])('100 larvae per m² in %s ponds', (kind, left) => {
  expect((trial('GRAAF95', 100, kind)?.survival ?? NaN) * 100).toAgreeWithPrinted(left);
  expect(number('SURVIVAL.AFTER', 100, Number(left) / 100, 1)).toAgreeWithPrinted(left);
});

test('480 eggs per litre is the limit, and one more egg is above it', () => {
  expect(call('STOCKING.NUMBER', 'eggs', 1)).toBe(480);
  expect(rowsOf('STOCKING.CHECK', 480, 'eggs', 1)[0]?.[3]).toContain('Within');
  expect(rowsOf('STOCKING.CHECK', 481, 'eggs', 1)[0]?.[3]).toContain('Above');
});
