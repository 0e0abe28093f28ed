import { readFileSync } from 'node:fs';
import { createContext, runInContext } from 'node:vm';
import { CLASSES, wireName } from '../../src/officeStandIn/client/schema';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import type { Env, ObjectNode } from '../../src/officeStandIn/node';
import { isNode } from '../../src/officeStandIn/node';
import { workbookNode } from '../../src/officeStandIn/nodes/workbook';

/** Members newer than the library kept for tests; their use is guarded by a requirement set. */
const NEWER = new Set(['Note', 'NoteCollection']);
const NEWER_LINKS = new Set(['Worksheet.notes']);

type Prototype = Record<string, unknown> & {
  readonly _scalarPropertyNames?: readonly string[];
  readonly _scalarPropertyOriginalNames?: readonly string[];
};

function realClasses(): Record<string, { readonly prototype: Prototype } | undefined> {
  const file = 'node_modules/@microsoft/office-js/dist/excel-web-16.00.js';
  const page: Record<string, unknown> = {
    console,
    setTimeout: () => 0,
    clearTimeout: () => undefined,
    navigator: { userAgent: 't' },
    location: { href: 'https://localhost/' },
    document: {},
  };
  page.window = page;
  page.self = page;
  runInContext(readFileSync(file, 'utf8'), createContext(page));
  return (page as { Excel: Record<string, { prototype: Prototype }> }).Excel;
}

test(
  'every class and member the local sheet offers exists under the same name in the ' + 'Excel client library',
  () => {
    const real = realClasses();
    const missing: string[] = [];
    for (const [type, { read = [], write = [], links = {}, methods = {} }] of Object.entries(CLASSES)) {
      if (NEWER.has(type)) continue;
      const prototype = real[type]?.prototype;
      if (!prototype) {
        missing.push(type);
        continue;
      }
      const names = [...read, ...write, ...Object.keys(links), ...Object.keys(methods)];
      missing.push(
        ...names
          .filter(
            (name) =>
              !Object.getOwnPropertyNames(prototype).includes(name) && !NEWER_LINKS.has(`${type}.${name}`),
          )
          .map((name) => `${type}.${name}`),
      );
      // The getters need an instance; the metadata getters do not use it.
      const get = (name: string): readonly string[] =>
        (Object.getOwnPropertyDescriptor(prototype, name)?.get?.call({}) as readonly string[] | undefined) ??
        [];
      const scalars = get('_scalarPropertyNames');
      const wires = get('_scalarPropertyOriginalNames');
      for (const name of [...read, ...write])
        if (scalars.includes(name) && wires[scalars.indexOf(name)] !== wireName(name))
          missing.push(`${type}.${name} is ${wires[scalars.indexOf(name)] ?? '?'} on the wire`);
    }
    expect(missing).toEqual([]);
  },
);

const link = async (node: ObjectNode | undefined, name: string): Promise<ObjectNode | undefined> =>
  (await node?.links?.[name]?.()) ?? undefined;
const call = async (
  node: ObjectNode | undefined,
  name: string,
  ...args: unknown[]
): Promise<ObjectNode | undefined> => {
  const answer = await node?.methods?.[name]?.(...args);
  return isNode(answer) ? answer : undefined;
};

async function visit(node: ObjectNode | undefined, found: Map<string, ObjectNode>): Promise<void> {
  if (!node || found.has(node.type)) return;
  found.set(node.type, node);
  for (const name of Object.keys(node.links ?? {})) await visit(await link(node, name), found);
  for (const item of (await node.items?.()) ?? []) await visit(item, found);
}

/** One node of every type, on a book that holds one of everything. */
async function oneOfEach(): Promise<Map<string, ObjectNode>> {
  const env: Env = {
    book: Object.assign(createMemoryBook(), {
      xmlParts: () => [{ id: '{1}', namespace: 'urn:other', xml: '<a xmlns="urn:other"/>' }],
      deleteXmlPart: () => undefined,
    }),
    references: new Map(),
    nextReference: 1,
    isStale: false,
    openWorkbook: () => undefined,
  };
  const root = workbookNode(env);
  const sheet = await call(await link(root, 'Worksheets'), 'GetActiveWorksheet');
  const range = await call(sheet, 'GetRange', 'A1:B3');
  await call(await link(sheet, 'Tables'), 'Add', range, true);
  const chart = await call(await link(sheet, 'Charts'), 'Add', 'Line', range, 'Auto');
  await call(await link(range, 'ConditionalFormats'), 'Add', 'Custom');
  await call(await link(sheet, 'Names'), 'Add', 'rate', '=1');
  await call(await link(root, 'Settings'), 'Add', 'words', '[]');
  const note = await call(await link(sheet, 'Notes'), 'Add', 'D1', 'text');
  const parts = await call(await link(root, 'CustomXmlParts'), 'GetByNamespace', 'urn:other');
  const created = await call(await link(root, 'Application'), 'CreateWorkbook', '');
  const found = new Map<string, ObjectNode>();
  for (const node of [note, created, parts, root, range, chart]) await visit(node, found);
  return found;
}

const sorted = (names: readonly string[]): readonly string[] => [...names].sort();
const wired = (names: readonly string[]): readonly string[] => sorted(names.map(wireName));

/** What a node offers, in the terms of the schema. */
const offered = (node: ObjectNode | undefined, indexed: readonly string[]) => ({
  scalars: sorted(Object.keys(node?.scalars ?? {})),
  setters: sorted(Object.keys(node?.setters ?? {}).filter((name) => name !== 'Gridlines')),
  links: sorted(Object.keys(node?.links ?? {})),
  methods: sorted(
    Object.keys(node?.methods ?? {}).filter((name) => !name.startsWith('_') && !indexed.includes(name)),
  ),
  isCollection: node?.items !== undefined,
  hasIndexer: node?.item !== undefined || indexed.length === 0,
});

test('client schema and executor speak of the same members', async () => {
  const nodes = await oneOfEach();
  expect(sorted([...nodes.keys()])).toEqual(sorted(Object.keys(CLASSES)));
  for (const [type, { read = [], write = [], links = {}, methods = {}, items }] of Object.entries(CLASSES)) {
    const indexed = wired(
      Object.entries(methods)
        .filter(([, spec]) => typeof spec === 'object' && spec.isIndexer)
        .map(([name]) => name),
    );
    expect({ type, ...offered(nodes.get(type), indexed) }).toEqual({
      type,
      scalars: wired([...read, ...write]),
      setters: wired(write),
      links: wired(Object.keys(links)),
      methods: wired(Object.keys(methods)).filter((name) => !indexed.includes(name)),
      isCollection: items !== undefined,
      hasIndexer: true,
    });
  }
});
