import { CATALOGUE } from '../../../shared/catalogue';
import { defineFunction, fields, rows, column, value } from '../../../shared/functions/define';
import { num, series } from '../../../shared/functions/params';
import { celsius, count, gram } from '../../../shared/units/quantities';
import { createLastErrors } from '../../../src/shell/lastErrors';
import { registerAll } from '../../../src/shell/register';
import { FakeError, fakeHost } from '../../support/customFunctions';

const common = {
  family: 'Checks' as const,
  summary: 'For the test only.',
  valid: 'always',
  sources: [],
  examples: [],
};
const doubled = defineFunction({
  ...common,
  id: 'TEST.DOUBLE',
  params: {
    x: num(gram, { min: 0, max: 10, doc: 'a number' }),
    y: num(celsius, { default: 1, doc: 'another' }),
  },
  returns: value(gram, 'twice'),
  compute: ({ x, y }) => x * 2 * y,
});
const broken = defineFunction({
  ...common,
  id: 'TEST.BROKEN',
  params: { x: num(gram, { doc: 'a number' }) },
  returns: value(gram, 'nothing'),
  compute: () => {
    throw new Error('kaput');
  },
});
const total = defineFunction({
  ...common,
  id: 'TEST.TOTAL',
  params: { xs: series(gram, { doc: 'numbers', atLeast: 2 }) },
  returns: fields({ sum: column('sum', gram), n: column('count', count) }, 'two fields'),
  compute: ({ xs }) => ({ sum: xs.reduce((a, b) => a + b, 0), n: xs.length }),
});
const listing = defineFunction({
  ...common,
  id: 'TEST.LIST',
  params: { n: num(count, { min: 0, doc: 'how many' }) },
  returns: rows({ i: column('line', count) }, 'lines'),
  compute: ({ n }) => Array.from({ length: n }, (_, i) => ({ i })),
});

const setUp = () => {
  const host = fakeHost();
  const errors = createLastErrors();
  registerAll([doubled, broken, total, listing], host, errors);
  const call = (id: string, ...args: unknown[]): unknown => host.bodies.get(id)?.(...args);
  const caught = (id: string, ...args: unknown[]): unknown => {
    try {
      return { returned: call(id, ...args) };
    } catch (error) {
      return error;
    }
  };
  return { host, errors, call, caught };
};

test('every catalogue function is associated under its metadata id', () => {
  const host = fakeHost();
  registerAll(CATALOGUE, host, createLastErrors());
  expect([...host.bodies.keys()]).toEqual(CATALOGUE.map((fn) => fn.id));
});

test('a matrix of one cell, as Excel hands over a single cell', () => {
  const { call } = setUp();
  expect(call('TEST.DOUBLE', [[2]], null, { address: 'S!A1' })).toEqual([[4]]);
  expect(call('TEST.DOUBLE', 2, null, {})).toEqual([[4]]);
});

test('a column spills; a bad row is an error in that row only; a blank row stays blank', () => {
  const { call } = setUp();
  const shown = call('TEST.DOUBLE', [[1], ['one'], [null], [new FakeError('#REF!')], [3]], [[1]], {
    address: 'S!A1',
  }) as unknown[][];
  expect([shown[0]?.[0], shown[2]?.[0], shown[4]?.[0]]).toEqual([2, '', 6]);
  expect(shown[1]?.[0]).toMatchObject({ code: '#VALUE!' });
  expect((shown[3]?.[0] as FakeError).message).toContain('#REF!');
});

test("an answer that is an error as a whole is thrown as the host's own error with its sentence", () => {
  const { caught } = setUp();
  const error = caught('TEST.DOUBLE', [[99]], null, {});
  expect(error).toBeInstanceOf(FakeError);
  expect(error).toMatchObject({ code: '#VALUE!', message: 'x: expected a number from 0 to 10 g, got 99.' });
});

test.each([
  ['nothing at all', []],
  ['only blanks', [null, null, {}]],
  ['a function', [() => 1]],
  ['a symbol', [Symbol('x')]],
  ['deep arrays', [[[[[1]]]]]],
  ['ragged rows', [[[1, 2], [3]]]],
  ['not a number', [[[NaN]]]],
])("%s never throws anything but the host's own error", (_what, args) => {
  const { caught } = setUp();
  for (const id of ['TEST.DOUBLE', 'TEST.TOTAL', 'TEST.LIST']) {
    const outcome = caught(id, ...args);
    if (!(outcome as { returned?: unknown }).returned) expect(outcome).toBeInstanceOf(FakeError);
  }
});

test('a mistake of ours is a #VALUE! sentence that says so', () => {
  const { caught } = setUp();
  expect(caught('TEST.BROKEN', [[1]], {})).toMatchObject({
    code: '#VALUE!',
    message: expect.stringContaining('our mistake'),
  });
});

test('a table without lines is one blank cell', () => {
  const { call } = setUp();
  expect(call('TEST.LIST', [[0]], false, {})).toEqual([['']]);
  expect(call('TEST.LIST', [[2]], null, {})).toEqual([['line'], [0], [1]]);
});

test('fields answer side by side', () => {
  const { call } = setUp();
  expect(call('TEST.TOTAL', [[1], [2], [null], [4]], null, {})).toEqual([[7, 3]]);
});

describe('the sentences behind the errors', () => {
  test('are kept per cell, newest first, and forgotten once the cell calculates', () => {
    const { errors, caught, call } = setUp();
    caught('TEST.DOUBLE', [[99]], null, { address: 'S!A1' });
    caught('TEST.TOTAL', [[99]], null, { address: 'S!B1' });
    expect(errors.list().map((e) => [e.address, e.functionName, e.code])).toEqual([
      ['S!B1', 'SPAWN.TEST.TOTAL', '#N/A'],
      ['S!A1', 'SPAWN.TEST.DOUBLE', '#VALUE!'],
    ]);
    call('TEST.DOUBLE', [[1]], null, { address: 'S!A1' });
    expect(errors.list().map((e) => e.address)).toEqual(['S!B1']);
  });

  test('count the bad cells of a spilled answer', () => {
    const { errors, call } = setUp();
    call('TEST.DOUBLE', [[1], ['a'], ['b']], null, { address: 'S!A1' });
    expect(errors.list()[0]).toMatchObject({ cells: 2, code: '#VALUE!' });
  });

  test('ignore formulas that are only being previewed', () => {
    const { errors, caught } = setUp();
    caught('TEST.DOUBLE', [[99]], null, { address: 'S!A1', isInValuePreview: true });
    expect(errors.list()).toEqual([]);
  });

  test('are bounded and tell who listens', () => {
    const errors = createLastErrors(3);
    let told = 0;
    const stop = errors.subscribe(() => {
      told += 1;
    });
    for (let i = 0; i < 5; i++)
      errors.record({ address: `S!A${i}`, functionName: 'F', code: '#VALUE!', message: '', cells: 1 });
    stop();
    errors.clear();
    expect(told).toBe(5);
    expect(errors.list()).toEqual([]);
  });
});

test('how a blank cell arrives is remembered once it was asked; a 0 that was typed says nothing', () => {
  const host = fakeHost();
  const errors = createLastErrors();
  registerAll(
    CATALOGUE.filter(({ id }) => id === 'BLANK.CHECK'),
    host,
    errors,
  );
  const ask = (cell: unknown, isBlank: boolean): string => {
    host.bodies.get('BLANK.CHECK')?.(cell, isBlank);
    return errors.blanks;
  };
  expect([errors.blanks, ask(0, false), ask(0, true), ask(0, false), ask(null, true)]).toEqual([
    'unknown',
    'unknown',
    'zero',
    'zero',
    'kept',
  ]);
});

test('a blank that arrives as one in any range tells the same without asking; zeros and empty texts do not', () => {
  const host = fakeHost();
  const errors = createLastErrors();
  registerAll(
    CATALOGUE.filter(({ id }) => id === 'AMMONIA.SHARE'),
    host,
    errors,
  );
  const call = (ph: unknown): string => {
    host.bodies.get('AMMONIA.SHARE')?.(ph, 25, null);
    return errors.blanks;
  };
  expect([call(7), call([[7], [0]]), call([[7], ['']]), call([[7], [null]]), call([[7], [0]])]).toEqual([
    'unknown',
    'unknown',
    'unknown',
    'kept',
    'kept',
  ]);
});
