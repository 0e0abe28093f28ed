import { holdPairs } from './pairs';

holdPairs('files');
