import type { Answered, Tasks } from './messages';

/** The worker as the page asks it: started when it is needed first. */
const ADDRESS = 'localsheet/calculate.js';

interface Waiting {
  readonly done: (answer: never) => void;
  readonly failed: (fault: Error) => void;
}

class Beside {
  private worker: Worker | undefined;
  private count = 0;
  private readonly waiting = new Map<number, Waiting>();

  private start(): Worker {
    const worker = new Worker(new URL(ADDRESS, document.baseURI), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<Answered>) => {
      const found = this.waiting.get(data.id);
      this.waiting.delete(data.id);
      if ('failed' in data) found?.failed(new Error(data.failed));
      else found?.done(data.answer as never);
    };
    worker.onerror = () => {
      this.end('The part of the page that calculates did not start.');
    };
    return worker;
  }

  /** Whoever waits learns that no answer comes; asked again, another one starts. */
  private end(reason: string): void {
    this.worker?.terminate();
    this.worker = undefined;
    for (const { failed } of this.waiting.values()) failed(new Error(reason));
    this.waiting.clear();
  }

  ask<K extends keyof Tasks>(ask: Tasks[K]['ask']): Promise<Tasks[K]['answer']> {
    this.worker ??= this.start();
    const id = ++this.count;
    return new Promise((done, failed) => {
      this.waiting.set(id, { done, failed });
      this.worker?.postMessage({ id, ask });
    });
  }
}

export const beside = new Beside();
