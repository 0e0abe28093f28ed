import { together } from './together';

together('books');
