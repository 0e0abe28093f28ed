import { chosenIn } from '../../../src/build/checks/chosen';
import { nearFaults, nearShare } from '../../../src/build/checks/near';

const path = 'shared/season/made.ts';
const text = `
  /** Share. */
  const ENOUGH = 0.8;
  const [FEW, MANY] = [3, 1_000];
  const WIDE = 2 * ENOUGH;
  const name = 7;
  export const isMet = (x: number, all: number): boolean => x > 0 && x < 1 && x >= 0.4 * all && all <= Math.max(FEW, 12);
`;
const files = [
  { path, text },
  { path: 'shared/season/near.ts', text: 'number: "Share that is enough"' },
];
const names = chosenIn(path, text).map((one) => one.name);

test('constants and numbers in comparisons are found, nothing and one are no choice', () => {
  expect(names).toEqual([
    'ENOUGH',
    'FEW',
    'MANY',
    'WIDE',
    '0.4 in x >= 0.4 * all',
    '12 in all <= Math.max(FEW, 12)',
  ]);
});

const [, ...owed] = names;
const debts = { 'not written yet': { [path]: owed } };
const by = 'shared/season/near.ts: Share that is enough';
test.each([
  ['a pair that held and listed reasons', { [path]: { ENOUGH: ['0.8', by] as const } }, debts, undefined],
  ['no pair', {}, debts, 'ENOUGH = 0.8 has no pair'],
  ['another value', { [path]: { ENOUGH: ['0.7', by] as const } }, debts, 'was 0.7 when its pair was tried'],
  ['a case that is gone', { [path]: { ENOUGH: ['0.8', `${by} now`] as const } }, debts, 'is gone'],
  [
    'a debt that was paid',
    { [path]: { ENOUGH: ['0.8', by] as const, FEW: ['3', by] as const } },
    debts,
    'FEW has its pair and is listed as a debt',
  ],
  [
    'a debt of a number that is gone',
    { [path]: { ENOUGH: ['0.8', by] as const } },
    { because: { [path]: [...owed, 'OLD'] } },
    'OLD is listed as a debt and is gone',
  ],
])('%s', (_what, held, list, says) => {
  const faults = nearFaults(files, held, list);
  if (says === undefined) expect(faults).toEqual([]);
  else expect(faults.join()).toContain(says);
});

test('the share is said', () => {
  expect(nearShare(files, { [path]: { ENOUGH: ['0.8', by] } })).toContain('1 of 6');
});
