import { grouped } from '../../../pane/values/show';
import type { VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { button } from '../../../pane/frame/parts';
import { shownUnit } from '../../../pane/values/units';
import { momentOf, wordsFor } from '../../../words/words';
import { takeLineBack } from '../commands/notebook';
import type { NotebookLine } from '../state/notebook';
import { WHAT } from '../state/notebook';

const decimals = (value: number): number => (Number.isInteger(value) ? 0 : Math.abs(value) < 10 ? 2 : 1);

/** "dead 12" as the pane's language has it. */
export const lineText = ({ what, value, unit, note }: NotebookLine, scene: Scene): string => {
  const { vat } = wordsFor(scene.state);
  const name = vat.marks[what] ?? vat.fields[what] ?? WHAT[what] ?? what;
  const as = shownUnit(unit, scene.state.settings);
  const shown = value === null ? null : as.fromMetric(value);
  const number = shown === null ? '' : ` ${grouped(shown, decimals(shown))}${unit ? ` ${as.unit}` : ''}`;
  return `${name}${number}${note ? `, ${note}` : ''}`;
};

/** A line as it was noted, and a way to take it back. */
export const lineView = (line: NotebookLine, scene: Scene, isLast: boolean): VNode => {
  const { vat } = wordsFor(scene.state);
  return h(
    'li',
    { class: 'line', key: String(line.id) },
    h('span', { class: 'clock' }, momentOf(scene.state, line.at)),
    h('span', { class: 'line-vat' }, vat.of(line.vat)),
    h('span', { class: 'line-text' }, lineText(line, scene)),
    isLast &&
      button(
        '↶',
        () => {
          scene.send(takeLineBack, line.id);
        },
        { id: 'line-back', tone: 'quiet', says: vat.undo },
      ),
  );
};
