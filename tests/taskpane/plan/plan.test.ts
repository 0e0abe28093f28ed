import { HostProblem } from '../../../taskpane/host/port';
import { readForm, exampleTexts, initialPlan } from '../../../taskpane/screens/plan/state/plan';
import type { MadeRun } from '../../../taskpane/screens/plan/state/run';
import type { Page } from '../support/page';
import { openPage } from '../support/page';
import { TODAY } from '../support/seasonModel';

const hint = (id: string): string => document.getElementById(`${id}-fault`)?.textContent ?? '';

describe('the form', () => {
  test(
    'is quiet until a field was left, then says what is wrong beside the field and to a ' + 'screen reader',
    async () => {
      const page = openPage();
      await page.type('#plan-temperature', '82');
      expect(hint('plan-temperature')).toBe('');
      page.one('#plan-temperature').dispatchEvent(new Event('blur'));
      expect(hint('plan-temperature')).toMatch(
        /Water temperature: expected a number from 10 to 40 °C, got 82/,
      );
      const field = page.one('#plan-temperature');
      expect(field.getAttribute('aria-invalid')).toBe('true');
      expect(field.getAttribute('aria-describedby')).toContain('plan-temperature-fault');
      await page.type('#plan-temperature', '27');
      expect(hint('plan-temperature')).toBe('');
      expect(field.getAttribute('aria-invalid')).toBeNull();
    },
  );

  test(
    'asking for the plan too early shows every fault, writes nothing and leads to the ' + 'first field',
    async () => {
      const page = openPage();
      await page.press('Write into this workbook');
      expect(page.world.written).toEqual([]);
      expect(page.all('.fault').length).toBeGreaterThan(3);
      expect(document.activeElement?.id).toBe('plan-wanted');
      expect(page.text()).toContain('cannot be used yet');
    },
  );

  test('every field has a label, a hint and a describing link to it', () => {
    const page = openPage();
    for (const field of page.all('form input, form select')) {
      expect(page.one(`label[for="${field.id}"]`).textContent).not.toBe('');
      for (const id of (field.getAttribute('aria-describedby') ?? '').split(' '))
        expect(document.getElementById(id)).not.toBeNull();
    }
  });

  test('text in a number, a date as text and a decimal comma: sentences, or the number meant', async () => {
    const page = openPage();
    await page.type('#plan-wanted', 'many');
    await page.type('#plan-femaleWeight', '1,2');
    page.one('#plan-wanted').dispatchEvent(new Event('blur'));
    page.one('#plan-femaleWeight').dispatchEvent(new Event('blur'));
    expect(hint('plan-wanted')).toContain('got "many"');
    expect(hint('plan-femaleWeight')).toBe('');
    expect(
      readForm({ ...exampleTexts(initialPlan(TODAY).texts), wantedOn: '31.31.2027' }).faults.get('wantedOn'),
    ).toMatch(/a date from/);
  });
});

const madeOn = (page: Page): MadeRun => {
  const { made } = page.store.state().plan;
  if (!made) throw new Error('nothing was planned');
  return made;
};

describe('the answer', () => {
  test('grows above from the first question, and says what it takes for granted', async () => {
    const page = openPage();
    expect(page.one('#plan-answer').textContent).toContain('Type how many fish');
    await page.type('#plan-wanted', '20000');
    const answer = page.one('#plan-answer').textContent ?? '';
    expect(answer).toMatch(/Inject \d+ females on \w{3} \d+ \w{3} \d\d:\d\d/);
    expect(answer).toContain('Taken for granted so far: enough females, females of 1 kg');
    for (const word of ['First look', 'Strip', 'First hatch', 'First food']) expect(answer).toContain(word);
    expect(page.world.written).toEqual([]);
  });

  test('carries odds, never a green tick: verdict, promise, hope, poor and good run, nine in ten', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    const answer = page.one('#plan-answer').textContent ?? '';
    expect(answer).toMatch(/[●▲◊▼×] [a-z ]+: \d+ of 100 such runs bring all 30\u202f000/);
    expect(answer).toMatch(/Promise [\d\u202f]+, hope for [\d\u202f]+/);
    expect(answer).toMatch(/poor run [\d\u202f]+, of a middling one [\d\u202f]+, of a good one [\d\u202f]+/);
    expect(answer).toMatch(/Nine runs in ten take \d+ females/);
    expect(answer).not.toContain('✓');
  });

  test('the verdict is that of the plan: two females for 30,000 fry are no safe thing', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    await page.type('#plan-females', '2');
    const { plan, preview } = madeOn(page);
    expect(plan.orders[0]?.certainty).toBeLessThan(0.75);
    expect(preview.nine).toBeGreaterThan(2);
    expect(page.one('#plan-answer').textContent).toContain(plan.orders[0]?.verdict);
  });

  test('follows the form: twice the fish, more eggs', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    const eggs = (): number => madeOn(page).plan.batches.reduce((sum, batch) => sum + batch.eggs, 0);
    await page.type('#plan-wanted', '10000');
    const few = eggs();
    await page.type('#plan-wanted', '40000');
    expect(eggs()).toBeGreaterThan(few);
  });

  test('a figure of the hatchery’s own takes the place of the assumed one', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    const before = madeOn(page).plan.batches[0]?.larvae ?? 0;
    await page.type('#plan-assumptions-hatch', '40 %');
    expect(madeOn(page).book.assumptions.hatch).toBe(0.4);
    expect(madeOn(page).plan.batches[0]?.larvae ?? 0).not.toBe(before);
  });

  test('shows before anything is written: hours, vats, numbers, in order of time', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    const preview = page.one('.preview');
    for (const words of ['Females to inject', 'Hormone', 'To raise the pH: soda ash', 'Inject', 'Dry feed'])
      expect(preview.textContent).toContain(words);
    expect(page.all('.moment .clock').every((clock) => /^\d\d:\d\d$/.test(clock.textContent ?? ''))).toBe(
      true,
    );
    const at = madeOn(page).preview.moments.map((moment) => moment.at);
    expect(at.length).toBeGreaterThan(20);
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(page.one('svg').getAttribute('aria-label')).toMatch(/vat.* from \d{4}-\d\d-\d\d/);
  });

  test('what cannot be met says so in words, and what would help', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    await page.type('#plan-females', '0');
    expect(page.one('#plan-answer').textContent).toContain('× cannot');
    expect(page.one('.banner.bad').textContent).toMatch(/none of 30\u202f000 fry can be promised/);
    expect(page.one('.banner.bad').textContent).toContain('What helps most');
  });
});

describe('writing', () => {
  test('hands the whole workbook over and reports the sheets', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    await page.press('Write into this workbook');
    const [written] = page.world.written;
    expect(written?.suffix).toBe('');
    expect(written?.model.sheets.length).toBeGreaterThan(3);
    expect(page.one('footer [role=status]').textContent).toContain(
      'The plan is written on new sheets: “Start”',
    );
    expect(page.all('progress')).toEqual([]);
  });

  test('a taken sheet name is a question; only a yes writes, under the free name', async () => {
    const page = openPage();
    page.world.writeOutcome = (suffix) =>
      suffix === ''
        ? { kind: 'taken', sheets: ['Today'], names: [], free: ' 2' }
        : { kind: 'written', sheets: ['Today 2'] };
    await page.press('Fill in an example');
    await page.press('Write into this workbook');
    expect(page.one('.question').textContent).toMatch(
      /There is a sheet called “Today” already\. Nothing was changed/,
    );
    expect(document.activeElement?.id).toBe('question');
    await page.press('Cancel');
    expect(page.all('.question')).toEqual([]);
    expect(document.activeElement?.id).toBe('plan-write');
    expect(page.world.written.map((one) => one.suffix)).toEqual(['']);
    await page.press('Write into this workbook');
    await page.press('Write beside them');
    expect(page.world.written.map((one) => one.suffix)).toEqual(['', '', ' 2']);
    expect(page.text()).toContain('“Today 2”');
  });

  test(
    'the suffix may be the user’s own word; one no sheet can have is refused with a ' + 'sentence',
    async () => {
      const page = openPage();
      page.world.writeOutcome = (suffix) =>
        suffix === ''
          ? { kind: 'taken', sheets: ['Today'], names: [], free: ' 2' }
          : { kind: 'written', sheets: ['Today June'] };
      await page.press('Fill in an example');
      await page.press('Write into this workbook');
      await page.type('#question-word', 'a/b');
      await page.press('Write beside them');
      expect(page.text()).toContain('“a/b” cannot go behind a sheet name');
      expect(page.world.written).toHaveLength(1);
      await page.type('#question-word', 'June');
      await page.press('Write beside them');
      expect(page.world.written.map((one) => one.suffix)).toEqual(['', ' June']);
    },
  );

  test('Escape answers a question with no', async () => {
    const page = openPage();
    page.world.writeOutcome = () => ({ kind: 'taken', sheets: ['Today'], names: [], free: ' 2' });
    await page.press('Fill in an example');
    await page.press('Write into this workbook');
    page.key('Escape');
    expect(page.all('.question')).toEqual([]);
    expect(page.world.written).toHaveLength(1);
  });

  test('a failure shows the sentence, and the form is as it was', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    page.world.failure = new HostProblem('A cell is being edited.');
    await page.press('Write into this workbook');
    expect(page.one('.banner.bad').textContent).toContain('A cell is being edited.');
    expect((page.one('#plan-wanted') as HTMLInputElement).value).toBe('30000');
    expect(page.one('#plan-write').getAttribute('aria-disabled')).toBeNull();
  });

  test('a fault of the program never shows its own words', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    page.world.failure = new TypeError('undefined is not a function');
    await page.press('Write into this workbook');
    expect(page.text()).not.toContain('undefined is not');
    expect(page.text()).toContain('did not expect');
  });

  test('a second press while work is under way starts nothing', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    const button = page.one('#plan-write');
    button.click();
    expect(page.all('progress')).toHaveLength(1);
    expect(button.getAttribute('aria-disabled')).toBe('true');
    button.click();
    await page.store.idle();
    expect(page.world.written).toHaveLength(1);
  });

  test('without a workbook there is no button to write, saving a file stays', async () => {
    const page = openPage('absent');
    expect(page.all('#plan-write')).toEqual([]);
    expect(page.all('#plan-save')).toHaveLength(1);
    await page.go('today');
    expect(page.text()).toContain('No workbook here');
  });
});
