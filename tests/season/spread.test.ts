import { LivingPages, livingBook } from '../../shared/books/living';
import { stillWater } from '../../shared/books/living/workings/stillWater';
import type { OneRun } from '../run/support';
import { runOf } from '../run/support';

/** Fish of one batch stand in as many free vats as make them half as dense, and never in fewer than they need. */

const RUN = { product: 'fry', wanted: 30_000, females: 6, femaleWeight: 1.2, males: 6, vatLitres: 1000 };
const densest = ({ plan }: OneRun, stage: string): number =>
  Math.max(...plan.stays.filter((stay) => stay.stage === stage).map(({ perLitre }) => perLitre));
const vatsOf = ({ plan }: OneRun, stage: string): number =>
  new Set(plan.stays.filter((stay) => stay.stage === stage).map(({ vat }) => vat)).size;

const [one, eight] = [runOf({ ...RUN, vats: 1 }), runOf({ ...RUN, vats: 8 })];

test('eight free vats: larvae stand at half of what is the most (MAKERERE: 88 % alive at 50 in a litre)', () => {
  expect(densest(one, 'fry')).toBeGreaterThan(50);
  expect(densest(eight, 'fry')).toBeLessThanOrEqual(55);
  expect(vatsOf(eight, 'fry')).toBeGreaterThan(1);
  // The vats are not all taken for it.
  expect(vatsOf(eight, 'fry')).toBeLessThan(8);
});

test('two vats of one batch are never one vat and an empty one', () => {
  const two = runOf({ ...RUN, vats: 2 });
  expect(vatsOf(two, 'fry')).toBe(2);
});

test('fish nobody ordered count too: 6,000 are wanted, the females give six times as many', () => {
  const many = runOf({ ...RUN, wanted: 6000, vats: 3, vatLitres: 600, temperature: 26 });
  expect(many.plan.batches[0]?.feeding).toBeGreaterThan(12_000);
  expect(densest(many, 'fry')).toBeLessThanOrEqual(51);
});

test('a few fish in a big vat do not spread', () => {
  expect(vatsOf(runOf({ ...RUN, wanted: 2000, females: 1, vats: 8, vatLitres: 3000 }), 'fry')).toBe(1);
});

test('nothing stands in the way only where the vats ask for nothing and the orders are likely', () => {
  const said = ({ book, plan }: OneRun): string =>
    Object.values(livingBook(book, plan).sheets[0]?.cells ?? {})
      .map(({ value }) => String(value))
      .join('\n');
  const full = runOf({ ...RUN, product: 'fingerlings', wanted: 15_000, vats: 3 });
  expect(stillWater(new LivingPages(full.book, full.plan))).not.toEqual([]);
  const quiet = { ...full, plan: { ...full.plan, findings: [], verdict: 'safe' as const } };
  expect(said(quiet)).not.toContain('Nothing stands in the way');
  const small = runOf({ ...RUN, wanted: 2000, vats: 8 });
  const calm = { ...small, plan: { ...small.plan, findings: [], verdict: 'safe' as const } };
  expect(said(calm)).toContain('Nothing stands in the way');
  expect(said({ ...calm, plan: { ...calm.plan, verdict: 'unlikely' as const } })).not.toContain(
    'Nothing stands in the way',
  );
});
