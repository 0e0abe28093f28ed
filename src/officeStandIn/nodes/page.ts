import { parseArea, splitSheet } from '../address';
import type { PageState } from '../book';
import { fail } from '../failure';
import { asOneOf, asWhole } from '../input';
import type { Env, ObjectNode } from '../node';
import { placeArgument, placeOf } from './find';
import { guardChange } from './guard';
import { rangeNode } from './range';

export function freezeNode(env: Env, sheet: string): ObjectNode {
  const set = (rows: number, columns: number): Promise<void> =>
    Promise.resolve(env.book.setFreeze(sheet, rows, columns));
  const many = (given: unknown): number => {
    const n = given === undefined || given === null ? 1 : asWhole(given, 'count');
    return n >= 0 ? n : fail('InvalidArgument', 'The count may not be negative.');
  };
  return {
    type: 'WorksheetFreezePanes',
    scalars: {},
    methods: {
      FreezeRows: (count) => set(many(count), 0),
      FreezeColumns: (count) => set(0, many(count)),
      FreezeAt: async (range) => {
        const { area } = await placeArgument(env.book, sheet, range);
        await set(area.row + area.rows, area.column + area.columns);
      },
      Unfreeze: () => set(0, 0),
      GetLocationOrNullObject: async () => {
        const { rows, columns } = await env.book.freeze(sheet);
        if (rows === 0 && columns === 0) return null;
        return rangeNode(env, sheet, {
          row: 0,
          column: 0,
          rows: rows || 1_048_576,
          columns: columns || 16_384,
        });
      },
    },
  };
}

/** What a protected sheet still allows when the caller says nothing. */
const OPTIONS = {
  allowAutoFilter: false,
  allowDeleteColumns: false,
  allowDeleteRows: false,
  allowEditObjects: false,
  allowEditScenarios: false,
  allowFormatCells: false,
  allowFormatColumns: false,
  allowFormatRows: false,
  allowInsertColumns: false,
  allowInsertHyperlinks: false,
  allowInsertRows: false,
  allowPivotTables: false,
  allowSort: false,
  selectionMode: 'Normal',
} as const;

export function protectionNode(env: Env, sheet: string): ObjectNode {
  return {
    type: 'WorksheetProtection',
    scalars: {
      Protected: async () => (await env.book.protection(sheet)).isOn,
      Options: async () => {
        const { isOn, options } = await env.book.protection(sheet);
        return isOn ? options : null;
      },
    },
    methods: {
      Protect: async (options, password) => {
        if ((await env.book.protection(sheet)).isOn)
          fail('InvalidOperation', 'The sheet is protected already.');
        const given = (typeof options === 'object' && options !== null ? options : {}) as Readonly<
          Record<string, boolean | string>
        >;
        const secret = typeof password === 'string' && password !== '' ? { password } : {};
        await env.book.setProtection(sheet, { isOn: true, options: { ...OPTIONS, ...given }, ...secret });
      },
      Unprotect: async (password) => {
        const { isOn, password: secret } = await env.book.protection(sheet);
        if (isOn && secret !== undefined && secret !== password)
          fail('AccessDenied', 'The password does not open this sheet.');
        await env.book.setProtection(sheet, { isOn: false, options: {} });
      },
    },
  };
}

const zoomPatch = (given: unknown): Partial<PageState> => {
  const { scale, horizontalFitToPages, verticalFitToPages } = (given ?? {}) as Readonly<
    Record<string, unknown>
  >;
  const isSet = (v: unknown): boolean => v !== undefined && v !== null;
  if (isSet(scale) && (isSet(horizontalFitToPages) || isSet(verticalFitToPages)))
    return fail('InvalidArgument', 'Zoom by scale or by pages, not both.');
  return {
    ...(isSet(scale) ? { scale: asWhole(scale, 'scale') } : {}),
    ...(isSet(horizontalFitToPages)
      ? { fitWidth: asWhole(horizontalFitToPages, 'horizontalFitToPages') }
      : {}),
    ...(isSet(verticalFitToPages) ? { fitHeight: asWhole(verticalFitToPages, 'verticalFitToPages') } : {}),
  };
};

/** $1:$2 or a range object → first and last row. */
const rowsOf = (given: unknown): readonly [number, number] => {
  const area =
    placeOf(given)?.area ?? (typeof given === 'string' ? parseArea(splitSheet(given).rest) : undefined);
  return area ? [area.row, area.row + area.rows - 1] : fail('InvalidArgument', 'Give rows, as in $1:$2.');
};

export function pageNode(env: Env, sheet: string): ObjectNode {
  const change = async (patch: Partial<PageState>): Promise<void> => {
    await guardChange(env.book, sheet, 'structure');
    await env.book.setPage(sheet, patch);
  };
  return {
    type: 'PageLayout',
    scalars: {
      Orientation: async () => ((await env.book.page(sheet)).landscape ? 'Landscape' : 'Portrait'),
      Zoom: async () => {
        const { scale, fitWidth, fitHeight } = await env.book.page(sheet);
        if (fitWidth === undefined && fitHeight === undefined) return { scale: scale ?? 100 };
        return { horizontalFitToPages: fitWidth ?? null, verticalFitToPages: fitHeight ?? null };
      },
    },
    setters: {
      Orientation: (given) =>
        change({ landscape: asOneOf(given, ['Portrait', 'Landscape'], 'orientation') === 'Landscape' }),
      Zoom: (given) => change(zoomPatch(given)),
    },
    methods: {
      SetPrintTitleRows: (range) => change({ titleRows: rowsOf(range) }),
      // Nothing here prints; the place is checked all the same.
      SetPrintArea: async (range) => {
        await placeArgument(env.book, sheet, range);
      },
    },
  };
}
