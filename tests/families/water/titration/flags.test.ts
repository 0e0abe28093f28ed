import { MATERIALS } from '../../../../shared/families/water/carbonate/materials';
import type { Cell } from '../../../../shared/base/values';
import { columnOf, grid } from '../../../support/call';
import type { Vat } from '../population/waters';
import { chanceFrom, drawVat, read, truePH } from '../population/waters';

/** Either the bag is named, or a product weaker than said. */
const SUSPECT = /look at the bag|weaker than said/;
const SODA = MATERIALS['soda ash'];
const VOLUME = 1000;

/**
 * Doses a vat five times, each 0.4 pH up, with a product that is `strength` times as strong as the one
 * written down.
 */
const notebook = (
  vat: Vat,
  seed: number,
  strength: number,
  carbonPerEquivalent: number,
): { doses: number[]; readings: number[] } => {
  const chance = chanceFrom(seed);
  const doses = [0];
  const readings = [read(vat, chance)];
  for (let i = 0; i < 5; i++) {
    const goal = truePH(vat).ph + 0.4;
    let given = 0;
    while (truePH(vat).ph < goal && given < 5) {
      const bit = Math.max(0.002, given / 4);
      given += bit;
      vat.balance += 2 * bit * strength;
      vat.carbon += 2 * bit * strength * carbonPerEquivalent;
    }
    doses.push((doses.at(-1) ?? 0) + (given * SODA.molarMass * VOLUME) / 1000);
    readings.push(read(vat, chance));
  }
  return { doses, readings };
};

const remarkOf = ({ doses, readings }: { doses: number[]; readings: number[] }): Cell => {
  const [row] = grid('BUFFER.FIT', VOLUME, columnOf(doses), columnOf(readings));
  return row?.[10] ?? null;
};
const acidVat = (seed: number): Vat => {
  for (let s = seed * 1000; ; s++) {
    const vat = drawVat(chanceFrom(s));
    if (vat.kind === 'plain' && truePH(vat).ph < 5) return vat;
  }
};
const flagged = (n: number, of: (seed: number) => Cell, word: RegExp): number =>
  Array.from({ length: n }, (_, i) => of(i + 1)).filter((remark) => word.test(String(remark))).length;

test(
  'washing soda in a soda ash bag rouses suspicion in many acid waters, honest soda ' + 'ash hardly ever',
  () => {
    const CASES = 20;
    const wrong = flagged(
      CASES,
      (seed) =>
        remarkOf(notebook(acidVat(seed), seed, SODA.molarMass / MATERIALS['washing soda'].molarMass, 0.5)),
      SUSPECT,
    );
    const honest = flagged(CASES, (seed) => remarkOf(notebook(acidVat(seed), seed, 1, 0.5)), SUSPECT);
    process.stdout.write(
      `wrong product flagged in ${wrong} of ${CASES}, honest product accused in ${honest} of ${CASES}\n`,
    );
    expect(wrong).toBeGreaterThan(CASES / 3);
    expect(honest).toBeLessThanOrEqual(1);
  },
  60_000,
);

test('a strong buffer that is not carbonate is flagged', () => {
  const CASES = 12;
  const hidden = flagged(
    CASES,
    (seed) => {
      const vat: Vat = {
        ...acidVat(seed),
        sites: [
          [0.2, 5.2],
          [0.1, 4.2],
        ],
      };
      return remarkOf(notebook(vat, seed, 1, 0.5));
    },
    /buffer beside/,
  );
  process.stdout.write(`hidden buffer flagged in ${hidden} of ${CASES}\n`);
  expect(hidden).toBeGreaterThan(CASES / 2);
}, 60_000);
