import type { HostState } from '../pane/keeping/state';

/** What the pane was tested against; everything newer is asked for where it is used. */
export const NEEDED_SET = '1.14';
/**
 * A page that loads from a farm's slow line still gets its chance; after this the pane explains itself
 * instead of waiting.
 */
export const PATIENCE_MS = 8000;

interface OfficeDoor {
  onReady(): Promise<{ readonly host: unknown } | undefined>;
  readonly context?: { readonly requirements?: { isSetSupported(set: string, version: string): boolean } };
}

const officeDoor = (): OfficeDoor | undefined => {
  const found: unknown = Reflect.get(globalThis, 'Office');
  const isDoor =
    (typeof found === 'object' || typeof found === 'function') && found !== null && 'onReady' in found;
  return isDoor ? (found as OfficeDoor) : undefined;
};

const stateIn = (office: OfficeDoor, host: unknown): HostState => {
  if (host === null || host === undefined || Reflect.get(globalThis, 'Excel') === undefined) return 'absent';
  return office.context?.requirements?.isSetSupported('ExcelApi', NEEDED_SET) === false ? 'old' : 'ready';
};

/**
 * Reports the host as soon as it is known. Office.js never answers when it was blocked or runs outside
 * Office, so silence for `patience` counts as absence; a late answer is still taken.
 */
export function watchHost(report: (host: HostState) => void, patience = PATIENCE_MS): void {
  const office = officeDoor();
  if (!office) {
    report('absent');
    return;
  }
  const timer = setTimeout(() => {
    report('absent');
  }, patience);
  office.onReady().then(
    (info) => {
      clearTimeout(timer);
      report(stateIn(office, info?.host));
    },
    () => {
      clearTimeout(timer);
      report('absent');
    },
  );
}
