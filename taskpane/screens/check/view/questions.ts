import type { ColumnQuestion } from '../../../../shared/records';
import type { FieldName } from '../../../../shared/records/fields';
import { fieldSpec, FIELD_NAMES } from '../../../../shared/records/fields';
import type { Checked, Meaning } from '../state/check';
import { saidOf, sureness } from '../state/check';
import { sayColumn } from '../commands/check';
import type { Child, VNode } from '../../../pane/frame/draw';
import { h } from '../../../pane/frame/draw';
import type { Scene } from '../../../pane/frame/parts';
import { inputOf } from '../../../pane/frame/parts';

/** The few columns whose meaning is unsure and would change most: asked before the list of all columns. */
const ASKED = 4;
const SAMPLES = 4;

const isMeaning = (text: string): text is Meaning =>
  text === 'ignore' || (FIELD_NAMES as readonly string[]).includes(text);
const nounOf = (field: FieldName): string => fieldSpec(field).noun;

function unitView(
  question: ColumnQuestion,
  field: Meaning,
  chosen: string | undefined,
  id: string,
  { units }: Checked,
  { send }: Scene,
): Child {
  const known = field === 'ignore' ? [] : (units[field] ?? []);
  if (field === 'ignore' || known.length < 2) return undefined;
  return h(
    'select',
    {
      id: `${id}-unit`,
      value: chosen ?? question.unit ?? known[0] ?? '',
      'aria-label': `Unit of ${question.header}`,
      on: {
        change: (event) => {
          send(sayColumn, {
            sheet: question.sheet,
            header: question.header,
            field,
            unit: inputOf(event),
          });
        },
      },
    },
    known.map((unit) => h('option', { value: unit }, unit)),
  );
}

function questionView(question: ColumnQuestion, at: number, result: Checked, scene: Scene): VNode {
  const { header, parent, sheet, samples, field, options } = question;
  const { state, send } = scene;
  const id = `check-ask-${at}`;
  const said = saidOf(state.check).find((one) => one.header === header && one.sheet === sheet);
  const now: Meaning = said?.field ?? field ?? 'ignore';
  const face = parent !== '' && parent !== header ? `${parent} – ${header}` : header;
  return h(
    'div',
    { class: 'field', key: `${sheet ?? ''} ${header} ${at}` },
    h('label', { for: id }, `What is “${face}”?`),
    h(
      'div',
      { class: 'actions' },
      h(
        'select',
        {
          id,
          value: now,
          'aria-describedby': `${id}-hint`,
          on: {
            change: (event) => {
              const meaning = inputOf(event);
              if (isMeaning(meaning)) send(sayColumn, { sheet, header, field: meaning });
            },
          },
        },
        h('option', { value: 'ignore' }, 'none of these'),
        [...new Set([...(now === 'ignore' ? [] : [now]), ...options])].map((one) =>
          h('option', { value: one }, nounOf(one)),
        ),
      ),
      unitView(question, now, said?.unit, id, result, scene),
    ),
    h(
      'p',
      { id: `${id}-hint`, class: 'hint' },
      `It holds ${samples.slice(0, SAMPLES).join(' · ')}. ${
        said
          ? 'As you said.'
          : field
            ? `${sureness(question.sureness)}: read as ${nounOf(field)}.`
            : 'Not read.'
      }`,
    ),
  );
}

export function questionsView(result: Checked, scene: Scene): Child {
  const asked = result.reading.questions.filter(({ header }) => header !== '').slice(0, ASKED);
  return (
    asked.length > 0 &&
    h(
      'div',
      { id: 'check-questions', class: 'stack', role: 'group', 'aria-label': 'Columns worth a word from you' },
      h('h4', {}, asked.length === 1 ? 'One column is unsure' : `${asked.length} columns are unsure`),
      asked.map((one, at) => questionView(one, at, result, scene)),
    )
  );
}
