import { SOURCES } from '../../shared/families/sources';
import { evidenceRows, runEvidenceText } from '../../taskpane/help/runEvidence';

/**
 * The plan of 30,000 fry from females of 1.2 kg at 27 °C, figure by figure beside what was printed. Spans are typed
 * from the publications named in each row.
 */
const rows = evidenceRows();

test('every figure of the run lies within what was printed of it', () => {
  const outside = rows.flatMap(({ what, value, span }) =>
    value === undefined || !span || (value >= span[0] && value <= span[1]) ? [] : [[what, value, span]],
  );
  expect(outside).toEqual([]);
  expect(rows.filter(({ span }) => span).length).toBeGreaterThanOrEqual(18);
});

test('every row names its sources, and the page prints each row', () => {
  const page = runEvidenceText();
  for (const { what, plan, sources } of rows) {
    expect([what, sources.filter((key) => !(key in SOURCES))]).toEqual([what, []]);
    expect(page).toContain(what);
    expect(page).toContain(plan);
  }
  expect(page).not.toMatch(/NaN|undefined|Infinity/);
});
