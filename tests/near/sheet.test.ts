import { holdPairs } from './pairs';

holdPairs('sheet');
