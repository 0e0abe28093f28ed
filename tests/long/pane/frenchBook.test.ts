/** @jest-environment jsdom */
import { fr } from '../../../shared/books/words/fr';
import { readBook } from '../../../shared/books/living';
import { dayOfBook } from '../../../shared/books/living/reading/day';
import { setPhrases } from '../../../taskpane/pane/phrases';
import { tick } from '../../../taskpane/pane/clock';
import { changeSetting } from '../../../taskpane/screens/settings/commands/settings';
import { tickTask } from '../../../taskpane/screens/today/commands/today';
import { gridOf } from '../../season/support/support';
import { bookWorld, demoBook } from '../../taskpane/support/bookWorld';
import { openPage } from '../../taskpane/support/page';

/**
 * The same days in an English and in a French book, each with a pane of either language: what was ticked and counted is
 * read back as the same, and the French book holds French words.
 */

afterAll(() => {
  setPhrases('en', undefined);
});

async function worked(words: typeof fr | undefined, language: 'en' | 'fr') {
  const world = bookWorld(demoBook(), words);
  const page = openPage('ready', world, 'settings');
  page.store.send(changeSetting, { language });
  await page.store.idle();
  await import('../../../taskpane/words/phrases/fr');
  await page.go('today');
  await page.store.idle();
  const day = () => dayOfBook(world.model().sheets.map(gridOf), '');
  const at = async (moment: number): Promise<void> => {
    world.now = moment;
    page.store.send(tick, moment);
    await page.go('today');
    await page.store.idle();
  };
  const keys = async (text: string): Promise<void> => {
    for (const key of text) {
      page.one({ '>': '#key-next', '.': '#key-point', '!': '#key-write' }[key] ?? `#key-${key}`).click();
      await page.store.idle();
    }
  };
  const card = async (id: string, vat: string, text: string): Promise<void> => {
    await page.go('vat');
    if (page.all('#card-back').length > 0) {
      page.one('#card-back').click();
      await page.store.idle();
    }
    await page.press(vat);
    page.one(`#card-${id}`).click();
    await page.store.idle();
    await keys(text);
  };
  const done = async (kind: string): Promise<void> => {
    const task = page.store.state().today.tasks?.find((one) => one.task === kind && !one.isDone);
    if (!task) throw new Error(`no task ${kind}`);
    await at(task.at + 1 / 96);
    page.store.send(tickTask, { task });
    await page.store.idle();
  };
  await done('inject');
  await done('strip');
  const eggs = day().stays.find(({ stage }) => stage === 'eggs')?.vat ?? '';
  await card('eggs', eggs, '285>1.02>712>0.98>690>1.01>701!');
  await card('look', eggs, '84>100!');
  const feed = day().batches[0]?.feed ?? 0;
  await at(feed + 2);
  const fry = day().stays.find(({ stage, from }) => stage === 'fry' && from <= world.now)?.vat ?? '';
  await card('dead', fry, '120!');
  const reading = readBook(world.model().sheets.map(gridOf), '');
  if (reading.kind === 'unreadable') throw new Error(reading.faults.join(' '));
  const { plan, ...rest } = reading;
  return {
    world,
    page,
    day: day(),
    read: { ...rest, plan: { ...plan, findings: plan.findings.map(({ kind }) => kind) } },
  };
}

test('a tick, counted eggs and dead fish come to the same in every pair of book and pane', async () => {
  const english = await worked(undefined, 'en');
  expect(english.read.typed.log).toHaveLength(2);
  expect(english.read.typed.calendar).toHaveLength(2);
  for (const [words, language] of [
    [fr, 'fr'],
    [fr, 'en'],
    [undefined, 'fr'],
  ] as const) {
    const other = await worked(words, language);
    expect(other.read).toEqual(english.read);
    const plain = ({ tasks, ...rest }: typeof other.day) => ({
      ...rest,
      tasks: tasks.map(({ batch, task, order, at, amount, isDone, tick: cell }) => [
        batch,
        task,
        order,
        at,
        amount,
        isDone,
        cell,
      ]),
    });
    expect(plain(other.day)).toEqual(plain(english.day));
    const log = other.world.rowsOf(words ? 'Comptages' : 'Counts', words ? 'Quoi' : 'What');
    expect(log.flatMap((row) => row[words ? 'Quoi' : 'What'] ?? [])).toEqual(
      words ? ['comptés', 'morts'] : ['counted', 'died'],
    );
  }
});
