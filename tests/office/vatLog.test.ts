import { createExecutor, createOffice, installOffice } from '../../src/officeStandIn';
import { createMemoryBook } from '../../src/officeStandIn/memoryBook';
import { LOG_COLUMNS, LOG_SHEET, readLog } from '../../shared/dosing/log';
import { LOG_LANGUAGES } from '../../shared/dosing/logWords';
import type { LogLines } from '../../taskpane/host/port';
import { officePort } from '../../taskpane/host/office';

/** What is written down at a vat is read back as the same vat, whatever its name looks like. */

test.each(['Vat 1', '7', '1-2', 'true', '=A1', "'quoted"])('a vat named %s', async (vat) => {
  installOffice(createOffice({ executor: createExecutor(createMemoryBook()) }));
  const headings = LOG_COLUMNS.map(({ heading }) => heading);
  const row = LOG_COLUMNS.map(({ key }) =>
    key === 'at' ? 46_500.5 : key === 'vat' ? vat : key === 'what' ? 'dead' : key === 'number' ? 12 : null,
  );
  const log = {
    sheet: LOG_SHEET,
    headings,
    formats: LOG_COLUMNS.map(({ format }) => format),
    widths: LOG_COLUMNS.map(({ width }) => width),
    rows: [row],
  };
  const { row: line } = await officePort.appendLines(log);
  const { lines } = readLog(await officePort.readLines({ sheet: LOG_SHEET, headings }));
  expect(lines.map((one) => [one.vat, one.what, one.number])).toEqual([[vat, 'dead', 12]]);
  expect(await officePort.removeLine(log, line)).toBe(true);
});

const FORMS = {
  en: { sheet: LOG_SHEET, headings: LOG_COLUMNS.map(({ heading }) => heading) },
  fr: {
    sheet: LOG_LANGUAGES.fr?.sheet ?? '',
    headings: LOG_COLUMNS.map(({ key }) => LOG_LANGUAGES.fr?.headings[key] ?? ''),
  },
};
const logIn = (first: 'en' | 'fr', what: readonly [en: string, fr: string]): LogLines => {
  const form = (language: 'en' | 'fr'): LogLines => ({
    ...FORMS[language],
    formats: LOG_COLUMNS.map(({ format }) => format),
    widths: LOG_COLUMNS.map(({ width }) => width),
    rows: [
      LOG_COLUMNS.map(({ key }) =>
        key === 'what' ? what[language === 'en' ? 0 : 1] : key === 'at' ? 46_500 : null,
      ),
    ],
  });
  return { ...form(first), others: [form(first === 'en' ? 'fr' : 'en')] };
};

test.each(['en', 'fr'] as const)('a log begun in %s is gone on with in its own words', async (begun) => {
  installOffice(createOffice({ executor: createExecutor(createMemoryBook()) }));
  const other = begun === 'en' ? 'fr' : 'en';
  const { sheet } = await officePort.appendLines(logIn(begun, ['dead', 'morts']));
  expect(sheet).toBe(FORMS[begun].sheet);
  const later = logIn(other, ['feed given', 'aliment donné']);
  const written = await officePort.appendLines(later);
  expect(written).toEqual({ sheet, row: 3 });
  const grid = await officePort.readLines({ ...FORMS[other], others: [FORMS[begun]] });
  expect(grid.map((row) => row[2])).toEqual(
    begun === 'en' ? ['What', 'dead', 'feed given'] : ['Quoi', 'morts', 'aliment donné'],
  );
  expect(readLog(grid).lines.map(({ what }) => what)).toEqual(['dead', 'feed given']);
  expect(await officePort.removeLine(later, 3)).toBe(true);
});
