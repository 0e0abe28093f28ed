import type { Source } from '../../shared/functions/source';
import { TRUST } from './functionPage';
import type { Html } from './html';
import { html } from './html';

/** What a reference test compared: the value as printed and ours, as text. */
export interface PrintedTest {
  readonly test: string;
  readonly citation: string;
  readonly values: readonly { readonly name: string; readonly printed: string; readonly ours: string }[];
}
/** A figure that a simulation or a search measured. */
export interface MeasuredFigure {
  readonly text: string;
  readonly what: string;
  readonly test: string;
}
export interface TrustFacts {
  readonly sources: Readonly<Record<string, Source>>;
  readonly printed: readonly PrintedTest[];
  readonly figures: Readonly<Record<string, MeasuredFigure>>;
  /** What nobody has opened in Excel yet, the most doubtful first. */
  readonly unopened: readonly string[];
}

/** Rows of one source that stand on the page; the test holds the rest. */
const SHOWN = 12;
/** Letters of a citation that stand in the list. */
const TITLE = 90;

const standings = (sources: TrustFacts['sources']): Html => {
  const all = Object.values(sources);
  return html`<table>
    <thead>
      <tr>
        <th>Where a number comes from</th>
        <th>Sources</th>
      </tr>
    </thead>
    <tbody>
      ${(Object.keys(TRUST) as Source['standing'][])
        .filter((standing) => all.some((source) => source.standing === standing))
        .map(
          (standing) =>
            html`<tr>
              <th scope="row">${TRUST[standing]}</th>
              <td>${all.filter((source) => source.standing === standing).length}</td>
            </tr>`,
        )}
    </tbody>
  </table>`;
};

/** The first words of a citation, for a line of a list. */
const titleOf = (citation: string): string =>
  citation.length <= TITLE ? citation : `${citation.slice(0, citation.lastIndexOf(' ', TITLE))} …`;

const printedSection = ({ test, citation, values }: PrintedTest): Html =>
  html`<details>
    <summary>${titleOf(citation)} (${values.length} ${values.length === 1 ? 'value' : 'values'})</summary>
    <p>${citation}</p>
    <table>
      <thead>
        <tr>
          <th>What</th>
          <th>Printed</th>
          <th>Ours</th>
        </tr>
      </thead>
      <tbody>
        ${values.slice(0, SHOWN).map(
          ({ name, printed, ours }) =>
            html`<tr>
              <td>${name}</td>
              <td>${printed}</td>
              <td>${ours}</td>
            </tr>`,
        )}
      </tbody>
    </table>
    <p class="note">${values.length > SHOWN && `${values.length - SHOWN} more in `}${test}</p>
  </details>`;

const figureRow = ({ text, what, test }: MeasuredFigure): Html =>
  html`<tr>
    <th scope="row">${what}</th>
    <td>${text}</td>
    <td class="note">${test}</td>
  </tr>`;

const weakSources = (sources: TrustFacts['sources']): Html =>
  html`<ul>
    ${Object.values(sources)
      .filter(({ standing }) => standing === 'memory' || standing === 'practice')
      .map(
        ({ citation, standing }) => html`<li>${citation} <span class="note">(${TRUST[standing]})</span></li>`,
      )}
  </ul>`;

/** Body of the page "How far to trust the numbers". */
export const trustPage = ({ sources, printed, figures, unopened }: TrustFacts): Html =>
  html`<nav><a href="index.html">Help</a></nav>
    <h1>How far to trust the numbers</h1>
    <p>
      A number of Spawnbook is an equation or a table that somebody published, with your readings put in. It
      is never better than the reading. This page says what was compared with what, and what was not. The
      figures of a whole run stand beside the evidence on <a href="one-run.html">a page of their own</a>.
    </p>
    <section>
      <h2>Where the numbers come from</h2>
      ${standings(sources)}
    </section>
    <section>
      <h2>Printed values and ours</h2>
      <p>
        Each line is a value as a publication prints it and what our function gives. They agree to the last
        printed digit, or a test fails.
      </p>
      ${printed.map(printedSection)}
    </section>
    <section>
      <h2>What was simulated</h2>
      <p>
        Advice and plans cannot be looked up in a table. They were tried on invented waters, hatcheries and
        record books, by programs that share no equation with the advice.
      </p>
      <table>
        <tbody>
          ${Object.values(figures).map(figureRow)}
        </tbody>
      </table>
    </section>
    <section>
      <h2>From memory, or common practice</h2>
      <p>These have no page that somebody looked at. Treat them as a colleague's advice.</p>
      ${weakSources(sources)}
    </section>
    <section>
      <h2>Never opened in a real Excel</h2>
      <p>
        Everything was tried in our local sheet, in LibreOffice, in Gnumeric and on Excel's own client
        library. No one has pressed the buttons in Excel itself. Half an hour does it; the most doubtful
        stands first.
      </p>
      <ol>
        ${unopened.map((line) => html`<li>${line}</li>`)}
      </ol>
    </section>`;
