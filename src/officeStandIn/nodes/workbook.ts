import { asText } from '../input';
import type { Env, ObjectNode } from '../node';
import { namesNode } from './name';
import { rangeNode } from './range';
import { settingsNode } from './setting';
import { tablesNode } from './table';
import { worksheetsNode } from './worksheet';
import { xmlPartsNode } from './xmlPart';

const applicationNode = (env: Env): ObjectNode => ({
  type: 'Application',
  scalars: {},
  methods: {
    Calculate: async (kind) => {
      await env.book.calculate(kind === 'Full' || kind === 'FullRebuild');
      env.isStale = true;
    },
    CreateWorkbook: (base64) => {
      const bytes = asText(base64 ?? '', 'base64File');
      return {
        type: 'WorkbookCreated',
        scalars: {},
        methods: { Open: () => env.openWorkbook(bytes) },
      } satisfies ObjectNode;
    },
  },
});

/** The root of every path. */
export function workbookNode(env: Env): ObjectNode {
  return {
    type: 'Workbook',
    scalars: {},
    links: {
      Worksheets: () => worksheetsNode(env),
      Names: () => namesNode(env),
      Tables: () => tablesNode(env),
      Application: () => applicationNode(env),
      Settings: () => settingsNode(env),
      CustomXmlParts: () => xmlPartsNode(env),
    },
    methods: {
      GetSelectedRange: async () => {
        const { sheet, area } = await env.book.selection();
        return rangeNode(env, sheet, area);
      },
      GetActiveCell: async () => {
        const { sheet, area } = await env.book.selection();
        return rangeNode(env, sheet, { ...area, rows: 1, columns: 1 });
      },
    },
  };
}
