/** @jest-environment jsdom */
import { planEachOnce } from './plannedOnce';
import { together } from './together';

planEachOnce();
together('pane');
