import { cardsWorkbook, changesOf } from '../../../shared/books/living';
import { dayOfBook, daySheetNames } from '../../../shared/books/living/reading/day';
import { summaryOf } from '../../../shared/books/summary';
import { bookText } from '../../support/bookText';
import { expectKept } from '../../support/kept';
import { gridOf } from '../../season/support/support';
import { broken } from '../../season/support/story';
import { livedBook } from '../living/livedBook';
import { readBack } from '../living/support';

/** A season half lived: every cell of its book, and all that is read back from it. */

const lived = livedBook();

test('its workbook: every cell, look, rule, width and chart', () => {
  expectKept('lived-book', bookText(lived.model));
});

test('an order handed over whole asks for nothing when its day is past: every check holds', () => {
  expect(broken(lived.model)).toEqual([]);
});

test('what is read of the workbook it was typed into', () => {
  const { read } = lived;
  expectKept('lived-read', read);
  expect(readBack(lived.model).missing).toEqual([]);
});

test('what a day asks of it', () => {
  const grids = lived.model.sheets.map(gridOf);
  expectKept(
    'lived-day',
    dayOfBook(
      grids.filter(({ name }) => daySheetNames('').includes(name)),
      '',
    ),
  );
});

test('the plan, what it changes, and the book it was made of', () => {
  expectKept('lived-plan', {
    plan: lived.plan,
    changes: changesOf(lived.read.plan, lived.plan),
    batches: lived.book.batches,
    earlier: lived.book.earlier,
  });
});

test('the page for somebody who lends money, and the cards of the vats', () => {
  const page = summaryOf(lived.model);
  if ('fault' in page) throw new Error(page.fault);
  expectKept('lived-pages', [bookText(page.model), bookText(cardsWorkbook(lived.book, lived.plan))]);
});
