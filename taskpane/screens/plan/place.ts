import type { PanePlace } from '../../pane/frame/places';
import { planAgain } from '../season/commands/again';
import { writeSeasonWithSuffix } from '../season/commands/plan';
import { initialSeason } from '../season/state/season';
import { planTyped, writeWithSuffix } from './commands/plan';
import { printCards } from './commands/cards';
import { initialPlan } from './state/plan';
import { plansView } from './view/modes';

export const place: PanePlace = {
  initial: (today) => ({ plan: initialPlan(today), season: initialSeason(today) }),
  view: plansView,
  acts: { planAgain, printCards },
  answers: { writeWithSuffix, writeSeasonWithSuffix },
  keeps: { plan: ['texts', 'touched', 'isAsked'], season: ['mode', 'form', 'touched', 'page', 'pasted'] },
  onOpen: planTyped,
};
