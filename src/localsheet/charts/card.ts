import type { ChartData } from './data';
import { summary } from './data';
import type { Chart } from './draw';
import { configuration, drawChart } from './draw';

/**
 * One chart on the page: its title, the picture or its table of numbers, and the button that changes between
 * the two.
 */
export class ChartCard {
  readonly root = document.createElement('figure');
  private readonly canvas = document.createElement('canvas');
  private readonly table = document.createElement('div');
  private readonly caption = document.createElement('figcaption');
  private readonly title = document.createElement('span');
  private chart: Chart | undefined;
  private drawn = '';

  constructor() {
    this.root.className = 'chart';
    const button = Object.assign(document.createElement('button'), {
      type: 'button',
      textContent: 'Numbers',
    });
    button.setAttribute('aria-pressed', 'false');
    const picture = document.createElement('div');
    picture.className = 'chart-picture';
    picture.append(this.canvas);
    this.canvas.setAttribute('role', 'img');
    this.table.className = 'chart-table';
    this.table.tabIndex = 0;
    this.table.hidden = true;
    button.addEventListener('click', () => {
      this.table.hidden = !this.table.hidden;
      picture.hidden = !this.table.hidden;
      button.textContent = this.table.hidden ? 'Numbers' : 'Picture';
      button.setAttribute('aria-pressed', String(!this.table.hidden));
    });
    this.caption.append(this.title, button);
    this.root.append(this.caption, picture, this.table);
  }

  show(data: ChartData): void {
    const now = JSON.stringify(data);
    if (now === this.drawn) return;
    this.drawn = now;
    this.title.textContent = data.title;
    this.canvas.setAttribute('aria-label', summary(data));
    this.table.setAttribute('aria-label', `Numbers of ${data.title}`);
    this.table.replaceChildren(tableOf(data));
    if (this.chart) {
      const { options, data: content } = configuration(data);
      Object.assign(this.chart, { data: content, ...(options ? { options } : {}) });
      this.chart.update('none');
    } else this.chart = drawChart(this.canvas, data);
  }

  remove(): void {
    this.chart?.destroy();
    this.root.remove();
  }
}

const cell = (tag: 'th' | 'td', text: string, scope = ''): HTMLElement => {
  const made = Object.assign(document.createElement(tag), { textContent: text });
  if (scope !== '') made.setAttribute('scope', scope);
  return made;
};

function tableOf(data: ChartData): HTMLTableElement {
  const table = document.createElement('table');
  const head = document.createElement('tr');
  head.append(cell('th', data.xTitle || 'Item', 'col'), ...data.series.map((s) => cell('th', s.name, 'col')));
  const rows = data.labels.map((label, i) => {
    const row = document.createElement('tr');
    row.append(cell('th', label, 'row'), ...data.series.map((s) => cell('td', s.texts[i] ?? '')));
    return row;
  });
  table.append(head, ...rows);
  return table;
}
