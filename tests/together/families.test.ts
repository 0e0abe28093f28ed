import { together } from './together';

together('families');
