import { marked } from 'marked';
import type { Html } from './html';
import { html } from './html';

/** A guide as its file holds it: Markdown, the title in its first line. */
export interface GuideText {
  /** Without ending: the name of the page. */
  readonly key: string;
  readonly markdown: string;
}

/** In the order in which a newcomer reads them. */
export const GUIDE_ORDER = ['first-season', 'formulas', 'season', 'vat', 'records', 'share'] as const;

export const guideTitle = ({ markdown }: GuideText): string => /^# (.+)$/m.exec(markdown)?.[1] ?? '';
export const guidePage = ({ key }: GuideText): string => `guide-${key}.html`;

/** Body of the page of one guide. Our own texts only: Markdown is not cleaned here. */
export const guideBody = ({ markdown }: GuideText): Html =>
  html`<nav><a href="index.html">Help</a></nav>
    ${{ html: marked.parse(markdown, { async: false }) }}`;
