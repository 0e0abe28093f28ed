import type { Looked } from './looked';
import { isClaim, scoreIn } from './looked';

const LINES = 200;
/** Share of the lines that have the day of another line, from which on several lines are of one spawning. */
const SHARED = 0.4;
const LEAST = 6;
const [LESS_A_RUN, MORE_A_FEMALE] = [-0.9, 0.5];
const OF_FEMALES = ['femaleWeight', 'hormoneVolume', 'hormoneDose', 'injected'] as const;

/** Share of the dated lines whose day stands in another line too. */
function daysShared({ unread: { run } }: Looked): number {
  const days = new Set<string>();
  let filled = 0;
  for (let i = 0; i < Math.min(LINES, run.length); i++) {
    const cell = run.cellAt(i);
    if (cell === null || cell === '') continue;
    filled++;
    days.add(String(cell));
  }
  return filled < LEAST ? 0 : 1 - days.size / filled;
}

/**
 * Where several lines have one day and each a tag of its own, the lines are the females of a run, and the tags are
 * theirs.
 */
export function byLines(looked: readonly Looked[]): void {
  const dated = looked.find(({ content }) => content.filled >= 2 && content.dates >= 0.8 * content.filled);
  const isOfFemales = looked.some(
    ({ candidates: [best] }) => best && isClaim(best) && OF_FEMALES.some((field) => field === best.field),
  );
  if (!dated || !isOfFemales || daysShared(dated) < SHARED) return;
  for (const one of looked) {
    const { words, wordKinds, filled } = one.content;
    if (words < LEAST || words < 0.8 * filled || wordKinds < 0.95 * words) continue;
    const [run, female] = [scoreIn(one, 'run'), scoreIn(one, 'female')];
    if (run) run.score += LESS_A_RUN;
    if (female) female.score += MORE_A_FEMALE;
    one.candidates.sort((a, b) => b.score - a.score);
  }
}
