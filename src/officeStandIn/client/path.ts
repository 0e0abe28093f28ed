import type { ArgumentInfo, PathInfo } from '../messages';
import { PathType } from '../messages';
import { OfficeError } from './errors';

/**
 * How an object is found again on the other side. It starts as the call that made it and becomes an id once
 * one is known.
 */
export class ObjectPath {
  isValid = true;
  private kind: number;
  private name: string;
  private info: ArgumentInfo | undefined;
  /** Paths of objects among the arguments. */
  inside: readonly ObjectPath[];

  constructor(
    readonly id: number,
    kind: number,
    name: string,
    public parent: ObjectPath | undefined,
    info: ArgumentInfo | undefined,
    inside: readonly ObjectPath[],
    /** Not usable after the next sync, unless an id turns up. */
    private fades: boolean,
    readonly isCollection: boolean,
  ) {
    this.kind = kind;
    this.name = name;
    this.info = info;
    this.inside = inside;
  }

  toInfo(): PathInfo {
    return {
      Id: this.id,
      ObjectPathType: this.kind,
      Name: this.name,
      ...(this.parent ? { ParentObjectPathId: this.parent.id } : {}),
      ...(this.info ? { ArgumentInfo: this.info } : {}),
    };
  }

  get isReference(): boolean {
    return this.kind === PathType.reference;
  }

  check(): void {
    if (!this.isValid)
      throw new OfficeError(
        'InvalidObjectPath',
        'The object was found by a call that no longer holds: keep it, or find it again.',
      );
    this.parent?.check();
  }

  /** After a request: what was found by a fading call is gone. */
  fade(): void {
    if (this.fades) this.isValid = false;
  }

  become(identity: unknown): void {
    if (identity === null || identity === undefined) return this.becomeNull();
    const { _ReferenceId: reference, Id: id } = identity as { _ReferenceId?: string; Id?: string };
    if (typeof reference === 'string') this.settle(PathType.reference, reference, undefined, undefined);
    else if (typeof id === 'string' && this.parent?.isCollection)
      this.settle(PathType.indexer, '', this.parent, { Arguments: [id] });
  }

  becomeNull(): void {
    this.settle(PathType.nullObject, '', undefined, undefined);
  }

  private settle(
    kind: number,
    name: string,
    parent: ObjectPath | undefined,
    info: ArgumentInfo | undefined,
  ): void {
    this.kind = kind;
    this.name = name;
    this.parent = parent;
    this.info = info;
    this.inside = [];
    this.fades = false;
    this.isValid = true;
  }
}
