import { readXlsx, writeXlsx } from '../../../shared/files';
import type { Page } from '../support/page';
import { openPage } from '../support/page';
import { chooseFile, look, made, seasonFile, STUCK, wholeSeasonFile, withFile } from '../support/shareWorld';

describe('verifying', () => {
  const copyOf = async (): Promise<{
    readonly page: Page;
    readonly copy: Uint8Array;
    readonly digest: string;
  }> => {
    const page = await look(withFile(seasonFile()));
    await page.press('Make the copy');
    return { page, copy: made(page).bytes, digest: page.one('#share-report .digest').textContent ?? '' };
  };

  test('a copy that was not touched matches, with what that proves and what not', async () => {
    const { page, copy, digest } = await copyOf();
    await chooseFile(page, '#share-check-file-field', 'back.xlsx', copy);
    await page.type('#share-digest', digest);
    await page.press('Check this copy');
    const text = page.one('#share-checked').textContent ?? '';
    expect(page.one('#share-checked .banner.good').textContent).toContain('It matches its page.');
    expect(text).toContain('It does not show who made the copy');
    expect(text).toContain('The digest was compared with the one you kept.');
    expect(document.activeElement?.id).toBe('share-checked');
  });

  test('a changed number and a foreign digest are found out', async () => {
    const { page, copy } = await copyOf();
    const read = readXlsx(copy);
    if (!('model' in read)) throw new Error(read.fault);
    const changed = writeXlsx({
      ...read.model,
      sheets: read.model.sheets.map((one) =>
        one.name === 'Buyers' ? { ...one, cells: { ...one.cells, C4: { value: 99_000 } } } : one,
      ),
    });
    await chooseFile(page, '#share-check-file-field', 'changed.xlsx', changed);
    await page.press('Check this copy');
    expect(page.one('#share-checked .banner.bad').textContent).toMatch(/does not match its page.*Buyers/);
    await chooseFile(page, '#share-check-file-field', 'back.xlsx', copy);
    await page.type('#share-digest', '0'.repeat(64));
    await page.press('Check this copy');
    expect(page.one('#share-checked .banner.bad').textContent).toContain('not the one on the page');
  });

  test('what is missing or malformed is told beside the field', async () => {
    const page = openPage();
    await page.go('share');
    await page.press('Check this copy');
    expect(page.one('#share-digest-fault').textContent).toContain('First choose the copy');
    await chooseFile(page, '#share-check-file-field', 'plan.xlsx', seasonFile());
    await page.type('#share-digest', 'abc');
    await page.press('Check this copy');
    expect(page.one('#share-digest-fault').textContent).toContain('64 characters');
    await page.type('#share-digest', '');
    await page.press('Check this copy');
    expect(page.one('#share-checked').textContent).toContain('has no page of Spawnbook');
  });
});

describe('the summary', () => {
  test('is built from the plan in the workbook and written beside it', async () => {
    const page = await look(withFile(wholeSeasonFile()));
    page.world.writeOutcome = () => ({ kind: 'written', sheets: ['Summary'] });
    await page.press('Add a one-page summary');
    expect(page.world.written.map(({ model }) => model.sheets.map(({ name }) => name))).toEqual([
      ['Summary'],
    ]);
    expect(page.one('footer [role=status]').textContent).toContain(
      'The summary is written on a new sheet: “Summary”',
    );
  });

  test('asks when the name is taken', async () => {
    const page = await look(withFile(wholeSeasonFile()));
    page.world.writeOutcome = (suffix) =>
      suffix === ''
        ? { kind: 'taken', sheets: ['Summary'], names: [], free: ' 2' }
        : { kind: 'written', sheets: [`Summary${suffix}`] };
    await page.press('Add a one-page summary');
    expect(page.one('#question').textContent).toContain(
      'There is a sheet called “Summary” already. Nothing was changed.',
    );
    await page.press('Write beside it');
    expect(page.world.written.map(({ suffix }) => suffix)).toEqual(['', ' 2']);
  });

  test('a workbook without a plan is told what to do', async () => {
    const page = await look(withFile(STUCK()));
    await page.press('Add a one-page summary');
    expect(page.one('footer [role=status]').textContent).toContain(
      'There is no season plan in this workbook.',
    );
    expect(page.world.written).toEqual([]);
  });
});
