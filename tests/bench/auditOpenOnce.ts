/**
 * Run by auditOpen.ts: 'make' writes the rows, 'time' reads and checks them in a process that holds
 * nothing else.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import type { OpenRows } from './auditOpen';
import { openRows, timeOpen } from './auditOpen';

const [, , what = '', path = ''] = process.argv;
if (what === 'make') writeFileSync(path, JSON.stringify(openRows()));
else console.log(JSON.stringify(await timeOpen(JSON.parse(readFileSync(path, 'utf8')) as OpenRows)));
