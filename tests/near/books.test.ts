import { holdPairs } from './pairs';

holdPairs('books');
