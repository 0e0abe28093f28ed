import { choiceSteps, freeze, inspect, verify } from '../../../../shared/catalogue/sharing';
import type { FreezeOptions } from '../../../../shared/catalogue/sharing';
import { runNow } from '../../../../shared/base/steps';
import { unzipSync } from 'fflate';
import { expectKept } from '../../../support/kept';
import { OPTIONS, unzip } from '../support/parts';
import { season } from '../support/season';

/** A workbook with everything a real one can hold, shared in every way: the report, and what differs in each part. */
const WAYS: Readonly<Record<string, Partial<FreezeOptions>>> = {
  plain: {},
  'native formulas stay': { keepAlive: true },
  'personal data out': { personal: true },
  'a column emptied': { blank: ['Season!A'] },
  'cells emptied, results kept': { blank: ['Season!B2:B3', 'Season!C9'], keepResults: true },
  'accepted, personal data and a column': { acceptProblems: true, personal: true, blank: ['Season!D'] },
};

const lines = (text: string): string[] => text.replace(/></g, '>\n<').split('\n');
/** Lines of a part that are new or gone; all others stand where they stood. */
function parting(before: string | undefined, after: string | undefined): unknown {
  if (before === after) return undefined;
  if (before === undefined || after === undefined)
    return after === undefined
      ? 'gone'
      : lines(after).map((line) => line.replace(/[0-9a-f]{64}/g, '(digest)'));
  const [old, fresh] = [lines(before), lines(after)];
  const [had, has] = [new Set(old), new Set(fresh)];
  return { gone: old.filter((line) => !has.has(line)), come: fresh.filter((line) => !had.has(line)) };
}

const file = season();
const was = unzip(file);

test('what is found in it before it is shared', () => {
  expectKept('share-found', { inspection: inspect(file), choices: runNow(choiceSteps(file)) });
});

test.each(Object.entries(WAYS))('%s', (way, options) => {
  const copy = freeze(file, { ...OPTIONS, ...options });
  const name = `share-${way.replace(/\W+/g, '-')}`;
  if (copy.kind !== 'made') {
    expectKept(name, { ...copy, bytes: undefined });
    return;
  }
  const is = unzip(copy.bytes);
  const { digest, ...report } = copy.report;
  expect(digest).toMatch(/^[0-9a-f]{64}$/);
  const { kind, sentence, ...rest } = verify(copy.bytes) as unknown as Record<string, unknown>;
  expectKept(name, {
    report,
    parts: Object.fromEntries(
      [...new Set([...Object.keys(was), ...Object.keys(is)])]
        .sort()
        .map((path) => [path, parting(was[path], is[path])]),
    ),
    order: Object.keys(unzipSync(copy.bytes)),
    verified: [kind, sentence, Object.keys(rest)],
  });
});
