/**
 * Journal of Applied Sciences and Environmental Management 14(4), 2010:31-34 (key EGGFORMALIN10, abstract):
 * formalin for 15 minutes, 50 to 250 mg/L hatched, 500, 750 and 1000 mg/L hatched none.
 */
import { grid, number, refusal } from '../../support/call';

test.each([50, 100, 150, 250])('formalin at %d mg/L is worked out', (strength) => {
  expect(number('FORMALIN.DOSE', 10, strength)).toBeCloseTo(strength / 100, 12);
});

test.each([500, 750, 1000])('formalin at %d mg/L stops with the reason and the vet', (strength) => {
  expect(refusal('FORMALIN.DOSE', 10, strength)).toMatch(/^#N\/A .*kills Clarias eggs.*14\(4\), 2010.*vet/);
});

/**
 * Gabriel et al. 2012 (key HYBSALT): hybrids of 14 days 90, 87.5, 77.5 and 10 % alive at 0, 2, 4 and 6 g/L in 96 h;
 * Kawamura et al. 2017 (key KAWAMURA17): more larvae alive at 2, 4, 5 and 6 than at 0, 1, 3 and 7 g/L in 21 days.
 */
test.each([
  ['just inside: 4 g/L, borne by all but one', 4, false],
  ['just outside', 4.01, true],
  ['deadly to hybrids', 6, true],
])('salt for fry, %s', (_what, strength, isRefused) => {
  if (isRefused)
    expect(refusal('FRY.SALT.DOSE', 10, strength, 'swim-up fry')).toMatch(/^#N\/A .*all trials but one.*vet/);
  else expect(number('FRY.SALT.DOSE', 10, strength, 'swim-up fry')).toBeCloseTo(10 * strength, 12);
});

describe('the majority of the salt trials decides, and the one that stands alone is named', () => {
  const check = (strength: number, stage: string, fish = 'African catfish') =>
    grid('SALT.CHECK', strength, 1440, stage, fish)[0] ?? [];
  test.each([
    // Strengths just inside and just outside of what each trial prints.
    [2, 'fry', 'African catfish', 'borne'],
    [4, 'swim-up fry', 'African catfish', 'borne'],
    [6, 'larvae', 'African catfish', 'disputed'],
    [6.1, 'larvae', 'African catfish', 'harmful'],
    [10, 'larvae', 'African catfish', 'harmful'],
    [4, 'larvae', 'hybrid', 'borne'],
    [4.4, 'larvae', 'hybrid', 'harmful'],
    [5, 'eggs', 'African catfish', 'borne'],
    [5.1, 'eggs', 'African catfish', 'untried'],
    [8, 'eggs', 'African catfish', 'harmful'],
    [10, 'juveniles', 'African catfish', 'borne'],
    [15, 'juveniles', 'African catfish', 'harmful'],
  ])('%d g/L, %s of %s: %s', (strength, stage, fish, code) => {
    expect(check(strength, stage, fish)[4]).toBe(code);
  });
  test('whatever word is typed for young fish the answer is one', () => {
    for (const word of ['larvae', 'swim-up fry', 'yolk-sac fry'])
      expect(check(2, word)).toEqual(check(2, 'fry'));
  });
  test('the outlier is named', () => {
    expect(String(check(2, 'fry')[3])).toMatch(/Against: .*0\.61.*stands alone/);
  });
});
