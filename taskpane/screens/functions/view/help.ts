import type { Example, SheetFunction } from '../../../../shared/functions/define';
import { SOURCES } from '../../../../shared/families/sources';
import type { Source } from '../../../../shared/families/sources';
import { useExample } from '../commands/functions';
import type { Child, VNode } from '../../../pane/frame/draw';
import { english, h } from '../../../pane/frame/draw';
import { unitText } from '../../../pane/values/show';
import { literal } from '../../../pane/values/typed';
import type { Scene } from '../../../pane/frame/parts';
import { button, section } from '../../../pane/frame/parts';

/** How far a source can be trusted, said plainly. */
const STANDINGS: Readonly<Record<Source['standing'], string>> = {
  seen: 'Read in the publication or a copy of it.',
  memory: 'From memory: the publication is named but its page was not seen. Check before relying on it.',
  practice: 'Common practice, no source. Watch your own fish and trust your own records more.',
  computed: 'Worked out by us from published figures.',
  standard: 'A definition or exact arithmetic.',
};
const isDoubtful = (standing: Source['standing']): boolean =>
  standing === 'memory' || standing === 'practice';

export const sourceItem = (key: string): Child => {
  const source = SOURCES[key];
  if (!source) return undefined;
  return h(
    'li',
    {},
    source.citation,
    source.doi && ` doi:${source.doi}`,
    source.note && h('span', { class: 'note' }, ` (${source.note})`),
    h(
      'p',
      { class: isDoubtful(source.standing) ? 'standing doubtful' : 'standing' },
      isDoubtful(source.standing) && h('span', { class: 'mark', 'aria-hidden': 'true' }, '!'),
      STANDINGS[source.standing],
    ),
  );
};

const givesText = (example: Example): string => {
  if (example.fails) return `${example.fails.code} (${example.fails.says})`;
  if (typeof example.gives === 'string') return example.gives;
  return (example.gives ?? [])
    .slice(0, 3)
    .map((row) => row.map((cell) => cell || '–').join(' · '))
    .join(' / ');
};

const exampleItem = (fn: SheetFunction, example: Example, { send }: Scene): VNode => {
  const args = example.args.map(literal);
  while (args.at(-1) === '') args.pop();
  return h(
    'li',
    { class: example.fails ? 'example fails' : 'example' },
    h('code', { class: 'formula' }, `=${fn.name}(${args.join(', ')})`),
    h(
      'p',
      {},
      h('span', { class: 'gives' }, example.fails ? 'refuses: ' : 'gives '),
      english('strong', {}, givesText(example)),
      ' – ',
      english('span', {}, example.because),
    ),
    button(
      'Try these numbers',
      () => {
        send(useExample, example.args);
      },
      { tone: 'quiet', says: `Try these numbers: ${fn.name}(${args.join(', ')})` },
    ),
  );
};

const columnsList = (fn: SheetFunction): Child =>
  fn.returns.kind !== 'value' &&
  h(
    'ul',
    { class: 'plain' },
    Object.values(fn.returns.columns).map((column) =>
      h(
        'li',
        {},
        english('strong', {}, column.title),
        column.quantity.unit && !['text', 'pH'].includes(column.quantity.unit)
          ? ` (${column.quantity.unit})`
          : '',
        column.doc && [' – ', english('span', {}, column.doc)],
      ),
    ),
  );

export const functionHelp = (fn: SheetFunction, scene: Scene): readonly VNode[] => [
  section(
    'What it gives',
    english('p', {}, fn.returns.doc),
    fn.returns.kind === 'value' &&
      unitText(fn.returns.quantity) &&
      h('p', { class: 'hint' }, `Unit: ${unitText(fn.returns.quantity)}`),
    columnsList(fn),
  ),
  ...(fn.help ? [section('How it works', english('p', {}, fn.help))] : []),
  section('Where it holds', english('p', {}, fn.valid)),
  section('Where it comes from', h('ul', { class: 'sources' }, fn.sources.map(sourceItem))),
  section(
    'Examples',
    h(
      'ul',
      { class: 'examples' },
      fn.examples.map((example) => exampleItem(fn, example, scene)),
    ),
  ),
];
