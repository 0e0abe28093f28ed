import type { SheetFunction } from '../../shared/functions/define';
import type { Source } from '../../shared/functions/source';
import { functionPage, pageName } from './functionPage';
import type { Html } from './html';
import { html } from './html';
import type { JobStep } from './steps';
import { jobSteps, stepOf } from './steps';

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

const indexPage = (steps: readonly JobStep[]): Html =>
  html`<h1>Functions by step of the job</h1>
    <p>Type <code>=SPAWN.</code> in a cell and choose, or copy an example from a page.</p>
    <nav>
      <ul>
        ${steps.map(({ key, title }) => html`<li><a href="#${key}">${title}</a></li>`)}
      </ul>
    </nav>
    ${steps.map(stepSection)}`;

/** Every page of help on functions: the index by step of the job, and one page a function. */
export function functionPages(
  functions: readonly SheetFunction[],
  sources: Readonly<Record<string, Source>>,
): readonly HelpPage[] {
  const steps = jobSteps(functions);
  return [
    { name: 'index.html', text: page('Functions of Spawnbook', indexPage(steps)) },
    ...functions.map((fn) => ({
      name: pageName(fn),
      text: page(`${fn.name} – Spawnbook`, functionPage(fn, { sources, step: stepOf(fn, steps) })),
    })),
  ];
}
