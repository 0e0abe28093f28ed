import type { CheckRecordsState } from '../screens/check/state/check';
import { initialCheck } from '../screens/check/state/check';
import type { DoseState } from '../screens/dose/state/dose';
import { initialDose } from '../screens/dose/state/dose';
import type { FunctionsState } from '../screens/functions/state/functions';
import { initialFunctions } from '../screens/functions/state/functions';
import type { Progress } from '../host/port';
import type { MessagesState } from '../screens/messages/state/messages';
import { initialMessages } from '../screens/messages/state/messages';
import type { PlanState } from '../screens/plan/state/plan';
import { initialPlan } from '../screens/plan/state/plan';
import type { SeasonState } from '../screens/season/state/season';
import { initialSeason } from '../screens/season/state/season';
import type { ShareState } from '../screens/share/state/share';
import { initialShare } from '../screens/share/state/share';

/** Everything the pane knows. Commands return the next one, views draw it; nothing is kept anywhere else. */
export interface State {
  readonly screen: ScreenId;
  readonly host: HostState;
  readonly plan: PlanState;
  readonly season: SeasonState;
  readonly dose: DoseState;
  readonly functions: FunctionsState;
  readonly messages: MessagesState;
  readonly check: CheckRecordsState;
  readonly share: ShareState;
  /** Work under way; buttons that would start other work wait for it. */
  readonly task: Progress | undefined;
  readonly notice: Notice | undefined;
  readonly question: Question | undefined;
  /** The element that gets the keyboard after the next drawing. */
  readonly focus: string | undefined;
}

export const SCREENS = ['plan', 'dose', 'functions', 'messages', 'check', 'share', 'about'] as const;
export type ScreenId = (typeof SCREENS)[number];

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
export interface Question {
  readonly text: string;
  readonly answers: readonly Answer[];
  /** A word the user may change before answering. */
  readonly word?: { readonly label: string; readonly value: string };
}
export interface Answer {
  readonly label: string;
  /** Those with a suffix take the question's word. */
  readonly act:
    | 'insertAnyway'
    | 'writeWithSuffix'
    | 'writeSeasonWithSuffix'
    | 'writeDoseWithSuffix'
    | 'writeSummaryWithSuffix'
    | 'writeCheckWithSuffix'
    | 'dismiss';
}

export const initialState = (today: number): State => ({
  screen: 'plan',
  host: 'starting',
  plan: initialPlan(today),
  season: initialSeason(today),
  dose: initialDose,
  functions: initialFunctions,
  messages: initialMessages,
  check: initialCheck,
  share: initialShare,
  task: undefined,
  notice: undefined,
  question: undefined,
  focus: undefined,
});

export const hasWorkbook = (state: State): boolean => state.host === 'ready';
/** Work that changes or reads the workbook can start. */
export const isFree = (state: State): boolean => hasWorkbook(state) && !state.task;
