import { together } from './together';

together('season');
