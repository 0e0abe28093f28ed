import { holdPairs } from './pairs';

holdPairs('units');
