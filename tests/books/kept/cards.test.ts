import { cardsWorkbook } from '../../../shared/books/living';
import { runOf } from '../../run/support';
import { expectKept } from '../../support/kept';

/** Every cell of the cards that hang at the vats: the run's page and a card for each vat. */
test('the cards of one run', () => {
  const { book, plan } = runOf({ temperature: 27, ph: 5.1, wanted: 6000, females: 3, males: 3 });
  expectKept('cards', cardsWorkbook(book, plan));
});
