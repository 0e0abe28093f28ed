import { SOURCES } from '../../families/sources';
import type { SourceStanding } from '../../functions/source';
import { heightFor, styled } from '../../sheet/workbook/build';
import type { SheetModel } from '../../sheet/workbook/model';
import type { Assumption, AssumptionKey } from '../../families/assumptions';
import { assumptionList } from '../../families/assumptions';
import type { Book } from './context';

const HEAD = 4;
const STANDING: Readonly<Record<SourceStanding, string>> = {
  seen: 'published',
  memory: 'from memory, page not seen',
  practice: 'common practice, no source',
  computed: 'computed',
  standard: 'definition',
};

/** "Brzuska E. 2003" of a long citation. */
export const shortCitation = (citation: string): string => {
  const upToYear = /^(.{3,70}?\b(?:19|20)\d{2})\b/.exec(citation)?.[1];
  return upToYear ?? (citation.length > 48 ? `${citation.slice(0, 47)}…` : citation);
};
/** Where an assumption comes from, in a few words. */
export const originOf = ({ sources }: Assumption): string =>
  sources
    .map((key) => {
      const source = SOURCES[key];
      if (!source) return key;
      return source.standing === 'practice'
        ? STANDING.practice
        : `${shortCitation(source.citation)} (${STANDING[source.standing]})`;
    })
    .join('; ');

/** Only what a run of this kind uses. */
export const usedBy = (product: string): readonly Assumption<AssumptionKey>[] =>
  assumptionList.filter(({ key }) => product === 'fingerlings' || !key.startsWith('nursery'));

/** What the plan takes for granted, each figure with its range and where it comes from. */
export function assumptionsSheet(book: Book): {
  readonly sheet: SheetModel;
  readonly limits: (key: AssumptionKey) => { low: string; high: string };
} {
  const { plan, suffix } = book;
  const used = usedBy(plan.form.product);
  const sheet = book.sheet('Assumptions', {
    widths: [2, 34, 11, 10, 10, 10, 46, 52],
    tab: '6B5B95',
    freeze: { rows: HEAD, columns: 2 },
    print: { landscape: true, titleRows: [HEAD, HEAD] },
  });
  sheet.put('B1', 'What the plan takes for granted', 'title').height(1, 26);
  sheet.put(
    'B2',
    'Type your own figures over ours as soon as you have them. Poor and good are the ' +
      'ends that were published or are usual.',
    'subtitle',
  );
  sheet.row(`B${HEAD}`, ['Assumption', 'Value', 'Unit', 'Poor', 'Good', 'Where from', 'Note'], 'heading');
  used.forEach((a, i) => {
    const row = HEAD + 1 + i;
    const note = a.setWhenPlanned
      ? `${a.note} Fixed: it sets the number of rows, so plan again to change it.`
      : a.note;
    sheet
      .row(`B${row}`, [
        styled(a.label, 'text'),
        styled(plan.assumed[a.key], a.setWhenPlanned ? 'result' : 'input', { format: a.format }),
        styled(a.unit === 'share' ? '' : a.unit, 'text'),
        styled(a.low, 'cell', { format: a.format }),
        styled(a.high, 'cell', { format: a.format }),
        styled(originOf(a), 'text'),
        styled(note, 'text'),
      ])
      .height(row, heightFor([a.label, 34], [originOf(a), 46], [note, 52]));
    if (!a.setWhenPlanned)
      sheet.validate({ range: `C${row}`, kind: 'decimal', min: a.min, max: a.max, message: a.note });
    book.define(a.key, sheet.ref(`C${row}`));
  });
  sheet.table({ name: `assumptions${suffix}`, range: `B${HEAD}:H${HEAD + used.length}` });
  const rowOf = new Map(used.map((a, i) => [a.key, HEAD + 1 + i]));
  return {
    sheet: sheet.build(),
    limits: (key) => ({
      low: sheet.ref(`E${rowOf.get(key) ?? 0}`),
      high: sheet.ref(`F${rowOf.get(key) ?? 0}`),
    }),
  };
}
