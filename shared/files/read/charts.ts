import { addressOf, MAX_COLUMNS, MAX_ROWS } from '../../sheet/formula/address';
import type { ChartModel } from '../../sheet/workbook/model';
import { SERIES_COLORS } from '../../sheet/workbook/styles';
import { scanXml } from '../package/events';
import type { Package } from '../package/package';

interface Anchor {
  readonly from: string;
  readonly to: string;
  readonly chart: string;
}

const anchorAt = (at: ReadonlyMap<string, number>, chart: string): Anchor => {
  const edge = (field: string, usual: number, most: number): number => {
    const found = at.get(field) ?? usual;
    return Number.isFinite(found) ? Math.min(most, Math.max(0, Math.trunc(found))) : usual;
  };
  const top = edge('from.row', 0, MAX_ROWS - 1);
  const left = edge('from.col', 0, MAX_COLUMNS - 1);
  const below = edge('to.row', top + 15, MAX_ROWS - 1);
  const beside = edge('to.col', left + 7, MAX_COLUMNS - 1);
  return {
    from: addressOf(top, left),
    to: addressOf(Math.max(top, below - 1), Math.max(left, beside - 1)),
    chart,
  };
};

/** Where charts stand on the sheet and which part draws each. */
function anchorsOf(
  bytes: Uint8Array,
  part: string,
): { readonly anchors: readonly Anchor[]; readonly hasPictures: boolean } {
  const anchors: Anchor[] = [];
  let hasPictures = false;
  let corner: 'from' | 'to' | undefined;
  let field = '';
  let at = new Map<string, number>();
  scanXml(bytes, part, {
    open: (tag) => {
      const { name } = tag;
      const id = name === 'chart' ? tag.get('id') : undefined;
      if (name.endsWith('CellAnchor')) at = new Map();
      else if (name === 'from' || name === 'to') corner = name;
      else if (corner && (name === 'col' || name === 'row')) field = `${corner}.${name}`;
      else if (name === 'pic' || name === 'sp') hasPictures = true;
      else if (id) anchors.push(anchorAt(at, id));
    },
    text: (text) => {
      if (field) at.set(field, Number(text));
    },
    close: (name) => {
      if (name === 'col' || name === 'row') field = '';
      if (name === 'from' || name === 'to') corner = undefined;
    },
  });
  return { anchors, hasPictures };
}

interface FoundSeries {
  name: string;
  values: string;
  categories: string;
  color: string | undefined;
  isHidden: boolean;
}
interface Found {
  kind: string;
  direction: string;
  grouping: string;
  count: number;
  readonly series: FoundSeries[];
  readonly titles: Record<string, string>;
  readonly formats: Record<string, string>;
  readonly limits: Record<string, number>;
}

const AXES = ['catAx', 'dateAx', 'valAx', 'serAx'];
const collect = (bytes: Uint8Array, part: string): Found => {
  const found: Found = {
    kind: '',
    direction: '',
    grouping: '',
    count: 0,
    series: [],
    titles: {},
    formats: {},
    limits: {},
  };
  const path: string[] = [];
  const inside = (name: string): boolean => path.includes(name);
  const axis = (): string => path.find((name) => AXES.includes(name)) ?? 'chart';
  scanXml(bytes, part, {
    open: (tag) => {
      path.push(tag.name);
      const series = inside('ser') ? found.series.at(-1) : undefined;
      const limit = (): void => {
        if (inside('scaling')) found.limits[`${axis()}.${tag.name}`] = tag.number('val') ?? NaN;
      };
      const act = new Map<string, () => void>(
        Object.entries({
          barDir: () => {
            found.direction = tag.get('val') ?? '';
          },
          grouping: () => {
            found.grouping = tag.get('val') ?? '';
          },
          ser: () => {
            found.series.push({ name: '', values: '', categories: '', color: undefined, isHidden: false });
          },
          numFmt: () => {
            if (axis() !== 'chart') found.formats[axis()] = tag.get('formatCode') ?? '';
          },
          min: limit,
          max: limit,
          noFill: () => {
            if (series && path.at(-2) === 'spPr') series.isHidden = true;
          },
          srgbClr: () => {
            if (series && !(found.kind === 'barChart' && inside('ln')))
              series.color ??= tag.get('val')?.toUpperCase();
          },
        }),
      );
      act.get(tag.name)?.();
      if (tag.name.endsWith('Chart') && path.length === 4) {
        found.kind = tag.name;
        found.count++;
      }
    },
    text: (text) => {
      const series = found.series.at(-1);
      const name = path.at(-1);
      if (inside('ser') && series) {
        if (name === 'f' && inside('val')) series.values += text;
        else if (name === 'f' && inside('cat')) series.categories += text;
        else if (name === 'v' && inside('tx')) series.name += text;
      } else if (name === 't' && inside('title')) found.titles[axis()] = (found.titles[axis()] ?? '') + text;
    },
    close: () => {
      path.pop();
    },
  });
  return found;
};

/** What a series gets when it names no colour; see the writer. */
const usualColor = (kind: ChartModel['kind'], i: number): string | undefined =>
  SERIES_COLORS[(kind === 'occupancy' ? i - 1 : i) % SERIES_COLORS.length];

const KINDS = new Map<string, ChartModel['kind']>([
  ['lineChart..standard', 'line'],
  ['barChart.col.clustered', 'column'],
  ['barChart.bar.stacked', 'occupancy'],
]);

function modelOf(found: Found, { from, to }: Anchor): ChartModel | undefined {
  const kind =
    found.count === 1 ? KINDS.get(`${found.kind}.${found.direction}.${found.grouping}`) : undefined;
  const [first] = found.series;
  if (!kind || !first || found.series.some((s) => s.values === '')) return undefined;
  const { titles, formats, limits } = found;
  const [min, max] = [limits['valAx.min'], limits['valAx.max']];
  const given = (key: string, value: string | undefined): Record<string, string> =>
    value === undefined || value === 'General' ? {} : { [key]: value };
  return {
    kind,
    from,
    to,
    title: titles['chart'] ?? '',
    categories: first.categories,
    series: found.series.map((s, i) => ({
      name: s.name,
      values: s.values,
      ...(s.isHidden
        ? { isHidden: true }
        : s.color && s.color !== usualColor(kind, i)
          ? { color: s.color }
          : {}),
    })),
    ...given('xTitle', titles['catAx'] ?? titles['dateAx']),
    ...given('yTitle', titles['valAx']),
    ...given('valueFormat', formats['valAx']),
    ...given('categoryFormat', formats['dateAx']),
    ...(min !== undefined && max !== undefined ? { valueRange: [min, max] as const } : {}),
  };
}

export function readCharts(
  pack: Package,
  drawing: string,
): { readonly charts: readonly ChartModel[]; readonly lost: readonly string[] } {
  const bytes = pack.read(drawing);
  if (bytes === undefined) return { charts: [], lost: [] };
  const { anchors, hasPictures } = anchorsOf(bytes, drawing);
  const relations = new Map(pack.relations(drawing).map((one) => [one.id, one.target]));
  const lost = new Set<string>(hasPictures ? ['Pictures and shapes'] : []);
  const charts = anchors.flatMap((anchor) => {
    const part = relations.get(anchor.chart);
    const chart = part === undefined ? undefined : pack.read(part);
    const model = chart && part !== undefined ? modelOf(collect(chart, part), anchor) : undefined;
    if (!model) lost.add('Charts of other kinds');
    return model ? [model] : [];
  });
  return { charts, lost: [...lost] };
}
