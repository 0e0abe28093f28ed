import { CATALOGUE, findFunction } from '../../../shared/catalogue';
import type { NamedParam, SheetFunction } from '../../../shared/functions/define';
import { invoke } from '../../../shared/functions/invoke';
import { evaluate } from '../../../shared/catalogue/calculation';
import type { Cell, Grid } from '../../../shared/base/values';
import { isError, isGrid } from '../../../shared/base/values';
import { freeze } from '../../../shared/catalogue/sharing';
import { nativeCall, nativeForm } from '../../../shared/files/share/decisions/alive';
import { OPTIONS, simpleBook, unzip, worksheet } from '../../files/share/support/parts';
import { valuesOf } from '../../files/share/support/read';
import { seeded } from '../../files/share/support/seeded';
import { hasSoffice, startJudge } from '../../files/share/support/soffice';

const twins = CATALOGUE.filter((fn) => fn.native !== undefined);
const TRIES = 4000;

/** Any argument the record allows: near its bounds, in its middle, over many sizes. */
function number(param: NamedParam & { kind: 'number' | 'series' }, chance: () => number): number {
  const {
    min = param.above ?? -1000,
    max = min + 10 ** (1 + Math.floor(chance() * 6)),
    whole,
  } = { ...param, ...param.published };
  const raw = chance() < 0.5 ? min + chance() * (max - min) : min + (max - min) * 10 ** (-6 * chance());
  const kept = whole ? Math.round(raw) : raw;
  return param.above !== undefined && kept <= param.above ? param.above + (whole ? 1 : 1e-3) : kept;
}

function argument(param: NamedParam, chance: () => number): Cell | Grid | undefined {
  if (param.kind === 'flag') return undefined;
  if ('default' in param && param.default !== undefined && chance() < 0.2) return undefined;
  if (param.kind === 'number') return number(param, chance);
  if (param.kind === 'choice') return param.choices[Math.floor(chance() * param.choices.length)] ?? null;
  if (param.kind === 'series')
    return Array.from({ length: 1 + Math.floor(chance() * 5) }, () => [number(param, chance)]);
  return undefined;
}

const literal = (cell: Cell): string => (typeof cell === 'string' ? `"${cell}"` : String(cell));
const written = (arg: Cell | Grid | undefined): string =>
  arg === undefined
    ? ''
    : isGrid(arg)
      ? `{${arg.map((row) => row.map(literal).join(',')).join(';')}}`
      : literal(arg as Cell);

const single = (answer: unknown): unknown =>
  isGrid(answer) && answer.length === 1 && answer[0]?.length === 1 ? answer[0][0] : answer;

/** A trailing argument left out is not written at all. */
function trimmed(args: readonly (Cell | Grid | undefined)[]): (Cell | Grid | undefined)[] {
  const out = [...args];
  while (out.length > 0 && out.at(-1) === undefined) out.pop();
  return out;
}

function compareOnce(fn: SheetFunction, chance: () => number): boolean {
  const args = trimmed(fn.params.map((param) => argument(param, chance)));
  const ours = single(
    invoke(
      fn,
      args.map((arg) => (arg === undefined ? undefined : arg)),
    ),
  );
  if (isError(ours) || typeof ours !== 'number') return false;
  const native = nativeCall(fn, args.map(written));
  if (native === undefined) return false;
  const theirs = single(evaluate(`=${native}`));
  if (typeof theirs !== 'number' || Math.abs(theirs - ours) > 1e-9 * Math.max(Math.abs(ours), 1e-12))
    throw new Error(
      `${fn.name}(${args.map(written).join(',')}) is ${ours}, but ${native} is ${JSON.stringify(theirs)}`,
    );
  return true;
}

test('there are functions with a native twin', () => {
  expect(twins.map((fn) => fn.id)).toEqual(
    expect.arrayContaining(['HORMONE.VOLUME', 'FEED.DAILY', 'CHAIN.START']),
  );
});

test.each(twins.map((fn) => [fn.id, fn] as const))(
  '%s equals its native twin on thousands of random arguments',
  (_, fn) => {
    const chance = seeded(fn.id.length * 7919);
    let compared = 0;
    for (let i = 0; i < TRIES; i++) if (compareOnce(fn, chance)) compared++;
    expect(compared).toBeGreaterThan(TRIES / 4);
  },
);

test('native twins use only functions every spreadsheet knows without a prefix', () => {
  for (const fn of twins) {
    const words = [...(fn.native ?? '').matchAll(/([A-Z][A-Z0-9.]*)\(/g)].map((match) => match[1]);
    expect([
      fn.id,
      words.filter(
        (word) =>
          ![
            'LN',
            'EXP',
            'PRODUCT',
            'SUM',
            'ROUNDUP',
            'ROUND',
            'CEILING',
            'MAX',
            'MIN',
            'IF',
            'SQRT',
            'POWER',
            'COUNT',
            'AVERAGE',
            'INT',
          ].includes(word ?? ''),
      ),
    ]).toEqual([fn.id, []]);
  }
});

test('arguments are put in with brackets where they need them, defaults where they were left out', () => {
  expect(nativeForm('_xldudf_SPAWN_HORMONE_VOLUME(A1+1,B1)', findFunction)).toBe('(A1+1)*B1');
  expect(nativeForm('ROUND(spawn.hormone.volume(SUM(A1,A2)),1)', findFunction)).toBe(
    'ROUND(((SUM(A1,A2))*0.5),1)',
  );
  expect(nativeForm('_xldudf_SPAWN_FEED_DAILY(_xldudf_SPAWN_HORMONE_VOLUME(A1,1),2,3)', findFunction)).toBe(
    '((A1*1))*2*3',
  );
  expect(nativeForm('_xldudf_SPAWN_AMMONIA_SHARE(8,25)', findFunction)).toBeUndefined();
});

const plan = (v: number): Uint8Array =>
  simpleBook({
    sheets: {
      Plan: worksheet({
        A1: { v: 2 },
        A2: { v: 4 },
        B1: { f: '_xldudf_SPAWN_HORMONE_VOLUME(A1)', v },
        B2: { f: '_xldudf_SPAWN_AMMONIA_SHARE(8,25)', v: 0.0537 },
        C1: { f: '_xldudf_SPAWN_HORMONE_VOLUME(A1:A2,0.25)', how: 't="array" ref="C1:C2"', cm: true, v: 0.5 },
        C2: { v: 1 },
        D1: { f: 'SUM(_xlfn.ANCHORARRAY(C1))', v: 1.5 },
      }),
    },
  });

test('a twin stands in only when it gives the value in the cell; spilling ones go on spilling', () => {
  const alive = freeze(plan(1), { ...OPTIONS, keepAlive: true });
  if (alive.kind !== 'made') throw new Error(alive.kind);
  const xml = unzip(alive.bytes)['xl/worksheets/sheet1.xml'] ?? '';
  expect(alive.report).toMatchObject({ alive: 2, frozen: 1 });
  expect(xml).toContain('<c r="B1"><f>A1*0.5</f><v>1</v></c>');
  expect(xml).toContain('<c r="C1" cm="1"><f t="array" ref="C1:C2">(A1:A2)*0.25</f><v>0.5</v></c>');
  expect(xml).toContain('<f>SUM(_xlfn.ANCHORARRAY(C1))</f>');
  const stale = freeze(plan(1.7), { ...OPTIONS, keepAlive: true });
  expect(stale).toMatchObject({ kind: 'made', report: { alive: 1, frozen: 2 } });
});

(hasSoffice ? test : test.skip)(
  'LibreOffice gives the native twins the same values',
  async () => {
    const judge = startJudge(true);
    const chance = seeded(5);
    const expected: [string, number][] = [];
    const cells: Record<string, { f: string; v: number }> = {};
    for (const fn of twins)
      for (let tries = 0, kept = 0; tries < 200 && kept < 8; tries++) {
        const args = trimmed(fn.params.map((param) => argument(param, chance)));
        const ours = single(invoke(fn, args));
        const native = nativeCall(fn, args.map(written));
        // Where a double runs out of small numbers, programs go different ways.
        if (typeof ours !== 'number' || Math.abs(ours) < 1e-200 || native === undefined) continue;
        kept++;
        expected.push([native, ours]);
        cells[`A${expected.length}`] = { f: native, v: 0 };
      }
    const values = await valuesOf(judge.save(simpleBook({ sheets: { Plan: worksheet(cells) } })));
    judge.close();
    expect(expected.length).toBeGreaterThan(40);
    for (const [i, [native, ours]] of expected.entries()) {
      const got = values.get(`Plan!${i + 1},1`);
      expect([
        native,
        typeof got === 'number' && Math.abs(got - ours) <= 1e-9 * Math.max(Math.abs(ours), 1e-9),
      ]).toEqual([native, true]);
    }
  },
  120_000,
);
