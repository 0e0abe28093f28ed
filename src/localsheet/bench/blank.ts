import { UniverInstanceType } from '@univerjs/core';
import { emptyWorkbook, startEngine } from '../univer/engine';

/**
 * The engine alone with an empty sheet, bundled and patched as the page is: what the local sheet's first screen
 * is measured beside.
 */
const FRAMES = 600;

async function drawn(container: HTMLElement): Promise<void> {
  for (let i = 0; i < FRAMES; i++) {
    await new Promise((resolve) => requestAnimationFrame(resolve));
    if ((container.querySelector('canvas')?.width ?? 0) > 100) return;
  }
}

const container = document.getElementById('sheet');
if (container) {
  const { univer } = startEngine(container);
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, emptyWorkbook());
  Object.assign(window, { blankDrawn: drawn(container) });
}
