import { holdPairs } from './pairs';

holdPairs('maths');
