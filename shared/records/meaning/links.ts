import { isRate, parts, products, varies } from './products';
import type { Numbers } from './sampled';
import { at, LEAST_HOLDING, LEAST_ROWS, SAMPLE, sampledFrom, sampleRows } from './sampled';
import { sums } from './sums';

/**
 * A relation found by trying: the result follows from the inputs in most rows.
 * product: result = factor × a × b; share of counts is one too. part: result = factor × a.
 * sum: result = Σ sign × input; with `isRunning` the result of the row above is one of the terms.
 * carry: the result of a row is the input of the row above.
 */
export interface Link {
  readonly kind: 'product' | 'part' | 'sum' | 'carry';
  readonly result: number;
  readonly inputs: readonly number[];
  readonly signs: readonly number[];
  readonly factor: number;
  readonly isRunning: boolean;
  readonly holds: number;
  readonly tried: number;
}

function carries(columns: readonly Numbers[], usable: readonly number[], length: number): Link[] {
  const links: Link[] = [];
  for (const result of usable)
    for (const from of usable) {
      if (result === from) continue;
      let [holds, tried] = [0, 0];
      for (let i = 1; i < Math.min(length, SAMPLE); i++) {
        const [now, before] = [at(columns[result], i), at(columns[from], i - 1)];
        if (Number.isNaN(now) || Number.isNaN(before)) continue;
        tried++;
        if (now === before) holds++;
      }
      if (
        tried < LEAST_ROWS ||
        holds < LEAST_HOLDING * tried ||
        !varies(Array.from({ length: Math.min(200, length) }, (_, i) => at(columns[result], i)))
      )
        continue;
      if (isSame(columns[result], columns[from], length)) continue;
      links.push({
        kind: 'carry',
        result,
        inputs: [from],
        signs: [1],
        factor: 1,
        isRunning: true,
        holds,
        tried,
      });
    }
  return links;
}
const isSame = (a: Numbers | undefined, b: Numbers | undefined, length: number): boolean => {
  let same = 0;
  for (let i = 0; i < Math.min(length, SAMPLE); i++) if (at(a, i) === at(b, i)) same++;
  return same > 0.8 * Math.min(length, SAMPLE);
};

const MOST_COLUMNS = 26;
const MOST_RATES = 6;

/** Everything found by trying; of links to one result the tightest first. `columns` hold NaN where nothing is said. */
export function findLinks(columns: readonly Numbers[], length: number): Link[] {
  if (length < LEAST_ROWS) return [];
  const rows = sampleRows(columns, length);
  const sampled = columns.map((list) => sampledFrom(Float64Array.from(rows, (i) => at(list, i))));
  const usable = sampled.flatMap(({ n, seen }, i) =>
    n >= LEAST_ROWS && seen.some((x) => x !== 0 && !Number.isNaN(x)) ? [i] : [],
  );
  const isUsable = new Set(usable);
  const rare = sampled.flatMap(({ seen }, i) => (!isUsable.has(i) && seen.some((x) => x > 0) ? [i] : []));
  const few = usable.filter((i) => varies(sampled[i]?.seen ?? [])).slice(0, MOST_COLUMNS);
  return [
    ...products(
      sampled,
      few,
      usable.filter((i) => !few.includes(i) && isRate(sampled[i]?.seen ?? [])).slice(0, MOST_RATES),
    ),
    ...sums(columns, sampled, usable.slice(0, 80), rare),
    ...carries(columns, few, length),
    ...parts(sampled, few),
  ].sort((a, b) => b.holds / b.tried - a.holds / a.tried);
}
