import { figuresOf, line, many, next } from './play';
import { METERS } from './vat';

test('before', () => {
  const N = Number(process.env['VATS'] ?? 60);
  const tells = process.env['TELLS'] !== '0';
  const good = next('good', tells);
  const low = (c: Parameters<typeof METERS.good>[0]) => ({ ...METERS.good(c), offset: -0.3 });
  const only = process.env['KINDS']?.split(',');
  const cases: Record<string, () => ReturnType<typeof many>> = {
    ordinary: () => many(N, 1, { kind: 'ordinary' }, good),
    'ordinary, cheap meter': () =>
      many(N, 1001, { kind: 'ordinary', meter: METERS.cheap }, next('cheap', tells)),
    'hard wells': () => many(N, 2001, { kind: 'hard well' }, good),
    'meter 0.3 low': () => many(N, 3001, { kind: 'ordinary', meter: low }, good),
    'read too early': () => many(N, 4001, { kind: 'ordinary', mixing: (c) => c.between(0.3, 0.7) }, good),
    tannin: () => many(N, 5001, { kind: 'tannin' }, good),
    'baking soda': () => many(N, 6001, { kind: 'ordinary', product: 'baking soda' }, good),
    'hydrated lime': () => many(N, 7001, { kind: 'ordinary', product: 'hydrated lime' }, good),
  };
  const out = Object.entries(cases)
    .filter(([name]) => !only || only.includes(name))
    .map(([name, run]) => line(name, figuresOf(run())));
  process.stdout.write(out.join('\n') + '\n');
}, 600_000);
