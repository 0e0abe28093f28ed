/**
 * One tab writes a workbook. The browser's own locks say who: a lock goes with the tab that holds it, however
 * that ends.
 */
const PATIENCE = 1500;

/** True when this tab has the workbook now; the one it had before is let go. */
export class BookHold {
  private release: (() => void) | undefined;

  async take(id: string): Promise<boolean> {
    // Old browsers have no locks; then the last to write wins.
    if (!('locks' in navigator)) return true;
    // A page that is being reloaded lets go only a moment later.
    const patience = new AbortController();
    const timer = setTimeout(() => {
      patience.abort();
    }, PATIENCE);
    const held = await new Promise<boolean>((resolve) => {
      navigator.locks
        .request(`spawnbook workbook ${id}`, { signal: patience.signal }, () => {
          resolve(true);
          const before = this.release;
          return new Promise<void>((release) => {
            this.release = release;
            before?.();
          });
        })
        .catch(() => {
          resolve(false);
        });
    });
    clearTimeout(timer);
    return held;
  }

  drop(): void {
    this.release?.();
    this.release = undefined;
  }
}
