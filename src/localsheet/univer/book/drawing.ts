import { Quantity } from '@univerjs/core';
import type { Engine as Canvas } from '@univerjs/engine-render';
import { IRenderManagerService } from '@univerjs/engine-render';
import type { Engine } from '../engine';

/** The next request of the pane follows within this time, or there is none. */
const REST_MS = 50;
/** So often the sheet is drawn while it is written, so that one sees it grow. */
const GLANCE_MS = 1000;

/**
 * Drawing waits while the pane writes: the engine would draw the whole screen between any two of its requests, which
 * took as long as the writing. What is due to be drawn stays due.
 */
export class Drawing {
  #holders = 0;
  #canvas: Canvas | undefined;
  #rest: ReturnType<typeof setTimeout> | undefined;
  #glance: ReturnType<typeof setInterval> | undefined;
  constructor(
    private readonly engine: Engine,
    private readonly unitId: () => string,
  ) {}

  hold(): void {
    this.#holders++;
    clearTimeout(this.#rest);
    // Another workbook may have come; without a screen, as in tests, there is nothing to hold.
    const canvas = this.engine.injector
      .get(IRenderManagerService, Quantity.OPTIONAL)
      ?.getRenderById(this.unitId())?.engine;
    if (canvas !== this.#canvas) this.#draws(true);
    this.#canvas = canvas;
    this.#draws(false);
    this.#glance ??= setInterval(() => {
      this.#draws(true);
      requestAnimationFrame(() => {
        requestAnimationFrame(() => {
          if (this.#holders > 0) this.#draws(false);
        });
      });
    }, GLANCE_MS);
  }

  release(): void {
    this.#holders--;
    if (this.#holders > 0) return;
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => {
      clearInterval(this.#glance);
      this.#glance = undefined;
      this.#draws(true);
    }, REST_MS);
  }

  #draws(does: boolean): void {
    if (this.#canvas) this.#canvas.renderEvenInBackground = does;
  }
}
