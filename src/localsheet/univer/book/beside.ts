import type { SheetModel } from '../../../../shared/sheet/workbook/model';
import { withSetting } from '../../../officeStandIn/settings';
import type { StandInBook, ChartState, PageState, ProtectionState } from '../../../officeStandIn/book';

/**
 * What the engine has no place for: charts, protection and page set-up, kept per sheet, and settings of
 * add-ins.
 */
export type BesidePart = Pick<
  StandInBook,
  | 'charts'
  | 'putChart'
  | 'deleteChart'
  | 'protection'
  | 'setProtection'
  | 'page'
  | 'setPage'
  | 'settings'
  | 'putSetting'
>;

export interface KeptBeside {
  readonly charts: readonly ChartState[];
  readonly protection: ProtectionState;
  readonly page: PageState;
  /** Printing as the file had it; carried through for what a page here cannot say. */
  readonly print?: NonNullable<SheetModel['print']>;
}
const NOTHING: KeptBeside = {
  charts: [],
  protection: { isOn: false, options: {} },
  page: { landscape: false },
};

export class BesideStore {
  private readonly sheets = new Map<string, KeptBeside>();
  settings: Readonly<Record<string, unknown>> = {};
  private readonly listeners = new Set<() => void>();

  of(sheet: string): KeptBeside {
    return this.sheets.get(sheet) ?? NOTHING;
  }
  put(sheet: string, patch: Partial<KeptBeside>): void {
    this.sheets.set(sheet, { ...this.of(sheet), ...patch });
    this.tell();
  }
  forget(sheet: string): void {
    if (this.sheets.delete(sheet)) this.tell();
  }
  /** All of it, to be kept and put back. */
  all(): readonly (readonly [string, KeptBeside])[] {
    return [...this.sheets];
  }
  restore(
    sheets: readonly (readonly [string, KeptBeside])[],
    settings: Readonly<Record<string, unknown>>,
  ): void {
    this.sheets.clear();
    for (const [sheet, beside] of sheets) this.sheets.set(sheet, beside);
    this.settings = settings;
    this.tell();
  }
  putSetting(key: string, value: unknown): void {
    this.settings = withSetting(this.settings, key, value);
    this.tell();
  }
  clear(): void {
    this.sheets.clear();
    this.settings = {};
    this.tell();
  }
  /** Called after each change. */
  listen(listener: () => void): void {
    this.listeners.add(listener);
  }
  private tell(): void {
    for (const listener of this.listeners) listener();
  }
}

export const besidePart = (store: BesideStore): BesidePart => ({
  charts: (sheet) => store.of(sheet).charts,
  putChart(sheet, chart) {
    const { charts } = store.of(sheet);
    const isKnown = charts.some((c) => c.id === chart.id);
    store.put(sheet, {
      charts: isKnown ? charts.map((c) => (c.id === chart.id ? chart : c)) : [...charts, chart],
    });
  },
  deleteChart(sheet, id) {
    store.put(sheet, { charts: store.of(sheet).charts.filter((c) => c.id !== id) });
  },
  protection: (sheet) => store.of(sheet).protection,
  setProtection(sheet, protection) {
    store.put(sheet, { protection });
  },
  page: (sheet) => store.of(sheet).page,
  settings: () => store.settings,
  putSetting(key, value) {
    store.putSetting(key, value);
  },
  setPage(sheet, patch) {
    store.put(sheet, { page: { ...store.of(sheet).page, ...patch } });
  },
});
