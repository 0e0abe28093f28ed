import type { Awaitable, StandInBook } from './book';
import { ApiFailure, fail } from './failure';
import type { ActionInfo, ActionResult, ArgumentInfo, PathInfo, RequestBody, ResponseBody } from './messages';
import { ActionType, PathType } from './messages';
import type { Env, ObjectNode } from './node';
import { isNode } from './node';
import { workbookNode } from './nodes/workbook';
import { query } from './query';

/**
 * Runs the batches a client library sends, against a book, with Excel's manners: actions in order, the first
 * refusal stops the batch, what was done before it stays done.
 */
export interface Executor {
  execute(body: RequestBody): Promise<ResponseBody>;
}

type Objects = Map<number, ObjectNode | null>;
interface Batch {
  readonly env: Env;
  readonly paths: RequestBody['ObjectPaths'];
  readonly objects: Objects;
}

const isReference = (value: unknown): value is { readonly _ObjectPathId: number } =>
  typeof value === 'object' && value !== null && '_ObjectPathId' in value;

/** Objects inside arguments arrive as path ids, at the top or deeper down. */
async function resolveDeep(batch: Batch, value: unknown): Promise<unknown> {
  if (isReference(value)) return resolve(batch, value._ObjectPathId);
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  const answer: Record<string, unknown> = {};
  for (const [key, part] of Object.entries(value)) answer[key] = await resolveDeep(batch, part);
  return answer;
}

async function argumentsOf(batch: Batch, info: ArgumentInfo | undefined): Promise<unknown[]> {
  const given = info?.Arguments ?? [];
  const ids = info?.ReferencedObjectPathIds ?? [];
  const answer: unknown[] = [];
  for (const [i, value] of given.entries())
    answer.push(await (ids[i] ? resolve(batch, ids[i]) : resolveDeep(batch, value)));
  return answer;
}

const isReading = (name: string): boolean => name === '' || name.startsWith('Get') || name.startsWith('_');

async function call(
  batch: Batch,
  node: ObjectNode,
  name: string,
  info: ArgumentInfo | undefined,
): Promise<unknown> {
  const method = node.methods?.[name] ?? fail('ApiNotFound', `${node.type} has no ${name} here.`);
  const answer = await method(...(await argumentsOf(batch, info)));
  if (!isReading(name)) batch.env.isStale = true;
  return answer;
}

type Step = (batch: Batch, parent: ObjectNode, path: PathInfo) => Awaitable<ObjectNode | null>;
const STEPS: Readonly<Record<number, Step>> = {
  [PathType.property]: (_batch, parent, path) =>
    (parent.links?.[path.Name] ?? fail('ApiNotFound', `${parent.type} has no ${path.Name} here.`))(),
  [PathType.indexer]: async (batch, parent, path) =>
    (parent.item ?? fail('ApiNotFound', `${parent.type} is no collection.`))(
      (await argumentsOf(batch, path.ArgumentInfo))[0],
    ),
  [PathType.method]: async (batch, parent, path) => {
    const found = await call(batch, parent, path.Name, path.ArgumentInfo);
    return found === null || isNode(found)
      ? found
      : fail('GeneralException', `${parent.type}.${path.Name} is not an object.`);
  },
};

async function follow(batch: Batch, path: PathInfo): Promise<ObjectNode | null> {
  if (path.ObjectPathType === PathType.global) return workbookNode(batch.env);
  if (path.ObjectPathType === PathType.nullObject) return null;
  if (path.ObjectPathType === PathType.reference)
    return batch.env.references.get(path.Name) ?? fail('InvalidObjectPath', 'The object is no longer kept.');
  const parent = await resolve(batch, path.ParentObjectPathId ?? 0);
  const step =
    STEPS[path.ObjectPathType] ?? fail('ApiNotFound', `Path type ${path.ObjectPathType} is not known.`);
  return parent && step(batch, parent, path);
}

/** Each path is followed once in a batch, so a method that adds something adds it once. */
async function resolve(batch: Batch, id: number): Promise<ObjectNode | null> {
  const known = batch.objects.get(id);
  if (known !== undefined) return known;
  const path = batch.paths[String(id)] ?? fail('InvalidObjectPath', `There is no object path ${id}.`);
  const found = await follow(batch, path);
  batch.objects.set(id, found);
  return found;
}

const nodeFor = async (batch: Batch, action: ActionInfo): Promise<ObjectNode> =>
  (await resolve(batch, action.ObjectPathId)) ??
  fail('ItemNotFound', 'The object does not exist: test isNullObject first.');

type Performer = (batch: Batch, action: ActionInfo) => Promise<unknown>;
const PERFORMERS: Readonly<Record<number, Performer>> = {
  [ActionType.instantiate]: async (batch, action) => {
    const node = await resolve(batch, action.ObjectPathId);
    return node && ((await node.identity?.()) ?? {});
  },
  [ActionType.query]: async (batch, action) => {
    const node = await resolve(batch, action.ObjectPathId);
    return node && query(node, action.QueryInfo ?? {});
  },
  [ActionType.method]: async (batch, action) => {
    // Clients keep every range they are handed, also the one that turns out not to exist.
    if (action.Name.startsWith('_') && (await resolve(batch, action.ObjectPathId)) === null) return null;
    const answer = await call(batch, await nodeFor(batch, action), action.Name, action.ArgumentInfo);
    return answer === undefined || isNode(answer) ? null : answer;
  },
  [ActionType.set]: async (batch, action) => {
    const node = await nodeFor(batch, action);
    const set =
      node.setters?.[action.Name] ?? fail('ApiNotFound', `${node.type}.${action.Name} cannot be set here.`);
    await set((await argumentsOf(batch, action.ArgumentInfo))[0]);
    batch.env.isStale = true;
    return null;
  },
};

const perform = (batch: Batch, action: ActionInfo): Promise<unknown> =>
  (PERFORMERS[action.ActionType] ?? fail('ApiNotFound', `Action type ${action.ActionType} is not known.`))(
    batch,
    action,
  );

/** A method that adds runs when its path is first followed, so paths count as changes too. */
const readsOnly = (body: RequestBody): boolean =>
  body.Actions.every(
    (a) => a.ActionType <= ActionType.query || (a.ActionType === ActionType.method && isReading(a.Name)),
  ) &&
  Object.values(body.ObjectPaths).every((p) => p.ObjectPathType !== PathType.method || isReading(p.Name));

async function runAll(
  batch: Batch,
  actions: readonly ActionInfo[],
  breathe: ExecutorOptions['breathe'],
): Promise<ResponseBody> {
  const results: ActionResult[] = [];
  for (const [i, action] of actions.entries()) {
    try {
      await breathe?.();
      results.push({ ActionId: action.Id, Value: await perform(batch, action) });
    } catch (error) {
      const code = error instanceof ApiFailure ? error.code : 'GeneralException';
      const text = error instanceof Error ? error.message : String(error);
      const name = batch.paths[String(action.ObjectPathId)]?.Name ?? '';
      return {
        Results: results,
        Error: {
          Code: code,
          Message: text,
          Location: [name, action.Name].filter(Boolean).join('.'),
          ActionIndex: i,
          HttpStatusCode: 400,
        },
      };
    }
  }
  return { Results: results };
}

export interface ExecutorOptions {
  readonly openWorkbook?: (base64: string) => Awaitable<void>;
  /** Asked before each action: a page that has to answer meanwhile waits here for a moment now and then. */
  readonly breathe?: () => Awaitable<void>;
}

export function createExecutor(book: StandInBook, options: ExecutorOptions = {}): Executor {
  const env: Env = {
    book,
    references: new Map(),
    nextReference: 1,
    isStale: true,
    openWorkbook:
      options.openWorkbook ?? (() => fail('NotImplemented', 'This host cannot show another workbook.')),
  };
  let last: Promise<unknown> = Promise.resolve();
  const run = async (body: RequestBody): Promise<ResponseBody> => {
    const batch: Batch = { env, paths: body.ObjectPaths, objects: new Map() };
    // The user may have typed since the last batch.
    env.isStale = true;
    const all = () => runAll(batch, body.Actions, options.breathe);
    return readsOnly(body) ? all() : book.group(all);
  };
  return {
    // One batch at a time, in the order they were sent.
    execute(body) {
      const mine = last.then(() => run(body));
      last = mine.catch(() => undefined);
      return mine;
    },
  };
}
