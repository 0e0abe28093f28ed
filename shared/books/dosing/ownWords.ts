import type { SheetBuilder } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import { LOG_LANGUAGES } from '../../dosing/logWords';
import { DRAWING, EVENTS, READINGS, VERDICT, now } from './layout';

/**
 * What a dosing sheet in another language holds besides its translated words. The function takes its options and
 * gives its sentences in English: a table leads the words that are picked to its options, and its sentences, known
 * by a few of their words, to those of the language. Figures stand in the plan itself.
 */
export interface DosingWords {
  /** Language of the log whose words are picked. */
  readonly log: string;
  /** Options of where the water comes from and of the meter: as cells show them, and as the function takes them. */
  readonly options: readonly (readonly [own: string, english: string])[];
  /** Short words of the answer in large letters, by the function's action. */
  readonly actions: readonly (readonly [english: string, own: string])[];
  /** A few words of each sentence of the function, in the order in which its sentences come, and what is said. */
  readonly sentences: readonly (readonly [english: string, own: string])[];
  /** Put behind the headings under which the function's own sentences stand. */
  readonly inEnglish: string;
  readonly title: string;
  readonly note: string;
}

/** What may have happened before a reading. */
export const HAPPENED = ['reading', 'aired', 'jar', 'night', 'change', 'refill', 'rain'];

const FIRST = DRAWING + READINGS + 8;
const [OWN, ENGLISH, TODO, REMARK, RISK] = ['C', 'J', 'D', 'E', 'F'] as const;

export interface OwnPlaces {
  /** The English of what stands in a cell or in the list of events. */
  readonly option: (cell: string) => string;
  readonly events: string;
  readonly action: string;
  readonly todo: string;
  readonly remark: string;
  readonly verdict: string;
  /** Cells whose text stays as it is. */
  readonly isKept: (address: string) => boolean;
}

/** Writes the tables below the drawing; says where things stand. */
export function ownWords(sheet: SheetBuilder, words: DosingWords): OwnPlaces {
  const log = LOG_LANGUAGES[words.log];
  const options = [...HAPPENED.map((what) => [log?.words[what] ?? what, what] as const), ...words.options];
  const actions = words.actions.map(([english, own]) => [own, english] as const);
  const top = FIRST + 2;
  const [optionsEnd, actionsEnd] = [top + options.length - 1, top + options.length + actions.length - 1];
  const [first, last] = [actionsEnd + 1, actionsEnd + words.sentences.length];
  sheet.put(`B${FIRST}`, words.title, 'section').put(`B${FIRST + 1}`, words.note, 'quiet');
  for (const column of 'CDEFGHIJ') sheet.put(`${column}${FIRST}`, '', 'section');
  [...options, ...actions].forEach(([own, english], i) => {
    sheet.put(`${OWN}${top + i}`, own, 'unit').put(`${ENGLISH}${top + i}`, english, 'unit');
  });
  const found = (column: string, row: number, text: string): void => {
    sheet.put(
      `${column}${row}`,
      `=IF(ISNUMBER(SEARCH($${ENGLISH}${row},${text}&"")),$${OWN}${row}&" ","")`,
      'unit',
    );
  };
  words.sentences.forEach(([english, own], i) => {
    const row = first + i;
    sheet.put(`${OWN}${row}`, own, 'unit').put(`${ENGLISH}${row}`, english, 'unit');
    found(TODO, row, now('todo'));
    found(REMARK, row, now('remark'));
    found(RISK, row, VERDICT);
  });
  // Each event of the log in the column left free beside the drawing.
  const event = (i: number): string => `C${DRAWING + 1 + i}`;
  const lookUp = (cell: string, from: number, to: number, back: 'own' | 'english'): string => {
    const [of, at] = back === 'english' ? [ENGLISH, OWN] : [OWN, ENGLISH];
    return `IFERROR(INDEX($${of}$${from}:$${of}$${to},MATCH(${cell},$${at}$${from}:$${at}$${to},0)),${cell})`;
  };
  const option = (cell: string): string => lookUp(cell, top, optionsEnd, 'english');
  const [column = 'I'] = /[A-Z]+/.exec(EVENTS) ?? [];
  const firstEvent = Number(/\d+/.exec(EVENTS)?.[0]);
  for (let i = 0; i < READINGS; i++) {
    const cell = `$${column}$${firstEvent + i}`;
    sheet.put(event(i), `=IF(${cell}="","",${option(cell)})`, 'cell');
  }
  const said = (of: string): string =>
    `TRIM(${words.sentences.map((_, i) => `$${of}$${first + i}`).join('&')})`;
  const sums = last + 1;
  sheet
    .put(`${TODO}${sums}`, `=IF(${said(TODO)}="",${now('todo')}&"",${said(TODO)})`, 'unit')
    .put(`${REMARK}${sums}`, `=IF(${said(REMARK)}="",${now('remark')}&"",${said(REMARK)})`, 'unit')
    .put(`${RISK}${sums}`, `=IF(${said(RISK)}="",${VERDICT}&"",${said(RISK)})`, 'unit')
    .put(`${OWN}${sums}`, `=${lookUp(now('action'), optionsEnd + 1, actionsEnd, 'own')}&""`, 'unit');
  return {
    option,
    events: `$${event(0).slice(0, 1)}$${DRAWING + 1}:$C$${DRAWING + READINGS}`,
    action: `$${OWN}$${sums}`,
    todo: `$${TODO}$${sums}`,
    remark: `$${REMARK}$${sums}`,
    verdict: `$${RISK}$${sums}`,
    isKept: (address) => {
      const row = Number(address.replace(/\D/g, ''));
      return row >= FIRST && row < sums;
    },
  };
}

/** The answer's lines with what is said in the language in the place of the function's own words. */
export function withOwnAnswers(sheet: SheetModel, places: OwnPlaces, answers: readonly string[]): SheetModel {
  const swaps: readonly (readonly [from: string, to: string])[] = [
    [`UPPER(${now('action')})`, places.action],
    [now('todo'), places.todo],
    [now('remark'), places.remark],
    [`&${VERDICT}`, `&${places.verdict}`],
  ];
  const cells = { ...sheet.cells };
  for (const address of answers) {
    const cell = cells[address];
    if (cell?.formula === undefined) continue;
    cells[address] = {
      ...cell,
      formula: swaps.reduce((text, [from, to]) => text.replaceAll(from, to), cell.formula),
    };
  }
  return { ...sheet, cells };
}
