import design from '@univerjs/design/locale/en-US';
import docsUi from '@univerjs/docs-ui/locale/en-US';
import sheets from '@univerjs/sheets/locale/en-US';
import conditionalUi from '@univerjs/sheets-conditional-formatting-ui/locale/en-US';
import validation from '@univerjs/sheets-data-validation/locale/en-US';
import validationUi from '@univerjs/sheets-data-validation-ui/locale/en-US';
import filter from '@univerjs/sheets-filter/locale/en-US';
import filterUi from '@univerjs/sheets-filter-ui/locale/en-US';
import formulaUi from '@univerjs/sheets-formula-ui/locale/en-US';
import noteUi from '@univerjs/sheets-note-ui/locale/en-US';
import numfmtUi from '@univerjs/sheets-numfmt-ui/locale/en-US';
import sortUi from '@univerjs/sheets-sort-ui/locale/en-US';
import table from '@univerjs/sheets-table/locale/en-US';
import tableUi from '@univerjs/sheets-table-ui/locale/en-US';
import sheetsUi from '@univerjs/sheets-ui/locale/en-US';
import ui from '@univerjs/ui/locale/en-US';

/** The engine's own menus and messages, in English; what its 500 functions do comes later. */
export const LOCALES = [
  design,
  ui,
  docsUi,
  sheets,
  sheetsUi,
  formulaUi,
  numfmtUi,
  table,
  tableUi,
  filter,
  filterUi,
  sortUi,
  validation,
  validationUi,
  conditionalUi,
  noteUi,
];
