import { together } from './together';

together('whole');
