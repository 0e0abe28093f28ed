import { CustomFunctionError, customFunctions } from '../../../src/officeStandIn/client/customFunctions';
import type { Associated, FunctionSource } from '../../../src/localsheet/univer/functions';
import { CATALOGUE } from '../../../shared/catalogue';
import { evaluate } from '../../../shared/catalogue/calculation';
import { COMPUTING } from '../../../shared/catalogue/computing';
import { GUIDE_IDS } from '../../../shared/catalogue/guideIds';
import { GUIDES } from '../../../shared/catalogue/guides';
import { functionsJson } from '../../../src/shell/functionsJson';
import type { Host } from '../../../src/shell/register';
import { registerAll, registerLater } from '../../../src/shell/register';
import { createLastErrors } from '../../../src/shell/lastErrors';
import type { Sheet } from './support/engine';
import { startSheet } from './support/engine';

/** What the embedded spreadsheet hands to a function, and what it makes of the answer: as Excel does both. */

jest.setTimeout(30_000);
const seen: unknown[][] = [];
const matrix = (name: string) => ({ name, dimensionality: 'matrix', type: 'any', optional: true });
const record = (id: string, parameters: object[]) => ({
  id,
  name: id,
  description: '',
  parameters: parameters as { name: string }[],
});
const probes: Record<string, Associated> = {
  'PROBE.GIVEN': (...args) => {
    seen.push(args);
    return args.length;
  },
  'PROBE.GRID': () => [
    [1, 'two', ''],
    [true, new CustomFunctionError('#N/A', 'outside'), 6],
  ],
  'PROBE.THROWS': () => {
    throw new CustomFunctionError('#VALUE!', 'a sentence');
  },
  'PROBE.BREAKS': () => {
    throw new Error('a mistake');
  },
  'PROBE.TEXT': () => [['12']],
  'PROBE.NULL': () => null,
  'PROBE.NAN': () => Number.NaN,
  'PROBE.WHERE': (...args) => (args.at(-1) as { address: string }).address,
};
const source: FunctionSource = {
  namespace: 'SPAWN',
  metadata: {
    allowErrorForDataTypeAny: true,
    functions: [
      record('PROBE.GIVEN', [matrix('a'), { ...matrix('b'), dimensionality: 'scalar' }, matrix('c')]),
      ...Object.keys(probes)
        .slice(1)
        .map((id) => record(id, [matrix('a')])),
    ],
  },
  associated: new Map(Object.entries(probes)),
  makeError: (code) => new CustomFunctionError(code),
};

let sheet: Sheet;
beforeAll(() => {
  sheet = startSheet(source);
});
afterAll(() => {
  sheet.close();
});
const given = async (formula: string): Promise<unknown[]> => {
  seen.length = 0;
  await sheet.set('A1', formula);
  return (seen.at(-1) ?? []).slice(0, 3);
};

describe('arguments', () => {
  test('left out is null, in the middle and at the end', async () => {
    expect(await given('=SPAWN.PROBE.GIVEN(1)')).toEqual([[[1]], null, null]);
    expect(await given('=SPAWN.PROBE.GIVEN(1,,3)')).toEqual([[[1]], null, [[3]]]);
  });
  test('blank, empty text and zero are three things', async () => {
    await sheet.set('C1', null);
    await sheet.set('C2', '=""');
    await sheet.set('C3', 0);
    expect(await given('=SPAWN.PROBE.GIVEN(C1,C1)')).toEqual([[[null]], null, null]);
    expect(await given('=SPAWN.PROBE.GIVEN(C2)')).toEqual([[['']], null, null]);
    expect(await given('=SPAWN.PROBE.GIVEN(C3)')).toEqual([[[0]], null, null]);
    expect(await given('=SPAWN.PROBE.GIVEN(C1:C3)')).toEqual([[[null], [''], [0]], null, null]);
  });
  test('text that looks like a number, truth, and numbers keep their kind', async () => {
    await sheet.set('C4', '12');
    await sheet.set('C5', true);
    expect(await given('=SPAWN.PROBE.GIVEN(C4,C5,"TRUE")')).toEqual([[['12']], true, [['TRUE']]]);
  });
  test('an error in a cell arrives as an error, not as text', async () => {
    await sheet.set('C6', '=1/0');
    const [cells] = await given('=SPAWN.PROBE.GIVEN(C5:C6)');
    expect(cells).toMatchObject([[true], [{ code: '#DIV/0!' }]]);
  });
  test('a whole column stands for what is in it', async () => {
    await sheet.set('E1', 5);
    await sheet.set('E3', 7);
    expect(await given('=SPAWN.PROBE.GIVEN(E:E)')).toEqual([[[5], [null], [7]], null, null]);
  });
  test('array constants and nested calls', async () => {
    expect(await given('=SPAWN.PROBE.GIVEN({1,2;3,4})')).toEqual([
      [
        [1, 2],
        [3, 4],
      ],
      null,
      null,
    ]);
    expect(await given('=SPAWN.PROBE.GIVEN(SPAWN.PROBE.TEXT())')).toEqual([[['12']], null, null]);
  });
  test('the place of the call is told, the sheet name quoted', async () => {
    expect(await sheet.set('B9', '=SPAWN.PROBE.WHERE()')).toBe("'My sheet'!B9");
  });
});

describe('answers', () => {
  test('a grid spills; an error inside it keeps its sentence', async () => {
    await sheet.set('G1', '=SPAWN.PROBE.GRID()');
    expect(['G1', 'H1', 'I1', 'G2', 'I2'].map((at) => sheet.get(at))).toEqual([1, 'two', '', true, 6]);
    expect(sheet.get('H2')).toEqual({ error: '#N/A', message: 'outside' });
  });
  test('a spill that is in the way says so and comes back when the way is free', async () => {
    await sheet.set('G6', 'here');
    await sheet.set('F6', '=SPAWN.PROBE.GRID()');
    expect(sheet.get('F6')).toMatchObject({ error: '#SPILL!' });
    await sheet.set('G6', null);
    expect(sheet.get('F6')).toBe(1);
  });
  test(
    'thrown errors show their code and carry their sentence; any other fault does not ' +
      'end the calculation',
    async () => {
      expect(await sheet.set('A2', '=SPAWN.PROBE.THROWS()')).toEqual({
        error: '#VALUE!',
        message: 'a sentence',
      });
      expect(await sheet.set('A3', '=SPAWN.PROBE.BREAKS()')).toMatchObject({
        error: '#VALUE!',
        message: expect.stringContaining('a mistake'),
      });
      expect(await sheet.set('A4', '=IFERROR(SPAWN.PROBE.THROWS(),7)')).toBe(7);
    },
  );
  test('the sentence goes when the error goes', async () => {
    await sheet.set('A5', '=SPAWN.PROBE.THROWS()');
    await sheet.set('A5', '=1/0');
    expect(sheet.get('A5')).toEqual({ error: '#DIV/0!' });
  });
  test('text stays text, nothing shows as 0, no number is #NUM!', async () => {
    expect(await sheet.set('A6', '=SPAWN.PROBE.TEXT()')).toBe('12');
    expect(await sheet.set('A7', '=SPAWN.PROBE.NULL()')).toBe(0);
    expect(await sheet.set('A8', '=SPAWN.PROBE.NAN()')).toMatchObject({ error: '#NUM!' });
  });
  test('too many arguments, an unknown name, lower case, the sign in front', async () => {
    expect(await sheet.set('A9', '=SPAWN.PROBE.TEXT(1,2)')).toMatchObject({
      error: '#VALUE!',
      message: expect.stringContaining('1 arguments at most; 2'),
    });
    expect(await sheet.set('A10', '=SPAWN.PROBE.NOTHING()')).toEqual({ error: '#NAME?' });
    expect(await sheet.set('A11', '=spawn.probe.text()')).toBe('12');
    expect(await sheet.set('A12', '=@SPAWN.PROBE.TEXT()')).toBe('12');
  });
});

/** As the bundle that the page loads does it: guides come later, and are there before the first calculation. */
async function catalogueSource(): Promise<FunctionSource> {
  const associated = new Map<string, Associated>();
  const later: (() => Promise<void>)[] = [];
  const host = customFunctions(associated, later) as unknown as Host;
  const errors = createLastErrors();
  registerAll(COMPUTING, host, errors);
  registerLater(GUIDE_IDS, () => Promise.resolve(GUIDES), host, errors);
  await Promise.all(later.map((fetchAll) => fetchAll()));
  return {
    namespace: 'SPAWN',
    metadata: functionsJson(CATALOGUE) as never,
    associated,
    makeError: source.makeError as (code: string) => unknown,
  };
}

test('every example of the catalogue that gives one number gives it in the sheet too', async () => {
  const own = startSheet(await catalogueSource());
  const literal = (arg: unknown): string =>
    arg === null
      ? ''
      : typeof arg === 'string'
        ? `"${arg.replaceAll('"', '""')}"`
        : typeof arg === 'boolean'
          ? String(arg).toUpperCase()
          : String(arg);
  const tried = CATALOGUE.flatMap((fn) => {
    const example = fn.examples.find(
      (e) =>
        typeof e.gives === 'string' &&
        Number.isFinite(Number(e.gives)) &&
        e.args.every((arg) => typeof arg !== 'object' || arg === null),
    );
    return example
      ? [
          {
            name: fn.name,
            formula: `=${fn.name}(${example.args.map(literal).join(',')})`,
            printed: String(example.gives),
          },
        ]
      : [];
  });
  // Far apart: some of them fill several cells.
  const at = (i: number): string => `A${i * 3 + 1}`;
  await own.setAll(Object.fromEntries(tried.map(({ formula }, i) => [at(i), formula])));
  tried.forEach(({ name, printed }, i) => {
    const got = own.get(at(i));
    const decimals = printed.split('.')[1]?.length ?? 0;
    expect([name, typeof got === 'number' ? got.toFixed(decimals) : got]).toEqual([
      name,
      Number(printed).toFixed(decimals),
    ]);
  });
  own.close();
  expect(tried.length).toBeGreaterThan(10);
});

test('guides answer where a formula takes one of their values, also in a branch', async () => {
  const own = startSheet(await catalogueSource());
  await own.set('B1', 20_000);
  for (const formula of [
    '=INDEX(SPAWN.NET.AREA(20000),1,1)',
    '=IF($B$1>0,INDEX(SPAWN.NET.AREA($B$1),1,1),0)',
    '=IF($B$1>0,N(INDEX(SPAWN.HORMONE.PREPARE(MAX(0.01,$B$1/10000),""),1,3)),0)',
  ]) {
    const wanted = evaluate(formula.replaceAll('$B$1', '20000'));
    expect([formula, wanted]).toEqual([formula, expect.any(Number)]);
    expect([formula, await own.set('A1', formula)]).toEqual([formula, wanted]);
  }
  own.close();
});

test('formulas that were there before the functions come right when the functions arrive', async () => {
  const late = startSheet();
  await late.setAll({
    A1: '=SPAWN.PROBE.TEXT()',
    A2: '=SPAWN.PROBE.TEXT()&"a"',
    A3: '=IF(1,SPAWN.PROBE.NULL(),2)',
    A4: '=A1&"b"',
  });
  expect(late.get('A1')).toEqual({ error: '#NAME?' });
  await late.register(source);
  expect(['A1', 'A2', 'A3', 'A4'].map((at) => late.get(at))).toEqual(['12', '12a', 0, '12b']);
  late.close();
});
