import { isGrid } from '../../shared/base/values';
import type { SeasonBook } from '../../shared/season';
import type { WorkbookModel } from '../../shared/sheet/workbook/model';
import type { RangeCells } from '../../shared/records';
import { stopTask } from '../../taskpane/pane/navigate';
import { momentsOf, vatRowsOf } from '../../taskpane/screens/season/state/preview';
import { HostProblem } from '../../taskpane/host/port';
import { fakeWorld } from './fakePort';
import type { Page } from './page';
import { openPage } from './page';
import { TODAY } from './seasonModel';

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
const planOf = (page: Page): SeasonBook => {
  const plan = page.store.state().season.made?.plan;
  if (!plan) throw new Error('no plan');
  return plan;
};
const plain = (text: string | null | undefined): string => (text ?? '').replaceAll('\u202f', '');

describe('the preview', () => {
  test('says of each order what the engine found', async () => {
    const page = await planned();
    const plan = planOf(page);
    const cards = page.all('.order-plan');
    expect(cards).toHaveLength(plan.orders.length);
    plan.orders.forEach(({ order, odds, expected, females, femalesForNinety, runs }, i) => {
      const text = plain(cards[i]?.textContent);
      if (!odds) throw new Error('no odds');
      for (const word of [
        order.name,
        `Expected${Math.round(expected)}`,
        `${Math.round(odds.p10)} · ${Math.round(odds.p50)} · ${Math.round(odds.p90)}`,
        `${(100 * odds.certainty).toFixed(0)} % of seasons`,
        `Females${females} · ${femalesForNinety ?? ''} for nine`,
        `Runs${runs.join(', ')}`,
      ])
        expect(text).toContain(word);
    });
    expect(document.activeElement?.id).toBe('season-result');
    expect(page.world.written).toEqual([]);
  });

  test('lists the moments of all runs in order of time, nights by a word', async () => {
    const page = await planned();
    const plan = planOf(page);
    const moments = momentsOf(plan);
    expect(moments.map(({ at }) => at)).toEqual([...moments.map(({ at }) => at)].sort((a, b) => a - b));
    for (const run of plan.runs)
      for (const [what, at] of [
        ['Inject', run.injectAt],
        ['Strip', run.stripAt],
        ['Hatch begins', run.hatchAt],
        ['First meal', run.firstFeedAt],
        ['Fetched', run.due],
      ] as const)
        expect(moments.some((m) => m.run === run.run && m.what === what && m.at === at)).toBe(true);
    const isNight = (at: number): boolean => at % 1 < 0.25 - 1e-6 || at % 1 >= 22 / 24;
    for (const { at, isNight: word, isAllDay } of moments) expect(word).toBe(!isAllDay && isNight(at));
    expect(page.all('.moment')).toHaveLength(moments.length);
    expect(page.all('section > .calendar > .moment')).toHaveLength(20);
    expect(page.all('.moment.night .night-word')).toHaveLength(moments.filter((m) => m.isNight).length);
  });

  test('draws each stay of each vat, with the run in it, and says the same in words', async () => {
    const page = await planned();
    const plan = planOf(page);
    const made = page.store.state().season.made;
    const rows = made ? vatRowsOf(made.book, plan) : [];
    for (const { vat, run, from, to } of plan.occupancy)
      expect(
        rows
          .find((row) => row.vat === vat)
          ?.bars.some((bar) => bar.run === run && bar.from <= from && bar.to >= to),
      ).toBe(true);
    expect(page.all('.season-vats svg .bar')).toHaveLength(rows.flatMap(({ bars }) => bars).length);
    expect(page.one('.season-vats svg').getAttribute('aria-label')).toContain(`${plan.runs.length} runs`);
    expect(page.all('.season-vats li').map((li) => li.textContent)).toEqual(
      rows.map(({ vat }) => expect.stringMatching(new RegExp(`^${vat}: `))),
    );
  });

  test('shopping and money are the engine’s', async () => {
    const page = await planned();
    const { money, purchases } = planOf(page);
    const text = plain(page.one('.preview').textContent);
    for (const { amount, unit } of purchases)
      expect(text).toContain(`${amount.toFixed(unit === 'mL' ? 1 : 2)} ${unit}`);
    for (const word of [
      `A fish costs${money.costPerFish.toFixed(3)}`,
      `Profit${Math.round(money.profit)}`,
      `Least money at hand${Math.round(money.leastBalance)}`,
      money.swings[0]?.name ?? 'none',
    ])
      expect(text).toContain(word);
  });

  test('an order that cannot be had: the verdict, what binds, what helps, ranked', async () => {
    const page = await filled();
    await page.type('#season-order-1-number', '900000');
    await page.press('Work the plan out');
    const plan = planOf(page);
    expect(plan.canBeMet).toBe(false);
    const text = plain(page.one('.preview').textContent);
    expect(text).toContain('Not all of it can be had');
    expect(text).toMatch(/✕ \d+ short/);
    expect(page.all('.ranked li').map((li) => plain(li.textContent))).toEqual(
      plan.shortfall?.changes.map(({ what, gain }) => `${what}: ${Math.round(gain)} more fish`),
    );
    expect(text).toContain(plan.shortfall?.binding ?? 'No single thing binds');
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
    const page = await filled();
    await page.type('#season-order-1-number', '900000');
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
        ? { kind: 'taken', sheets: ['Setup', 'Orders'], names: [], free: ' 2' }
        : { kind: 'written', sheets: [`Setup${suffix}`] };
    const page = await planned(world);
    await page.press('Write into this workbook');
    expect(page.one('.question').textContent).toContain(
      'There are sheets called “Setup”, “Orders” already. Nothing was changed.',
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
    expect(page.text()).toContain('The season is written on new sheets: “Setup 2”');
  });

  test('a host that fails is told in its own words, and the plan stays', async () => {
    const world = fakeWorld();
    const page = await planned(world);
    world.failure = new HostProblem('The workbook is protected.');
    await page.press('Write into this workbook');
    expect(page.text()).toContain('The workbook is protected.');
    expect(planOf(page).runs.length).toBeGreaterThan(0);
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
    for (const [address, { value }] of Object.entries(cells)) {
      const row = (values[Number(address.replace(/\D/g, '')) - 1] ??= []);
      row[columnOf(address)] =
        value === undefined || isGrid(value) || typeof value === 'object' ? null : value;
    }
    const grid = Array.from(values, (row) => Array.from(row ?? [], (cell) => cell ?? null));
    return {
      name: `${name}${suffix}`,
      top: 0,
      left: 0,
      values: grid,
      formulas: grid,
      formats: grid.map((row) => row.map(() => 'General')),
    };
  });
}

describe('planning again', () => {
  const writtenWorld = async (...suffixes: string[]) => {
    const first = await planned();
    await first.press('Write into this workbook');
    const model = first.world.written[0]?.model;
    if (!model) throw new Error('nothing written');
    const world = fakeWorld();
    world.records = { sheets: suffixes.flatMap((suffix) => cellsOf(model, suffix)), again: 'book' };
    return { world, before: planOf(first) };
  };
  const ordersSheet = (sheets: readonly RangeCells[], name = 'Orders'): RangeCells => {
    const sheet = sheets.find((s) => s.name === name);
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

  test('an untouched season is read into the form, planned to the same, and nothing changes', async () => {
    const { world } = await writtenWorld('');
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
    expect((page.one('#season-females') as HTMLTextAreaElement).value).toContain('F1; 1.1; line A');
    await page.press('Work the plan out');
    expect(page.text()).toContain('Nothing: the season in the workbook still holds.');
    expect(world.written).toEqual([]);
  });

  test(
    'a due date put off in the workbook moves a run; the change is listed and the new ' +
      'season goes beside the old',
    async () => {
      const { world, before } = await writtenWorld('');
      const due = before.orders[3]?.order.due ?? 0;
      change(ordersSheet(world.records.sheets), 'Marsh cooperative', due, due + 21);
      world.writeOutcome = (suffix) =>
        suffix === ''
          ? { kind: 'taken', sheets: ['Setup'], names: [], free: ' 2' }
          : { kind: 'written', sheets: [`Setup${suffix}`] };
      const page = openPage('ready', world);
      await page.press('Plan again from this workbook');
      await page.press('Work the plan out');
      const changes = page.store.state().season.made?.changes ?? [];
      expect(page.all('.changes li').map((li) => li.textContent)).toEqual(
        changes.map(({ message }) => expect.stringContaining(message)),
      );
      expect(page.one('.changes').textContent).toMatch(
        /MovedMarsh cooperative: the strip of \S+ moves to \S+, \d+ days later/,
      );
      await page.press('Write into this workbook');
      await page.press('Write beside them');
      expect(page.text()).toContain('The sheets of the season before stay as they were.');
    },
  );

  test(
    'of several seasons the newest is offered and another can be read; only the sheets ' +
      'of a season are asked for',
    async () => {
      const { world } = await writtenWorld('', ' 2');
      change(ordersSheet(world.records.sheets, 'Orders 2'), 'Two Mills farm', 15_000, 9000);
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
      await page.type('#season-which', '');
      await page.press('Read this season');
      expect(page.store.state().season.form.orders[0]?.texts.number).toBe('15000');
    },
  );

  test('what cannot be used in the sheets is said beside its field after reading', async () => {
    const { world } = await writtenWorld('');
    change(ordersSheet(world.records.sheets), 'Two Mills farm', 15_000, -4);
    const page = openPage('ready', world);
    await page.press('Plan again from this workbook');
    expect(document.getElementById('season-order-1-number-fault')?.textContent).toContain('got -4');
    await page.press('Work the plan out');
    expect(document.activeElement?.id).toBe('season-order-1-number');
    expect(page.store.state().season.made).toBeUndefined();
  });

  test('no season there: a sentence, the form stays', async () => {
    const world = fakeWorld();
    world.sheets = ['Sheet1', 'Orders'];
    const page = openPage('ready', world);
    await page.press('Plan again from this workbook');
    expect(page.text()).toContain('No season was found in this workbook');
    expect(document.activeElement?.id).toBe('season-again');
  });

  test('headings that are gone are told, and nothing is taken over', async () => {
    const { world } = await writtenWorld('');
    const sheet = ordersSheet(world.records.sheets);
    world.records = {
      ...world.records,
      sheets: world.records.sheets.map((other) =>
        other === sheet ? { ...sheet, values: sheet.values.slice(6) } : other,
      ),
    };
    const page = openPage('ready', world);
    await page.press('Plan again from this workbook');
    expect(page.one('#season-read').textContent).toContain(
      'The headings of “Orders” are not where they were written',
    );
    expect(page.store.state().season.form.orders).toHaveLength(1);
  });

  test('a run taken out of the list and figures set back change the form', async () => {
    const page = openPage();
    page.one('#mode-season').click();
    await page.press('Fill in an example');
    page.store.change((state) => ({
      ...state,
      season: {
        ...state.season,
        form: {
          ...state.season.form,
          kept: { assumptions: { hatch: 0.7 }, spreads: { hatch: { runs: 0.1, season: 0.1 } }, seed: 3 },
          underway: [
            { order: 'School ponds', vats: ['Vat 1'], until: TODAY + 9, fish: 900 },
            { order: 'Gone', vats: ['Vat 2'], until: TODAY + 9, fish: 900 },
          ],
        },
      },
    }));
    expect(page.text()).toContain('2 figures of the plan are your own');
    await page.press('Work the plan out');
    expect(page.one('#season-underway').textContent).toContain('Gone: there is no such order in the book.');
    expect(document.activeElement?.id).toBe('season-underway');
    await page.press('Take out the run for Gone');
    await page.press('Go back to the published figures');
    await page.press('Work the plan out');
    expect(page.store.state().season.made?.book.assumptions).toEqual({});
    expect(page.store.state().season.made?.book.seed).toBe(3);
    expect(page.one('.season-vats').textContent).toContain('Vat 1: a run under way from');
    expect(page.all('.bar.before')).toHaveLength(1);
  });
});
