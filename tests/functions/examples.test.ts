import { CATALOGUE } from '../../shared/catalogue';
import { SOURCES } from '../../shared/families/sources';
import { checkCatalogue } from '../../shared/functions/check';
import { HEADINGS } from '../../shared/functions/define';
import { invoke } from '../../shared/functions/invoke';
import { isError, isGrid } from '../../shared/base/values';
import { agreesWithPrinted } from '../support/printed';

test('every record is complete and no two clash', () => {
  expect(checkCatalogue(CATALOGUE, SOURCES)).toEqual([]);
});

const show = (args: unknown): string => JSON.stringify(args).slice(1, -1).slice(0, 80);

describe.each(CATALOGUE.map((fn) => [fn.name, fn] as const))('%s', (_name, fn) => {
  test.each(fn.examples.map((example) => [show(example.args), example] as const))(
    '(%s)',
    (_args, example) => {
      // Headings are left out so that an example lists only answers.
      const at = fn.params.findIndex((p) => p.name === HEADINGS);
      const args =
        at < 0
          ? [...example.args]
          : Array.from({ length: fn.params.length }, (_, i) =>
              i === at ? false : (example.args[i] ?? null),
            );
      const got = invoke(fn, args);
      if (example.fails) {
        const first = isGrid(got) ? got.flat().find(isError) : got;
        expect(first).toMatchObject({ error: example.fails.code });
        expect(isError(first) ? first.message : '').toContain(example.fails.says);
        return;
      }
      if (typeof example.gives === 'string') {
        expect(agreesWithPrinted(isGrid(got) ? got[0]?.[0] : got, example.gives) ? 'agrees' : got).toBe(
          'agrees',
        );
        return;
      }
      const grid = isGrid(got) ? got : [[got]];
      const wanted = example.gives ?? [];
      expect(
        grid
          .slice(0, wanted.length)
          .map((row, r) =>
            row.map((cell, c) => (agreesWithPrinted(cell, wanted[r]?.[c] ?? '') ? wanted[r]?.[c] : cell)),
          ),
      ).toEqual(wanted);
    },
  );
});
