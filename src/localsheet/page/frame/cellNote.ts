import { ICommandService } from '@univerjs/core';
import { SetFormulaCalculationResultMutation } from '@univerjs/engine-formula';
import { SetRangeValuesMutation, SetSelectionsOperation } from '@univerjs/sheets';
import type { UniverBook } from '../../univer/book';
import { errorAt } from '../../univer/errorText';
import { element } from './elements';

/** Why the selected cell shows an error: a line over the formula bar, read out by screen readers as well. */
const SOON = 80;
const AFTER: ReadonlySet<string> = new Set([
  SetSelectionsOperation.id,
  SetFormulaCalculationResultMutation.id,
  SetRangeValuesMutation.id,
]);

export function wireCellNote(open: UniverBook): void {
  const note = element('cell-note', HTMLElement);
  let soon: ReturnType<typeof setTimeout> | undefined;
  const show = async (): Promise<void> => {
    const { sheet, area } = await open.book.selection();
    const found = errorAt(open, sheet, area.row, area.column);
    const text = found ? `${found.code} ${found.sentence}` : '';
    if (note.textContent !== text) note.textContent = text;
    note.title = text;
    note.hidden = text === '';
    const bar = document.querySelector('[data-u-comp="formula-bar"]')?.getBoundingClientRect();
    const home = note.parentElement?.getBoundingClientRect();
    if (bar && home) note.style.top = `${bar.top - home.top}px`;
  };
  open.context.engine.injector.get(ICommandService).onCommandExecuted(({ id }) => {
    if (!AFTER.has(id)) return;
    clearTimeout(soon);
    soon = setTimeout(() => {
      void show();
    }, SOON);
  });
}
