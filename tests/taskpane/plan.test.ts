import { HostProblem } from '../../taskpane/host/port';
import { readForm, exampleTexts, initialPlan } from '../../taskpane/screens/plan/state/plan';
import { previewOf } from '../../taskpane/screens/plan/state/preview';
import { openPage } from './page';
import { TODAY } from './seasonModel';

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
        /Water temperature: expected a number from [\d.]+ to 30 °C, got 82/,
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

describe('the preview', () => {
  test('shows before anything is written: hours, vats, numbers', async () => {
    const page = openPage();
    expect(page.text()).toContain('more fields and the plan shows here');
    await page.press('Fill in an example');
    const preview = page.one('.preview');
    for (const words of [
      'Females to inject',
      'Hormone liquid',
      'poor to good end',
      'Buffer: soda ash',
      'Inject',
      'First meal',
    ])
      expect(preview.textContent).toContain(words);
    expect(page.all('.moment .clock').every((clock) => /^\d\d:\d\d$/.test(clock.textContent ?? ''))).toBe(
      true,
    );
    expect(page.all('svg rect').length).toBeGreaterThan(1);
    expect(page.one('svg').getAttribute('aria-label')).toMatch(/vat.* from \d{4}-\d\d-\d\d/);
    expect(page.world.written).toEqual([]);
  });

  test('follows the form: twice the fish, twice the eggs', () => {
    const texts = exampleTexts(initialPlan(TODAY).texts);
    const eggs = (wanted: string): number => {
      const { form } = readForm({ ...texts, wanted });
      const figure = form && previewOf(form).figures.find(({ label }) => label === 'Eggs to strip');
      return Number(figure?.value.replaceAll('\u202f', ''));
    };
    expect(eggs('40000') / eggs('20000')).toBeCloseTo(2, 3);
  });

  test('moments come in order of time', () => {
    const { form } = readForm(exampleTexts(initialPlan(TODAY).texts));
    const at = form ? previewOf(form).moments.map((moment) => moment.at) : [];
    expect(at.length).toBeGreaterThan(8);
    expect(at).toEqual([...at].sort((a, b) => a - b));
  });

  test('an order that cannot be met says so in words, not by colour alone', async () => {
    const page = openPage();
    await page.press('Fill in an example');
    await page.type('#plan-females', '0');
    expect(page.one('.banner.bad').textContent).toMatch(/^✕The order cannot be met/);
    expect(page.text()).not.toContain('The order can be met with what you have');
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
        ? { kind: 'taken', sheets: ['Start'], names: [], free: ' 2' }
        : { kind: 'written', sheets: ['Start 2'] };
    await page.press('Fill in an example');
    await page.press('Write into this workbook');
    expect(page.one('.question').textContent).toMatch(
      /There is a sheet called “Start” already\. Nothing was changed/,
    );
    expect(document.activeElement?.id).toBe('question');
    await page.press('Cancel');
    expect(page.all('.question')).toEqual([]);
    expect(document.activeElement?.id).toBe('plan-write');
    expect(page.world.written.map((one) => one.suffix)).toEqual(['']);
    await page.press('Write into this workbook');
    await page.press('Write beside them');
    expect(page.world.written.map((one) => one.suffix)).toEqual(['', '', ' 2']);
    expect(page.text()).toContain('“Start 2”');
  });

  test(
    'the suffix may be the user’s own word; one no sheet can have is refused with a ' + 'sentence',
    async () => {
      const page = openPage();
      page.world.writeOutcome = (suffix) =>
        suffix === ''
          ? { kind: 'taken', sheets: ['Start'], names: [], free: ' 2' }
          : { kind: 'written', sheets: ['Start June'] };
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
    page.world.writeOutcome = () => ({ kind: 'taken', sheets: ['Start'], names: [], free: ' 2' });
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
    expect((page.one('#plan-wanted') as HTMLInputElement).value).toBe('60000');
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
