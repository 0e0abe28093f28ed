import type { PanePlace } from '../../pane/frame/places';
import { writeCheckWithSuffix } from '../check/commands/out';
import { initialCheck } from '../check/state/check';
import { insertAnyway, insertBelow } from '../functions/commands/functions';
import { initialFunctions } from '../functions/state/functions';
import { initialMessages } from '../messages/state/messages';
import { followCell } from './commands/why';
import { initialWhy } from './state/why';
import { whyView } from './view/why';

export const place: PanePlace = {
  initial: () => ({
    why: initialWhy,
    functions: initialFunctions,
    messages: initialMessages,
    check: initialCheck,
  }),
  view: whyView,
  answers: { insertAnyway, insertBelow, writeCheckWithSuffix },
  keeps: { why: ['part'], functions: ['search', 'family', 'open', 'texts', 'isNamed'] },
  onOpen: followCell,
  onTick: followCell,
};
