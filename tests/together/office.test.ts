import { together } from './together';

together('office');
