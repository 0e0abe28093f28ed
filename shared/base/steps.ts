/**
 * Long work as steps: a generator that yields the share done, so that a host can pause, show how far it is,
 * or stop.
 */

/** Runs steps to their end without a pause. */
export function runNow<P, R>(steps: Generator<P, R>): R {
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}

/** Steps as a part of longer work: their shares run from `from` over `part`. */
export function* within<R>(steps: Generator<number, R>, from: number, part: number): Generator<number, R> {
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    yield from + part * step.value;
  }
}
