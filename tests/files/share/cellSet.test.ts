import fc from 'fast-check';
import { CellSet } from '../../../shared/files/share/leaveOut/cellSet';

/** Cells of many sheets against a plain list of them, looked through cell by cell. */
const place = fc.record({ row: fc.nat(12), column: fc.nat(6) });
const area = fc.tuple(place, place).map(([a, b]) => ({
  top: Math.min(a.row, b.row),
  bottom: Math.max(a.row, b.row),
  left: Math.min(a.column, b.column),
  right: Math.max(a.column, b.column),
}));
type Place = { readonly row: number; readonly column: number };
type Box = { readonly top: number; readonly bottom: number; readonly left: number; readonly right: number };
const isIn = ({ row, column }: Place, { top, bottom, left, right }: Box): boolean =>
  row >= top && row <= bottom && column >= left && column <= right;
const SHEETS = [0, 1];
const EVERY = Array.from({ length: 13 * 7 }, (_, i) => ({ row: Math.floor(i / 7), column: i % 7 }));
const sorted = (places: Iterable<Place>): string[] =>
  [...places].map(({ row, column }) => `${row} ${column}`).sort();

test('what is asked of the set is what the list says', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.constantFrom(...SHEETS), place), { maxLength: 30 }),
      fc.array(fc.tuple(fc.constantFrom(...SHEETS), area), { maxLength: 2 }),
      area,
      (cells, areas, asked) => {
        const set = new CellSet();
        const list = new Set<string>();
        for (const [sheet, at] of cells) {
          const key = `${sheet} ${at.row} ${at.column}`;
          expect(set.add(sheet, at)).toBe(!list.has(key));
          list.add(key);
        }
        expect(set.size).toBe(list.size);
        for (const [sheet, box] of areas) set.addArea(sheet, box);
        for (const sheet of SHEETS) {
          const single = EVERY.filter(({ row, column }) => list.has(`${sheet} ${row} ${column}`));
          const boxes = areas.flatMap(([of, box]) => (of === sheet ? [box] : []));
          const member = (at: Place): boolean =>
            single.some(({ row, column }) => row === at.row && column === at.column) ||
            boxes.some((box) => isIn(at, box));
          expect(EVERY.filter((at) => set.has(sheet, at))).toEqual(EVERY.filter(member));
          expect(set.touches(sheet, asked)).toBe(EVERY.some((at) => isIn(at, asked) && member(at)));
          expect(sorted(set.within(sheet, asked))).toEqual(sorted(single.filter((at) => isIn(at, asked))));
        }
        const visited: string[] = [];
        set.each((sheet, { row, column }) => visited.push(`${sheet} ${row} ${column}`));
        expect(visited.sort()).toEqual([...list].sort());
      },
    ),
  );
});
