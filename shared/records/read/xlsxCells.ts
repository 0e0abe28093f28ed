import type { Container } from '../../files/read/container';
import { Unreadable, openContainer } from '../../files/read/container';
import { BadXml, tagsNamed } from '../../files/read/scan';
import { readTexts } from '../../files/read/sheet';
import { readStyles } from '../../files/read/styles';
import type { CellContext } from './scanCells';
import { BadCells, CellScanner } from './scanCells';
import type { SheetCells } from './sheetCells';
import { SheetBuilder } from './sheetCells';

/** Thrown inside this folder; the sentence says what is wrong with the file and what to do. */
export class BadFile extends Error {}

interface Entry {
  readonly name: string;
  readonly path: string;
}

function entriesOf(container: Container): {
  readonly sheets: readonly Entry[];
  readonly context: CellContext;
} {
  const path = container.relations('').find(({ kind }) => kind === 'officeDocument')?.target;
  const xml = path === undefined ? undefined : container.text(path);
  if (path === undefined || xml === undefined)
    throw new BadFile('This zip file holds no workbook. Pick the .xlsx file itself.');
  const relations = container.relations(path);
  const part = (kind: string): string | undefined => {
    const found = relations.find((r) => r.kind === kind);
    return found && container.text(found.target);
  };
  const sheets = tagsNamed(xml, 'sheet').flatMap((tag, index) => {
    const relation = relations.find(({ id }) => id === tag.get('id'));
    return relation?.kind === 'worksheet'
      ? [{ name: tag.get('name') ?? `Sheet${index + 1}`, path: relation.target }]
      : [];
  });
  if (sheets.length === 0) throw new BadFile('The file holds no sheet with cells.');
  const is1904 = tagsNamed(xml, 'workbookPr').some((tag) => tag.flag('date1904'));
  return {
    sheets,
    context: {
      texts: readTexts(part('sharedStrings')),
      dateStyles: readStyles(part('styles')).cells.map((style) => style.isDate),
      is1904,
    },
  };
}

/** Reads the sheets of an .xlsx file, yielding the share done. */
export function* readXlsxCells(bytes: Uint8Array): Generator<number, readonly SheetCells[]> {
  try {
    const container = openContainer(bytes);
    yield 0.1;
    const { sheets, context } = entriesOf(container);
    const found: SheetCells[] = [];
    const total = sheets.reduce((sum, { path }) => sum + (container.bytes(path)?.length ?? 0), 1);
    let done = 0;
    for (const { name, path } of sheets) {
      const part = container.bytes(path);
      if (!part)
        throw new BadFile(
          `The sheet "${name}" is missing from the file. Open it in Excel and let Excel repair it.`,
        );
      const builder = new SheetBuilder(name);
      for (const share of new CellScanner(part, context, builder).run())
        yield 0.1 + 0.9 * ((done + share * part.length) / total);
      done += part.length;
      found.push(builder.build());
    }
    return found;
  } catch (error) {
    if (error instanceof Unreadable) throw new BadFile(error.message);
    if (error instanceof BadXml || error instanceof BadCells)
      throw new BadFile(`The file is damaged (${error.message}). Open it in Excel and let Excel repair it.`);
    throw error;
  }
}
