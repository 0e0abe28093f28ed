// Long: one tool, from the text of a file to the list of what holds it
import { build } from 'esbuild';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import { compileFunction } from 'node:vm';
import type { Near } from '../../shared/base/near';
import type { Chosen } from '../../src/build/checks/chosen';
import { chosenIn, readsOf } from '../../src/build/checks/chosen';
import type { Held, NearDebts } from '../../src/build/checks/near';
import { isPlain } from '../../src/build/checks/near';

/**
 * npm run near [-- shared/records] [--all] [--loud]
 *
 * Which numbers the pairs beside them really hold: every one is moved a step up and a step down, and the pairs that
 * name its value and read it are run each time. A number is held where a case turns red both ways; held.json is written anew for the
 * files asked for, and `npm run check` compares. Listed debts are asked with --all only.
 *
 * The engine is bundled once with a question at every place that reads such a number. Cases run with the answer
 * changed; what is kept from case to case is forgotten in between. A number that is read while modules load, or once
 * for all, is asked of modules loaded anew.
 */
const [HELD, DEBTS] = ['tests/near/held.json', 'tests/near/debts.json'];
const only = process.argv.slice(2).find((one) => !one.startsWith('--')) ?? 'shared';
const [isAll, isLoud] = ['--all', '--loud'].map((one) => process.argv.includes(one));

const read = (file: string): string => readFileSync(file, 'utf8');
const json = <T>(file: string): T => JSON.parse(read(file)) as T;
const sources = readdirSync('shared', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .map((file) => join('shared', file))
  .sort();
const cased = sources.filter((file) => /export const NEAR\b/.test(read(file)));
const chosen = new Map(sources.map((file) => [file, isPlain(file) ? [] : chosenIn(file, read(file))]));
const keyOf = (file: string, { name }: Chosen): string => `${file}: ${name}`;

/** Names of constants that a file takes from another, and the numbers they are. */
function takenBy(file: string, text: string): Map<string, string> {
  const names = new Map<string, string>();
  for (const [, list = '', path = ''] of text.matchAll(/import \{([^}]*)\} from '(\.[^']*)'/g)) {
    const from = ['.ts', '/index.ts']
      .map((end) => join(dirname(file), path) + end)
      .find((one) => existsSync(one));
    for (const name of list.split(',').map((one) => one.trim()))
      if (from && chosen.get(from)?.some((one) => one.name === name)) names.set(name, `${from}: ${name}`);
  }
  return names;
}
/** The text of a file in which every reader of such a number asks whether it is moved. */
function asking(file: string): string {
  const text = read(file);
  const mine = chosen.get(file) ?? [];
  const names = new Map([
    ...takenBy(file, text),
    ...mine.filter(({ isNamed }) => isNamed).map((one) => [one.name, keyOf(file, one)] as const),
  ]);
  const places = [
    ...mine.filter(({ isNamed }) => !isNamed).map((one) => ({ ...one, key: keyOf(file, one) })),
    ...readsOf(file, text, new Set(names.keys())).map((one) => ({ ...one, key: names.get(one.name) ?? '' })),
  ];
  let made = text;
  for (const { key, start, end } of places.sort((a, b) => b.start - a.start))
    made = `${made.slice(0, start)}__near(${JSON.stringify(key)}, ${made.slice(start, end)})${made.slice(end)}`;
  return made.replace(
    /^((?:export )?const \w+ = )(new (?:Weak)?Map<.*>\(\));$/gm,
    (all, head: string, map: string) =>
      // A table that is filled while the module loads is no memory.
      /const [a-z]/.test(head) ? `${head}__kept(() => ${map}) as ${map.slice(4, -2)};` : all,
  );
}

const root = resolve('.');
const bundled = await build({
  stdin: {
    contents: `module.exports = {${cased.map((file) => `${JSON.stringify(file)}: () => require('./${file}').NEAR`).join(',')}}`,
    resolveDir: root,
  },
  bundle: true,
  write: false,
  metafile: true,
  platform: 'node',
  format: 'cjs',
  packages: 'external',
  plugins: [
    {
      name: 'asking',
      setup: ({ onLoad }) => {
        onLoad({ filter: /\/shared\/.*\.ts$/ }, ({ path }) => ({
          contents: asking(path.slice(root.length + 1)),
          loader: 'ts',
        }));
      },
    },
  ],
});
const factory = compileFunction(bundled.outputFiles[0]?.text ?? '', [
  'require',
  'module',
  'exports',
  '__near',
  '__kept',
]);
const load = createRequire(join(root, 'package.json'));

type Store = Map<unknown, unknown> | WeakMap<WeakKey, unknown>;
/** The engine with one number another: `move` sets which, and forgets what was kept. */
class Engine {
  readonly touched = new Set<string>();
  private moved: readonly [key: string, to: number] | undefined;
  private isShare = false;
  private epoch = 0;
  private readonly modules: Record<string, () => readonly Near[]>;

  constructor(key?: string, to = NaN, isShare = false) {
    if (key !== undefined) this.move(key, to, isShare);
    const made = { exports: {} };
    factory(load, made, made.exports, this.near, this.kept);
    this.modules = made.exports;
  }
  private readonly near = (key: string, value: number): number => {
    this.touched.add(key);
    if (this.moved?.[0] !== key) return value;
    return this.isShare ? value * this.moved[1] : this.moved[1];
  };
  private readonly kept = (make: () => Store): object => {
    let [store, from] = [make(), this.epoch];
    return new Proxy(
      {},
      {
        get: (_, name) => {
          if (from !== this.epoch) [store, from] = [make(), this.epoch];
          const value: unknown = Reflect.get(store, name, store);
          return typeof value === 'function' ? value.bind(store) : value;
        },
      },
    );
  };
  /** To a number, or by a share of what it is. */
  move(key?: string, to = NaN, isShare = false): void {
    this.isShare = isShare;
    this.moved = key === undefined ? undefined : [key, to];
    this.epoch++;
  }
  cases(file: string): readonly Near[] {
    return this.modules[file]?.() ?? [];
  }
}
const answersOf = ({ below, above }: Near): string => {
  try {
    return JSON.stringify([below(), above()]);
  } catch (error) {
    return `it fails: ${String(error).slice(0, 80)}`;
  }
};

interface Case {
  readonly file: string;
  readonly near: Near;
  readonly asks: ReadonlySet<string>;
}
const engine = new Engine();
/** Cases of a room hold its own numbers. */
const room = only.split('/').slice(0, 2).join('/');
const once = new Set<string>();
const cases: Case[] = [];
for (const file of cased) {
  if (!file.startsWith(room)) continue;
  const list = engine.cases(file);
  for (const key of engine.touched) once.add(key);
  for (const near of list) {
    const started = process.cpuUsage().user;
    const got = answersOf(near);
    const took = (process.cpuUsage().user - started) / 1000;
    if (got !== JSON.stringify(near.answers)) {
      // Red as it stands, it would be red for every number that is moved.
      console.log(`RED ${file}: ${near.number}: ${got}, not ${JSON.stringify(near.answers)}`);
      engine.touched.clear();
      continue;
    }
    if (isLoud && took > 150) console.log(`slow: ${file}: ${near.number} ${Math.round(took)} ms`);
    const first = new Set(engine.touched);
    engine.touched.clear();
    engine.move();
    answersOf(near);
    cases.push({ file, near, asks: new Set([...first, ...engine.touched]) });
    for (const key of first) if (!engine.touched.has(key)) once.add(key);
    engine.touched.clear();
  }
}
if (process.argv.includes('--base')) process.exit(0);

/** A small step: a tenth, whole numbers of few by one. */
function steps(value: number): readonly [up: number, down: number] {
  if (!Number.isInteger(value)) return [value * 1.1, value * 0.9];
  const step = Math.max(1, Math.round(Math.abs(value) / 10));
  return [value + step, value - step];
}
const isRed = (near: Near): boolean => answersOf(near) !== JSON.stringify(near.answers);
/** The case that turns red when a number is another, the likeliest first. */
function redCase(key: string, to: number, isShare: boolean, order: readonly Case[]): Case | undefined {
  engine.move(key, to, isShare);
  const found = order.find(({ near }) => isRed(near));
  engine.move();
  if (found || !once.has(key)) return found;
  const anew = new Engine(key, to, isShare);
  return order.find(({ file, near }) =>
    anew.cases(file).some((one) => one.number === near.number && isRed(one)),
  );
}

const held = json<Held>(HELD);
const debts = new Set(
  Object.values(json<NearDebts>(DEBTS)).flatMap((files) =>
    Object.entries(files).flatMap(([file, names]) => names.map((name) => `${file}: ${name}`)),
  ),
);
const fresh: Record<string, Record<string, readonly [string, string]>> = {};
const loose: string[] = [];
let asked = 0;
const valueOf = (written: string): number =>
  Number(new Function('Math', `return ${written.replace(/\b[A-Z][A-Z_\d]+\b/g, 'NaN')}`)(Math));
const labelOf = ({ file, near }: Case): string => `${file}: ${near.number}`;
for (const file of sources) {
  if (!file.startsWith(only)) {
    if (held[file]) fresh[file] = held[file];
    continue;
  }
  for (const one of chosen.get(file) ?? []) {
    const key = keyOf(file, one);
    const before = held[file]?.[one.name]?.[1];
    if (!isAll && debts.has(key) && !before) continue;
    asked++;
    const value = valueOf(one.written);
    // A pair names its number: a case that turns red by the way holds nothing for long.
    const named = [
      value,
      ...[...one.written.matchAll(/\d[\d_.]*(?:e-?\d+)?/g)].map(([text]) => Number(text.replaceAll('_', ''))),
    ];
    const order = cases
      .filter(({ near, asks }) => named.includes(near.value) && (asks.has(key) || once.has(key)))
      .sort((a, b) => Number(labelOf(b) === before) - Number(labelOf(a) === before));
    // What is worked out from another number is moved by a share.
    const isShare = Number.isNaN(value);
    const by = (isShare ? [1.1, 0.9] : steps(value)).map((to) => redCase(key, to, isShare, order));
    const [up, down] = by;
    if (up && down) (fresh[file] ??= {})[one.name] = [one.written, labelOf(up)];
    else
      loose.push(
        `${key} = ${one.written}: ${up ? 'only up' : down ? 'only down' : 'neither way'}, ${order.length} cases read it`,
      );
    if (isLoud) console.log(by.map((x) => (x ? '+' : '-')).join(''), key, up ? labelOf(up) : '');
  }
}
for (const one of loose) console.log(`not held: ${one}`);
console.log(`${asked} numbers moved both ways, ${asked - loose.length} caught`);
const lost = Object.entries(held).flatMap(([file, names]) =>
  Object.keys(names)
    .filter((name) => !fresh[file]?.[name])
    .map((name) => `${file}: ${name}`),
);
for (const one of lost) console.log(`held before and not now: ${one}`);
if (lost.length > 0) process.exitCode = 1;
if (!process.argv.includes('--dry')) writeFileSync(HELD, `${JSON.stringify(fresh, undefined, 2)}\n`);
