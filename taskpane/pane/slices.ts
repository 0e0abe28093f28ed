import type { ShareProgress } from '../../shared/catalogue/sharing';
import type { PortTell } from '../host/port';

/** Long work on a file in slices: the pane stays awake, shows how far it is, and can be told to stop. */

/** A slice this long is not felt; more pauses would only make the work slower. */
const SLICE_MS = 24;

/** Each telling draws the pane anew; a bar that moves ten times a second is smooth. */
const TOLD_MS = 100;

const LABELS: Readonly<Record<ShareProgress['step'], string>> = {
  unpack: 'Unpacking the workbook',
  read: 'Reading formulas and values',
  write: 'Putting values in place',
  page: 'Writing the page',
  pack: 'Packing the copy',
  prove: 'Searching the copy for what was left out',
};
/** Where each step begins and ends, of a hundred. */
type Spans = Readonly<Record<ShareProgress['step'], readonly [number, number]>>;
export const LOOKING: Spans = {
  unpack: [0, 30],
  read: [30, 100],
  write: [100, 100],
  page: [100, 100],
  pack: [100, 100],
  prove: [100, 100],
};
export const MAKING: Spans = {
  unpack: [0, 10],
  read: [10, 50],
  write: [50, 55],
  page: [55, 75],
  pack: [75, 90],
  prove: [90, 100],
};

const pause = (): Promise<void> =>
  new Promise((go) => {
    setTimeout(go);
  });

interface Progress {
  readonly label: string;
  readonly done: number;
}
/** undefined when the user stopped it. */
async function sliced<S, R>(
  steps: Generator<S, R>,
  progressOf: (said: S) => Progress,
  tell: PortTell,
  isStopped: () => boolean,
): Promise<R | undefined> {
  let begun = performance.now();
  let told = -Infinity;
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    const now = performance.now();
    if (now - begun < SLICE_MS) continue;
    if (now - told >= TOLD_MS) {
      const { label, done } = progressOf(step.value);
      tell({ label, done: Math.round(done), total: 100, canStop: true });
      told = performance.now();
    }
    await pause();
    if (isStopped()) return undefined;
    begun = performance.now();
  }
}

/** undefined when the user stopped it. */
export const inSlices = <R>(
  steps: Generator<ShareProgress, R>,
  spans: Spans,
  tell: PortTell,
  isStopped: () => boolean,
): Promise<R | undefined> =>
  sliced(
    steps,
    ({ step, done }) => {
      const [from, to] = spans[step];
      return { label: LABELS[step], done: from + (to - from) * done };
    },
    tell,
    isStopped,
  );

interface Span {
  readonly label: string;
  readonly from: number;
  readonly to: number;
}
/** The same for work that only says which share of it is done. */
export const inShares = <R>(
  steps: Generator<number, R>,
  { label, from, to }: Span,
  tell: PortTell,
  isStopped: () => boolean,
): Promise<R | undefined> =>
  sliced(steps, (share) => ({ label, done: from + (to - from) * share }), tell, isStopped);
