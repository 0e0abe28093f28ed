import type { SheetFunction } from '../../shared/functions/define';
import type { Source } from '../../shared/functions/source';
import { functionPage, pageName } from './functionPage';
import type { GuideText } from './guides';
import { GUIDE_ORDER, guideBody, guidePage, guideTitle } from './guides';
import type { Html } from './html';
import { html } from './html';
import type { JobStep } from './finding/steps';
import { jobSteps, stepOf } from './finding/steps';
import type { TrustFacts } from './trust';
import { trustPage } from './trust';

export interface HelpPage {
  /** Below the folder of help. */
  readonly name: string;
  readonly text: string;
}

const page = (title: string, body: Html): string =>
  html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>${title}</title>
        <link rel="stylesheet" href="help.css" />
      </head>
      <body>
        <main>${body}</main>
      </body>
    </html> `.html;

const stepSection = ({ key, title, about, functions }: JobStep): Html =>
  html`<section id="${key}">
    <h2>${title}</h2>
    <p>${about}</p>
    <table>
      <tbody>
        ${functions.map(
          (fn) =>
            html`<tr>
              <th scope="row"><a href="${pageName(fn)}">${fn.name}</a></th>
              <td>${fn.summary}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </section>`;

const functionIndex = (steps: readonly JobStep[]): Html =>
  html`<section id="functions">
      <h2>Functions by step of the job</h2>
      <p>Type <code>=SPAWN.</code> in a cell and choose, or copy an example from a page.</p>
      <nav>
        <ul>
          ${steps.map(({ key, title }) => html`<li><a href="#${key}">${title}</a></li>`)}
        </ul>
      </nav>
    </section>
    ${steps.map(stepSection)}`;

/** What the help is made of beside the records of the functions. */
export interface HelpTexts extends Omit<TrustFacts, 'sources'> {
  readonly guides: readonly GuideText[];
  /** Markdown: results that changed, by version. */
  readonly changes: string;
  /** Markdown: one run beside the evidence. */
  readonly oneRun: string;
}

const indexPage = (steps: readonly JobStep[], guides: readonly GuideText[]): Html =>
  html`<h1>Help</h1>
    <section id="guides">
      <h2>Guides</h2>
      <ul>
        ${guides.map((guide) => html`<li><a href="${guidePage(guide)}">${guideTitle(guide)}</a></li>`)}
      </ul>
      <p>
        <a href="trust.html">How far to trust the numbers</a> ·
        <a href="one-run.html">One run beside the evidence</a> · <a href="changes.html">What changed</a>
      </p>
    </section>
    ${functionIndex(steps)}`;

const inOrder = (guides: readonly GuideText[]): readonly GuideText[] =>
  [...guides].sort(
    (a, b) =>
      (GUIDE_ORDER as readonly string[]).indexOf(a.key) - (GUIDE_ORDER as readonly string[]).indexOf(b.key),
  );

/** Every page of help: the start with the index by step of the job, the guides, and one page a function. */
export function helpPages(
  functions: readonly SheetFunction[],
  sources: Readonly<Record<string, Source>>,
  texts: HelpTexts,
): readonly HelpPage[] {
  const steps = jobSteps(functions);
  const guides = inOrder(texts.guides);
  const titled = (title: string, body: Html): string => page(`${title} – Spawnbook`, body);
  return [
    { name: 'index.html', text: titled('Help', indexPage(steps, guides)) },
    ...guides.map((guide) => ({
      name: guidePage(guide),
      text: titled(guideTitle(guide), guideBody(guide)),
    })),
    { name: 'trust.html', text: titled('How far to trust the numbers', trustPage({ ...texts, sources })) },
    {
      name: 'one-run.html',
      text: titled('One run beside the evidence', guideBody({ key: 'one-run', markdown: texts.oneRun })),
    },
    {
      name: 'changes.html',
      text: titled('What changed', guideBody({ key: 'changes', markdown: texts.changes })),
    },
    ...functions.map((fn) => ({
      name: pageName(fn),
      text: titled(fn.name, functionPage(fn, { sources, step: stepOf(fn, steps) })),
    })),
  ];
}
