import { chooseSeason, forgetSeason, readChosenSeason } from '../commands/again';
import { takeSeasonBack } from '../commands/writeOver';
import { hasWorkbook } from '../../../pane/keeping/state';
import type { Child } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Again } from '../state/season';
import type { Scene } from '../../../pane/frame/parts';
import { banner, button, inputOf } from '../../../pane/frame/parts';

/** What was read of the season in the workbook, and which one when there are several. */

const nameOf = (suffix: string): string =>
  suffix.trim() === ''
    ? 'The first (“Today”, “Orders” …)'
    : `“${suffix.trim()}” (“Today${suffix}”, “Orders${suffix}” …)`;

const whichView = ({ seasons, chosen }: Again, { state, send }: Scene): Child =>
  seasons.length > 1 &&
  h(
    'div',
    { class: 'field' },
    h('label', { for: 'season-which' }, 'Which season'),
    h(
      'div',
      { class: 'with-button' },
      h(
        'select',
        {
          id: 'season-which',
          value: chosen,
          on: {
            change: (event) => {
              send(chooseSeason, inputOf(event));
            },
          },
        },
        seasons.map((suffix) => h('option', { value: suffix }, nameOf(suffix))),
      ),
      button(
        readChosenSeason.label,
        () => {
          send(readChosenSeason);
        },
        { tone: 'main', isOff: state.task !== undefined },
      ),
    ),
  );

const readView = ({ read, faults }: Again, { send }: Scene): Child => {
  if (faults.length > 0)
    return banner(
      'bad',
      faults.map((fault) => h('p', {}, fault)),
    );
  return (
    read && [
      banner(
        'good',
        h(
          'p',
          {},
          'The season was read; the form below shows it as it stands now. Change what is ' +
            'different, then work the plan out: every change shows before anything is written.',
        ),
      ),
      read.said.length > 0 &&
        h(
          'ul',
          { class: 'said' },
          read.said.map((sentence) => h('li', {}, sentence)),
        ),
      h(
        'div',
        { class: 'quick' },
        button(
          forgetSeason.label,
          () => {
            send(forgetSeason);
          },
          { tone: 'quiet' },
        ),
      ),
    ]
  );
};

/** Just after writing over, and whenever a season of the workbook is looked at. */
const backView = ({ state, send }: Scene): Child => {
  const { again, back } = state.season;
  return (
    (back !== undefined || again !== undefined) &&
    hasWorkbook(state) &&
    h(
      'div',
      { class: 'quick', key: 'back' },
      button(
        takeSeasonBack.label,
        () => {
          send(takeSeasonBack);
        },
        { tone: 'quiet', isOff: state.task !== undefined, id: 'season-back' },
      ),
    )
  );
};

export function againView(scene: Scene): Child {
  const { again, back } = scene.state.season;
  if (!again) return back === undefined ? undefined : h('section', { class: 'block' }, backView(scene));
  return h(
    'section',
    { class: 'block', key: 'again' },
    h('h3', {}, 'Planning again'),
    whichView(again, scene),
    h('div', { id: 'season-read', class: 'stack', tabindex: '-1' }, readView(again, scene)),
    backView(scene),
  );
}
