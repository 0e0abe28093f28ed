import type { SheetFunction } from '../../../shared/functions/define';

/**
 * What workbooks out there depend on. A saved call holds the function's id and its arguments by place, and
 * Excel knows the add-in by its id: none of these may change. A release adds its functions to
 * tests/golden/released.json; nothing is ever taken out.
 */
export interface Released {
  readonly manifestId: string;
  /** Parameter names in their order, by function id. */
  readonly functions: Readonly<Record<string, readonly string[]>>;
}

export function releasedFaults(
  released: Released,
  functions: readonly SheetFunction[],
  manifest: string,
): string[] {
  const id = /<Id>([^<]*)<\/Id>/.exec(manifest)?.[1] ?? '';
  return [
    ...(id === released.manifestId
      ? []
      : [`the manifest's id is ${id}, workbooks know ${released.manifestId}`]),
    ...Object.entries(released.functions).flatMap(([name, before]) => {
      const now = functions.find((fn) => fn.id === name)?.params.map((p) => p.name);
      if (!now) return [`${name} was released and is gone`];
      const moved = before.findIndex((param, i) => now[i] !== param);
      return moved < 0
        ? []
        : [
            `${name}: argument ${moved + 1} was ${before[moved] ?? ''} when released, is ${now[moved] ?? 'gone'}`,
          ];
    }),
  ];
}
