import type { Awaitable, StandInBook } from './book';

/**
 * One object of the model as the executor sees it, under the names used on the wire (Name, GetRange). A node
 * is made when a batch first needs it and forgotten with the batch; only the book keeps state.
 */
export interface ObjectNode {
  readonly type: string;
  /** What finds the object again: { Id } for members of collections, { _ReferenceId } for kept ranges. */
  readonly identity?: () => Awaitable<Readonly<Record<string, unknown>>>;
  readonly scalars: Readonly<Record<string, () => Awaitable<unknown>>>;
  readonly setters?: Readonly<Record<string, (value: unknown) => Awaitable<void>>>;
  readonly links?: Readonly<Record<string, () => Awaitable<ObjectNode | null>>>;
  readonly methods?: Readonly<Record<string, (...args: readonly unknown[]) => Awaitable<unknown>>>;
  readonly item?: (key: unknown) => Awaitable<ObjectNode | null>;
  readonly items?: () => Awaitable<readonly ObjectNode[]>;
}

export const isNode = (value: unknown): value is ObjectNode =>
  typeof value === 'object' && value !== null && 'type' in value && 'scalars' in value;

/** What nodes share during a session. */
export interface Env {
  readonly book: StandInBook;
  /** Kept ranges by reference id. */
  readonly references: Map<string, ObjectNode>;
  nextReference: number;
  /** Values may be older than the last change. */
  isStale: boolean;
  /** Shows a finished workbook to the user: a window in Excel, a download in the local sheet. */
  readonly openWorkbook: (base64: string) => Awaitable<void>;
}

/** Before values are read: waits for calculation once after changes. */
export async function settled(env: Env): Promise<StandInBook> {
  if (env.isStale) {
    env.isStale = false;
    await env.book.settle();
  }
  return env.book;
}
