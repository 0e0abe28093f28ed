/**
 * Run by audit.ts: 'make' writes the file, 'time' checks it in a process that holds nothing else, so
 * that its memory is the check's own.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { largeBook, timeAudit } from './audit';

const [, , what = '', path = ''] = process.argv;
if (what === 'make') writeFileSync(path, largeBook());
else console.log(JSON.stringify(timeAudit(new Uint8Array(readFileSync(path)))));
