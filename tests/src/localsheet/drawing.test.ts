import type { Engine } from '../../../src/localsheet/univer/engine';
import { Drawing } from '../../../src/localsheet/univer/book/drawing';

/** Stands in for the engine's canvas: the one switch that is turned, and frames that come when the test says so. */
function table() {
  const canvas = { renderEvenInBackground: true };
  const engine = {
    injector: { get: () => ({ getRenderById: () => ({ engine: canvas }) }) },
  } as unknown as Engine;
  const frames: (() => void)[] = [];
  globalThis.requestAnimationFrame = (frame) => frames.push(frame as () => void);
  return {
    drawing: new Drawing(engine, () => 'book'),
    draws: () => canvas.renderEvenInBackground,
    frame: () => {
      frames.splice(0).forEach((next) => {
        next();
      });
    },
  };
}

beforeEach(() => {
  jest.useFakeTimers();
});
afterEach(() => {
  jest.useRealTimers();
});

describe('drawing waits while the pane writes', () => {
  it('rests from the first request to a moment after the last', () => {
    const { drawing, draws } = table();
    drawing.hold();
    expect(draws()).toBe(false);
    drawing.release();
    jest.advanceTimersByTime(49);
    expect(draws()).toBe(false);
    jest.advanceTimersByTime(1);
    expect(draws()).toBe(true);
  });

  it('stays at rest when the next request follows, and while another still runs', () => {
    const { drawing, draws } = table();
    drawing.hold();
    drawing.release();
    jest.advanceTimersByTime(49);
    drawing.hold();
    drawing.hold();
    drawing.release();
    jest.advanceTimersByTime(200);
    expect(draws()).toBe(false);
    drawing.release();
    jest.advanceTimersByTime(50);
    expect(draws()).toBe(true);
  });

  it('lets the sheet be seen once a second in a long writing, and for good at its end', () => {
    const { drawing, draws, frame } = table();
    drawing.hold();
    jest.advanceTimersByTime(999);
    expect(draws()).toBe(false);
    jest.advanceTimersByTime(1);
    expect(draws()).toBe(true);
    frame();
    expect(draws()).toBe(true);
    frame();
    expect(draws()).toBe(false);
    jest.advanceTimersByTime(1000);
    drawing.release();
    frame();
    frame();
    jest.advanceTimersByTime(5000);
    expect(draws()).toBe(true);
  });
});
