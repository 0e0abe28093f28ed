import '@univerjs/design/lib/index.css';
import '@univerjs/ui/lib/index.css';
import '@univerjs/docs-ui/lib/index.css';
import '@univerjs/sheets-ui/lib/index.css';
import '@univerjs/sheets-formula-ui/lib/index.css';
import './style.css';
import { UniverInstanceType } from '@univerjs/core';
import { emptyWorkbook, startEngine } from '../univer/engine';

const container = document.getElementById('sheet');
if (container) {
  container.replaceChildren();
  const engine = startEngine(container);
  engine.univer.createUnit(UniverInstanceType.UNIVER_SHEET, emptyWorkbook());
  Object.assign(window, { engine });
}
