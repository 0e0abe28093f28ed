import type { Place } from '../../pane/places';
import { writeSeasonWithSuffix } from '../season/commands/plan';
import { initialSeason } from '../season/state/season';
import { planTyped, writeWithSuffix } from './commands/plan';
import { initialPlan } from './state/plan';
import { plansView } from './view/modes';

export const place: Place = {
  initial: (today) => ({ plan: initialPlan(today), season: initialSeason(today) }),
  view: plansView,
  answers: { writeWithSuffix, writeSeasonWithSuffix },
  keeps: { plan: ['texts', 'touched', 'isAsked'], season: ['mode', 'form', 'touched', 'page', 'pasted'] },
  onOpen: planTyped,
};
