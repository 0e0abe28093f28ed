import stdlibNormal from '@stdlib/stats-base-dists-normal-quantile';
import { logGammaFast } from '../../shared/maths/logGammaFast';
import { normalQuantile } from '../../shared/maths/normalQuantile';
import { logGamma } from '../../shared/maths/specialFunctions';

/** A function made of pieces has all its digits on both sides of every joint: a joint moved by a tenth costs some. */
test('normal quantile: between its middle and its flank, against another library', () => {
  // Joined 0.425 from one half, at 0.075.
  for (const p of [0.0326, 0.04, 0.0749, 0.0751, 0.1, 0.1174])
    expect(Math.abs(normalQuantile(p) / stdlibNormal(p, 0, 1) - 1)).toBeLessThan(1e-14);
});
test('normal quantile: between its flank and its tail, by the continued fraction of Laplace', () => {
  /** Logarithm of the share beyond z, φ(z)/(z + 1/(z + 2/(z + …))). */
  const beyond = (z: number): number => {
    let rest = z;
    for (let k = 400; k >= 1; k--) rest = z + k / rest;
    return -0.5 * z * z - 0.5 * Math.log(2 * Math.PI) - Math.log(rest);
  };
  // Joined at e^−25.
  for (const r of [4.01, 4.5, 4.99, 5.01, 5.5, 5.99])
    expect(Math.abs(beyond(-normalQuantile(Math.exp(-r * r))) / (r * r) + 1)).toBeLessThan(2e-14);
});

test('ln Γ near 0, where it is turned over: one step up it is the logarithm of what was left', () => {
  for (const x of [1e-9, 1e-7, 1e-5, 1e-3, 0.1, 0.3, 0.49])
    expect(Math.abs(logGamma(x) - (logGamma(1 + x) - Math.log(x)))).toBeLessThan(1e-12);
});
test('ln Γ by the series, against factorials: its last term still counts', () => {
  let factorials = 0;
  for (let n = 2; n <= 20; n++) {
    factorials += Math.log(n - 1);
    expect(Math.abs(logGammaFast(n) - factorials)).toBeLessThan(1e-13);
  }
});
