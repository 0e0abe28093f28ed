import { readFileSync } from 'node:fs';
import { CATALOGUE, findFunction } from '../../shared/catalogue';
import { find, questionsOf } from '../../taskpane/help/finder';

/**
 * The finder. The questions in tests/data/questions.csv were collected apart from the records (words of farm
 * forums and of the trade, mostly from memory) and stand in no record: what it finds of them was not fitted.
 */

const inFirst = (question: string, ids: readonly string[], n = 3): boolean =>
  find(question)
    .functions.slice(0, n)
    .some(({ id }) => ids.includes(id));

test.each(CATALOGUE.map((fn) => fn.id))('%s: has questions, and each finds it in the first three', (id) => {
  const fn = findFunction(`SPAWN.${id}`);
  if (!fn) throw new Error(id);
  expect(fn.questions.length).toBeGreaterThanOrEqual(3);
  expect(questionsOf(fn).filter((question) => !inFirst(question, [id]))).toEqual([]);
});

const heldOut = readFileSync('tests/data/questions.csv', 'utf8')
  .trim()
  .split(/\r?\n/)
  .slice(1)
  .flatMap((line) => {
    const [, functions = '', language = '', question = ''] = /^([^,]*),([^,]*),"?(.*?)"?$/.exec(line) ?? [];
    return [{ functions: functions.split(' '), language, question: question.replaceAll('""', '"') }];
  });

/** Least share of the questions never seen that must lead to one of their functions in the first three. */
const LEAST: Readonly<Record<string, number>> = {
  en: 0.8,
  'en-NG': 0.7,
  pcm: 0.6,
  fr: 0.6,
  pt: 0.6,
  es: 0.6,
  sw: 0.45,
  ha: 0.4,
};
test.each(Object.entries(LEAST))(
  'questions in %s that no record holds: at least %f are answered',
  (language, least) => {
    const asked = heldOut.filter((one) => one.language === language);
    const missed = asked.filter(({ question, functions }) => !inFirst(question, functions));
    const share = 1 - missed.length / asked.length;
    if (process.env.SHOW_MISSED)
      console.log(
        language,
        asked.length,
        share.toFixed(3),
        missed
          .map(
            ({ question, functions }) =>
              `${question} → ${functions[0] ?? ''}, got ${find(question)
                .functions.slice(0, 3)
                .map(({ id }) => id)
                .join(' ')}`,
          )
          .join('\n'),
      );
    expect(share).toBeGreaterThanOrEqual(least);
  },
);

test.each([
  ['when will they hatch', 'HATCH.TIME'],
  ['how many females', 'FEMALES.NEEDED'],
  ['how much artemia', 'CYSTS.NEEDED'],
  ['how much artimia', 'CYSTS.NEEDED'],
  ['pitutary dose', 'HORMONE.DOSE'],
  ['combien de femelles', 'FEMALES.NEEDED'],
  ['quando eclodem', 'HATCH.TIME'],
  ['raise ph from 5 to 7 in 1000 litres', 'BUFFER.DOSE'],
  ['SPAWN.AMMONIA.SHARE', 'AMMONIA.SHARE'],
  ['fcr', 'FEED.FCR'],
])('“%s” leads to %s', (question, id) => {
  expect(
    find(question)
      .functions.slice(0, 3)
      .map((fn) => fn.id),
  ).toContain(id);
});

test.each([
  ['antibiotic dose', 'none'],
  ['why are my eggs white', 'why'],
  ['season plan', 'plan'],
  ['share with investor', 'share'],
])('“%s” is no question for a function: %s', (question, key) => {
  expect(find(question).intent?.key).toBe(key);
});

test('nonsense fits nothing, and says so', () => {
  expect(find('zebra xylophone').fits).toBe(false);
  expect(find('').functions).toEqual([]);
});
