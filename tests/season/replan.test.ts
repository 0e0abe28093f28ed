import { compareSeasons, planSeasonBook } from '../../shared/season';
import { BOOK, bookOf, faultsOf } from './support';

const DRAWN = { draws: 200 };
const before = planSeasonBook(bookOf(), DRAWN);
const [first] = before.runs;
if (!first) throw new Error('no run');

/** Six weeks on: the first run came out at a third of what was planned. */
const later = (fish: number) => ({
  plannedOn: Math.floor(first.stripAt) + 14,
  underway: [{ order: first.order, vats: [...(first.vats.at(-1)?.names ?? [])], until: first.due, fish }],
  females: BOOK.females.map((f) =>
    first.females.some(({ tag }) => tag === f.tag) ? { ...f, lastUsed: Math.floor(first.stripAt) } : f,
  ),
  males: BOOK.males.filter(({ tag }) => !first.males.includes(tag)),
});

test('a run under way counts towards its order, and its vats are taken until it leaves', () => {
  const book = bookOf(later(60_000));
  const after = planSeasonBook(book, DRAWN);
  expect(after.orders[0]?.expected).toBeCloseTo(60_000, 6);
  expect(after.runs.map(({ order }) => order)).toEqual(['Pond club']);
  const taken = new Set(book.underway[0]?.vats);
  for (const stay of after.occupancy)
    if (taken.has(stay.vat)) expect(stay.from).toBeGreaterThanOrEqual(first.due + book.cleaningDays);
  expect(
    after.runs.some((run) => run.females.some(({ tag }) => first.females.some((f) => f.tag === tag))),
  ).toBe(false);
});

test('what fell short is said, and no run is planned that cannot be ready', () => {
  const book = bookOf(later(20_000));
  const after = planSeasonBook(book, DRAWN);
  expect(after.orders[0]?.expected).toBeCloseTo(20_000, 6);
  expect(after.canBeMet).toBe(false);
  const messages = compareSeasons(before, after, book.plannedOn).map(({ message }) => message);
  expect(messages).toContain('Lake farms: 20,000 fish instead of 60,000, 40,000 short.');
});

test('the same plan again changes nothing', () => {
  expect(compareSeasons(before, planSeasonBook(bookOf(), DRAWN), 0)).toEqual([]);
});

test('a due date put off moves the strip', () => {
  const after = planSeasonBook(
    bookOf({ orders: [BOOK.orders[0], { ...BOOK.orders[1], due: '2027-05-24' }] }),
    DRAWN,
  );
  expect(compareSeasons(before, after, 0).map(({ message }) => message)).toEqual([
    'Pond club: the strip of 2027-03-28 moves to 2027-04-11, 14 days later.',
  ]);
});

test.each([
  [
    { underway: [{ order: 'Nobody', vats: ['Vat 1'], until: '2027-03-01', fish: 5 }] },
    'underway.0.order | Nobody: there is no such order in the book.',
  ],
  [
    { underway: [{ order: 'Lake farms', vats: ['Vat 9'], until: '2027-03-01', fish: 5 }] },
    'underway.0.vats | Vat 9: there is no such vat in the book.',
  ],
  [
    { underway: [{ order: 'Lake farms', vats: ['Vat 1', 'Vat 1'], until: '2027-03-01', fish: 5 }] },
    'underway.0.vats | Vat 1: holds two runs under way. Which one is it?',
  ],
  [
    { underway: [{ order: 'Lake farms', vats: ['Vat 1'], until: '2026-03-01', fish: 5 }] },
    'underway.0.until | Lake farms: its vats were taken until 2026-03-01, which is over. Take the run out.',
  ],
])('%j is refused in a sentence', (changes, sentence) => {
  expect(faultsOf(changes)).toContain(sentence);
});
