import type { Executor } from '../executor';
import type { ActionInfo, ArgumentInfo, PathInfo, QueryInfo } from '../messages';
import { ActionType } from '../messages';
import { OfficeError } from './errors';
import type { ClientObject, Core } from './object';
import { core, createObject } from './object';
import { ObjectPath } from './path';

type Handler = (value: unknown) => void;

/** What was asked for since the last sync. */
interface Pending {
  readonly actions: ActionInfo[];
  readonly handlers: Map<number, Handler>;
  readonly paths: Map<number, ObjectPath>;
}
const nothing = (): Pending => ({ actions: [], handlers: new Map(), paths: new Map() });

/** Records calls on objects and sends them in one batch at sync, as the Excel client library does. */
export class RequestContext {
  readonly workbook: ClientObject;
  readonly trackedObjects = {
    add: (object: ClientObject): void => core(object).keep(),
    remove: (object: ClientObject): void => core(object).release(),
  };
  /** Ranges are kept from sync to sync while a run lasts. */
  isTracking = false;
  private readonly tracked = new Set<Core>();
  private pending = nothing();
  private lastId = 0;

  constructor(private readonly executor: Executor) {
    const path = new ObjectPath(this.nextId(), 1, '', undefined, undefined, [], false, false);
    this.workbook = createObject(this, 'Workbook', path);
  }

  get application(): unknown {
    return (this.workbook as unknown as { application: unknown }).application;
  }

  nextId(): number {
    return (this.lastId += 1);
  }

  track(object: Core): void {
    this.tracked.add(object);
  }

  /** Makes the other side follow the path now, so that order of calls is order of effects. */
  instantiate(path: ObjectPath | undefined, handler?: Handler): void {
    if (!path) return;
    if (!this.pending.paths.has(path.id)) {
      path.check();
      this.instantiate(path.parent);
      for (const inner of path.inside) this.instantiate(inner);
      this.pending.paths.set(path.id, path);
      this.push({ ActionType: ActionType.instantiate, Name: '', ObjectPathId: path.id }, (value) => {
        if (value !== null) path.become(value);
        handler?.(value);
      });
    } else if (handler)
      this.push({ ActionType: ActionType.instantiate, Name: '', ObjectPathId: path.id }, handler);
  }

  act(
    path: ObjectPath,
    type: number,
    name: string,
    detail: { info?: ArgumentInfo; query?: QueryInfo; inside?: readonly ObjectPath[] },
    handler?: Handler,
  ): void {
    this.instantiate(path);
    for (const inner of detail.inside ?? []) this.instantiate(inner);
    this.push(
      {
        ActionType: type,
        Name: name,
        ObjectPathId: path.id,
        ...(detail.info ? { ArgumentInfo: detail.info } : {}),
        ...(detail.query ? { QueryInfo: detail.query } : {}),
      },
      handler,
    );
  }

  private push(action: Omit<ActionInfo, 'Id'>, handler?: Handler): void {
    const Id = this.nextId();
    this.pending.actions.push({ Id, ...action });
    if (handler) this.pending.handlers.set(Id, handler);
  }

  load(object: ClientObject, option?: unknown): void {
    object.load(option);
  }

  async sync<T>(passThrough?: T): Promise<T | undefined> {
    const sent = this.pending;
    this.pending = nothing();
    if (sent.actions.length === 0) return passThrough;
    const paths: Record<string, PathInfo> = {};
    for (const path of sent.paths.values())
      for (let p: ObjectPath | undefined = path; p; p = p.parent) paths[String(p.id)] = p.toInfo();
    // Plain JSON crosses the border, nothing else.
    const body = JSON.parse(JSON.stringify({ Actions: sent.actions, ObjectPaths: paths })) as Parameters<
      Executor['execute']
    >[0];
    for (const path of sent.paths.values()) path.fade();
    const response = await this.executor.execute(body);
    for (const { ActionId, Value } of response.Results) sent.handlers.get(ActionId)?.(Value);
    if (response.Error)
      throw new OfficeError(response.Error.Code, response.Error.Message, response.Error.Location);
    return passThrough;
  }

  /** The end of a run: ranges found in it are let go. */
  async finish(): Promise<void> {
    this.isTracking = false;
    this.pending = nothing();
    for (const object of this.tracked) object.release();
    this.tracked.clear();
    await this.sync();
  }
}
