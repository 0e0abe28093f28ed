import { findFunction } from '../../../shared/catalogue';
import { invoke } from '../../../shared/functions/invoke';
const call = (id: string, ...args: never[]): unknown => invoke(findFunction('SPAWN.' + id)!, args);
const t0 = performance.now();
const cases: [unknown, unknown, unknown?][] = [
  [[[0]], [[5.2]]],
  [
    [[0], [0]],
    [[5.2], [5.6]],
    [[''], ['aired']],
  ],
  [
    [[0], [0], [1.4]],
    [[5.2], [5.6], [6.3]],
    [[''], ['aired'], ['']],
  ],
];
for (const [d, r, e] of cases) {
  const t = performance.now();
  for (let i = 0; i < 20; i++)
    (call as any)(
      'BUFFER.NEXT',
      1000,
      d as never,
      r as never,
      7,
      null,
      25,
      'soda ash',
      1,
      'unknown',
      null,
      0,
      'good',
      6.5,
      7.5,
      1,
      false,
      (e ?? null) as never,
    );
  console.log((performance.now() - t) / 20, 'ms');
}
