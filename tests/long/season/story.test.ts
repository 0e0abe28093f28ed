import { liveStory } from '../../season/support/story';

test('thirty small buyers, twelve weeks in one workbook: every fish, gram and coin, nothing typed lost', () => {
  const { wrong, paper, plan, sold } = liveStory(1);
  console.log(
    `${sold} fish sold to ${new Set(paper.log.flatMap(({ order }) => order ?? [])).size} buyers, ${plan.batches.length} batches, ` +
      `${paper.log.length} lines of the log, ${paper.ticks.length} ticks`,
  );
  expect(wrong).toEqual([]);
  expect(sold).toBeGreaterThan(20_000);
  expect(paper.ticks.length).toBeGreaterThan(50);
}, 900_000);
