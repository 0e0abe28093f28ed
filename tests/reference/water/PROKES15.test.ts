/**
 * Prokesova M. et al. 2015. Journal of Applied Ichthyology, pp. 18-29 (abstract): embryos die below 17.5 and
 * above 35.1 °C, larvae below 18.9 and above 33.2 °C; optimum 22.9 to 30.3 °C; suboptimal from 20.6 and up to
 * 33.2 °C. Transcribed from the abstract.
 */
import { call, refusal } from '../../support/call';

test.each([
  ['eggs', 17.4, 35.2, '17.5 and 35.1'],
  ['larvae', 18.8, 33.3, '18.9 and 33.2'],
])('%s: %d and %d °C are refused with the limits', (life, cold, warm, limits) => {
  for (const t of [cold, warm])
    expect(refusal('TEMPERATURE.CHECK', t, life)).toMatch(new RegExp(`^#N/A .*kills.*${limits}.*vet`));
});

test.each([
  ['eggs', 17.5],
  ['eggs', 35.1],
  ['larvae', 18.9],
  ['larvae', 33.2],
])('%s live at the limit %d °C', (life, t) => {
  expect(typeof call('TEMPERATURE.CHECK', t, life)).toBe('string');
});

test.each([
  [22.9, 'good'],
  [30.3, 'good'],
  [22.8, 'borderline'],
  [20.6, 'borderline'],
  [33.2, 'borderline'],
  [20.5, 'poor'],
  [33.5, 'poor'],
])('%d °C is %s for eggs', (t, verdict) => {
  expect(String(call('TEMPERATURE.CHECK', t)).startsWith(verdict)).toBe(true);
});
