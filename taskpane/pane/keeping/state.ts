import type { CheckRecordsState } from '../../screens/check/state/check';
import type { DoseState } from '../../screens/dose/state/dose';
import type { FunctionsState } from '../../screens/functions/state/functions';
import type { MessagesState } from '../../screens/messages/state/messages';
import type { PlanState } from '../../screens/plan/state/plan';
import type { SeasonState } from '../../screens/season/state/season';
import type { ShareState } from '../../screens/share/state/share';
import type { TodayState } from '../../screens/today/state/today';
import type { VatState } from '../../screens/vat/state/notebook';
import type { WhyState } from '../../screens/why/state/why';
import type { Progress } from '../../host/port';
import type { KeptState } from './kept';
import type { PlaceId } from '../frame/places';
import type { PaneSettings } from './settings';
import { usualSettings } from './settings';

/**
 * Everything the pane knows. Commands return the next one, views draw it; nothing is kept anywhere else. The
 * slices of a place are there once the place was opened, and only its own commands and views read them.
 */
export interface PaneState {
  readonly screen: PlaceId;
  readonly isMenuOpen: boolean;
  readonly host: HostState;
  readonly settings: PaneSettings;
  /** What the places not opened yet had kept. */
  readonly kept: KeptState;
  /** The day the pane was opened, as a serial. */
  readonly openedOn: number;
  /** This moment, as a serial with its hour: moved on by the clock. */
  readonly now: number;
  /** Places whose slices are here. */
  readonly ready: readonly PlaceId[];
  readonly today: TodayState;
  readonly plan: PlanState;
  readonly season: SeasonState;
  readonly dose: DoseState;
  readonly vat: VatState;
  readonly why: WhyState;
  readonly functions: FunctionsState;
  readonly messages: MessagesState;
  readonly check: CheckRecordsState;
  readonly share: ShareState;
  /** Work under way; buttons that would start other work wait for it. */
  readonly task: Progress | undefined;
  readonly notice: Notice | undefined;
  readonly question: PaneQuestion | undefined;
  /** The element that gets the keyboard after the next drawing. */
  readonly focus: string | undefined;
  /** What a place is asked to do once it is open. */
  readonly errand: { readonly place: PlaceId; readonly act: string } | undefined;
}

/**
 * starting: waiting for the host; ready: a workbook is there; old: it lacks what the pane needs; absent: the
 * page runs alone.
 */
export type HostState = 'starting' | 'ready' | 'old' | 'absent';

export interface Notice {
  readonly tone: 'good' | 'warning' | 'bad';
  readonly text: string;
}

/** Something the user must decide before anything is changed. */
export interface PaneQuestion {
  readonly text: string;
  readonly answers: readonly ShownAnswer[];
  /** A word the user may change before answering. */
  readonly word?: { readonly label: string; readonly value: string };
}
export interface ShownAnswer {
  readonly label: string;
  /** Those with a suffix take the question's word. */
  readonly act:
    | 'insertAnyway'
    | 'insertBelow'
    | 'writeWithSuffix'
    | 'writeSeasonWithSuffix'
    | 'writeSummaryWithSuffix'
    | 'writeCheckWithSuffix'
    | 'takeLeftAway'
    | 'keepLeft'
    | 'putLeftBack'
    | 'dismiss';
}

export const initialState = (today: number, screen: PlaceId): PaneState =>
  ({
    screen,
    isMenuOpen: false,
    host: 'starting',
    settings: usualSettings,
    kept: {},
    openedOn: today,
    now: today,
    ready: [],
    task: undefined,
    notice: undefined,
    question: undefined,
    focus: undefined,
    errand: undefined,
    // The slices come with their places.
  }) as unknown as PaneState;

export const hasWorkbook = (state: PaneState): boolean => state.host === 'ready';
/** Work that changes or reads the workbook can start. */
export const isFree = (state: PaneState): boolean => hasWorkbook(state) && !state.task;
