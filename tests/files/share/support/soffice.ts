import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** LibreOffice as an outside judge: opens a workbook, calculates everything anew, saves it. */

export const hasSoffice = [
  '/usr/bin/soffice',
  '/usr/local/bin/soffice',
  '/opt/libreoffice/program/soffice',
].some(existsSync);

const ALWAYS = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

export interface Judge {
  /** The workbook after opening, calculating and saving, in the format wished. */
  readonly save: (file: Uint8Array, format?: 'xlsx' | 'pdf') => Uint8Array;
  readonly close: () => void;
}

/** `recalculates`: does it calculate every formula on opening? */
export function startJudge(recalculates: boolean): Judge {
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-soffice-'));
  if (recalculates) {
    mkdirSync(join(folder, 'profile/user'), { recursive: true });
    writeFileSync(join(folder, 'profile/user/registrymodifications.xcu'), ALWAYS);
  }
  return {
    save: (file, format = 'xlsx') => {
      const source = join(folder, 'in.xlsx');
      writeFileSync(source, file);
      execFileSync(
        'soffice',
        [
          `-env:UserInstallation=file://${join(folder, 'profile')}`,
          '--headless',
          '--norestore',
          '--convert-to',
          format,
          '--outdir',
          join(folder, 'out'),
          source,
        ],
        { stdio: 'pipe', timeout: 120_000 },
      );
      return new Uint8Array(readFileSync(join(folder, `out/in.${format}`)));
    },
    close: () => {
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
