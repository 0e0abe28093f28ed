/** @jest-environment jsdom */
import { together } from './together';

together('panePlan');
