import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { serialize } from 'node:v8';

/**
 * Hundreds of tests of the pane fill in the same example and have it planned. Planning is a function of what is
 * planned alone (tests/season holds that), so the same question is worked out once in a run of the pane's tests:
 * its progress and its answer are told again. Work that was stopped halfway is not kept.
 */
type Steps = (...given: readonly unknown[]) => Generator<number, unknown>;

function onceFor(steps: Steps): Steps {
  const kept = new Map<string, { readonly told: readonly number[]; readonly answer: unknown }>();
  return function* (...given) {
    const key = createHash('sha256').update(serialize(given)).digest('base64');
    const before = kept.get(key);
    if (before) {
      yield* before.told;
      return before.answer;
    }
    const told: number[] = [];
    const work = steps(...given);
    for (;;) {
      const step = work.next();
      if (step.done) {
        kept.set(key, { told, answer: step.value });
        return step.value;
      }
      told.push(step.value);
      yield step.value;
    }
  };
}

const season = join(__dirname, '../../shared/season');
/** Modules that plan, and the functions of theirs that take long. */
const PLANNERS: readonly (readonly [module: string, name: string])[] = [
  [join(season, 'batches'), 'planBatchesSteps'],
  [join(season, 'one'), 'femalesForNineSteps'],
];

export function planEachOnce(): void {
  for (const [module, name] of PLANNERS)
    jest.doMock(module, () => {
      const real = jest.requireActual<Record<string, unknown>>(module);
      const once = onceFor(real[name] as Steps);
      return { ...real, [name]: once };
    });
}
