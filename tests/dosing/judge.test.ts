import { call } from '../support/call';
import type { DosingReading, Vat } from '../../shared/dosing/ask';
import { faultOf } from '../../shared/dosing/ask';
import { DOSING_FIELDS, dosingField, paramOf } from '../../shared/dosing/fields';
import { gramsText, judge, spoonsText } from '../../shared/dosing/judge';

const VAT: Vat = {
  volume: 1000,
  material: 'soda ash',
  purity: 1,
  spoon: 5,
  temperature: 25,
  target: 7,
  stocked: 'no',
  ammonia: null,
  alkalinity: null,
  kit: '°d',
  bottom: 6.5,
  top: 7.5,
  origin: 'unknown',
  meter: 'good',
};
const series = (...pairs: readonly (readonly [number, number])[]): DosingReading[] =>
  pairs.map(([grams, ph]) => ({ grams, ph }));
const said = (vat: Partial<Vat>, ...pairs: readonly (readonly [number, number])[]) => {
  const dosing = judge({ ...VAT, ...vat }, series(...pairs));
  if (!dosing) throw new Error('no answer');
  return dosing;
};
const texts = (dosing: ReturnType<typeof said>): string =>
  [dosing.todo, ...dosing.warnings.map(({ text }) => text)].join(' | ');

describe('the questions', () => {
  test('every one fills an argument of the catalogue, and every choice is one that argument takes', () => {
    for (const field of DOSING_FIELDS) {
      const param = paramOf(field.fills);
      expect([field.key, param?.name]).toEqual([field.key, field.fills[1]]);
      if (param?.kind !== 'choice') continue;
      for (const [value] of field.choices ?? []) expect(param.choices).toContain(value);
    }
  });

  test('faults are sentences of the argument under the name of the question', () => {
    expect(faultOf(dosingField('volume'), null)).toMatch(/^Water in the vat: a number is needed/);
    expect(faultOf(dosingField('volume'), -5)).toMatch(/^Water in the vat: expected a number above 0/);
    expect(faultOf(dosingField('temperature'), 82)).toMatch(/^Water temperature: .*°F/);
    expect(faultOf(dosingField('stocked'), null)).toMatch(/choose one/);
    expect(faultOf(dosingField('spoon'), null)).toBeUndefined();
  });
});

describe('the answer after a reading', () => {
  test('nothing before the first reading', () => {
    expect(judge(VAT, [])).toBeUndefined();
  });

  test('is the first row of BUFFER.NEXT, number for number', () => {
    const grid = call('BUFFER.NEXT', 1000, [[0], [0]], [[4.3], [4.32]], 7, 5) as number[][];
    const row = grid[1] ?? [];
    const dosing = said({}, [0, 4.3], [0, 4.32]);
    expect(dosing.kind).toBe('dose');
    expect([dosing.total, dosing.expected?.low, dosing.expected?.likely, dosing.expected?.high]).toEqual([
      row[4],
      row[5],
      row[6],
      row[7],
    ]);
    expect(dosing.headline).toBe(`${gramsText(row[2] ?? NaN)} g`);
    expect(dosing.later.map(({ total }) => total)).toEqual(grid.slice(2).map((later) => later[4]));
  });

  test('the kit goes in through the conversion of the catalogue', () => {
    const alkalinity = call('ALKALINITY.CONVERT', 3, '°d');
    const grid = call(
      'BUFFER.NEXT',
      1000,
      [[0]],
      [[6.2]],
      7,
      5,
      25,
      'soda ash',
      1,
      'unknown',
      alkalinity,
    ) as number[][];
    expect(said({ alkalinity: 3 }, [0, 6.2]).total).toBe(grid[1]?.[4]);
    expect(said({ alkalinity: 3 }, [0, 6.2]).trial).toBeUndefined();
  });

  test('ends: in the window, above it, unsettled, without effect', () => {
    expect(said({}, [0, 6.95])).toMatchObject({ kind: 'done', headline: 'DONE' });
    expect(said({}, [0, 7.9])).toMatchObject({ kind: 'stop', headline: 'ADD NOTHING' });
    expect(said({}, [0, 6.95]).todo).toContain('pH 6.95 is in the window');
    expect(texts(said({}, [0, 7.9]))).toContain('above the window');
    expect(said({}, [0, 5.2], [0, 5.9])).toMatchObject({ kind: 'wait', headline: 'WAIT' });
    expect(said({}, [0, 5.8], [3, 5.4])).toMatchObject({ kind: 'wait', headline: 'READ AGAIN' });
  });

  test('air comes first, with the pH now and once aired', () => {
    const dosing = said({}, [0, 5.2]);
    expect(dosing).toMatchObject({ kind: 'air', headline: 'AIR FIRST' });
    expect(dosing.aired?.low).toBeLessThan(dosing.aired?.high ?? 0);
  });

  test('no dose into stocked water before ammonia is known; the dose comes once it is low enough', () => {
    const aired = { stocked: 'yes', origin: 'aerated' };
    const unknown = said(aired, [0, 5.5], [0, 5.5]);
    expect([unknown.kind, unknown.headline]).toEqual(['stop', 'STOP']);
    expect(unknown.todo).toMatch(/measure total ammonia/);
    expect(said({ ...aired, ammonia: 0.5 }, [0, 5.5], [0, 5.5]).kind).toBe('dose');
    const high = said({ ...aired, ammonia: 40 }, [0, 5.5], [0, 5.5]);
    expect(high.kind).toBe('stop');
    expect(high.todo).toContain('Do not raise');
  });

  test('steps in stocked water are no more than 0.3 pH', () => {
    const { expected } = said({ stocked: 'yes', ammonia: 0, origin: 'aerated' }, [0, 5.5], [0, 5.5]);
    expect((expected?.likely ?? 9) - 5.5).toBeLessThan(0.35);
  });

  test('burnt and hydrated lime never go in with fish', () => {
    for (const material of ['quicklime', 'hydrated lime'])
      expect(said({ stocked: 'yes', ammonia: 0, material }, [0, 6])).toMatchObject({
        kind: 'refused',
        todo: expect.stringContaining(`never put ${material}`),
      });
  });

  test('a pH no amount of the product can reach gives no grams', () => {
    const dosing = said({ material: 'baking soda', target: 8.7, bottom: 8.5, top: 9 }, [0, 7], [40, 7.9]);
    expect(dosing.kind).not.toBe('dose');
    expect(dosing.headline).not.toMatch(/\d/);
  });

  test('what cannot be answered is said under the names a person knows', () => {
    expect(said({}, [0, 5], [6, 5.5], [4, 5.9]).todo).toMatch(/^Reading 3, grams so far: /);
    expect(said({ target: 7.9 }, [0, 5]).todo).toMatch(/^pH wanted: expected a pH between the edges/);
  });

  test('with one pH only a bucket is offered, with what the vat may need', () => {
    const { trial } = said({}, [0, 5.2]);
    expect(trial?.need?.low).toBeLessThan(trial?.need?.high ?? 0);
    expect(trial?.steps[0]?.todo).toContain('stock');
    expect(said({}, [0, 5.2], [1.2, 5.5]).trial).toBeUndefined();
  });

  test('where the pH climbs later agrees with the solver', () => {
    // 45 mg/L of CO2 at pH 5.2: readings made with BUFFER.PH, so what is tested is the way back.
    const readings = [0, 1.2, 4, 14].map((grams): readonly [number, number] => [
      grams,
      call('BUFFER.PH', 1000, grams, 5.2, null, 25, 'soda ash', 1, 45, 'closed') as number,
    ]);
    const dosing = said({}, ...readings);
    const [row = []] = call('BUFFER.OUTCOME', 1000, 14, 5.2, null, 25, 'soda ash', 1, 45) as number[][];
    expect(dosing.kind).toBe('air');
    expect(Math.abs((dosing.aired?.likely ?? 0) - (row[1] ?? NaN))).toBeLessThan(0.15);
  });

  test('the curve begins at the product given and ends above the window', () => {
    const { curve } = said({}, [0, 5.2], [1.5, 5.5]);
    expect(curve[0]?.total).toBe(1.5);
    expect(curve.at(-1)?.likely).toBeGreaterThan(7.5);
  });
});

test('spoons are rounded down to a quarter, with the grams that makes', () => {
  expect([
    spoonsText(22.4, 5),
    spoonsText(5, 5),
    spoonsText(1.3, 5),
    spoonsText(1, 5),
    spoonsText(40.7, 5),
  ]).toEqual([
    'or 4¼ level spoons (21.3 g)',
    'or 1 level spoon (5 g)',
    'or ¼ level spoon (1.3 g)',
    'less than ¼ of your spoon: weigh it',
    'or 8 level spoons (40 g)',
  ]);
});

test('grams are printed as a scale shows them', () => {
  expect([0, 0.238, 1.19, 22, 40.73, 115.8].map(gramsText)).toEqual([
    '0',
    '0.24',
    '1.2',
    '22',
    '40.7',
    '116',
  ]);
});
