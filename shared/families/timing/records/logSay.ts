import { momentText } from '../../../units/dates';
import type { LogFault } from '../kernels/logFaults';
import type { CellError } from '../../../base/values';
import { outside, refuse } from '../../../base/values';
import { degrees } from './say';

const tenths = (x: number): string => degrees(Math.round(x * 10) / 10);

/** What is wrong and what to do, for one fault of a log. */
export interface FaultText {
  readonly finding: string;
  readonly advice: string;
}

export function faultText(fault: LogFault, before: number): FaultText {
  switch (fault.kind) {
    case 'order':
      return {
        finding: `earlier than the reading before it (${momentText(before)})`,
        advice: 'Sort the log by time.',
      };
    case 'midnight':
      return {
        finding: `earlier than the reading before it (${momentText(before)})`,
        advice: 'It looks as if the date was not moved on after midnight; if not, sort the log by time.',
      };
    case 'repeat':
      return { finding: 'the same time stands twice', advice: 'Keep one of the two rows.' };
    case 'gap':
      return {
        finding: `${tenths(fault.hours)} h without a reading before it`,
        advice: 'Nobody knows the water in between: fill in what is known, or allow the gap in longestGap.',
      };
    case 'jump':
      return {
        finding: `${tenths(fault.degrees)} °C in ${Math.round(fault.minutes)} minutes`,
        advice: 'Was the probe out of the water, or in another tank?',
      };
    case 'clock':
      return { finding: 'a clock time without its date', advice: 'Add the date to it.' };
    case 'notATime':
      return { finding: 'no date and time', advice: 'Type it as a date and time; text does not count.' };
    case 'notANumber':
      return {
        finding: 'the reading is not a number',
        advice: 'Retype it with digits only, without the unit.',
      };
    case 'noReading':
      return { finding: 'no reading', advice: 'The row is left out; the line runs between its neighbours.' };
    case 'zero':
      return { finding: 'a reading of 0 °C', advice: 'A probe that is unplugged often reads 0.' };
    case 'fahrenheit':
      return {
        finding: 'too hot for water with fish',
        advice: `That looks like °F: it would be ${tenths(fault.celsius)} °C.`,
      };
    case 'impossible':
      return {
        finding: 'no temperature of water with fish',
        advice: 'Look at the probe, then take the row out.',
      };
  }
}

export const badOrder = (fault: LogFault, time: number, before: number): CellError => {
  const { finding, advice } = faultText(fault, before);
  return refuse(`times, ${momentText(time)}: ${finding}. ${advice} SPAWN.LOG.CHECK lists every fault.`);
};

export const tooLongAGap = (from: number, to: number, gapHours: number, longest: number): CellError =>
  outside(
    `times: no reading from ${momentText(from)} to ${momentText(to)}, ${tenths(gapHours)} h; up to ${degrees(longest)} h is bridged. Fill in what is known, or give a longer longestGap.`,
  );

export const beforeLog = (start: number, first: number, longest: number): CellError =>
  outside(
    `start: ${momentText(start)} is more than ${degrees(longest)} h before the first reading (${momentText(first)}). Add the reading at the start, or look for a wrong date.`,
  );

export const startsAfterLog = (start: number, last: number): CellError =>
  outside(
    `start: ${momentText(start)} is after the whole log, which ends at ${momentText(last)}. Look for a wrong date, or use the readings of this run.`,
  );

export const afterLog = (last: number, done: number, longest: number): CellError =>
  outside(
    `expected: the log ends at ${momentText(last)} with ${tenths(done * 100)} % done, and the last reading is held for at most ${degrees(longest)} h. Give the temperature you expect from there on.`,
  );

export const endsBeforeStart = (start: number, at: number): CellError =>
  refuse(`at: ${momentText(at)} is before the start, ${momentText(start)}.`);

export const readingAt = (time: number): string => `temperatures, ${momentText(time)}`;
