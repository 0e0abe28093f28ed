import { CommandType, ICommandService, IUndoRedoService, IUniverInstanceService } from '@univerjs/core';
import { SetRangeValuesMutation } from '@univerjs/sheets';
import { Context } from '../../../src/localsheet/univer/book/context';
import { formatPart } from '../../../src/localsheet/univer/book/formats';
import type { Sheet } from './support/engine';
import { startSheet } from './support/engine';

/** Looks given one after the other in one request are one change of the sheet, and look the same. */

jest.setTimeout(60_000);
const area = (row: number, column: number, rows: number, columns: number) => ({ row, column, rows, columns });

/** A style, another over part of it, lines around and inside, one taken away again. */
function dress(context: Context): void {
  const part = formatPart(context);
  const give = (step: () => unknown): void => {
    context.step(true, step);
  };
  give(() => part.setFormat('one', area(0, 0, 3, 3), { fill: '#FFEE00', bold: true, size: 12 }));
  give(() => part.setFormat('one', area(1, 1, 1, 2), { fill: '', color: '#112233', locked: false }));
  give(() =>
    part.setBorder('one', area(0, 0, 3, 3), 'EdgeBottom', { style: 'Continuous', color: '#000000' }),
  );
  give(() => part.setBorder('one', area(0, 0, 3, 3), 'EdgeLeft', { style: 'Double', color: '#00FF00' }));
  give(() => part.setBorder('one', area(2, 0, 1, 1), 'EdgeBottom', { style: 'None', color: '' }));
}

interface Seen {
  readonly looks: readonly unknown[];
  readonly changes: number;
  readonly undone: readonly unknown[];
}
async function seen(isGathered: boolean): Promise<Seen> {
  const sheet: Sheet = startSheet();
  const injector = sheet.univer.__getInjector();
  const context = new Context(sheet.engine);
  injector.get(IUniverInstanceService).focusUnit('book');
  const commands = injector.get(ICommandService);
  let changes = 0;
  commands.onCommandExecuted(({ id, type }) => {
    if (type === CommandType.MUTATION && id === SetRangeValuesMutation.id) changes++;
  });
  const looks = (): unknown[] =>
    [0, 1, 2].flatMap((row) =>
      [0, 1, 2].map((column) => structuredClone(context.sheet('one').getComposedCellStyle(row, column))),
    );
  if (isGathered)
    await context.gather(() => {
      dress(context);
      return Promise.resolve();
    });
  else dress(context);
  const dressed = looks();
  const made = changes;
  const undo = injector.get(IUndoRedoService);
  expect(undo.pitchTopUndoElement()).not.toBeNull();
  for (let step = undo.pitchTopUndoElement(); step; step = undo.pitchTopUndoElement()) {
    for (const { id, params } of step.undoMutations) commands.syncExecuteCommand(id, params);
    undo.popUndoToRedo();
  }
  const undone = looks();
  sheet.close();
  return { looks: dressed, changes: made, undone };
}

test('gathered looks are those given singly, in one change, and go with it', async () => {
  const [singly, gathered] = [await seen(false), await seen(true)];
  expect(gathered.looks).toEqual(singly.looks);
  expect([singly.changes, gathered.changes]).toEqual([5, 1]);
  expect(gathered.undone).toEqual(singly.undone);
  expect(JSON.stringify(gathered.undone)).not.toContain('112233');
});

test('a cell opened for a protected sheet stays open through later looks and contents, and can be locked again', async () => {
  const sheet = startSheet();
  sheet.univer.__getInjector().get(IUniverInstanceService).focusUnit('book');
  const context = new Context(sheet.engine);
  const part = formatPart(context);
  const isLocked = async (row = 1): Promise<unknown> =>
    (await part.format('one', area(row, row, 1, 1))).locked;
  expect(await isLocked()).toBe(true);
  await part.setFormat('one', area(1, 1, 1, 1), { locked: false });
  expect(await isLocked()).toBe(false);
  await part.setFormat('one', area(0, 0, 3, 3), { fill: '#FFEE00' });
  context.changeAll('one', area(1, 1, 1, 1), () => ({ v: 5 }));
  expect([await isLocked(), await isLocked(0)]).toEqual([false, true]);
  await part.setFormat('one', area(1, 1, 1, 1), { locked: true });
  expect(await isLocked()).toBe(true);
  sheet.close();
});
