import { toArg, toArgs, toCell, toHost, toHostError } from '../../../src/shell/adapt';
import { FakeError } from '../../support/customFunctions';

describe('what a host hands over', () => {
  test.each([
    [3.5, 3.5],
    [0, 0],
    ['', ''],
    ['soda ash', 'soda ash'],
    [true, true],
    [null, null],
    [undefined, null],
    ['#N/A', { error: '#N/A' }],
    [new FakeError('#DIV/0!'), { error: '#DIV/0!' }],
    [new FakeError('#VALUE!', 'no'), { error: '#VALUE!', message: 'no' }],
    [{ type: 'Double', basicType: 'Double', basicValue: 7, numberFormat: '0.0' }, 7],
    [{ type: 'Error', basicType: 'Error', basicValue: '#NUM!' }, { error: '#NUM!' }],
    [{ type: 'Empty', basicType: 'Empty', basicValue: '' }, null],
  ])('%p is the cell %p', (given, cell) => {
    expect(toCell(given)).toEqual(cell);
  });

  test('an entity without a plain value is an error cell, not a crash', () => {
    expect(toCell({ type: 'LinkedEntity' })).toMatchObject({ error: '#VALUE!' });
    expect(toCell(() => 1)).toBeNull();
  });

  test('a range is rows of cells; blanks keep apart from zero', () => {
    expect(
      toArg(
        [
          [1, null],
          ['', 0],
        ],
        'x',
      ),
    ).toEqual([
      [1, null],
      ['', 0],
    ]);
  });

  test('a list is a column, an empty range is left out', () => {
    expect(toArg([1, 2], 'x')).toEqual([[1], [2]]);
    expect(toArg([], 'x')).toBeNull();
    expect(toArg([[]], 'x')).toBeNull();
  });

  test('a ragged array is a sentence that names the row', () => {
    expect(toArgs([[[1, 2], [3]]], ['weights']).fault).toEqual({
      error: '#VALUE!',
      message: 'weights: row 2 has 1 cells where row 1 has 2. Give one rectangular range.',
    });
  });

  test('an error that is the argument is no fault of the range: the function answers for it', () => {
    expect(toArgs([new FakeError('#REF!'), 1], ['a', 'b'])).toEqual({
      args: [{ error: '#REF!' }, 1],
      fault: undefined,
    });
  });
});

describe('what the sheet shows', () => {
  test('a single answer is one row of one cell; blank is empty text', () => {
    expect(toHost(5, FakeError)).toEqual([[5]]);
    expect(toHost(null, FakeError)).toEqual([['']]);
    expect(toHost([], FakeError)).toEqual([['']]);
  });

  test("errors inside a table are the host's own errors with their sentence", () => {
    const shown = toHost(
      [
        [1, { error: '#N/A', message: 'too few' }],
        [null, 2],
      ],
      FakeError,
    );
    expect(shown[0]?.[1]).toBeInstanceOf(FakeError);
    expect(shown[0]?.[1]).toMatchObject({ code: '#N/A', message: 'too few' });
    expect(shown[1]).toEqual(['', 2]);
  });

  test('ten thousand bad cells do not cost ten thousand call stacks', () => {
    const limit = Error.stackTraceLimit;
    const [[first] = []] = toHost(
      Array.from({ length: 3 }, () => [{ error: '#N/A' as const, message: 'x' }]),
      FakeError,
    );
    expect(String((first as Error).stack).split('\n')).toHaveLength(1);
    expect(Error.stackTraceLimit).toBe(limit);
  });

  test('#NUM! carries no text, states a host sets itself become #VALUE!', () => {
    expect(toHostError({ error: '#NUM!', message: 'x' }, FakeError)).toMatchObject({
      code: '#NUM!',
      message: '',
    });
    expect(toHostError({ error: '#SPILL!' }, FakeError)).toMatchObject({ code: '#VALUE!' });
  });
});
