import { figuresOf, line, many, next } from '../../../long/water/play';

/** A small sample of the whole-vat simulation; the figures of the method are asserted in tests/long/water. */
test('forty ordinary vats, followed until aired', () => {
  const f = figuresOf(many(40, 9001, { kind: 'ordinary' }, next('good')));
  process.stdout.write(`${line('ordinary, small sample', f)}\n`);
  expect(f.pushedOver).toBe(0);
  expect(f.ever8).toBe(0);
  expect(f.inside).toBeGreaterThanOrEqual(0.9);
  expect(f.leftAlone).toBeGreaterThanOrEqual(0.85);
});
