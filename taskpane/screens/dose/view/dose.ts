// Long: one screen from top to bottom.
import type { Dosing, Trial } from '../../../../shared/dosing/judge';
import { gramsText } from '../../../../shared/dosing/judge';
import { NO, YES } from '../../../../shared/dosing/fields';
import { MEASURE_AMMONIA, cautionsFor } from '../../../../shared/dosing/words';
import {
  addReading,
  correctReading,
  dropReading,
  fillDoseExample,
  leaveCorrection,
  newVat,
  openAmmonia,
  saveDose,
  typeReading,
  undoReading,
  writeDose,
} from '../commands/dose';
import type { DoseState } from '../state/dose';
import { dosingOf, draftGrams, readVat } from '../state/dose';
import type { Child, VNode } from '../../../pane/draw';
import { h } from '../../../pane/draw';
import { hasWorkbook } from '../../../pane/state';
import { dosePlot } from './plot';
import { vatView } from './vat';
import type { Scene } from '../../../pane/parts';
import { banner, button, hint, inputOf, section } from '../../../pane/parts';

const ph = (value: number): string => value.toFixed(2);
const TONES = {
  dose: 'main',
  done: 'good',
  air: 'main',
  wait: 'warning',
  stop: 'bad',
  refused: 'bad',
} as const;

const expectation = ({ expected, total }: Dosing): Child =>
  expected &&
  total !== undefined &&
  h(
    'p',
    { class: 'expect' },
    'Expect ',
    h('strong', {}, `pH ${ph(expected.likely)}`),
    `; in 9 of 10 such waters between ${ph(expected.low)} and ${ph(expected.high)}. `,
    `Then ${gramsText(total)} g have gone in.`,
  );

const airedLine = ({ aired, kind }: Dosing): Child =>
  aired &&
  h(
    'p',
    { class: 'expect' },
    kind === 'dose' ? 'Once aired ' : 'Once aired, without product ',
    h('strong', {}, `pH ${ph(aired.likely)}`),
    `; in 9 of 10 such waters between ${ph(aired.low)} and ${ph(aired.high)}.`,
  );

const remaining = ({ later }: Dosing): Child => {
  const last = later.at(-1);
  return (
    last &&
    h(
      'p',
      { class: 'hint' },
      `After that perhaps ${later.length === 1 ? 'one more part-dose' : `${later.length} more part-doses`}, about ${gramsText(last.total)} g in all to pH ${ph(last.reach.likely)}. The next reading decides.`,
    )
  );
};

function answerView(dosing: Dosing): VNode {
  const isDose = dosing.kind === 'dose';
  return h(
    'section',
    {
      id: 'dose-answer',
      class: `dose-answer ${TONES[dosing.kind]}`,
      tabindex: '-1',
      'aria-label': 'What to do now',
    },
    h(
      'div',
      { 'aria-live': 'polite' },
      isDose && h('p', { class: 'give' }, 'Give now'),
      h('p', { class: isDose ? 'amount-big' : 'amount-big word' }, dosing.headline),
      dosing.spoons !== undefined && h('p', { class: 'spoons' }, dosing.spoons),
      h('p', {}, dosing.todo),
      expectation(dosing),
      airedLine(dosing),
      dosing.wait !== undefined && h('p', {}, h('strong', {}, 'Wait. '), dosing.wait),
    ),
    remaining(dosing),
  );
}

const warningsView = ({ warnings }: Dosing): Child =>
  warnings.map(({ tone, text }) => banner(tone, h('p', {}, text)));

function trialView({ need, steps }: Trial): VNode {
  const [start, ...rest] = steps;
  return h(
    'details',
    { class: 'more trial' },
    h('summary', {}, 'Surer: try a bucket first'),
    h(
      'div',
      { class: 'stack' },
      need &&
        h(
          'p',
          {},
          `From one pH reading alone the whole vat may need anything from ${gramsText(need.low)} to ${gramsText(need.high)} g. A bucket of the same water narrows that without risk to the vat.`,
        ),
      h(
        'ol',
        { class: 'trial-steps' },
        start && h('li', {}, start.todo),
        rest.map(({ todo, stock, low, high }) =>
          h(
            'li',
            {},
            stock !== undefined &&
              h('strong', {}, `${stock < 10 ? stock.toFixed(1) : Math.round(stock)} mL of the stock. `),
            todo,
            ` Between ${ph(low)} and ${ph(high)} is to be expected.`,
          ),
        ),
      ),
      h(
        'p',
        {},
        'Stop as soon as the bucket stands at the pH you want. Grams in the bucket × litres ' +
          'in the vat ÷ litres in the bucket is the dose of the vat. Or put 10 L as the water ' +
          'in the vat above and type the bucket’s readings here.',
      ),
    ),
  );
}

const gramsField = (dose: DoseState, isFirst: boolean, { send }: Scene): Child => {
  if (isFirst) return undefined;
  const isDose = dose.correcting === undefined && dosingOf(dose)?.kind === 'dose';
  const fault = dose.fault?.field === 'grams' ? dose.fault.sentence : undefined;
  return h(
    'div',
    { class: fault === undefined ? 'field' : 'field has-fault', key: 'grams' },
    h(
      'label',
      { for: 'dose-grams' },
      'Product in so far, all together',
      h('span', { class: 'unit' }, ' (g)'),
    ),
    h('input', {
      id: 'dose-grams',
      type: 'text',
      inputmode: 'decimal',
      autocomplete: 'off',
      value: draftGrams(dose),
      enterkeyhint: 'next',
      'aria-invalid': fault === undefined ? undefined : 'true',
      'aria-describedby': fault === undefined ? 'dose-grams-hint' : 'dose-grams-fault dose-grams-hint',
      on: {
        input: (event) => {
          send(typeReading, { grams: inputOf(event) });
        },
      },
    }),
    fault !== undefined &&
      h(
        'p',
        { id: 'dose-grams-fault', class: 'fault' },
        h('span', { class: 'mark', 'aria-hidden': 'true' }, '✕'),
        fault,
      ),
    hint(
      'dose-grams-hint',
      isDose
        ? 'Filled in as if the dose above was given. Change it if you gave another amount.'
        : dose.correcting === undefined
          ? 'As before: a repeat reading, nothing added.'
          : 'All that had gone in when this pH was read.',
    ),
  );
};

const phField = (dose: DoseState, isFirst: boolean, { send }: Scene): VNode => {
  const fault = dose.fault?.field === 'ph' ? dose.fault.sentence : undefined;
  return h(
    'div',
    { class: fault === undefined ? 'field' : 'field has-fault', key: 'ph' },
    h('label', { for: 'dose-ph' }, isFirst ? 'pH before any product' : 'pH read'),
    h('input', {
      id: 'dose-ph',
      type: 'text',
      inputmode: 'decimal',
      autocomplete: 'off',
      value: dose.draft.ph,
      enterkeyhint: 'done',
      'aria-invalid': fault === undefined ? undefined : 'true',
      'aria-describedby': fault === undefined ? 'dose-ph-hint' : 'dose-ph-fault dose-ph-hint',
      on: {
        input: (event) => {
          send(typeReading, { ph: inputOf(event) });
        },
      },
    }),
    fault !== undefined &&
      h(
        'p',
        { id: 'dose-ph-fault', class: 'fault' },
        h('span', { class: 'mark', 'aria-hidden': 'true' }, '✕'),
        fault,
      ),
    hint('dose-ph-hint', 'Mixed, and the meter at rest.'),
  );
};

function readingForm(scene: Scene): VNode {
  const { dose } = scene.state;
  const at = dose.correcting ?? dose.readings.length;
  const isFirst = at === 0;
  const title =
    dose.correcting !== undefined
      ? `Correct reading ${at + 1}`
      : isFirst
        ? 'First reading'
        : `Reading ${at + 1}`;
  return h(
    'form',
    {
      class: 'reading-form',
      novalidate: true,
      'aria-label': title,
      on: {
        submit: (event) => {
          event.preventDefault();
          scene.send(addReading);
        },
      },
    },
    h('h3', {}, title),
    h('div', { class: 'wet' }, gramsField(dose, isFirst, scene), phField(dose, isFirst, scene)),
    h(
      'div',
      { class: 'actions' },
      h(
        'button',
        { type: 'submit', id: 'dose-add', class: 'button main' },
        dose.correcting === undefined ? addReading.label : 'Put it right',
      ),
      dose.correcting !== undefined &&
        button(leaveCorrection.label, () => {
          scene.send(leaveCorrection);
        }),
    ),
  );
}

const readingsList = (scene: Scene): Child => {
  const { readings, past, correcting } = scene.state.dose;
  if (readings.length === 0 && past.length === 0) return undefined;
  return section(
    'Readings so far',
    readings.length > 0 &&
      h(
        'ol',
        { class: 'reading-list' },
        readings.map((reading, i) =>
          h(
            'li',
            { class: i === correcting ? 'reading-row now' : 'reading-row' },
            h(
              'span',
              { class: 'reading-text' },
              `${i === 0 ? 'Before: ' : `${gramsText(reading.grams)} g: `}`,
              h('strong', {}, `pH\u00a0${reading.ph}`),
            ),
            button(
              'Correct',
              () => {
                scene.send(correctReading, i);
              },
              { tone: 'quiet', says: `Correct reading ${i + 1}` },
            ),
            button(
              'Take out',
              () => {
                scene.send(dropReading, i);
              },
              { tone: 'quiet', says: `Take out reading ${i + 1}` },
            ),
          ),
        ),
      ),
    h(
      'div',
      { class: 'actions' },
      button(
        undoReading.label,
        () => {
          scene.send(undoReading);
        },
        { isOff: past.length === 0, says: 'Undo the last change of readings' },
      ),
      readings.length > 0 &&
        button(newVat.label, () => {
          scene.send(newVat);
        }),
    ),
  );
};

const number = (cell: unknown): number => (typeof cell === 'number' ? cell : NaN);

const careView = ({ state }: Scene): VNode =>
  banner(
    'warning',
    h('strong', {}, 'Take care. '),
    cautionsFor(state.dose.texts.material, state.dose.texts.stocked !== NO).map((text) => h('p', {}, text)),
  );

const writing = ({ state, send }: Scene): VNode => {
  const isOff = state.task !== undefined;
  return h(
    'div',
    { class: 'actions' },
    hasWorkbook(state) &&
      button(
        writeDose.label,
        () => {
          send(writeDose);
        },
        { isOff, id: 'dose-write' },
      ),
    button(
      saveDose.label,
      () => {
        send(saveDose);
      },
      { isOff, id: 'dose-save' },
    ),
    h(
      'p',
      { class: 'hint' },
      'A new sheet with these readings, the same answer as live formulas, and a chart. ' +
        'Nothing in the workbook is changed. Readings typed here are gone when this pane is ' +
        'closed.',
    ),
  );
};

const answered = (dosing: Dosing, scene: Scene): readonly Child[] => {
  const { dose } = scene.state;
  const { cells } = readVat(dose.texts);
  return [
    answerView(dosing),
    dosing.kind === 'stop' &&
      dose.texts.stocked === YES &&
      dose.texts.ammonia.trim() === '' &&
      h(
        'div',
        { class: 'actions' },
        button(openAmmonia.label, () => {
          scene.send(openAmmonia);
        }),
      ),
    readingForm(scene),
    warningsView(dosing),
    dosing.trial && dosing.kind === 'dose' && trialView(dosing.trial),
    dosing.kind !== 'refused' &&
      dosePlot(dose.readings, dosing, {
        bottom: number(cells.bottom),
        top: number(cells.top),
        target: number(cells.target),
      }),
  ];
};

export function doseView(scene: Scene): readonly VNode[] {
  const { state, send } = scene;
  const { dose } = state;
  const dosing = dosingOf(dose);
  const isFishIn = dose.texts.stocked === YES;
  return [
    h('p', { class: 'lead' }, 'Type a pH, get the next small dose, and be told when to stop.'),
    h(
      'div',
      { class: 'stack dosing' },
      dose.readings.length === 0 &&
        h(
          'div',
          { class: 'quick' },
          button(
            fillDoseExample.label,
            () => {
              send(fillDoseExample);
            },
            { tone: 'quiet' },
          ),
        ),
      vatView(scene),
      dosing
        ? answered(dosing, scene)
        : [
            isFishIn &&
              dose.texts.ammonia.trim() === '' &&
              banner('bad', h('p', {}, `${MEASURE_AMMONIA} Type it in its field above.`)),
            dose.readings.length > 0 &&
              h(
                'p',
                { class: 'hint' },
                'The answer comes back once the vat and the product above are filled in.',
              ),
            readingForm(scene),
          ],
      readingsList(scene),
      careView(scene),
      writing(scene),
    ),
  ];
}
