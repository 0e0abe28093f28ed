import type { Near } from '../../../base/near';
import { brokenChains } from '../../rules/whole/byChains';
import { morePartThanWhole } from '../../rules/whole/byParts';
import { ownRatios } from '../../rules/whole/byRatios';
import type { RecordTable } from '../../table';
import { edge, tablesOf } from '../check';

/** How surely columns must be read before a rule compares them changes at numbers somebody chose. */
const spawnings = (confidence: number): RecordTable[] =>
  tablesOf([
    ['Run', 'Egg weight (g)', 'Eggs per gram', 'Eggs', 'Hatched'],
    ...Array.from({ length: 9 }, (_, i) => {
      const [grams, perGram] = [110 + 17 * ((i * 5) % 7), 640 + 9 * ((i * 7) % 5)];
      const eggs = grams * perGram;
      return [
        `R${i + 1}`,
        grams,
        perGram,
        i === 4 ? 10 * eggs : eggs,
        i === 6 ? 900_000 : Math.round(0.6 * eggs),
      ];
    }),
  ]).map((table) => ({ ...table, mapping: table.mapping.map((one) => ({ ...one, confidence })) }));
const found =
  (rule: (table: RecordTable) => readonly unknown[]) =>
  (confidence: number): number =>
    spawnings(confidence).flatMap(rule).length;

export const NEAR: readonly Near[] = [
  edge(
    'Sureness from which a product by meaning is compared',
    0.4,
    found(brokenChains),
    [0.38, 0.42],
    [0, 1],
  ),
  edge(
    'Sureness from which a part is compared with its whole',
    0.5,
    found(morePartThanWhole),
    [0.48, 0.52],
    [0, 1],
  ),
  edge('Sureness from which a ratio is compared', 0.5, found(ownRatios), [0.48, 0.52], [0, 1]),
];
