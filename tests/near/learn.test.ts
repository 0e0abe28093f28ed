import { holdPairs } from './pairs';

holdPairs('learn');
