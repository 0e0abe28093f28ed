import { formatArea } from '../address';
import { fail } from '../failure';
import { asText } from '../input';
import type { Env, ObjectNode } from '../node';
import { locate, placeOf } from './find';
import { guardChange } from './guard';

/** Notes on cells; newer Excel only, so callers ask for the requirement set first. */
const noteNode = (env: Env, sheet: string, row: number, column: number): ObjectNode => {
  const write = async (text: string): Promise<void> => {
    await guardChange(env.book, sheet, 'objects');
    await env.book.setNote(sheet, row, column, text);
  };
  return {
    type: 'Note',
    scalars: { Content: () => env.book.note(sheet, row, column) },
    setters: { Content: (given) => write(asText(given, 'content')) },
    methods: { Delete: () => write('') },
  };
};

export function notesNode(env: Env, sheet: string): ObjectNode {
  return {
    type: 'NoteCollection',
    scalars: {},
    methods: {
      Add: async (cell, content) => {
        const place = placeOf(cell) ?? (await locate(env.book, sheet, cell));
        const { row, column, rows, columns } = place.area;
        if (rows * columns !== 1)
          return fail('InvalidArgument', `A note belongs to one cell, not to ${formatArea(place.area)}.`);
        if ((await env.book.note(place.sheet, row, column)) !== '')
          fail('ItemAlreadyExists', 'The cell has a note already.');
        await guardChange(env.book, place.sheet, 'objects');
        await env.book.setNote(place.sheet, row, column, asText(content, 'content'));
        return noteNode(env, place.sheet, row, column);
      },
      GetItemOrNullObject: async (cell) => {
        const place = placeOf(cell) ?? (await locate(env.book, sheet, cell));
        const { row, column } = place.area;
        return (await env.book.note(place.sheet, row, column)) === ''
          ? null
          : noteNode(env, place.sheet, row, column);
      },
    },
  };
}
