import { beside } from '../calculating/beside';
import type { FilePrepared, Prepared } from './prepared';

const readHere = async (bytes: Uint8Array): Promise<FilePrepared> =>
  (await import('./prepared')).prepareFile(bytes);

/** As text: the browser takes it over and reads it many times faster than the same as objects. */
const readThere = async (bytes: Uint8Array): Promise<FilePrepared> =>
  JSON.parse(await beside.ask<'read'>({ task: 'read', bytes })) as FilePrepared;

/** Reads a file beside the page, which stays free meanwhile. Throws a sentence when it cannot be read. */
export async function readBeside(
  bytes: Uint8Array,
): Promise<Prepared & { readonly lost: readonly string[] }> {
  const found = await readThere(bytes).catch(() => readHere(bytes));
  if ('fault' in found) throw new Error(found.fault);
  return found;
}
