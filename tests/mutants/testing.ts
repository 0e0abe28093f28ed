import { ModernFakeTimers } from '@jest/fake-timers';
import { expect } from 'expect';
import { JSDOM } from 'jsdom';
import { ModuleMocker } from 'jest-mock';

/**
 * The words of a test file (test, describe, expect, hooks), run one after the other and broken off at the first
 * failure. Jest itself would start, map the checkout and load every module again for each mutant.
 */
type Body = (...given: unknown[]) => unknown;
interface Group {
  readonly name: string;
  readonly parent: Group | undefined;
  readonly before: Body[];
  readonly after: Body[];
  readonly beforeEach: Body[];
  readonly afterEach: Body[];
  readonly items: (Group | Case)[];
}
interface Case {
  readonly name: string;
  readonly body: Body;
}
const group = (name: string, parent?: Group): Group => ({
  name,
  parent,
  before: [],
  after: [],
  beforeEach: [],
  afterEach: [],
  items: [],
});

let at = group('');
const test = (name: string, body: Body): void => {
  at.items.push({ name, body });
};
const describe = (name: string, body: Body): void => {
  const inner = group(name, at);
  at.items.push(inner);
  at = inner;
  body();
  at = inner.parent as Group;
};
const each =
  (make: (name: string, body: Body) => void) =>
  (rows: readonly unknown[]) =>
  (name: string, body: Body): void => {
    for (const row of rows) make(name, () => (Array.isArray(row) ? body(...(row as unknown[])) : body(row)));
  };
const nothing = Object.assign(() => undefined, { each: () => () => undefined });
const testing = Object.assign(test, { each: each(test), skip: nothing, todo: nothing });
const describing = Object.assign(describe, { each: each(describe), skip: nothing });

const mocker = new ModuleMocker(globalThis as unknown as ConstructorParameters<typeof ModuleMocker>[0]);
let timers: ModernFakeTimers | undefined;
const jest = {
  fn: mocker.fn.bind(mocker),
  spyOn: mocker.spyOn.bind(mocker),
  restoreAllMocks: () => mocker.restoreAllMocks(),
  setTimeout: () => undefined,
  useFakeTimers: (given?: Parameters<ModernFakeTimers['useFakeTimers']>[0]) => {
    timers ??= new ModernFakeTimers({
      global: globalThis,
      config: { fakeTimers: {} } as ConstructorParameters<typeof ModernFakeTimers>[0]['config'],
    });
    timers.useFakeTimers(given);
  },
  useRealTimers: () => timers?.useRealTimers(),
  advanceTimersByTimeAsync: async (by: number) => timers?.advanceTimersByTimeAsync(by),
};

Object.assign(globalThis, {
  test: testing,
  it: testing,
  describe: describing,
  beforeAll: (body: Body) => at.before.push(body),
  afterAll: (body: Body) => at.after.push(body),
  beforeEach: (body: Body) => at.beforeEach.push(body),
  afterEach: (body: Body) => at.afterEach.push(body),
  expect,
  jest,
});

const runAll = async (bodies: readonly Body[]): Promise<void> => {
  for (const body of bodies) await body();
};
const lineage = (of: Group | undefined): Group[] => (of ? [...lineage(of.parent), of] : []);

async function runGroup(here: Group, file: string): Promise<void> {
  await runAll(here.before);
  const way = lineage(here);
  for (const item of here.items) {
    if ('items' in item) {
      await runGroup(item, file);
      continue;
    }
    expect.setState({ currentTestName: item.name, testPath: file, assertionCalls: 0, suppressedErrors: [] });
    for (const { beforeEach } of way) await runAll(beforeEach);
    await item.body();
    for (const { afterEach } of [...way].reverse()) await runAll(afterEach);
  }
  await runAll(here.after);
}

/** What a page brings that Node does not have; what both have stays Node's. */
function openPage(): () => void {
  const { window } = new JSDOM('<!doctype html>', { url: 'http://localhost/', pretendToBeVisual: true });
  const own = Object.getOwnPropertyNames(window).filter(
    (name) => !(name in globalThis) || ['Event', 'EventTarget', 'CustomEvent', 'MessageEvent'].includes(name),
  );
  const before = own.map((name) => [name, Object.getOwnPropertyDescriptor(globalThis, name)] as const);
  for (const name of own)
    Object.defineProperty(globalThis, name, {
      configurable: true,
      writable: true,
      value: (window as unknown as Record<string, unknown>)[name],
    });
  const mine = { window: globalThis, self: globalThis, top: globalThis, parent: globalThis };
  Object.assign(globalThis, mine);
  for (const name of ['addEventListener', 'removeEventListener', 'dispatchEvent'] as const)
    Object.assign(globalThis, { [name]: window[name].bind(window) });
  const navigator = Object.getOwnPropertyDescriptor(globalThis, 'navigator');
  Object.defineProperty(globalThis, 'navigator', { configurable: true, value: window.navigator });
  return () => {
    window.close();
    for (const [name, was] of before)
      if (was) Object.defineProperty(globalThis, name, was);
      else Reflect.deleteProperty(globalThis, name);
    for (const name of [...Object.keys(mine), 'addEventListener', 'removeEventListener', 'dispatchEvent'])
      Reflect.deleteProperty(globalThis, name);
    if (navigator) Object.defineProperty(globalThis, 'navigator', navigator);
    else Reflect.deleteProperty(globalThis, 'navigator');
  };
}

/** Runs one test file; gives the message of its first failure. */
export async function runTests(file: string, load: () => void): Promise<string | undefined> {
  at = group('');
  const top = at;
  const closePage = file.includes('/tests/taskpane/') ? openPage() : undefined;
  try {
    load();
    await runGroup(top, file);
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message.slice(0, 400) : String(error);
  } finally {
    jest.useRealTimers();
    jest.restoreAllMocks();
    closePage?.();
  }
}
