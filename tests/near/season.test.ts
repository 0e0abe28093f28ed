import { holdPairs } from './pairs';

holdPairs('season');
