/**
 * What may enter node_modules: nothing without a licence, no copyleft, no commercial parts of the embedded
 * spreadsheet.
 */

export interface LockedPackage {
  readonly license?: string;
  readonly link?: boolean;
  readonly dev?: boolean;
}
export interface Lock {
  readonly packages: Readonly<Record<string, LockedPackage>>;
}

/** Names its licence only in a file: Apache-2.0 text, read on 25 November 2026. */
const LICENCE_IN_FILE = ['@univerjs/telemetry'];
const COMMERCIAL = /^@univerjs-pro\//;
const COPYLEFT = /\b(A?GPL|SSPL|EUPL)-?/;

const nameOf = (path: string): string =>
  path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
/** "(BSD-3-Clause OR GPL-2.0)" leaves a free choice. */
const isCopyleft = (licence: string): boolean =>
  licence
    .replace(/[()]/g, '')
    .split(/\s+OR\s+/)
    .every((choice) => COPYLEFT.test(choice));

export function licenceFaults(lock: Lock, hasLicenceFile: (path: string) => boolean): string[] {
  return Object.entries(lock.packages)
    .filter(([path, { link }]) => path.includes('node_modules/') && link !== true)
    .flatMap(([path, { license }]) => {
      const name = nameOf(path);
      if (COMMERCIAL.test(name)) return [`${name} is a commercial package: take it out of package.json`];
      if (license === undefined && !(LICENCE_IN_FILE.includes(name) && hasLicenceFile(path)))
        return [`${name} names no licence`];
      return license !== undefined && isCopyleft(license)
        ? [`${name} is under ${license}, which must not ship`]
        : [];
    });
}
