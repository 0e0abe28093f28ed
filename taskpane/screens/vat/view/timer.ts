import type { Child } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { button } from '../../../pane/frame/parts';
import { wordsFor } from '../../../words/words';
import { stopTimer } from '../commands/notebook';

const MINUTES_A_DAY = 1440;
const two = (n: number): string => String(n).padStart(2, '0');

/** The wait that is running: what for, how long still. */
export function timerView(scene: Scene, isInHead = false): Child {
  const { state, send } = scene;
  const { timer } = state.vat;
  if (!timer) return undefined;
  const { vat } = wordsFor(state);
  const seconds = Math.max(0, Math.round((timer.until - state.now) * MINUTES_A_DAY * 60));
  const isOver = seconds === 0;
  const left = `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
  return h(
    'div',
    {
      class: `timer${isOver ? ' over' : ''}${isInHead ? ' in-head' : ''}`,
      role: isOver ? 'alert' : 'timer',
    },
    h('span', {}, isOver ? `⏰ ${vat.timerOver(timer.what)}` : isInHead ? left : vat.timer(timer.what, left)),
    button(
      '×',
      () => {
        send(stopTimer);
      },
      { id: 'timer-stop', tone: 'quiet', says: isInHead ? `${vat.timerStop}: ${timer.what}` : vat.timerStop },
    ),
  );
}

/** The clock that runs, short enough to stand beside the name of a card: a line of its own would hide its fields. */
export const headClock = (scene: Scene): Child =>
  scene.state.vat.timer?.hasRung === false && timerView(scene, true);
