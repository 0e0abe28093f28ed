import { holdPairs } from './pairs';

holdPairs('dosing');
