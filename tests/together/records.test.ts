import { together } from './together';

together('records');
