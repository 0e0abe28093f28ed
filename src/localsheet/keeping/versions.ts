import type { BookStore } from './database';
import type { KeptVersion, KeptWhole } from './shapes';

/** Earlier versions of a workbook: one every ten minutes while it changes, one an hour after that, for a day. */
export const EVERY = 10 * 60_000;
const HOUR = 60 * 60_000;
export const KEPT_FOR = 24 * HOUR;

const through = async (blob: Blob, stream: TransformStream<BufferSource, Uint8Array>): Promise<Blob> =>
  new Response(blob.stream().pipeThrough(stream as ReadableWritablePair<Uint8Array, BufferSource>)).blob();

export const pack = (whole: KeptWhole): Promise<Blob> =>
  through(new Blob([JSON.stringify(whole)]), new CompressionStream('gzip') as never);
export const unpack = async (packed: Blob): Promise<KeptWhole> =>
  JSON.parse(await (await through(packed, new DecompressionStream('gzip') as never)).text()) as KeptWhole;

/** Which of the times, newest first, are kept: those of the last hour, then one an hour, none after a day. */
export function timesToKeep(times: readonly number[], now: number): readonly number[] {
  const kept: number[] = [];
  for (const at of [...times].sort((a, b) => b - a)) {
    const age = now - at;
    if (age > KEPT_FOR && kept.length > 0) continue;
    const last = kept.at(-1);
    if (age <= HOUR || last === undefined || last - at >= HOUR - EVERY / 2) kept.push(at);
  }
  return kept;
}

export async function addVersion(store: BookStore, version: KeptVersion): Promise<void> {
  await store.put('versions', version);
  const keys = await store.getAllKeysFromIndex('versions', 'book', version.book);
  const keep = new Set(
    timesToKeep(
      keys.map(([, at]) => at),
      version.at,
    ),
  );
  for (const key of keys) if (!keep.has(key[1])) await store.delete('versions', key);
}

/** Makes room: the oldest half of all versions of all workbooks. */
export async function dropOldVersions(store: BookStore): Promise<number> {
  const keys = (await store.getAllKeys('versions')).sort((a, b) => a[1] - b[1]);
  const going = keys.slice(0, Math.ceil(keys.length / 2));
  for (const key of going) await store.delete('versions', key);
  return going.length;
}
