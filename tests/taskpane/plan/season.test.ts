import { shortPercent } from '../../../taskpane/screens/season/view/result';
import { faultsOf, bookOfForm, firstFaultOf } from '../../../taskpane/screens/season/state/faults';
import { formOfInput, initialForm, inputOfForm } from '../../../taskpane/screens/season/state/form';
import { echoOf, readLines } from '../../../taskpane/screens/season/state/lists';
import { exampleForm } from '../../../taskpane/screens/season/state/season';
import type { SeasonForm } from '../../../taskpane/screens/season/state/form';
import { planBatches } from '../../../shared/season/batches';
import { openPage } from '../support/page';
import { TODAY } from '../support/seasonModel';

const example = exampleForm(TODAY);
const faults = (form: SeasonForm): Record<string, readonly string[]> => Object.fromEntries(faultsOf(form));
const withText = (path: string, text: string): SeasonForm => ({
  ...example,
  texts: { ...example.texts, [path]: text },
});
const withList = (list: 'vats' | 'females' | 'males', text: string): SeasonForm => ({
  ...example,
  lists: { ...example.lists, [list]: text },
});

describe('lines of fish and vats', () => {
  test.each([
    ['females', 'F1\t1.2\tline A\nF2\t0,9', '2 females, 2.1 kg, 1 family'],
    ['females', 'F1; 1.2 kg; line A; 2027-01-01\n\nF2, 0.9, line B', '2 females, 2.1 kg, 2 families'],
    ['females', 'Tag\tWeight (kg)\nF1\t1.2', '1 female, 1.2 kg'],
    ['vats', 'Vat 1; 1 000 L\nVat 2; 600', '2 vats, 1\u202f600 L'],
    ['males', 'M1\nM2; line B', '2 males, 1 family'],
    ['males', '', 'Nothing yet.'],
  ] as const)('%s %j: %s', (list, text, echo) => {
    expect(echoOf(list, text)).toBe(echo);
  });

  test(
    'family and date may stand in either order, a pasted date may be a serial, a vat may ' +
      'hold some stages only',
    () => {
      expect(readLines('females', 'F1; 1; 2027-01-15; line A').map(({ entry }) => entry)).toEqual([
        { tag: 'F1', kilograms: '1', family: 'line A', lastUsed: '2027-01-15' },
      ]);
      expect(readLines('males', 'M1\t46000').map(({ entry }) => entry)).toEqual([
        { tag: 'M1', lastUsed: 46_000 },
      ]);
      expect(readLines('vats', 'A; 200; eggs, fry').map(({ entry }) => entry)).toEqual([
        { name: 'A', litres: '200', holds: ['eggs', 'fry'] },
      ]);
    },
  );

  test('a vat out of use, a fish that is gone: typed, and back from a book', () => {
    const form = withList(
      'vats',
      'A; 200; eggs, fry; out 2027-04-01 to 2027-04-20\nB; 900; out from 2027-05-01\nC; 900',
    );
    expect(
      bookOfForm(form)?.vats.map(({ outFrom, outUntil, holds }) => [outFrom, outUntil, holds.length]),
    ).toEqual([
      [46_478, 46_497, 2],
      [46_508, undefined, 3],
      [undefined, undefined, 3],
    ]);
    const fish = withList(
      'females',
      'F1; 1; line A; 2027-01-15; gone 2027-02-01\nF2; 1.2; dead on 2027-02-02',
    );
    expect(bookOfForm(fish)?.females.map(({ goneOn, family }) => [goneOn, family])).toEqual([
      [46_419, 'line A'],
      [46_420, undefined],
    ]);
    for (const typed of [form, fish]) {
      const book = bookOfForm(typed);
      expect(bookOfForm(formOfInput(book, TODAY))).toEqual(book);
    }
  });

  test.each([
    ['80 %', 0.8],
    ['95', 0.95],
    ['0.7', 0.7],
    ['', 0.8],
    ['99 %', 0.99],
    ['50 %', 0.5],
  ])('how sure it must be, typed as “%s”: %d', (text, share) => {
    expect(bookOfForm(withText('certainty', text))?.certainty).toBe(share);
  });
  test.each(['49 %', '100 %', 'very'])('how sure it must be, typed as “%s”: its sentence', (text) => {
    expect(faults(withText('certainty', text))['season-certainty']?.[0]).toMatch(/from 0.5 to 0.99 share/);
  });

  test('a fault names its line as the editor counts it, blank lines and headings too', () => {
    expect(faults(withList('females', 'Tag; kg\n\nF1; 1.2\nF2; 1200'))['season-females']).toEqual([
      expect.stringMatching(
        /^Line 4: Weight of a female: expected a number from 0.1 to 15 kg, got 1200\. That looks like grams/,
      ),
    ]);
    expect(faults(withList('vats', 'Vat 1; 1000\nVat 2'))['season-vats']).toEqual([
      'Line 2: “Vat 2” has no litres. Put a tab, a semicolon or a comma and a space between the columns.',
    ]);
    expect(faults(withList('males', '\nM1\nM1'))['season-males']).toEqual([
      'Line 3: M1 stands on line 2 already. Give each its own name.',
    ]);
    expect(faults(withList('vats', ''))['season-vats']?.[0]).toContain('the list is empty; at least 1');
    expect(faults(withList('females', 'F1; 1; line A; 2030-01-01'))['season-females']?.[0]).toMatch(
      /^Line 1: F1: was last used on 2030-01-01, which is after today/,
    );
    expect(faults(withList('females', 'F1; 1; line A; 31.31.2026'))['season-females']?.[0]).toMatch(
      /^Line 1: Last used on: expected a date/,
    );
  });
});

describe('faults by field', () => {
  test.each([
    ['staff.stripTo', '05:00', 'season-staff-stripTo', /must be later than stripping from/],
    ['staff.injectTo', 'late', 'season-staff-injectTo', /expected a clock time/],
    ['temperatures.3', '82', 'season-temperatures-3', /looks like °F/],
    ['prices.male', 'dear', 'season-prices-male', /got "dear"/],
    ['plannedOn', '', 'season-plannedOn', /expected a date/],
    ['leadDays.feed', '-1', 'season-leadDays-feed', /from 0 to 180/],
  ])('%s “%s” complains at %s', (path, text, id, sentence) => {
    expect(faults(withText(path, text))[id]?.[0]).toMatch(sentence);
  });

  test('what is wrong together is found while other fields cannot be read yet', () => {
    const [first, second, ...rest] = example.orders;
    if (!first || !second) throw new Error('no orders');
    const form = {
      ...example,
      orders: [
        { ...first, texts: { ...first.texts, due: '2020-01-01', number: '' } },
        { ...second, texts: { ...second.texts, due: '' } },
        ...rest,
      ],
    };
    expect(faults(form)).toEqual({
      'season-order-1-number': [expect.stringContaining('got nothing')],
      'season-order-1-due': [expect.stringContaining('is due on 2020-01-01, but the plan is made on')],
      'season-order-2-due': [expect.stringContaining('expected a date')],
    });
    expect(firstFaultOf(form)).toBe('season-order-1-number');
  });

  test('the quick look and the whole reading agree: no fault, and a book', () => {
    expect(faults(example)).toEqual({});
    expect(bookOfForm(example)?.orders).toHaveLength(4);
    expect(bookOfForm(initialForm(TODAY))).toBeUndefined();
    expect(bookOfForm(withText('staff.injectTo', '24:00'))?.staff.injectTo).toBe(24);
    expect(bookOfForm({ ...example, weekdays: [] })).toBeUndefined();
    expect(faults({ ...example, weekdays: [] })['season-staff-weekdays']).toEqual([
      'Choose at least one day of the week.',
    ]);
    expect(faults({ ...example, orders: [] })['season-orders']?.[0]).toContain('add one');
  });

  test('a book turned into a form and back is the same book', () => {
    const book = bookOfForm(example);
    if (!book) throw new Error('no book');
    expect(bookOfForm(formOfInput(book, TODAY))).toEqual(book);
    const own = {
      ...inputOfForm(example),
      assumptions: { hatch: 0.7 },
      spreads: { hatch: { runs: 0.1, season: 0.05 } },
      malesSurvive: true,
      seed: 9,
      temperatures: Array.from({ length: 12 }, (_, i) => (i === 4 ? null : 26)),
    };
    const back = bookOfForm(formOfInput(own, TODAY));
    expect(back?.assumptions).toEqual({ hatch: 0.7 });
    expect([
      back?.spreads.hatch,
      back?.malesSurvive,
      back?.seed,
      back?.temperatures[4],
      back?.temperatures[5],
    ]).toEqual([{ runs: 0.1, season: 0.05 }, true, 9, null, 26]);
  });

  test('weekdays nobody can read are asked for, not guessed', () => {
    expect(
      bookOfForm(formOfInput({ ...inputOfForm(example), staff: { weekdays: ['Mon', 'Someday'] } }, TODAY)),
    ).toBeUndefined();
  });
});

const season = (): ReturnType<typeof openPage> => {
  const page = openPage();
  (page.one('#mode-season') as HTMLInputElement).click();
  return page;
};
const said = (id: string): string => document.getElementById(`${id}-fault`)?.textContent ?? '';
const blur = (page: ReturnType<typeof openPage>, selector: string): void => {
  page.one(selector).dispatchEvent(new Event('blur'));
};

describe('the form on the page', () => {
  test('the switch keeps what was typed on both sides', async () => {
    const page = openPage();
    await page.type('#plan-wanted', '777');
    (page.one('#mode-season') as HTMLInputElement).click();
    expect(page.all('#plan-wanted')).toEqual([]);
    await page.type('#season-order-1-name', 'Pond one');
    (page.one('#mode-run') as HTMLInputElement).click();
    expect((page.one('#plan-wanted') as HTMLInputElement).value).toBe('777');
    (page.one('#mode-season') as HTMLInputElement).click();
    expect((page.one('#season-order-1-name') as HTMLInputElement).value).toBe('Pond one');
  });

  test('a field complains once it is left, and is described by its sentence', async () => {
    const page = season();
    await page.type('#season-order-1-number', 'many');
    expect(said('season-order-1-number')).toBe('');
    blur(page, '#season-order-1-number');
    expect(said('season-order-1-number')).toContain('got "many"');
    expect(page.one('#season-order-1-number').getAttribute('aria-describedby')).toContain(
      'season-order-1-number-fault',
    );
    expect(page.one('#season-order-1-number').getAttribute('aria-invalid')).toBe('true');
    await page.type('#season-order-1-number', '500');
    expect(said('season-order-1-number')).toBe('');
  });

  test(
    'asked too early: every fault shows, the first field has the keyboard, nothing is ' + 'planned',
    async () => {
      const page = season();
      await page.press('Work the plan out');
      expect(document.activeElement?.id).toBe('season-order-1-name');
      expect(page.all('.fault').length).toBeGreaterThan(3);
      expect(page.store.state().season.made).toBeUndefined();
      expect(page.text()).toContain('cannot be used yet');
    },
  );

  test('a fault in a folded group unfolds it and gets the keyboard', async () => {
    const page = season();
    await page.press('Fill in an example');
    await page.type('#season-prices-male', 'dear');
    await page.press('Work the plan out');
    expect(document.activeElement?.id).toBe('season-prices-male');
    expect(page.one('#season-prices-male').closest('details')?.open).toBe(true);
  });

  test(
    'orders are added, duplicated under a name of their own and removed; the keyboard ' + 'follows',
    async () => {
      const page = season();
      await page.press('Fill in an example');
      await page.press('Duplicate Two Mills farm');
      expect(page.store.state().season.form.orders.map(({ texts }) => texts.name)).toEqual([
        'Two Mills farm',
        'Two Mills farm 2',
        'School ponds',
        'Sandpit growers',
        'Marsh cooperative',
      ]);
      expect((document.activeElement as HTMLInputElement).value).toBe('Two Mills farm 2');
      await page.press('Remove Two Mills farm');
      expect((document.activeElement as HTMLInputElement).value).toBe('Two Mills farm 2');
      await page.press('Add an order');
      expect((document.activeElement as HTMLInputElement).value).toBe('');
      expect(page.store.state().season.form.orders).toHaveLength(5);
    },
  );

  test('rows pasted from a sheet become orders; the empty first row gives way', async () => {
    const page = season();
    await page.press('Add these orders');
    expect(page.text()).toContain('There is no order in these lines yet');
    await page.type(
      '#season-pasted',
      'Order\tFish\tNumber\tDue\nPond club\tFry\t20 000\t46530\nLake; fingerlings; 500; ' +
        '2027-06-01; 3; 0.2; yes\nBad; eels; 5; soon',
    );
    await page.press('Add these orders');
    expect(
      page.store
        .state()
        .season.form.orders.map(({ texts, forBreeding }) => [...Object.values(texts), forBreeding]),
    ).toEqual([
      ['Pond club', 'fry', '20 000', '2027-05-23', '', '', false],
      ['Lake', 'fingerlings', '500', '2027-06-01', '3', '0.2', true],
      ['Bad', 'eels', '5', 'soon', '', '', false],
    ]);
    expect((document.activeElement as HTMLInputElement).value).toBe('Pond club');
    const bad = page.store.state().season.form.orders[2];
    expect(said(`season-order-${bad?.id ?? 0}-product`)).toContain('expected one of');
    expect(said(`season-order-${bad?.id ?? 0}-due`)).toContain('got "soon"');
  });

  test('a month of the season without water is said beside it, and stops nothing', async () => {
    const page = season();
    await page.press('Fill in an example');
    await page.type('#season-temperatures-3', '');
    blur(page, '#season-temperatures-3');
    expect(document.getElementById('season-temperatures-3-care')?.textContent).toContain(
      'April lies in the season',
    );
    expect(faultsOf(page.store.state().season.form).size).toBe(0);
  });

  test('labels, ids and descriptions hold together', async () => {
    const page = season();
    await page.press('Fill in an example');
    await page.press('Work the plan out');
    const ids = page.all('[id]').map((element) => element.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const field of page.all('input, select, textarea')) {
      expect(page.all(`label[for="${field.id}"]`)).toHaveLength(1);
      for (const id of (field.getAttribute('aria-describedby') ?? '').split(' ').filter(Boolean))
        expect(document.getElementById(id)).not.toBeNull();
    }
    for (const button of page.all('button'))
      expect(button.getAttribute('aria-label') ?? button.textContent).not.toBe('');
    expect(page.all('[style], script')).toEqual([]);
  });
});

describe('a thousand orders', () => {
  const many: SeasonForm = formOfInput(
    {
      ...inputOfForm(example),
      orders: Array.from({ length: 1000 }, (_, i) => ({
        name: `Order ${i + 1}`,
        product: 'fry',
        number: 500,
        due: TODAY + 60 + (i % 200),
        price: 0.1,
      })),
    },
    TODAY,
  );
  const filled = (): ReturnType<typeof openPage> => {
    const page = season();
    page.store.change((state) => ({ ...state, season: { ...state.season, form: many, isAsked: true } }));
    return page;
  };

  test('stand page by page', () => {
    const page = filled();
    expect(page.all('.order')).toHaveLength(10);
    expect(page.one('.pager').textContent).toContain('1–10 of 1\u202f000 orders');
  });

  test('a fault far down turns to its page', async () => {
    const page = filled();
    page.store.change((state) => ({
      ...state,
      season: {
        ...state.season,
        form: {
          ...many,
          orders: many.orders.map((row, i) =>
            i === 776 ? { ...row, texts: { ...row.texts, number: '-3' } } : row,
          ),
        },
      },
    }));
    await page.press('Work the plan out');
    expect(page.one('.pager').textContent).toContain('771–780');
    expect(document.activeElement?.id).toBe('season-order-777-number');
    await page.press('Orders before these');
    expect(page.one('.pager').textContent).toContain('761–770');
  });
});

test('the engine takes the example as the pane would hand it over', () => {
  const book = bookOfForm(example);
  if (!book) throw new Error('no book');
  const plan = planBatches(book);
  expect(plan.canBeMet).toBe(true);
  expect(plan.batches.length).toBeGreaterThan(1);
});

test.each([
  [0.9496, 0.95, '94.9 %'],
  [0.946, 0.95, '94.6 %'],
  [0.95, 0.95, '95 %'],
  [0.944, 0.95, '94 %'],
  [0.97, 0.95, '97 %'],
])('odds of %d where %d was asked for read as %s: short of it never looks like it', (share, wanted, said) => {
  expect(shortPercent(share, wanted)).toBe(said);
});
