/**
 * Journal of Applied Sciences and Environmental Management 14(4), 2010:31-34 (key EGGFORMALIN10, abstract):
 * formalin for 15 minutes, 50 to 250 mg/L hatched, 500, 750 and 1000 mg/L hatched none. Aquaculture, 2011
 * (key FRYSALT11, abstract): salt for 15 minutes, 0.2 to 0.8 g/L for yolk-sac and 0.2 to 1.0 g/L for swim-up
 * fry; 24 h LC50 0.61 and 0.70 g/L; none lived at 10 g/L.
 */
import { number, refusal } from '../support/call';

test.each([50, 100, 150, 250])('formalin at %d mg/L is worked out', (strength) => {
  expect(number('FORMALIN.DOSE', 10, strength)).toBeCloseTo(strength / 100, 12);
});

test.each([500, 750, 1000])('formalin at %d mg/L stops with the reason and the vet', (strength) => {
  expect(refusal('FORMALIN.DOSE', 10, strength)).toMatch(/^#N\/A .*kills Clarias eggs.*14\(4\), 2010.*vet/);
});

test.each([
  ['yolk-sac fry', 0.2, 0.8, '0.61'],
  ['swim-up fry', 0.2, 1, '0.7'],
])('salt for %s is worked out from %d to %d g/L and stops above', (stage, low, high, halfDie) => {
  expect(number('FRY.SALT.DOSE', 10, low, stage)).toBeCloseTo(low * 10, 12);
  expect(number('FRY.SALT.DOSE', 10, high, stage)).toBeCloseTo(high * 10, 12);
  for (const strength of [high + 0.01, 10])
    expect(refusal('FRY.SALT.DOSE', 10, strength, stage)).toMatch(
      new RegExp(`^#N/A .*${halfDie} g/L, none lived at 10 g/L.*vet`),
    );
});
