import { readFileSync } from 'node:fs';
import { VERDICT_LOOKS } from '../../shared/maths/verdict';

/** A style sheet cannot read the scale of verdicts: it repeats its inks, and this holds them together. */
const css = readFileSync('taskpane/styles.css', 'utf8');
const inksOf = (token: string): readonly string[] =>
  [...css.matchAll(new RegExp(`--verdict-${token}: (#\\w{6});`, 'g'))].map(([, ink]) => ink ?? '');

/** WCAG 2.2, relative luminance and contrast ratio. */
const luminance = (hex: string): number => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const c = parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string, b: string): number => {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
};

test.each(Object.values(VERDICT_LOOKS))('$word: the ink of the scale, readable in light and dark', (look) => {
  const [light = '', ...dark] = inksOf(look.token);
  expect(light).toBe(look.ink);
  expect(new Set(dark).size).toBe(1);
  expect(contrast(light, '#f3f6f5')).toBeGreaterThanOrEqual(4.5);
  expect(contrast(dark[0] ?? '', '#212d31')).toBeGreaterThanOrEqual(4.5);
});

test('every verdict has its own ink, in light and in dark', () => {
  for (const place of [0, 1])
    expect(new Set(Object.values(VERDICT_LOOKS).map(({ token }) => inksOf(token)[place])).size).toBe(5);
});
