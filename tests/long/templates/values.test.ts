import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freeze, verify } from '../../../shared/catalogue/sharing';
import { readXlsx } from '../../../shared/files';
import { parseAddress } from '../../../shared/sheet/formula/address';
import { differences, valuesOf } from '../../files/share/support/read';
import { hasSoffice, startJudge } from '../../files/share/support/soffice';

/** The twins of the templates, opened and saved by two spreadsheets that know nothing of Spawnbook. */

const folder = join(__dirname, '..', '..', '..', 'templates');
const twin = (name: string): Uint8Array => new Uint8Array(readFileSync(join(folder, `${name}-values.xlsx`)));
const NAMES = ['season-plan', 'dosing', 'season-backyard', 'dosing-fr', 'season-plan-fr'] as const;
const hasGnumeric = spawnSync('ssconvert', ['--version']).status === 0;

const gnumeric = (file: Uint8Array): Uint8Array => {
  const place = mkdtempSync(join(tmpdir(), 'spawnbook-gnumeric-'));
  try {
    writeFileSync(join(place, 'in.xlsx'), file);
    execFileSync('ssconvert', [join(place, 'in.xlsx'), join(place, 'out.xlsx')], {
      stdio: 'pipe',
      timeout: 120_000,
    });
    return new Uint8Array(readFileSync(join(place, 'out.xlsx')));
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
};

/** Cells whose formula calls Spawnbook, or that do not know a name. */
const strangers = (file: Uint8Array): string[] => {
  const read = readXlsx(file);
  if ('fault' in read) throw new Error(read.fault);
  return read.model.sheets.flatMap(({ name, cells }) =>
    Object.entries(cells)
      .filter(
        ([, { formula = '', value }]) =>
          /SPAWN\./i.test(formula) ||
          (value !== null && typeof value === 'object' && value.error === '#NAME?'),
      )
      .map(([address]) => `${name}!${address}`),
  );
};

/** Cells that hold the day on which the book is opened: every program writes its own there. */
const days = (file: Uint8Array): string[] => {
  const read = readXlsx(file);
  if ('fault' in read) throw new Error(read.fault);
  return read.model.sheets.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([address, { formula = '' }]) => {
      const place = formula === '=TODAY()' ? parseAddress(address) : undefined;
      return place ? [`${name}!${place.row + 1},${place.column + 1}:`] : [];
    }),
  );
};
/** What differs in the saved file, other than the day itself. */
async function changed(name: string, saved: Uint8Array): Promise<string[]> {
  const own = days(twin(name));
  const found = differences(await valuesOf(twin(name)), await valuesOf(saved), '', 1e-9);
  return found.filter((text) => !own.some((place) => text.startsWith(place)));
}

describe.each(NAMES)('%s', (name) => {
  test('no call of ours is left and no name is unknown', () => {
    expect(strangers(twin(name))).toEqual([]);
    expect(verify(twin(name))).toMatchObject({ kind: 'checked', matches: true });
    expect(freeze(twin(name), { date: 'x', workbook: name }).kind).toBe('unchanged');
  });

  (hasSoffice ? test : test.skip)(
    'LibreOffice shows the stored values and saves them whole',
    async () => {
      const judge = startJudge(false);
      try {
        const saved = judge.save(twin(name));
        expect(await changed(name, saved)).toEqual([]);
        expect(verify(saved)).toMatchObject({ kind: 'checked', matches: true });
        expect(freeze(saved, { date: 'x', workbook: name }).kind).toBe('unchanged');
      } finally {
        judge.close();
      }
    },
    240_000,
  );

  (hasGnumeric ? test : test.skip)(
    'Gnumeric too',
    async () => {
      const saved = gnumeric(twin(name));
      expect(await changed(name, saved)).toEqual([]);
      expect(strangers(saved)).toEqual([]);
    },
    120_000,
  );
});
