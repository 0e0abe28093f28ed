import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync, strFromU8 } from 'fflate';
import { TEMPLATES, buildTemplate } from '../../templates';
import { dosingWaterHolds, seasonWaterHolds } from './support/water';

const folder = join(__dirname, '..', '..', 'templates');

/** The first place where two texts part. */
const difference = (old: string, fresh: string): string => {
  if (old === fresh) return '';
  let at = 0;
  while (old[at] === fresh[at]) at++;
  return `…${old.slice(Math.max(0, at - 30), at + 50)}… is now …${fresh.slice(Math.max(0, at - 30), at + 50)}…`;
};

describe.each(Object.entries(TEMPLATES))('%s', (name, model) => {
  const made = model();
  const built = buildTemplate(made);
  test('the committed file is what a fresh build gives; if not, run npm run gen and commit', () => {
    const committed = unzipSync(new Uint8Array(readFileSync(join(folder, name))));
    const fresh = unzipSync(built);
    expect(Object.keys(fresh)).toEqual(Object.keys(committed));
    // Part by part first: where a part differs, a few words of it say more than a zip can.
    const differing = Object.entries(fresh)
      .map(([path, bytes]) => [
        path,
        difference(strFromU8(committed[path] ?? new Uint8Array()), strFromU8(bytes)),
      ])
      .filter(([, words]) => words !== '');
    expect(differing).toEqual([]);
    expect(Buffer.from(built).equals(readFileSync(join(folder, name)))).toBe(true);
  });

  test('two builds give the same bytes', () => {
    expect(Buffer.from(buildTemplate(model())).equals(Buffer.from(built))).toBe(true);
  });

  test('its water, dosed as it says and aired, stands between 6.5 and 8 by another calculation', () => {
    if (name === 'dosing.xlsx') dosingWaterHolds(made);
    else seasonWaterHolds(made);
  });
});
