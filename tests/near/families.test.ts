import { holdPairs } from './pairs';

holdPairs('families');
