import type { ExampleCell } from '../../../shared/records/rules/rule';

/** Cells and their formats as an invented book fills them, at any place in any order. */
export class WrittenSheet {
  readonly cells: ExampleCell[][] = [];
  readonly formats: string[][] = [];
  constructor(readonly name: string) {}
  put(row: number, column: number, cell: ExampleCell, format = 'General'): void {
    while (this.cells.length <= row) {
      this.cells.push([]);
      this.formats.push([]);
    }
    const [line, look] = [this.cells[row] ?? [], this.formats[row] ?? []];
    while (line.length <= column) {
      line.push(null);
      look.push('General');
    }
    line[column] = cell;
    look[column] = format;
  }
}
