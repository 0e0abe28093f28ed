import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freeze, repairCalls } from '../../../shared/catalogue/sharing';
import { OPTIONS } from '../../files/share/support/parts';
import { differences, valuesOf } from '../../files/share/support/read';
import { startJudge } from '../../files/share/support/soffice';

/** The live season book saved in programs that have no Spawnbook; values read by hucre, a reader that is not ours. */

const PAGE = 'Where numbers come from';
const file = new Uint8Array(readFileSync(join(__dirname, '../../../templates/season-plan.xlsx')));

function gnumeric(bytes: Uint8Array): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-gnumeric-'));
  try {
    writeFileSync(join(folder, 'in.xlsx'), bytes);
    execFileSync('ssconvert', [join(folder, 'in.xlsx'), join(folder, 'out.xlsx')], { stdio: 'ignore' });
    return new Uint8Array(readFileSync(join(folder, 'out.xlsx')));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const libreOffice = (bytes: Uint8Array): Uint8Array => {
  const judge = startJudge(false);
  try {
    return judge.save(bytes);
  } finally {
    judge.close();
  }
};

const PROGRAMS = [
  ['LibreOffice', libreOffice],
  ...(existsSync('/usr/bin/ssconvert') ? ([['Gnumeric', gnumeric]] as const) : []),
] as const;

/** Both programs count the day anew when they open the book. */
const isOfTheDay = (one: string): boolean => /^Today!\d+,\d+:/.test(one);

test.each(PROGRAMS)(
  'saved in %s it comes back whole, as a live workbook and as a shared copy',
  async (name, save) => {
    const saved = save(file);
    const before = await valuesOf(file);
    const lost = differences(before, await valuesOf(saved), PAGE, 1e-9).length;
    const copy = freeze(saved, OPTIONS);
    if (copy.kind !== 'made') throw new Error(copy.sentence);
    const live = repairCalls(saved);
    if (live.kind !== 'made') throw new Error(live.sentence);
    const [shared, back] = [
      differences(before, await valuesOf(copy.bytes), PAGE, 1e-9),
      differences(before, await valuesOf(live.bytes), PAGE, 1e-9),
    ];
    console.log(`${name}: ${lost} cells differ as saved, ${shared.length} shared, ${back.length} live again`);
    expect(shared.filter((one) => !isOfTheDay(one))).toEqual([]);
    expect(back.filter((one) => !isOfTheDay(one))).toEqual([]);
    const again = freeze(copy.bytes, OPTIONS);
    expect(again.kind).toBe('unchanged');
  },
);
