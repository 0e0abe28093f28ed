import type { NameInfo } from './book';
import type { Exclusion, Opened } from './open';
import type { FreezeOptions, Progress } from './options';
import type { SheetScan } from './scan';
import type { Edit } from './splice';

export interface LeaveOut {
  readonly exclusion: Exclusion;
  readonly editsOf: (scan: SheetScan) => Edit[];
  readonly dropsName: (name: NameInfo) => boolean;
  /** Is there anything to leave out that is still there? */
  readonly isChanging: boolean;
  readonly apply: (bookEdits: Edit[]) => string[];
}
export function* planExclusion(opened: Opened, options: FreezeOptions): Generator<Progress, LeaveOut | undefined> {
  yield { step: 'read', done: opened && options ? 0 : 1 };
  return undefined;
}
