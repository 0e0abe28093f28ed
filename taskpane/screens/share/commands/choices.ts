import { parseArea, quoteSheet, splitReference } from '../../../../shared/sheet/formula/address';
import type { Command } from '../../../pane/command';
import type { Choices, Look } from '../state/share';
import type { PaneState } from '../../../pane/keeping/state';
import { inShare } from './share';

/** What the copy shall hold. A copy made before is of other choices, so it goes. */

const choose = (state: PaneState, choices: Partial<Choices>): PaneState =>
  inShare(state, { choices: { ...state.share.choices, ...choices }, made: undefined });
const toggled = (set: ReadonlySet<string>, item: string): ReadonlySet<string> =>
  set.has(item) ? new Set([...set].filter((one) => one !== item)) : new Set([...set, item]);

export const toggleSheet: Command<string> = {
  name: 'toggleSheet',
  label: 'In the copy',
  perform: (state, name) => choose(state, { leftOut: toggled(state.share.choices.leftOut, name) }),
};
export const toggleColumn: Command<string> = {
  name: 'toggleColumn',
  label: 'Empty the column',
  perform: (state, cells) => choose(state, { blank: toggled(state.share.choices.blank, cells) }),
};

export type Switch = 'personal' | 'keepResults' | 'keepAlive' | 'accept';
export const toggleSwitch: Command<Switch> = {
  name: 'toggleSwitch',
  label: 'Switch',
  perform: (state, key) => choose(state, { [key]: !state.share.choices[key] }),
};

export const nameCopy: Command<string> = {
  name: 'nameCopy',
  label: 'Name the copy',
  perform: (state, name) => choose(state, { name }),
};

export const typeCells: Command<string> = {
  name: 'typeCells',
  label: 'Type cells',
  perform: (state, typed) => choose(state, { typed, typedFault: undefined }),
};

type Wish = { readonly cells: string } | { readonly fault: string };

/** Sheet!C or Sheet!B2:D40, as a person types it; the sheet may be left out where there is only one. */
export function readWish(typed: string, sheets: Look['sheets']): Wish {
  const { sheet: named, area } = splitReference(typed.trim());
  const names = sheets.filter(({ isWorksheet }) => isWorksheet).map(({ name }) => name);
  const sheet =
    named === undefined
      ? names.length === 1
        ? names[0]
        : undefined
      : names.find((name) => name.toLowerCase() === named.toLowerCase());
  const column = /^\$?([A-Za-z]{1,3})(?::\$?\1)?$/i.exec(area)?.[1];
  if (typed.trim() === '') return { fault: 'Type a column or a range, such as Buyers!C or Buyers!B2:D40.' };
  if (sheet === undefined)
    return {
      fault:
        named === undefined
          ? `Say on which sheet, for example ${quoteSheet(names[0] ?? 'Sheet1')}!C.`
          : `There is no sheet “${named}”. The sheets are: ${names.join(', ')}.`,
    };
  if (column !== undefined) return { cells: `${quoteSheet(sheet)}!${column.toUpperCase()}` };
  if (!parseArea(area)) return { fault: `“${area}” is neither a column (C) nor a range (B2:D40).` };
  return { cells: `${quoteSheet(sheet)}!${area.replaceAll('$', '').toUpperCase()}` };
}

export const addCells: Command = {
  name: 'addCells',
  label: 'Add',
  perform: (state) => {
    const { choices, look } = state.share;
    const wish = readWish(choices.typed, look?.sheets ?? []);
    if ('fault' in wish) return { ...choose(state, { typedFault: wish.fault }), focus: 'share-cells' };
    return {
      ...choose(state, { blank: new Set([...choices.blank, wish.cells]), typed: '', typedFault: undefined }),
      focus: 'share-cells',
    };
  },
};
