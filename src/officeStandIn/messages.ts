/**
 * What a client sends with each sync and what it gets back: the form the Excel client library uses on the
 * wire.
 */
export const ActionType = { instantiate: 1, query: 2, method: 3, set: 4 } as const;
export const PathType = {
  global: 1,
  newObject: 2,
  method: 3,
  property: 4,
  indexer: 5,
  reference: 6,
  nullObject: 7,
} as const;

export interface ArgumentInfo {
  readonly Arguments?: readonly unknown[];
  /** Per argument the path of an object passed in its place, 0 or null for plain values. */
  readonly ReferencedObjectPathIds?: readonly (number | null)[];
}
export interface PathInfo {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: ArgumentInfo;
}
export interface QueryInfo {
  readonly Select?: readonly string[];
  readonly Expand?: readonly string[];
  readonly Top?: number;
  readonly Skip?: number;
}
export interface ActionInfo {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: ArgumentInfo;
  readonly QueryInfo?: QueryInfo;
}
export interface RequestBody {
  readonly Actions: readonly ActionInfo[];
  readonly ObjectPaths: Readonly<Record<string, PathInfo>>;
}

export interface ActionResult {
  readonly ActionId: number;
  readonly Value: unknown;
}
export interface ErrorBody {
  readonly Code: string;
  readonly Message: string;
  readonly Location: string;
  readonly ActionIndex: number;
  readonly HttpStatusCode: number;
}
export interface ResponseBody {
  readonly Results: readonly ActionResult[];
  readonly Error?: ErrorBody;
}
