import type { ChartConfiguration, ChartDataset } from 'chart.js';
import {
  BarController,
  BarElement,
  CategoryScale,
  Chart,
  Legend,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  Title,
  Tooltip,
} from 'chart.js';
import type { ChartData, SeriesData } from './data';
import { formatted } from './numbers';

Chart.register(
  BarController,
  BarElement,
  CategoryScale,
  Legend,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  Title,
  Tooltip,
);

const INK = '#1d2b2a';
const SOFT = '#55676a';
const GRID = '#e3e9e8';
const NONE = 'rgba(0,0,0,0)';
/** Told apart without colour too. */
const DASHES = [[], [6, 3], [2, 3], [8, 3, 2, 3]];

type Bars = ChartDataset<'line' | 'bar', (number | null)[]>;
const dataset = (data: ChartData, series: SeriesData, at: number): Bars => {
  const color = series.isSpacer ? NONE : series.color;
  const common = { label: series.name, data: [...series.values], backgroundColor: color, borderColor: color };
  return data.kind === 'line'
    ? {
        ...common,
        type: 'line',
        borderWidth: 2,
        borderDash: DASHES[at % DASHES.length] ?? [],
        pointRadius: series.values.length > 40 ? 0 : 2.5,
        tension: 0,
      }
    : { ...common, type: 'bar', maxBarThickness: 34, categoryPercentage: 0.8, barPercentage: 0.9 };
};

/** Room above and below the numbers; bars start at zero unless the axis says where. */
const bounds = (data: ChartData): { min?: number; max?: number } => ({
  ...(data.min === undefined ? {} : { min: data.min }),
  ...(data.max === undefined ? {} : { max: data.max }),
});

function axes(data: ChartData): object {
  const isFlat = data.kind === 'bar';
  const title = (text: string): object => ({ display: text !== '', text, color: SOFT });
  const category = {
    type: 'category',
    reverse: isFlat ? !data.isReversed : data.isReversed,
    stacked: data.isStacked,
    title: title(data.xTitle),
    grid: { display: false },
    ticks: { color: SOFT, autoSkip: !isFlat || data.labels.length > 24, maxRotation: 45 },
  };
  const value = {
    type: 'linear',
    stacked: data.isStacked,
    ...bounds(data),
    title: title(data.yTitle),
    grid: { color: GRID },
    border: { display: false },
    ticks: {
      color: SOFT,
      maxTicksLimit: 8,
      maxRotation: 45,
      callback: (tick: string | number) => formatted(data.valueFormat, Number(tick)),
    },
  };
  return isFlat ? { x: value, y: category } : { x: category, y: value };
}

/** The library draws one series after another in the order of the cells; a spacer has no entry anywhere. */
export function configuration(data: ChartData): ChartConfiguration {
  return {
    type: data.kind === 'line' ? 'line' : 'bar',
    data: { labels: [...data.labels], datasets: data.series.map((s, i) => dataset(data, s, i)) },
    options: {
      animation: false,
      responsive: true,
      maintainAspectRatio: false,
      indexAxis: data.kind === 'bar' ? 'y' : 'x',
      scales: axes(data) as never,
      plugins: {
        title: { display: false },
        legend: {
          display: data.hasLegend,
          position: 'bottom',
          labels: {
            color: INK,
            boxWidth: 14,
            filter: (item) => !data.series[item.datasetIndex ?? -1]?.isSpacer,
          },
        },
        tooltip: {
          filter: (item) => !data.series[item.datasetIndex]?.isSpacer,
          callbacks: {
            label: (item) =>
              `${item.dataset.label ?? ''}: ${data.series[item.datasetIndex]?.texts[item.dataIndex] ?? ''}`,
          },
        },
      },
    },
  };
}

export const drawChart = (canvas: HTMLCanvasElement, data: ChartData): Chart =>
  new Chart(canvas, configuration(data));
export type { Chart };
