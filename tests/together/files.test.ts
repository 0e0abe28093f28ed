import { together } from './together';

together('files');
