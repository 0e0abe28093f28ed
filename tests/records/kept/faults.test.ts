import { expectKept } from '../../support/kept';
import { drawer, makeFarm } from '../support/farm';
import { FAULTS } from '../support/faults';
import { canHold, isFound } from '../support/found';
import { audit } from '../support/grid';
import { LAYOUTS, writeBook } from '../support/layouts';
import { sheetsOf } from '../support/read';
import { columnsOf, findingsOf } from '../support/said';

/**
 * One book for every fault the rules are made for, in turn in each layout: the fault is found where it was put, and
 * everything said of the book is what was kept. The long tests put each fault into every layout.
 */
const TODAY = 47_200;
const VATS = 6;

const looked = FAULTS.map((fault, f) => {
  const able = LAYOUTS.filter((layout) => canHold(fault, layout));
  const layout = able[f % able.length];
  if (!layout) throw new Error(fault.rule);
  const seed = 3000 + f;
  const farm = makeFarm(seed, 18);
  const draw = drawer(seed);
  const at = fault.inject(farm, draw);
  const book = writeBook(farm, layout, seed);
  fault.edit?.(book, at, draw);
  const report = audit(sheetsOf(book, layout), { today: TODAY, vatsOwned: VATS });
  return { fault, layout, report, verdict: isFound(report, book, fault, at) };
});

test('nine faults in ten are found where they were put', () => {
  const missed = looked.filter(({ verdict }) => verdict === 'missed');
  expect(missed.length / looked.length).toBeLessThanOrEqual(0.1);
});

test('all that is said of these books', () => {
  expectKept(
    'faults',
    looked.map(({ fault, layout, report, verdict }) => ({
      fault: fault.rule,
      layout,
      verdict,
      columns: columnsOf(report),
      findings: findingsOf(report),
    })),
  );
});
