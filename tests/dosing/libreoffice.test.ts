import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { freeze, verify } from '../../shared/catalogue/sharing';
import { OPTIONS } from '../files/share/support/parts';
import { differences, valuesOf } from '../files/share/support/read';
import { hasSoffice, startJudge } from '../files/share/support/soffice';

test('LibreOffice is here to judge', () => {
  expect(hasSoffice).toBe(true);
});

(hasSoffice ? test : test.skip)(
  'the dosing template, shared as a copy, gives the same values when LibreOffice calculates it anew',
  async () => {
    const judge = startJudge(true);
    try {
      const result = freeze(new Uint8Array(readFileSync(join(__dirname, '../../templates/dosing.xlsx'))), {
        ...OPTIONS,
        keepAlive: true,
      });
      if (result.kind !== 'made') throw new Error(`${result.kind}: ${result.sentence}`);
      const before = await valuesOf(result.bytes);
      expect(
        [...before.values()].some(
          (value) => typeof value === 'string' && /^(GIVE NOW|AIR FIRST)/.test(value),
        ),
      ).toBe(true);
      expect(
        differences(before, await valuesOf(judge.save(result.bytes)), 'Where numbers come from', 1e-9),
      ).toEqual([]);
      expect(verify(result.bytes)).toMatchObject({ matches: true });
    } finally {
      judge.close();
    }
  },
  120_000,
);
