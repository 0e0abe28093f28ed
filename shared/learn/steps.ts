/** Work that comes in steps, done in one go. */
export function atOnce<T>(steps: Generator<unknown, T>): T {
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}
