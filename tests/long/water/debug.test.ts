import { many, next } from './play';
import type { Played } from './play';
import { METERS } from './vat';
import type { Draw } from './vat';
const show = (r: Played, i: number) =>
  `#${i} own ${r.ownAired.toFixed(2)} end ${r.end.toFixed(2)} aired ${r.aired.toFixed(2)} high ${r.highest.toFixed(2)} given ${r.given.toFixed(2)} | ${r.lines.map((l) => `${l.event[0] ?? ''}${l.total.toFixed(1)}:${l.ph}`).join(' ')} | ${r.actions.join(',')}`;
test('debug', () => {
  const N = Number(process.env['VATS'] ?? 60);
  const what = process.env['WHAT'] ?? 'left';
  const low = (c: Parameters<typeof METERS.good>[0]) => ({ ...METERS.good(c), offset: -0.3 });
  const kinds: Record<string, [Draw, string, number]> = {
    ordinary: [{ kind: 'ordinary' }, 'good', 1],
    cheap: [{ kind: 'ordinary', meter: METERS.cheap }, 'cheap', 1001],
    low: [{ kind: 'ordinary', meter: low }, 'good', 3001],
    early: [{ kind: 'ordinary', mixing: (c) => c.between(0.3, 0.7) }, 'good', 4001],
    tannin: [{ kind: 'tannin' }, 'good', 5001],
    lime: [{ kind: 'ordinary', product: 'hydrated lime' }, 'good', 7001],
    baking: [{ kind: 'ordinary', product: 'baking soda' }, 'good', 6001],
  };
  const [draw, meter, from] = kinds[process.env['KIND'] ?? 'ordinary']!;
  const runs = many(N, from, draw, next(meter));
  const out = runs.flatMap((r, i) => {
    const bad =
      what === 'left'
        ? r.ownAired >= 6.5 && r.given > 0
        : what === 'in'
          ? r.ownAired <= 8 && (r.aired < 6.5 || r.aired > 8)
          : what === 'high'
            ? r.ownAired <= 8 && r.highest > 8 && r.highest > r.ownAired + 0.02
            : r.readings > 7;
    return bad ? [show(r, i)] : [];
  });
  process.stdout.write(out.join('\n') + '\n');
}, 600_000);
