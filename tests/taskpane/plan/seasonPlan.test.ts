import { isGrid } from '../../../shared/base/values';
import type { SeasonPlan } from '../../../shared/season/types';
import { verdictText } from '../../../shared/maths/verdict';
import { isoDateOfSerial } from '../../../shared/units/dates';
import type { SheetModel, WorkbookModel } from '../../../shared/sheet/workbook/model';
import type { RangeCells } from '../../../shared/records';
import { stopTask } from '../../../taskpane/pane/frame/navigate';
import { momentsOf, vatRowsOf } from '../../../taskpane/screens/season/state/preview';
import { HostProblem } from '../../../taskpane/host/port';
import { fakeWorld } from '../support/fakePort';
import type { Page } from '../support/page';
import { openPage } from '../support/page';
import { TODAY } from '../support/seasonModel';

/** Planning, looking, writing, planning again: the season screen over a fake workbook and the real engine. */

jest.setTimeout(60_000);

const filled = async (world = fakeWorld()): Promise<Page> => {
  const page = openPage('ready', world);
  page.one('#mode-season').click();
  await page.press('Fill in an example');
  return page;
};
const planned = async (world = fakeWorld()): Promise<Page> => {
  const page = await filled(world);
  await page.press('Work the plan out');
  return page;
};
const planOf = (page: Page): SeasonPlan => {
  const plan = page.store.state().season.made?.plan;
  if (!plan) throw new Error('no plan');
  return plan;
};
const plain = (text: string | null | undefined): string => (text ?? '').replaceAll('\u202f', '');

describe('the preview', () => {
  let page: Page;
  beforeAll(async () => {
    page = await planned();
  });

  test('the promise stands first, with the verdict in word and shape', () => {
    const plan = planOf(page);
    const first = plain(page.one('#season-result').parentElement?.querySelector('.big')?.textContent);
    expect(first).toBe(`Promise ${plan.promise}, hope for ${plan.hope}`);
    expect(page.one('#season-promise').textContent).toContain(verdictText(plan.verdict));
    expect(plain(page.one('#season-promise').textContent)).toContain('80 % was asked for');
    expect(document.activeElement?.id).toBe('season-result');
    expect(page.world.written).toEqual([]);
  });

  test('says of each order what the engine found', async () => {
    const plan = planOf(page);
    const cards = page.all('.order-plan');
    expect(cards).toHaveLength(plan.orders.length);
    plan.orders.forEach(({ order, certainty, verdict, promise, hope, range, batches }, i) => {
      const text = plain(cards[i]?.textContent);
      for (const word of [
        `${order.name} ${verdictText(verdict)}`,
        `${Math.floor(promise + 1e-6)} · ${Math.floor(hope + 1e-6)}`,
        `${Math.round(range.p10)} · ${Math.round(range.p50)} · ${Math.round(range.p90)}`,
        `${(100 * certainty).toFixed(0)} % of seasons`,
        `Batches${batches.join(', ')}`,
      ])
        expect(text).toContain(word);
    });
  });

  test('lists the moments of all batches in order of time, nights by a word', async () => {
    const plan = planOf(page);
    const moments = momentsOf(plan, 'mL');
    expect(moments.map(({ at }) => at)).toEqual([...moments.map(({ at }) => at)].sort((a, b) => a - b));
    for (const batch of plan.batches)
      for (const [what, at] of [
        ['Inject', batch.injectAt],
        ['Strip', batch.stripAt],
        ['Hatch begins', batch.hatchAt],
        ['First meal', batch.firstFeedAt],
      ] as const)
        expect(moments.some((m) => m.batch === batch.name && m.what === what && m.at === at)).toBe(true);
    for (const share of plan.allocations)
      expect(
        moments.some(
          (m) =>
            m.what === 'Fetched' && m.batch === share.batch && m.order === share.order && m.at === share.on,
        ),
      ).toBe(true);
    const isNight = (at: number): boolean => at % 1 < 0.25 - 1e-6 || at % 1 >= 22 / 24;
    for (const { at, isNight: word, isAllDay } of moments) expect(word).toBe(!isAllDay && isNight(at));
    expect(page.all('.moment')).toHaveLength(moments.length);
    expect(page.all('section > .calendar > .moment')).toHaveLength(Math.min(20, moments.length));
    expect(page.all('.moment.night .night-word')).toHaveLength(moments.filter((m) => m.isNight).length);
  });

  test('draws each stay of each vat, with the batch in it, and says the same in words', async () => {
    const plan = planOf(page);
    const made = page.store.state().season.made;
    const rows = made ? vatRowsOf(made.book, plan) : [];
    for (const { vat, batch, from, to } of plan.stays)
      expect(
        rows
          .find((row) => row.vat === vat)
          ?.bars.some((bar) => bar.batch === batch && bar.from <= from && bar.to >= to),
      ).toBe(true);
    expect(page.all('.season-vats svg .bar')).toHaveLength(rows.flatMap(({ bars }) => bars).length);
    expect(page.one('.season-vats svg').getAttribute('aria-label')).toContain(
      `${plan.batches.length} batches`,
    );
    expect(page.all('.season-vats li').map((li) => li.textContent)).toEqual(
      rows.map(({ vat }) => expect.stringMatching(new RegExp(`^${vat}: `))),
    );
  });

  test('shopping and money are the engine’s, with their odds', async () => {
    const { money, purchases, odds } = planOf(page);
    const text = plain(page.one('.preview').textContent);
    for (const { amount, unit } of purchases)
      expect(text).toContain(`${amount.toFixed(unit === 'mL' ? 1 : 2)} ${unit}`);
    for (const word of [
      `A fish costs${money.costPerFish.toFixed(3)}`,
      `Profit${Math.round(money.profit)}`,
      `A profit in${(100 * (odds?.gain ?? NaN)).toFixed(0)} % of seasons`,
      `Never out of money in${(100 * (odds?.solvent ?? NaN)).toFixed(0)} % of seasons`,
      `Least money at hand${Math.round(money.leastBalance)}`,
    ])
      expect(text).toContain(word);
  });

  test('asked to be surer it plans more, and says how sure was asked', async () => {
    const females = (plan: SeasonPlan): number => plan.batches.reduce((n, { pairs }) => n + pairs.length, 0);
    const before = females(planOf(page));
    await page.type('#season-certainty', '95 %');
    await page.press('Work the plan out again');
    expect(planOf(page).wanted).toBe(0.95);
    expect(females(planOf(page))).toBeGreaterThan(before);
    expect(plain(page.one('#season-promise').textContent)).toContain('95 % was asked for');
  });

  test('an order that cannot be had: the verdict, what binds, what helps, ranked', async () => {
    const page = await filled();
    await page.type('#season-order-1-number', '900000');
    await page.press('Work the plan out');
    const plan = planOf(page);
    expect(plan.canBeMet).toBe(false);
    const text = plain(page.one('.preview').textContent);
    expect(text).toContain(`Promise ${plan.promise}, hope for ${plan.hope}`);
    expect(text).toMatch(/✕ \d+ short/);
    expect(page.all('.ranked li').map((li) => plain(li.textContent))).toEqual(
      plan.short?.changes.map(({ what, gain }) => plain(`${what}: ${Math.round(gain)} more fish`)),
    );
    expect(text).toContain(plan.short?.binding ?? 'No single thing binds');
  });
});

describe('the plan and the form', () => {
  test('a change marks the plan as outdated and bars writing; planning again lifts it', async () => {
    const page = await planned();
    await page.type('#season-order-1-number', '14000');
    expect(page.text()).toContain('this plan is outdated');
    expect(page.one('#season-write').getAttribute('aria-disabled')).toBe('true');
    await page.press('Write into this workbook');
    expect(page.world.written).toEqual([]);
    await page.press('Work the plan out again');
    expect(page.all('.outdated')).toEqual([]);
    expect(planOf(page).orders[0]?.order.number).toBe(14_000);
    expect(page.one('#season-write').getAttribute('aria-disabled')).toBeNull();
  });

  test('the result is not drawn anew while somebody types', async () => {
    const page = await planned();
    const card = page.one('.order-plan');
    card.textContent = 'untouched';
    await page.type('#season-order-1-number', '14000');
    expect(page.one('.order-plan').textContent).toBe('untouched');
  });

  test('stopped on the way: no plan, a sentence, the keyboard back at the button', async () => {
    // A season no other test plans: what was planned before is there at once, and cannot be stopped.
    const page = await filled();
    await page.type('#season-order-1-number', '880000');
    page.one('#season-plan').click();
    const seen = await new Promise<boolean>((resolve) => {
      const look = (): void => {
        const { task } = page.store.state();
        if (!task) resolve(false);
        else if (task.done > 0) {
          page.store.send(stopTask);
          resolve(true);
        } else setTimeout(look);
      };
      look();
    });
    await page.store.idle();
    expect(seen).toBe(true);
    expect(page.store.state().season.made).toBeUndefined();
    expect(page.text()).toContain('Stopped. Nothing was made');
    expect(document.activeElement?.id).toBe('season-plan');
  });
});

describe('writing', () => {
  test('writes the season, and asks when names are taken', async () => {
    const world = fakeWorld();
    world.writeOutcome = (suffix) =>
      suffix === ''
        ? { kind: 'taken', sheets: ['Today', 'Orders'], names: [], free: ' 2' }
        : { kind: 'written', sheets: [`Today${suffix}`] };
    const page = await planned(world);
    await page.press('Write into this workbook');
    expect(page.one('.question').textContent).toContain(
      'There are sheets called “Today”, “Orders” already. Nothing was changed.',
    );
    page.key('Escape');
    expect(document.activeElement?.id).toBe('season-write');
    await page.press('Write into this workbook');
    await page.type('#question-word', 'no good word');
    await page.press('Write beside them');
    expect(page.text()).toContain('cannot go behind a sheet name');
    await page.type('#question-word', '2');
    await page.press('Write beside them');
    expect(world.written.map(({ suffix }) => suffix)).toEqual(['', '', ' 2']);
    expect(world.written[0]?.model).toBe(world.written[2]?.model);
    expect(page.text()).toContain('The season is written on new sheets: “Today 2”');
  });

  test('a host that fails is told in its own words, and the plan stays', async () => {
    const world = fakeWorld();
    const page = await planned(world);
    world.failure = new HostProblem('The workbook is protected.');
    await page.press('Write into this workbook');
    expect(page.text()).toContain('The workbook is protected.');
    expect(planOf(page).batches.length).toBeGreaterThan(0);
  });

  test(
    'saves a file named after the hatchery; without a workbook there is nothing to write ' +
      'into or to read',
    async () => {
      const world = fakeWorld();
      const page = openPage('absent', world);
      page.one('#mode-season').click();
      await page.press('Fill in an example');
      await page.press('Work the plan out');
      expect(page.all('#season-write, #season-again')).toEqual([]);
      await page.press('Save as .xlsx file');
      expect(world.saved.map(({ name }) => name)).toEqual(['Alder-Bend-Hatchery-season.xlsx']);
      expect(world.saved[0]?.bytes.length).toBeGreaterThan(20_000);
    },
  );
});

const columnOf = (address: string): number =>
  [...address.replace(/\d/g, '')].reduce((n, letter) => n * 26 + letter.charCodeAt(0) - 64, 0) - 1;
/** The sheets of a written season as the port would read them. */
function cellsOf({ sheets }: WorkbookModel, suffix: string): RangeCells[] {
  return sheets.map(({ name, cells }) => {
    const values: (string | number | boolean | null)[][] = [];
    const formulas: (string | undefined)[][] = [];
    for (const [address, { value, formula }] of Object.entries(cells)) {
      const at = Number(address.replace(/\D/g, '')) - 1;
      (values[at] ??= [])[columnOf(address)] =
        value === undefined || isGrid(value) || typeof value === 'object' ? null : value;
      (formulas[at] ??= [])[columnOf(address)] = formula;
    }
    const grid = Array.from(values, (row) => Array.from(row ?? [], (cell) => cell ?? null));
    return {
      name: `${name}${suffix}`,
      top: 0,
      left: 0,
      values: grid,
      formulas: Array.from(grid, (_, i) => formulas[i] ?? []),
      formats: grid.map((row) => row.map(() => 'General')),
    };
  });
}

describe('planning again', () => {
  let model: WorkbookModel;
  let before: SeasonPlan;
  beforeAll(async () => {
    const first = await planned();
    await first.press('Write into this workbook');
    const written = first.world.written[0]?.model;
    if (!written) throw new Error('nothing written');
    [model, before] = [written, planOf(first)];
  });
  const writtenWorld = (...suffixes: string[]) => {
    const world = fakeWorld();
    world.records = { sheets: suffixes.flatMap((suffix) => cellsOf(model, suffix)), again: 'book' };
    return world;
  };
  type World = ReturnType<typeof fakeWorld>;
  const sheetIn = ({ records }: World, name: string): RangeCells => {
    const sheet = records.sheets.find((s) => s.name === name);
    if (!sheet) throw new Error(`no sheet ${name}`);
    return sheet;
  };
  /** Changes a cell as somebody would in the workbook. */
  const change = (sheet: RangeCells, line: string, from: unknown, to: number): void => {
    const row = sheet.values.find((cells) => cells.includes(line));
    const at = row?.indexOf(from as number) ?? -1;
    if (!row || at < 0) throw new Error(`no ${String(from)} beside ${line}`);
    (row as unknown[])[at] = to;
  };
  const valuesOf = ({ sheets }: WorkbookModel): Record<string, unknown> =>
    Object.fromEntries(
      sheets.flatMap((sheet: SheetModel) =>
        Object.entries(sheet.cells).flatMap(([address, { value }]) =>
          value === undefined
            ? []
            : [
                [
                  `${sheet.name}!${address}`,
                  typeof value === 'number' ? Number(value.toPrecision(9)) : value,
                ] as const,
              ],
        ),
      ),
    );

  test('an untouched season is read into the form, planned to the same, and nothing changes', async () => {
    const world = writtenWorld('');
    const page = openPage('ready', world);
    await page.press('Plan again from this workbook');
    expect(page.store.state().season.mode).toBe('season');
    expect(document.activeElement?.id).toBe('season-read');
    expect(page.store.state().season.form.orders.map(({ texts }) => texts.name)).toEqual([
      'Two Mills farm',
      'School ponds',
      'Sandpit growers',
      'Marsh cooperative',
    ]);
    expect((page.one('#season-females') as HTMLTextAreaElement).value).toContain('F1; 1.4; line A');
    expect((page.one('#season-certainty') as HTMLInputElement).value).toBe('80 %');
    await page.press('Work the plan out');
    expect(page.text()).toContain('Nothing: the season in the workbook still holds.');
    expect([world.written, world.rewritten]).toEqual([[], []]);
  });

  test('a due date put off: the change is listed, then written over the season, and taken back by one press', async () => {
    const world = writtenWorld('');
    const due = before.orders[3]?.order.due ?? 0;
    const page = openPage('ready', world);
    await page.press('Plan again from this workbook');
    await page.type('#season-order-4-due', isoDateOfSerial(due + 21));
    await page.press('Work the plan out');
    const changes = page.store.state().season.made?.changes ?? [];
    expect(changes.length).toBeGreaterThan(0);
    expect(page.all('.changes li').map((li) => li.textContent)).toEqual(
      changes.map(({ message }) => expect.stringContaining(message)),
    );
    expect(world.rewritten).toEqual([]);
    await page.press('Write over the season');
    expect(world.written).toEqual([]);
    const [over] = world.rewritten;
    if (!over) throw new Error(page.text());
    expect(over.suffix).toBe('');
    expect(document.activeElement?.id).toBe('season-back');
    // Closed and opened again: only the workbook remembers.
    world.records = { ...world.records, sheets: cellsOf(over.model, '') };
    const later = openPage('ready', world);
    await later.press('Plan again from this workbook');
    await later.press('Take the last planning back');
    const back = world.rewritten[1];
    if (!back) throw new Error(later.text());
    expect(valuesOf(back.model)).toEqual(valuesOf(model));
    world.records = { ...world.records, sheets: cellsOf(back.model, '') };
    await later.press('Take the last planning back');
    expect(valuesOf(world.rewritten[2]?.model ?? model)).toEqual(valuesOf(over.model));
  });

  test('what was typed since the season was read is never written over', async () => {
    const world = writtenWorld('');
    const page = openPage('ready', world);
    await page.press('Plan again from this workbook');
    await page.press('Work the plan out');
    const log = sheetIn(world, 'Counts');
    const head = log.values.findIndex((row) => row.includes('Date and hour'));
    (log.values[head + 1] as unknown[])[log.values[head]?.indexOf('Date and hour') ?? 0] = TODAY;
    await page.press('Write over the season');
    expect(world.rewritten).toEqual([]);
    expect(page.text()).toContain('Something was typed into the season since it was read');
  });

  test.each(['', ' 2'])(
    'remarks beside a table stay beside their line: sheets “Orders%s”',
    async (suffix) => {
      const world = writtenWorld(suffix);
      const orders = sheetIn(world, `Orders${suffix}`);
      const row = orders.values.findIndex((cells) => cells.includes('Sandpit growers'));
      const far = Math.max(...orders.values.map((cells) => cells.length)) + 2;
      const line = orders.values[row] as unknown[];
      while (line.length < far) line.push(null);
      line.push('call him first');
      const page = openPage('ready', world);
      await page.press('Plan again from this workbook');
      await page.press('Work the plan out');
      await page.press('Write over the season');
      const cells = Object.entries(
        world.rewritten[0]?.model.sheets.find(({ name }) => name === 'Orders')?.cells ?? {},
      );
      const remark = cells.find(([, { value }]) => value === 'call him first')?.[0] ?? '';
      const sandpit = cells.find(([, { value }]) => value === 'Sandpit growers')?.[0] ?? 'none';
      expect(remark.replace(/\D/g, '')).toBe(sandpit.replace(/\D/g, ''));
      expect(columnOf(remark)).toBe(far);
    },
  );

  test('of several seasons the newest is offered and another can be read; only its sheets are asked for', async () => {
    const world = writtenWorld('', ' 2');
    change(sheetIn(world, 'Orders 2'), 'Two Mills farm', 6000, 9000);
    const page = openPage('ready', world);
    await page.press('Plan again from this workbook');
    expect(document.activeElement?.id).toBe('season-which');
    expect((page.one('#season-which') as HTMLSelectElement).value).toBe(' 2');
    expect(world.asked).toEqual([]);
    await page.press('Read this season');
    expect(page.store.state().season.form.orders[0]?.texts.number).toBe('9000');
    expect(world.asked.every((wanted) => typeof wanted === 'object' && wanted.sheet.endsWith(' 2'))).toBe(
      true,
    );
    await page.press('Work the plan out');
    await page.press('Write over the season');
    expect(world.rewritten.map(({ suffix }) => suffix)).toEqual([' 2']);
    expect(Object.keys(world.texts)).toEqual(['season-before 2']);
    await page.press('Plan again from this workbook');
    await page.type('#season-which', '');
    await page.press('Read this season');
    expect(page.store.state().season.form.orders[0]?.texts.number).toBe('6000');
  });

  test('what cannot be used in the sheets is said beside its field after reading', async () => {
    const world = writtenWorld('');
    change(sheetIn(world, 'Orders'), 'Two Mills farm', 6000, -4);
    const page = openPage('ready', world);
    await page.press('Plan again from this workbook');
    expect(document.getElementById('season-order-1-number-fault')?.textContent).toContain('got -4');
    await page.press('Work the plan out');
    expect(document.activeElement?.id).toBe('season-order-1-number');
    expect(page.store.state().season.made).toBeUndefined();
  });

  test('no season there, nothing to take back: a sentence, the form stays', async () => {
    const world = fakeWorld();
    world.sheets = ['Sheet1', 'Orders'];
    const page = openPage('ready', world);
    await page.press('Plan again from this workbook');
    expect(page.text()).toContain('No season was found in this workbook');
    expect(document.activeElement?.id).toBe('season-again');
    const other = writtenWorld('');
    const there = openPage('ready', other);
    await there.press('Plan again from this workbook');
    await there.press('Take the last planning back');
    expect(there.text()).toContain('There is nothing to take back');
  });

  test('a sheet renamed, headings that are gone: told, and nothing is taken over', async () => {
    const world = writtenWorld('');
    const all = world.records.sheets;
    world.records = {
      ...world.records,
      sheets: all.map((sheet) => (sheet.name === 'Vats' ? { ...sheet, name: 'Tanks' } : sheet)),
    };
    const page = openPage('ready', world);
    await page.press('Plan again from this workbook');
    expect(page.one('#season-read').textContent).toContain('There is no sheet “Vats” in this workbook');
    const orders = sheetIn(world, 'Orders');
    world.records = {
      ...world.records,
      sheets: all.map((other) => (other === orders ? { ...orders, values: orders.values.slice(6) } : other)),
    };
    await page.press('Plan again from this workbook');
    expect(page.one('#season-read').textContent).toContain(
      'The headings of “Orders” are not where they were written',
    );
    expect(page.store.state().season.form.orders).toHaveLength(1);
  });

  test('figures of one’s own are counted and set back; the seed stays', async () => {
    const page = await filled();
    page.store.change((state) => ({
      ...state,
      season: {
        ...state.season,
        form: {
          ...state.season.form,
          kept: { assumptions: { hatch: 0.7 }, spreads: { hatch: { runs: 0.1, season: 0.1 } }, seed: 3 },
        },
      },
    }));
    expect(page.text()).toContain('2 figures of the plan are your own');
    await page.press('Go back to the published figures');
    await page.press('Work the plan out');
    expect(page.store.state().season.made?.book.assumptions).toEqual({});
    expect(page.store.state().season.made?.book.seed).toBe(3);
  });
});
