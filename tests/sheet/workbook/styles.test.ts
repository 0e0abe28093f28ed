import { STYLES } from '../../../shared/sheet/workbook/styles';

/** Relative luminance and contrast as WCAG 2.1 defines them. */
const luminance = (color: string): number => {
  const [red = 0, green = 0, blue = 0] = [0, 2, 4].map((at) => {
    const c = parseInt(color.slice(at, at + 2), 16) / 255;
    return c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};
const contrast = (a: string, b: string): number => {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
};

test('the measure itself: black on white is 21 to 1', () => {
  expect(contrast('000000', 'FFFFFF')).toBeCloseTo(21, 5);
});

/** The scale of verdicts keeps its own inks (shared/maths/verdict.ts): 4.5 to 1, in bold. */
const VERDICTS = new Set(['safe', 'likely', 'toss', 'unlikely']);
test.each(Object.entries(STYLES))(
  '%s reads at 7 to 1 or better, a verdict at 4.5',
  (name, { ink, fill = 'FFFFFF' }) => {
    expect(contrast(ink, fill)).toBeGreaterThanOrEqual(VERDICTS.has(name) ? 4.5 : 7);
  },
);

test('what may be typed into, and what judges, shows without its colour', () => {
  expect(STYLES.input.border).toBe('medium');
  for (const name of ['good', 'warning', 'bad'] as const) expect(STYLES[name].isBold).toBe(true);
  expect(STYLES.bad.border).not.toBe(STYLES.good.border);
});
