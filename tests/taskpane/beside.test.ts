import { beside } from '../../taskpane/pane/frame/beside';
import { keptOf, keptText, readKept } from '../../taskpane/pane/keeping/kept';
import { showPlace } from '../../taskpane/pane/frame/navigate';
import { placeOf } from '../../taskpane/pane/frame/places';
import type { PanePlace } from '../../taskpane/pane/frame/places';
import { changeSetting } from '../../taskpane/screens/settings/commands/settings';
import type { PaneState } from '../../taskpane/pane/keeping/state';
import { fakeWorld } from './support/fakePort';
import { openPage } from './support/page';

/** The workbook answers late: what was typed meanwhile lies over what was kept of it. */

/** Microtasks of the memory, without a clock. */
async function until(is: () => boolean): Promise<void> {
  for (let i = 0; i < 200 && !is(); i++) await new Promise(setImmediate);
}
const places = (): PanePlace[] => (['plan', 'vat', 'today'] as const).flatMap((id) => placeOf(id) ?? []);

/** A workbook in which somebody typed earlier. */
async function keptWorld() {
  const page = openPage('ready', fakeWorld(), 'plan');
  await page.type('#plan-wanted', '30000');
  await page.type('#plan-females', '6');
  const world = fakeWorld();
  world.texts.book = 'the book';
  world.pane = keptText(keptOf(page.store.state(), places()), 1);
  return world;
}
const valueOf = (page: ReturnType<typeof openPage>, id: string): string =>
  (page.one(id) as HTMLInputElement).value;

test('a field typed before the workbook answered keeps its text and the keyboard; the others come back', async () => {
  const world = await keptWorld();
  const page = openPage('starting', world, 'plan');
  const memory = beside(page.store, () => world.doors.workbook);
  await page.type('#plan-wanted', '777');
  const field = page.one('#plan-wanted');
  await memory.arrive('ready', undefined);
  await page.store.idle();
  expect(valueOf(page, '#plan-wanted')).toBe('777');
  expect(valueOf(page, '#plan-females')).toBe('6');
  expect(page.one('#plan-wanted')).toBe(field);
  expect(document.activeElement).toBe(field);
});

test('where nothing was typed the workbook’s own texts come back', async () => {
  const world = await keptWorld();
  const page = openPage('starting', world, 'plan');
  await beside(page.store, () => world.doors.workbook).arrive('ready', undefined);
  await page.store.idle();
  expect(valueOf(page, '#plan-wanted')).toBe('30000');
});

test('who went to another place and chose a language before the workbook answered stays there, with it', async () => {
  const world = await keptWorld();
  const page = openPage('starting', world, 'today');
  const memory = beside(page.store, () => world.doors.workbook);
  await memory.begin();
  page.store.send(showPlace, 'settings');
  page.store.send(changeSetting, { language: 'fr' });
  await page.store.idle();
  await memory.arrive('ready', undefined);
  await page.store.idle();
  expect(page.store.state().screen).toBe('settings');
  expect(page.store.state().settings.language).toBe('fr');
  page.store.send(changeSetting, { language: 'en' });
  await page.store.idle();
});

/** A pane beside an empty workbook, and what puts another under it. */
async function underPane() {
  const empty = fakeWorld();
  let world = empty;
  const page = openPage('starting', empty, 'plan');
  const memory = beside(page.store, () => world.doors.workbook);
  page.store.change((state) => ({ ...state, host: 'ready' }));
  await memory.arrive('ready', undefined);
  memory.keep(page.store.state());
  const type = async (id: string, text: string): Promise<void> => {
    await page.type(id, text);
    memory.keep(page.store.state());
  };
  const put = (next: ReturnType<typeof fakeWorld>): Promise<void> => {
    world = next;
    return memory.changed();
  };
  return { page, memory, type, put };
}

test('a book opened under the pane brings what was kept of it and keeps its name', async () => {
  const { page, type, put } = await underPane();
  await type('#plan-wanted', '12');
  const world = await keptWorld();
  await put(world);
  expect(world.texts.book).toBe('the book');
  expect(valueOf(page, '#plan-wanted')).toBe('30000');
  expect(valueOf(page, '#plan-females')).toBe('6');
});

test('what is typed, asked or said while the new book is still being read stays', async () => {
  const { page, type, put } = await underPane();
  await type('#plan-males', '3');
  const world = await keptWorld();
  const read = put(world);
  await Promise.resolve();
  await Promise.resolve();
  await type('#plan-wanted', '12');
  const question: NonNullable<PaneState['question']> = { text: 'Write it?', answers: [] };
  page.store.change((state) => ({
    ...state,
    question,
    notice: { tone: 'warning', text: 'Some fields' },
  }));
  await read;
  expect(valueOf(page, '#plan-wanted')).toBe('12');
  expect(valueOf(page, '#plan-females')).toBe('6');
  expect(page.store.state().question).toBe(question);
  expect(page.store.state().notice?.text).toBe('Some fields');
  // Of the book before nothing is shown.
  expect(valueOf(page, '#plan-males')).toBe('');
});

test('what is typed into a new book of no name while it is read is kept of it, under a name of its own', async () => {
  const { type, put } = await underPane();
  const world = fakeWorld();
  const read = put(world);
  await Promise.resolve();
  await Promise.resolve();
  await type('#plan-wanted', '12');
  await read;
  await until(() => world.texts.book !== undefined);
  expect(world.texts.book).toMatch(/^[0-9a-f-]{36}$/);
});

test('of two books that come one after the other the last one is shown, and named alone', async () => {
  const { page, put } = await underPane();
  const first = await keptWorld();
  const last = fakeWorld();
  await Promise.all([put(first), put(last)]);
  expect(valueOf(page, '#plan-wanted')).toBe('');
  expect(last.texts.book).toBeUndefined();
  expect(first.texts.book).toBe('the book');
});

test('a line noted at the vat meanwhile follows those that were kept', async () => {
  const before = openPage('ready', fakeWorld(), 'vat');
  const note = async (page: typeof before, digit: string): Promise<void> => {
    await page.go('vat');
    if (page.all('#card-dead').length > 0) page.one('#card-dead').click();
    page.one(`#key-${digit}`).click();
    page.one('#key-write').click();
    await page.store.idle();
  };
  await note(before, '3');
  const world = fakeWorld();
  world.texts.book = 'the book';
  world.pane = keptText(keptOf(before.store.state(), places()), 1);
  const page = openPage('starting', world, 'vat');
  await note(page, '5');
  await beside(page.store, () => world.doors.workbook).arrive('ready', undefined);
  await page.store.idle();
  const { lines } = page.store.state().vat;
  expect(lines.map(({ value }) => value)).toEqual([3, 5]);
  expect(new Set(lines.map(({ id }) => id)).size).toBe(2);
  expect(readKept(world.pane)?.at).toBe(1);
});

test('currency, units, language of numbers and the spoon survive closing, and are used', async () => {
  const chosen = {
    currency: 'XOF',
    units: 'imperial',
    numbers: 'comma',
    spoon: '4.5',
    rings: false,
  } as const;
  const before = openPage('ready', fakeWorld(), 'settings');
  before.store.send(changeSetting, chosen);
  await before.store.idle();
  const world = fakeWorld();
  world.texts.book = 'the book';
  world.pane = keptText(keptOf(before.store.state(), places()), 1);
  const page = openPage('starting', world, 'plan');
  await beside(page.store, () => world.doors.workbook).arrive('ready', undefined);
  await page.store.idle();
  expect(page.store.state().settings).toMatchObject(chosen);
  await page.go('plan');
  page.one('#mode-season').click();
  await page.press('Fill in an example');
  await page.press('Work the plan out');
  expect(page.text()).toMatch(/Sales[\d\s]+XOF/);
  expect(page.text()).toMatch(/A fish costs0,\d{3}\sXOF/);
  await page.go('vat');
  page.one('#card-weigh').click();
  await page.store.idle();
  expect(page.one('[for=field-weight]').textContent).toContain('lb');
  before.store.send(changeSetting, { currency: '', units: 'metric', numbers: 'auto' });
});
