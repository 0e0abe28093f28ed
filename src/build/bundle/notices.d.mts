export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  readonly licence: string | undefined;
  readonly text: string;
}
export function packageFolder(file: string): string | undefined;
export function packagesOf(files: readonly string[], root: string): ShippedPackage[];
export function noticeFaults(packages: readonly Pick<ShippedPackage, 'name' | 'licence'>[]): string[];
/** Throws where something may not ship. */
export function noticesText(files: readonly string[], root: string): string;
