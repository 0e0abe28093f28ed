// Long: the stand-in for one object of Excel's model, member by member.
import type { ArgumentInfo } from '../messages';
import { ActionType, PathType } from '../messages';
import type { RequestContext } from './context';
import { notLoaded, OfficeError } from './errors';
import { readLoadOption } from './loadOption';
import { ObjectPath } from './path';
import type { ClassSpec, MethodSpec } from './schema';
import { CLASSES, wireName } from './schema';

/** A value that is there after the next sync. */
export class ClientResult {
  private isLoaded = false;
  private loaded: unknown;

  get value(): unknown {
    if (!this.isLoaded)
      throw new OfficeError(
        'ValueNotLoaded',
        'Wait for context.sync() before reading the value.',
        'clientResult.value',
      );
    return this.loaded;
  }

  accept(value: unknown): void {
    this.isLoaded = true;
    this.loaded = value;
  }
}

interface Packed {
  readonly info: ArgumentInfo;
  readonly inside: readonly ObjectPath[];
}

/** Objects among arguments travel as the ids of their paths. */
function pack(given: readonly unknown[]): Packed {
  const inside: ObjectPath[] = [];
  const deep = (value: unknown): unknown => {
    const core = coreOf(value);
    if (core) {
      inside.push(core.path);
      return { _ObjectPathId: core.path.id };
    }
    if (Array.isArray(value) || typeof value !== 'object' || value === null)
      return value === undefined ? null : value;
    return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, deep(part)]));
  };
  const cores = given.map(coreOf);
  for (const core of cores) if (core) inside.push(core.path);
  const ids = cores.map((core) => core?.path.id ?? 0);
  const plain = given.map((value, i) => cores[i]?.path.id ?? deep(value));
  return {
    info: { Arguments: plain, ...(ids.some(Boolean) ? { ReferencedObjectPathIds: ids } : {}) },
    inside,
  };
}

/**
 * What a script holds. Its members come from the schema; what they do is in the core behind it, so no name
 * can clash.
 */
export class ClientObject {
  constructor(readonly context: RequestContext) {}

  get isNullObject(): boolean {
    return core(this).isNullObject;
  }
  get items(): readonly ClientObject[] {
    return core(this).items;
  }
  load(option?: unknown): this {
    core(this).load(option);
    return this;
  }
  /** Several properties at once, deeper ones too. */
  set(properties: Readonly<Record<string, unknown>>): void {
    core(this).set(properties);
  }
  toJSON(): unknown {
    return core(this).toJSON();
  }
}

const cores = new WeakMap<object, Core>();
const coreOf = (value: unknown): Core | undefined =>
  typeof value === 'object' && value !== null ? cores.get(value) : undefined;
export const core = (object: ClientObject): Core => {
  const found = cores.get(object);
  if (!found) throw new OfficeError('GeneralException', 'The object was not made by this library.');
  return found;
};

export class Core {
  readonly face: ClientObject;
  private readonly values = new Map<string, unknown>();
  private readonly linked = new Map<string, Core>();
  private list: readonly Core[] | undefined;
  private isNull: boolean | undefined;
  private isKept = false;

  constructor(
    private readonly context: RequestContext,
    private readonly type: string,
    readonly path: ObjectPath,
  ) {
    this.face = new (makerOf(type))(context);
    cores.set(this.face, this);
  }

  get isNullObject(): boolean {
    if (this.isNull === undefined) throw notLoaded(this.type, 'isNullObject');
    return this.isNull;
  }

  load(option?: unknown): void {
    this.context.act(this.path, ActionType.query, '', { query: readLoadOption(option) }, (value) => {
      this.accept(value);
    });
  }

  set(properties: Readonly<Record<string, unknown>>): void {
    const spec = specOf(this.type);
    for (const [name, value] of Object.entries(properties)) {
      if (spec.links?.[name])
        this.link(name, spec.links[name]).set(value as Readonly<Record<string, unknown>>);
      else if (spec.write?.includes(name)) this.write(name, value);
      else throw new OfficeError('InvalidArgument', `${this.type}.${name} cannot be set.`);
    }
  }

  toJSON(): unknown {
    if (this.list) return { items: this.list.map((item) => item.toJSON()) };
    const links = [...this.linked]
      .filter(([, object]) => object.values.size > 0)
      .map(([name, object]) => [name, object.toJSON()] as const);
    return Object.fromEntries([...this.values, ...links]);
  }

  read(name: string): unknown {
    if (!this.values.has(name) && this.isNull !== true) throw notLoaded(this.type, name);
    return this.values.get(name);
  }

  /** A written property reads back at once, before the other side has seen it. */
  write(name: string, value: unknown): void {
    this.values.set(name, value);
    const { info, inside } = pack([value]);
    this.context.act(this.path, ActionType.set, wireName(name), { info, inside });
  }

  link(name: string, type: string): Core {
    let object = this.linked.get(name);
    if (!object) {
      const path = new ObjectPath(
        this.context.nextId(),
        PathType.property,
        wireName(name),
        this.path,
        undefined,
        [],
        false,
        isCollection(type),
      );
      this.linked.set(name, (object = new Core(this.context, type, path)));
    }
    return object;
  }

  get items(): readonly ClientObject[] {
    if (!specOf(this.type).items) throw new OfficeError('InvalidArgument', `${this.type} is no collection.`);
    if (!this.list) throw notLoaded(this.type, 'items');
    return this.list.map((item) => item.face);
  }

  call(name: string, spec: MethodSpec, given: readonly unknown[]): unknown {
    const { info, inside } = pack(given);
    if (spec === 'nothing')
      return this.context.act(this.path, ActionType.method, wireName(name), { info, inside });
    if (spec === 'value') {
      const result = new ClientResult();
      this.context.act(this.path, ActionType.method, wireName(name), { info, inside }, (value) => {
        result.accept(value);
      });
      return result;
    }
    const kind = spec.isIndexer ? PathType.indexer : PathType.method;
    const path = new ObjectPath(
      this.context.nextId(),
      kind,
      spec.isIndexer ? '' : wireName(name),
      this.path,
      info,
      inside,
      spec.fades === true,
      isCollection(spec.gives),
    );
    const object = new Core(this.context, spec.gives, path);
    object.arrive();
    return object.face;
  }

  /** A new object: followed now; a range is kept while its run lasts. */
  private arrive(): void {
    const settle = (value: unknown): void => {
      this.settleNull(value);
    };
    this.context.instantiate(this.path, settle);
    if (this.type !== 'Range' || !this.context.isTracking) return;
    this.context.track(this);
    this.keep();
  }

  keep(): void {
    if (this.type !== 'Range' || this.isKept) return;
    this.isKept = true;
    this.context.act(this.path, ActionType.method, '_KeepReference', {}, undefined);
    this.context.instantiate(this.path, (value) => {
      if (value !== null) this.path.become(value);
    });
  }

  release(): void {
    if (!this.isKept || this.isNull === true) return;
    this.isKept = false;
    if (this.path.isValid && this.path.isReference)
      this.context.act(this.path, ActionType.method, '_ReleaseReference', {});
    this.path.isValid = false;
  }

  private settleNull(value: unknown): void {
    this.isNull = value === null || value === undefined;
    if (this.isNull) this.path.becomeNull();
  }

  accept(value: unknown): void {
    this.settleNull(value);
    if (typeof value !== 'object' || value === null) return;
    this.path.become(value);
    const bag = value as Readonly<Record<string, unknown>>;
    const { read = [], write = [], links = {}, items } = specOf(this.type);
    for (const name of [...read, ...write])
      if (wireName(name) in bag) this.values.set(name, bag[wireName(name)]);
    for (const [name, type] of Object.entries(links))
      if (wireName(name) in bag) this.link(name, type).accept(bag[wireName(name)]);
    if (items && Array.isArray(bag._Items))
      this.list = bag._Items.map((item: unknown, i) => this.child(items, item, i));
  }

  /** Items with an id are found by it, others by their place. */
  private child(type: string, item: unknown, index: number): Core {
    const id = (item as { Id?: unknown } | null)?.Id;
    const path =
      typeof id === 'string'
        ? new ObjectPath(
            this.context.nextId(),
            PathType.indexer,
            '',
            this.path,
            { Arguments: [id] },
            [],
            false,
            false,
          )
        : new ObjectPath(
            this.context.nextId(),
            PathType.method,
            'GetItemAt',
            this.path,
            { Arguments: [index] },
            [],
            false,
            false,
          );
    const object = new Core(this.context, type, path);
    object.accept(item);
    return object;
  }
}

const specOf = (type: string): ClassSpec => CLASSES[type] ?? {};
const isCollection = (type: string): boolean => specOf(type).items !== undefined;

type Maker = new (context: RequestContext) => ClientObject;
const makers = new Map<string, Maker>();

/** One class per type, its members made from the schema. */
function makerOf(type: string): Maker {
  const known = makers.get(type);
  if (known) return known;
  const made = class extends ClientObject {};
  const { read = [], write = [], links = {}, methods = {} } = specOf(type);
  for (const name of [...read, ...write])
    Object.defineProperty(made.prototype, name, {
      get(this: ClientObject) {
        return core(this).read(name);
      },
      set(this: ClientObject, value: unknown) {
        if (!write.includes(name)) throw new OfficeError('InvalidArgument', `${type}.${name} cannot be set.`);
        core(this).write(name, value);
      },
    });
  for (const [name, target] of Object.entries(links))
    Object.defineProperty(made.prototype, name, {
      get(this: ClientObject) {
        return core(this).link(name, target).face;
      },
    });
  for (const [name, spec] of Object.entries(methods))
    Object.defineProperty(made.prototype, name, {
      value(this: ClientObject, ...given: readonly unknown[]) {
        return core(this).call(name, spec, given);
      },
    });
  makers.set(type, made);
  return made;
}

export const createObject = (context: RequestContext, type: string, path: ObjectPath): ClientObject =>
  new Core(context, type, path).face;
