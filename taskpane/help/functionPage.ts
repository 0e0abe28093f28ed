import { CAUTIONS } from '../../shared/functions/cautions';
import type { Example, NamedParam, SheetFunction } from '../../shared/functions/define';
import { defaultText, isRequired, returnsText, signature } from '../../shared/functions/describe';
import { expects } from '../../shared/functions/sentences';
import type { Source } from '../../shared/functions/source';
import { literal } from '../pane/values/typed';
import type { Html, HtmlPiece } from './html';
import { html } from './html';

/** One page a function, all of it from the function's record. */

export interface FunctionPageFacts {
  readonly sources: Readonly<Record<string, Source>>;
  readonly step: { readonly key: string; readonly title: string } | undefined;
}

/** How far a number can be trusted, by where it comes from. */
export const TRUST: Readonly<Record<Source['standing'], string>> = {
  seen: 'read in the publication or a copy of it',
  memory: 'from memory: the publication is named, its page was not seen',
  practice: 'common practice, no source',
  computed: 'worked out from published figures',
  standard: 'a definition or exact arithmetic',
};

export const pageName = (fn: SheetFunction): string => `${fn.id}.html`;

const section = (title: string, ...body: readonly HtmlPiece[]): Html =>
  html`<section>
    <h2>${title}</h2>
    ${body}
  </section>`;

/** What may be given, for a reader: dates without serial numbers, no unit where the number has none. */
const allowedText = (param: NamedParam): string => {
  const unit = 'quantity' in param ? param.quantity.unit : '';
  if (unit === 'date') return 'a date';
  if (unit === 'date and time') return 'a date with its time';
  return expects(param)
    .replace(/ (pH|share)$/, '')
    .replace(/\d{5,}/g, (digits) => Number(digits).toLocaleString('en'));
};

const argumentRow = (param: NamedParam): Html =>
  html`<tr>
    <th scope="row"><code>${param.name}</code></th>
    <td>${param.doc}</td>
    <td>${allowedText(param)}</td>
    <td>${isRequired(param) ? 'needed' : (defaultText(param) ?? 'may be left out')}</td>
  </tr>`;

const call = (fn: SheetFunction, example: Example): string => {
  const args = example.args.map(literal);
  while (args.at(-1) === '') args.pop();
  return `=${fn.name}(${args.join(', ')})`;
};
const given = ({ gives, fails }: Example): HtmlPiece => {
  if (fails) return html`<strong>${fails.code}</strong> … ${fails.says} …`;
  if (typeof gives === 'string') return html`<strong>${gives}</strong>`;
  return html`<table class="answer">
    ${(gives ?? []).map(
      (row) =>
        html`<tr>
          ${row.map((cell) => html`<td>${cell || '–'}</td>`)}
        </tr>`,
    )}
  </table>`;
};
const exampleItem = (fn: SheetFunction, example: Example): Html =>
  html`<li>
    <code>${call(fn, example)}</code>
    <div>${given(example)}</div>
    <p>${example.because}</p>
  </li>`;

const sourceItem = (key: string, source: Source | undefined): HtmlPiece =>
  source &&
  html`<li id="source-${key}">
    ${source.citation}${source.doi && ` doi:${source.doi}`}
    ${source.note && html`<span class="note">(${source.note})</span>`}
    <p class="trust ${source.standing}">${TRUST[source.standing]}</p>
  </li>`;

const columnItem = (title: string, unit: string, doc: string | undefined): Html =>
  html`<li><strong>${title}</strong>${unit && unit !== 'text' ? ` (${unit})` : ''}${doc && `: ${doc}`}</li>`;

const answers = (fn: SheetFunction): HtmlPiece =>
  fn.returns.kind === 'value'
    ? html`<p>${fn.returns.doc}</p>
        <p>Unit: ${returnsText(fn.returns)}.</p>`
    : html`<p>${fn.returns.doc}</p>
        <ul>
          ${Object.values(fn.returns.columns).map((column) =>
            columnItem(column.title, column.quantity.unit, column.doc),
          )}
        </ul>`;

const questionsOf = (fn: SheetFunction): readonly string[] =>
  'questions' in fn && Array.isArray(fn.questions) ? (fn.questions as readonly string[]) : [];

/** Body of the page of one function. */
export function functionPage(fn: SheetFunction, { sources, step }: FunctionPageFacts): Html {
  const questions = questionsOf(fn);
  return html`<nav>
      <a href="index.html">All functions</a
      >${step && html` · <a href="index.html#${step.key}">${step.title}</a>`}
    </nav>
    <h1>${fn.name}</h1>
    <p class="summary">${fn.summary}</p>
    <p><code class="signature">${signature(fn)}</code></p>
    ${
      questions.length > 0 &&
      section(
        'Questions it answers',
        html`<ul>
          ${questions.map((q) => html`<li>${q}</li>`)}
        </ul>`,
      )
    }
    ${
      fn.cautions.length > 0 &&
      html`<section class="caution">
        <h2>Take care</h2>
        ${fn.cautions.map((key) => html`<p>${CAUTIONS[key] ?? key}</p>`)}
      </section>`
    }
    ${section(
      'What to give it',
      html`<table>
        <thead>
          <tr>
            <th>Argument</th>
            <th>Meaning</th>
            <th>What is allowed</th>
            <th>Left out</th>
          </tr>
        </thead>
        <tbody>
          ${fn.params.map(argumentRow)}
        </tbody>
      </table>`,
    )}
    ${section('What it gives', answers(fn))} ${fn.help && section('How it works', html`<p>${fn.help}</p>`)}
    ${section('Where it holds', html`<p>${fn.valid}.</p>`)}
    ${section(
      'Examples',
      html`<ul class="examples">
        ${fn.examples.map((example) => exampleItem(fn, example))}
      </ul>`,
    )}
    ${section(
      'Where the numbers come from',
      html`<ul class="sources">
        ${fn.sources.map((key) => sourceItem(key, sources[key]))}
      </ul>`,
    )}
    ${
      fn.native &&
      section(
        'The same in built-in functions',
        html`<p><code>${fn.native}</code></p>
          <p>A word in braces stands for the argument of that name.</p>`,
      )
    }
    <p class="version">Version ${fn.version} of this function. A number that changes raises it.</p>`;
}
