import { arrowFaults } from '../../../src/build/checks/arrows';

const file = (path: string, ...imports: readonly string[]) => ({
  path,
  text: imports.map((target) => `import { x } from '${target}';\n`).join(''),
});

test('a room may know those below it, files of a room each other one way', () => {
  expect(
    arrowFaults([
      file('shared/units/a.ts'),
      file('shared/season/b.ts', '../units/a', './c'),
      file('shared/season/c.ts'),
      file('taskpane/d.ts', '../shared/season/b'),
    ]),
  ).toEqual([]);
});

test('an arrow up and a circle of values are faults, a circle of types is none', () => {
  expect(arrowFaults([file('shared/units/a.ts', '../season/b'), file('shared/season/b.ts')])).toEqual([
    'shared/units/a.ts knows shared/season/b.ts, a room above its own',
  ]);
  const one = file('shared/season/b.ts', './c');
  expect(arrowFaults([one, file('shared/season/c.ts', './b')])).toEqual([
    'shared/season/b.ts, shared/season/c.ts know each other in a circle',
  ]);
  expect(arrowFaults([one, { path: 'shared/season/c.ts', text: "import type { x } from './b';\n" }])).toEqual(
    [],
  );
  expect(
    arrowFaults([file('src/officeStandIn/nodes/b.ts', './c'), file('src/officeStandIn/nodes/c.ts', './b')]),
  ).toEqual([]);
});
