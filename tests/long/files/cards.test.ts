import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { cardsWorkbook } from '../../../shared/books/living';
import { writeXlsx } from '../../../shared/files/write';
import { runOf } from '../../run/support';
import { hasSoffice, startJudge } from '../../files/share/support/soffice';

/** The cards as they come out of a printer: LibreOffice lays them out, poppler reads the pages. */

const whenConverts = hasSoffice ? test : test.skip;
interface Word {
  readonly page: number;
  readonly text: string;
  /** From the top to the bottom of its line, in points. */
  readonly height: number;
}
function wordsOf(pdf: Uint8Array): readonly Word[] {
  const folder = mkdtempSync(join(tmpdir(), 'spawnbook-cards-'));
  const file = join(folder, 'cards.pdf');
  writeFileSync(file, pdf);
  const html = execFileSync('pdftotext', ['-bbox', file, '-'], { encoding: 'utf8' });
  rmSync(folder, { recursive: true, force: true });
  return html.split('<page ').flatMap((text, page) =>
    [...text.matchAll(/<word [^>]*yMin="([\d.]+)"[^>]*yMax="([\d.]+)">([^<]*)</g)].map(
      ([, top = '', bottom = '', word = '']): Word => ({
        page,
        text: word.replaceAll('&amp;', '&'),
        height: Number(bottom) - Number(top),
      }),
    ),
  );
}
const plainWords = (text: string): string => text.replace(/\s+/g, ' ').trim();
/** Read at arm's length: letters of 14 points, whose line is about 1.15 times as high. */
const LEAST = 14 * 1.14;

whenConverts.each([
  ['fry from four females', { product: 'fry', wanted: 30_000, females: 4, femaleWeight: 1.2, males: 4 }],
  [
    'fingerlings, glands of own fish',
    { wanted: 6000, females: 3, males: 3, preparation: 'own-species pituitary' },
  ],
])('%s: one page a card, nothing cut, hours in letters of 14 points', (_, changes) => {
  const { book, plan } = runOf({ temperature: 27, ph: 5.1, ...changes });
  const model = cardsWorkbook(book, plan);
  const judge = startJudge(false);
  const words = wordsOf(judge.save(writeXlsx(model), 'pdf'));
  judge.close();
  expect(Math.max(...words.map(({ page }) => page))).toBe(model.sheets.length);
  model.sheets.forEach(({ name, cells }, i) => {
    const onPage = words.filter(({ page }) => page === i + 1);
    const text = plainWords(onPage.map((word) => word.text).join(' '));
    for (const { value } of Object.values(cells))
      for (const word of typeof value === 'string' ? plainWords(value).split(' ') : [])
        expect([name, text.includes(word) ? word : `${word} is cut`]).toEqual([name, word]);
    // The list of buyers that the cards look up is no card.
    if (!/^(Run|Vat card) /.test(name)) return;
    const hours = Object.values(cells)
      .filter(({ style }) => style === 'result')
      .flatMap(({ value }) => /\d\d:\d\d$/.exec(String(value))?.[0] ?? []);
    expect(hours.length).toBeGreaterThan(2);
    for (const hour of new Set(hours)) {
      const tallest = Math.max(...onPage.filter((word) => word.text === hour).map(({ height }) => height));
      expect([name, hour, tallest >= LEAST ? 'large' : tallest]).toEqual([name, hour, 'large']);
    }
    const boxes = Object.values(cells).filter(({ style }) => style === 'blank').length;
    expect(boxes).toBeGreaterThan(30);
    for (const box of ['°C', 'pH', 'Dead', 'Initials', 'Counted']) expect(text).toContain(box);
  });
});
