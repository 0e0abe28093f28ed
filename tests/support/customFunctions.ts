import type { Host } from '../../src/shell/register';

/** The runtime's error class, as far as its published declaration goes. */
export class FakeError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message ?? '');
  }
}

export interface FakeHost extends Host {
  readonly bodies: Map<string, (...args: unknown[]) => unknown>;
}

/** Registers and calls as Excel does: every declared argument, null where left out, then the invocation. */
export function fakeHost(): FakeHost {
  const bodies: FakeHost['bodies'] = new Map();
  return {
    bodies,
    Error: FakeError,
    associate: (id, body) => {
      bodies.set(id.toUpperCase(), body);
    },
  };
}
