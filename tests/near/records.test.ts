import { holdPairs } from './pairs';

holdPairs('records');
