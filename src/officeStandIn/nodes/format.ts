import type { StandInArea, Edge, FormatPatch, FormatState } from '../book';
import { fail } from '../failure';
import { asFlag, asNumber, asOneOf, asText, checkColor } from '../input';
import type { Env, ObjectNode } from '../node';
import { guardChange } from './guard';

const HORIZONTAL = [
  'General',
  'Left',
  'Center',
  'Right',
  'Fill',
  'Justify',
  'CenterAcrossSelection',
  'Distributed',
] as const;
const VERTICAL = ['Top', 'Center', 'Bottom', 'Justify', 'Distributed'] as const;
const EDGES: readonly Edge[] = [
  'EdgeTop',
  'EdgeBottom',
  'EdgeLeft',
  'EdgeRight',
  'InsideVertical',
  'InsideHorizontal',
];
const STYLES = [
  'None',
  'Continuous',
  'Dash',
  'DashDot',
  'DashDotDot',
  'Dot',
  'Double',
  'SlantDashDot',
] as const;
const NO_FILL = '#FFFFFF';

interface Look {
  readonly get: <K extends keyof FormatState>(key: K) => Promise<FormatState[K] | null>;
  readonly set: (patch: FormatPatch, what?: 'format' | 'columns' | 'rows' | 'structure') => Promise<void>;
}
const lookOf = (env: Env, sheet: string, area: StandInArea): Look => ({
  get: async (key) => (await env.book.format(sheet, area))[key],
  set: async (patch, what = 'format') => {
    await guardChange(env.book, sheet, what);
    await env.book.setFormat(sheet, area, patch);
  },
});

const fillNode = (look: Look): ObjectNode => ({
  type: 'RangeFill',
  scalars: {
    Color: async () => {
      const color = await look.get('fill');
      return color === '' ? NO_FILL : color;
    },
  },
  setters: { Color: (given) => look.set({ fill: checkColor(given) }) },
  methods: { Clear: () => look.set({ fill: '' }) },
});

const fontNode = (look: Look): ObjectNode => ({
  type: 'RangeFont',
  scalars: {
    Bold: () => look.get('bold'),
    Italic: () => look.get('italic'),
    Color: () => look.get('color'),
    Size: () => look.get('size'),
    Name: () => look.get('font'),
  },
  setters: {
    Bold: (given) => look.set({ bold: asFlag(given, 'bold') }),
    Italic: (given) => look.set({ italic: asFlag(given, 'italic') }),
    Color: (given) => look.set({ color: checkColor(given) }),
    Size: (given) => look.set({ size: asNumber(given, 'size') }),
    Name: (given) => look.set({ font: asText(given, 'name') }),
  },
});

const borderNode = (env: Env, sheet: string, area: StandInArea, edge: Edge): ObjectNode => {
  const change = async (patch: { style?: (typeof STYLES)[number]; color?: string }): Promise<void> => {
    await guardChange(env.book, sheet, 'format');
    await env.book.setBorder(sheet, area, edge, { ...(await env.book.border(sheet, area, edge)), ...patch });
  };
  return {
    type: 'RangeBorder',
    scalars: {
      SideIndex: () => edge,
      Style: async () => (await env.book.border(sheet, area, edge)).style,
      Color: async () => (await env.book.border(sheet, area, edge)).color,
    },
    setters: {
      Style: (given) => change({ style: asOneOf(given, STYLES, 'style') }),
      Color: async (given) => {
        const { style } = await env.book.border(sheet, area, edge);
        // A colour alone draws the line.
        await change({
          color: checkColor(given),
          ...(style === 'None' ? { style: 'Continuous' as const } : {}),
        });
      },
    },
  };
};

const bordersNode = (env: Env, sheet: string, area: StandInArea): ObjectNode => {
  const item = (key: unknown): ObjectNode => borderNode(env, sheet, area, asOneOf(key, EDGES, 'edge'));
  return {
    type: 'RangeBorderCollection',
    scalars: { Count: () => EDGES.length },
    item,
    items: () => EDGES.map(item),
    methods: { GetItem: item },
  };
};

const protectionNode = (look: Look): ObjectNode => ({
  type: 'FormatProtection',
  scalars: { Locked: () => look.get('locked') },
  setters: { Locked: (given) => look.set({ locked: asFlag(given, 'locked') }, 'structure') },
});

const size = (given: unknown, what: string): number => {
  const points = asNumber(given, what);
  return points >= 0 ? points : fail('InvalidArgument', `${what} may not be negative.`);
};

export function formatNode(env: Env, sheet: string, area: StandInArea): ObjectNode {
  const look = lookOf(env, sheet, area);
  return {
    type: 'RangeFormat',
    scalars: {
      ColumnWidth: () => look.get('columnWidth'),
      RowHeight: () => look.get('rowHeight'),
      WrapText: () => look.get('wrap'),
      HorizontalAlignment: () => look.get('horizontal'),
      VerticalAlignment: () => look.get('vertical'),
    },
    setters: {
      ColumnWidth: (given) => look.set({ columnWidth: size(given, 'columnWidth') }, 'columns'),
      RowHeight: (given) => look.set({ rowHeight: size(given, 'rowHeight') }, 'rows'),
      WrapText: (given) => look.set({ wrap: asFlag(given, 'wrapText') }),
      HorizontalAlignment: (given) =>
        look.set({ horizontal: asOneOf(given, HORIZONTAL, 'horizontalAlignment') }),
      VerticalAlignment: (given) => look.set({ vertical: asOneOf(given, VERTICAL, 'verticalAlignment') }),
    },
    links: {
      Fill: () => fillNode(look),
      Font: () => fontNode(look),
      Borders: () => bordersNode(env, sheet, area),
      Protection: () => protectionNode(look),
    },
    methods: {
      AutofitColumns: async () => {
        await guardChange(env.book, sheet, 'columns');
        await env.book.autofitColumns(sheet, area);
      },
    },
  };
}
