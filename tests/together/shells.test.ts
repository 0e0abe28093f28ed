import { together } from './together';

together('shells');
