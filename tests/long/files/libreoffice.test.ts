import { execFileSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { readXlsx, writeXlsx } from '../../../shared/files';
import { hasCustomCall } from '../../../shared/files/formulas';
import type { CellModel, SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import { seasonPlanTemplate } from '../../../templates/season-plan.template';
import { TEMPLATE_LANGUAGES } from '../../../templates/languages';
import { BACKYARD, COMMERCIAL, seasonTemplate } from '../../../templates/season.template';
import { modelOf } from '../../run/support';
import { onItsDay } from '../../support/day';
import { readable } from '../../files/support/support';

/**
 * LibreOffice opens what we write, calculates it all again and prints it. Without LibreOffice and
 * poppler-utils these tests fail.
 */
jest.setTimeout(240_000);

const folder = mkdtempSync(join(tmpdir(), 'spawnbook-lo-'));
const profile = join(folder, 'profile');

/** Recalculate on load: always. Without it LibreOffice trusts the values in the file. */
const ALWAYS_RECALCULATE = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

beforeAll(() => {
  mkdirSync(join(profile, 'user'), { recursive: true });
  writeFileSync(join(profile, 'user', 'registrymodifications.xcu'), ALWAYS_RECALCULATE);
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

/** Converts many files by one start of the program, which costs more than a file does. */
function convert(files: Readonly<Record<string, Uint8Array>>, kind: 'xlsx' | 'pdf'): void {
  for (const [name, bytes] of Object.entries(files)) writeFileSync(join(folder, `${name}.xlsx`), bytes);
  execFileSync(
    'soffice',
    [
      '--headless',
      '--norestore',
      `-env:UserInstallation=${pathToFileURL(profile).href}`,
      '--convert-to',
      kind,
      '--outdir',
      join(folder, kind),
      ...Object.keys(files).map((name) => join(folder, `${name}.xlsx`)),
    ],
    { stdio: 'pipe', timeout: 600_000 },
  );
}
/** What came out of one of the files. */
function converted(name: string, kind: 'xlsx' | 'pdf'): string {
  const file = join(folder, kind, `${name}.${kind}`);
  if (!existsSync(file)) throw new Error(`LibreOffice made no ${kind} of ${name}`);
  return file;
}
const reopened = (name: string): WorkbookModel =>
  readable(readXlsx(new Uint8Array(readFileSync(converted(name, 'xlsx'))))).model;

const mapped = (model: WorkbookModel, change: (cell: CellModel) => CellModel): WorkbookModel => ({
  ...model,
  sheets: model.sheets.map((sheet) => ({
    ...sheet,
    cells: Object.fromEntries(Object.entries(sheet.cells).map(([address, cell]) => [address, change(cell)])),
  })),
});
const isNative = (cell: CellModel): boolean => cell.formula !== undefined && !hasCustomCall(cell.formula);

/**
 * LibreOffice does not know our functions: their cells keep the last value, as in a copy made for sharing.
 */
const withValues = (model: WorkbookModel): WorkbookModel =>
  mapped(model, (cell) => {
    if (cell.formula === undefined || isNative(cell)) return cell;
    return Object.fromEntries(
      Object.entries(cell).filter(([part]) => part !== 'formula' && part !== 'spill'),
    );
  });
/** Every result of a native formula is made wrong, so that only calculating can put it right. */
const spoiled = (model: WorkbookModel): WorkbookModel =>
  mapped(model, (cell) =>
    isNative(cell) ? { ...cell, value: typeof cell.value === 'number' ? cell.value + 1 : 'stale' } : cell,
  );

const same = (got: unknown, wanted: unknown): boolean => {
  if (typeof got === 'number' && typeof wanted === 'number')
    return Math.abs(got - wanted) <= 1e-9 * Math.max(1, Math.abs(wanted));
  return (got ?? '') === wanted;
};

const SEASON_PAGES = [
  'TODAY',
  'PROMISE',
  'Females: weigh, dose in mL, strip',
  'Calendar',
  'Who is in which vat',
  'what to order in which week',
  'Money left, week by week',
  'What must hold',
  'Page 1 of',
];
/** The same pages in French. */
const FRENCH_PAGES = [
  'AUJOURD’HUI',
  'PROMETTEZ',
  'Femelles : peser, dose en mL, stripper',
  'Calendrier',
  'Qui est dans quel bac',
  'que commander en quelle semaine',
  'Argent restant, semaine par semaine',
  'Ce qui doit tenir',
];
interface Book {
  readonly name: string;
  readonly make: () => WorkbookModel;
  readonly words: readonly string[];
  readonly pages: readonly [least: number, most: number];
}
const BOOKS: readonly Book[] = [
  { name: 'template', make: seasonPlanTemplate, words: SEASON_PAGES, pages: [8, 16] },
  {
    name: 'fry',
    make: () => modelOf({ product: 'fry', alkalinity: undefined, females: 0 }),
    // Without a female there is no pair to weigh.
    words: SEASON_PAGES.filter((word) => !word.startsWith('Females')),
    pages: [6, 16],
  },
  { name: 'backyard', make: () => onItsDay(seasonTemplate(BACKYARD)), words: SEASON_PAGES, pages: [8, 8] },
  {
    name: 'french',
    make: () => onItsDay(seasonTemplate(BACKYARD, TEMPLATE_LANGUAGES[0])),
    words: FRENCH_PAGES,
    pages: [8, 10],
  },
  {
    name: 'commercial',
    make: () => onItsDay(seasonTemplate(COMMERCIAL)),
    words: SEASON_PAGES,
    pages: [9, 30],
  },
];

const COMMITTED = ['season-plan', 'season-backyard', 'season-backyard-fr'];
const committed = (name: string): Uint8Array =>
  new Uint8Array(readFileSync(join(__dirname, '..', '..', '..', 'templates', `${name}.xlsx`)));
const models = new Map(BOOKS.map(({ name, make }) => [name, make()]));
const modelNamed = (name: string): WorkbookModel => {
  const model = models.get(name);
  if (!model) throw new Error(`no book ${name}`);
  return model;
};
const written = (suffix: string, change: (model: WorkbookModel) => WorkbookModel): [string, Uint8Array][] =>
  [...models].map(([name, model]) => [`${name}-${suffix}`, writeXlsx(change(model))]);

beforeAll(() => {
  convert(
    Object.fromEntries([
      ...written('hard', (model) => spoiled(withValues(model))),
      ...COMMITTED.map((name): [string, Uint8Array] => [`committed-${name}`, committed(name)]),
    ]),
    'xlsx',
  );
  convert(Object.fromEntries(written('print', withValues)), 'pdf');
}, 900_000);

test.each(BOOKS)(
  '$name: calculated again from spoiled values, every native formula gives our value',
  ({ name }) => {
    const model = modelNamed(name);
    const again = reopened(`${name}-hard`);
    const differing: unknown[] = [];
    let compared = 0;
    model.sheets.forEach((sheet, i) => {
      for (const [address, cell] of Object.entries(sheet.cells)) {
        // What follows the day it is opened on has another value on another day.
        if (!isNative(cell) || ['Today', 'Aujourd’hui'].includes(sheet.name)) continue;
        compared++;
        const got = again.sheets[i]?.cells[address]?.value;
        if (!same(got, cell.value)) differing.push([sheet.name, address, cell.formula, got, cell.value]);
      }
    });
    expect(differing).toEqual([]);
    expect(compared).toBeGreaterThan(200);
  },
);

test.each(COMMITTED)(
  'the committed template %s opens whole: sheets, typed cells, formulas, names',
  (name) => {
    const { model } = readable(readXlsx(committed(name)));
    const again = reopened(`committed-${name}`);
    expect(again.sheets.map(({ name }) => name)).toEqual(model.sheets.map(({ name }) => name));
    expect(again.names.map(({ name }) => name).sort()).toEqual(model.names.map(({ name }) => name).sort());
    const things = (sheet: SheetModel | undefined): unknown => [
      sheet?.name,
      sheet?.merges?.length,
      sheet?.charts?.length,
      sheet?.validations?.length,
    ];
    expect(again.sheets.map(things)).toEqual(model.sheets.map(things));
    // Saved by LibreOffice the stored names are in small letters; reading turns them back.
    const kept = (cell: CellModel | undefined): unknown =>
      cell?.formula === undefined ? cell?.value : hasCustomCall(cell.formula);
    const wanted = model.sheets.flatMap((sheet, i) =>
      Object.entries(sheet.cells)
        .filter(
          ([, cell]) => !isNative(cell) && (cell.formula !== undefined || typeof cell.value === 'string'),
        )
        .map(([address, cell]) => [i, address, kept(cell)] as const),
    );
    expect(wanted.length).toBeGreaterThan(400);
    expect(wanted.map(([i, address]) => [i, address, kept(again.sheets[i]?.cells[address])])).toEqual(wanted);
  },
);

test.each(BOOKS)(
  '$name: printed pages show every number whole and no error',
  ({ name, words, pages: [least, most] }) => {
    const pdf = converted(`${name}-print`, 'pdf');
    const text = execFileSync('pdftotext', ['-layout', pdf, '-'], { encoding: 'utf8' });
    for (const sign of ['###', '#NAME?', '#VALUE!', '#REF!', '#DIV/0!', 'Err:'])
      expect([sign, text.includes(sign)]).toEqual([sign, false]);
    for (const word of words) expect([word, text.includes(word)]).toEqual([word, true]);
    execFileSync('pdftoppm', ['-r', '30', '-gray', pdf, join(folder, `${name}-page`)]);
    const pages = readdirSync(folder)
      .filter((file) => file.startsWith(`${name}-page`))
      .map((file) => readFileSync(join(folder, file)));
    expect(pages.length).toBeGreaterThanOrEqual(least);
    expect(pages.length).toBeLessThanOrEqual(most);
    for (const page of pages) expect(inkOf(page)).toBeGreaterThan(0.002);
  },
);

/** Mean darkness of a grey picture (PGM, P5), 0 to 1: a page with nothing on it has none. */
function inkOf(pgm: Buffer): number {
  const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 40).toString('latin1'));
  if (!header) throw new Error('not a grey picture');
  const dots = pgm.subarray(header[0].length);
  return dots.reduce((sum, dot) => sum + 255 - dot, 0) / 255 / dots.length;
}
