/** Runs step-by-step work in slices that leave room for a screen and for a change of mind. */

export interface Slices<P> {
  /** Waits a moment, so that the screen can be drawn: () => new Promise((go) => setTimeout(go)). */
  readonly pause: () => Promise<void>;
  readonly onProgress?: (progress: P) => void;
  readonly isCancelled?: () => boolean;
  /** Steps between two pauses. */
  readonly stride?: number;
}

/** undefined when it was cancelled; nothing was made then. */
export async function runInSlices<P, R>(
  steps: Generator<P, R>,
  { pause, onProgress, isCancelled, stride = 4 }: Slices<P>,
): Promise<R | undefined> {
  let count = 0;
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    onProgress?.(step.value);
    if (++count % stride !== 0) continue;
    await pause();
    if (isCancelled?.()) return undefined;
  }
}
