import { holdPairs } from './pairs';

holdPairs('functions');
