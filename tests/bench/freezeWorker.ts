import { freezeSteps, runInSlices } from '../../shared/catalogue/sharing';

/** The same work in a web worker: the page sends a file, hears of progress, and may say stop. */
const port = globalThis as unknown as {
  onmessage: ((event: MessageEvent<{ file?: ArrayBuffer; stopAt?: number }>) => void) | null;
  postMessage: (message: unknown) => void;
};

port.onmessage = ({ data }) => {
  if (!data.file) return;
  const start = performance.now();
  let steps = 0;
  let furthest = 0;
  void runInSlices(
    freezeSteps(new Uint8Array(data.file), { date: '14 March 2026', workbook: 'bench.xlsx' }),
    {
      pause: () =>
        new Promise((go) => {
          setTimeout(go);
        }),
      stride: 8,
      onProgress: () => {
        steps++;
        furthest = performance.now() - start;
      },
      isCancelled: () => data.stopAt !== undefined && performance.now() - start > data.stopAt,
    },
  ).then((result) => {
    port.postMessage({
      ms: performance.now() - start,
      steps,
      furthest,
      kind: result?.kind ?? 'cancelled',
      frozen: result?.kind === 'made' ? result.report.frozen : 0,
    });
  });
};
