import { IDefinedNamesService } from '@univerjs/engine-formula';
import type { Sheet } from './support/engine';
import { startSheet } from './support/engine';

let sheet: Sheet;
beforeAll(() => {
  sheet = startSheet();
  const names = sheet.univer.__getInjector().get(IDefinedNamesService);
  names.registerDefinedName('book', { id: 'n1', name: 'product', formulaOrRefString: "'My sheet'!$A$1" });
  names.registerDefinedName('book', {
    id: 'n2',
    name: 'both',
    formulaOrRefString: "='My sheet'!$A$1+'My sheet'!$A$2",
  });
});
afterAll(() => {
  sheet.close();
});

test('a name spelled like a function leaves the function alone', async () => {
  await sheet.set('A1', 4);
  await sheet.set('A2', 5);
  expect(await sheet.set('B1', '=PRODUCT(A1:A2)+product')).toBe(24);
});

test('what a name stands for counts as one value', async () => {
  expect(await sheet.set('B2', '=2*both')).toBe(18);
});
