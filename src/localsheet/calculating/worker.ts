import { findFunction } from '../../../shared/catalogue';
import { prepareFile } from '../files/prepared';
import { Desk } from './desk';
import type { Answered, Asked, FileRead, Results } from './messages';

/** Reads files and calculates large workbooks beside the page, which stays free meanwhile. */
const desk = new Desk(findFunction);

const work = (ask: Asked['ask']): Results | FileRead =>
  ask.task === 'read' ? JSON.stringify(prepareFile(ask.bytes)) : desk.calculate(ask);

const home = self as unknown as {
  onmessage: (event: MessageEvent<Asked>) => void;
  postMessage(message: Answered): void;
};
home.onmessage = ({ data: { id, ask } }) => {
  try {
    home.postMessage({ id, answer: work(ask) });
  } catch (fault) {
    home.postMessage({ id, failed: fault instanceof Error ? fault.message : String(fault) });
  }
};
