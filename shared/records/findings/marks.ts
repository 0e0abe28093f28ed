import type { StyleName } from '../../sheet/workbook/model';
import type { RecordPlace } from '../schema';
import type { Finding } from './finding';
import { placeKey, SEVERITY_WORDS } from './finding';
import type { AuditReport } from './run';

/** A cell to colour and note; a host keeps what was there before so that marks can be taken away again. */
export interface FindingMark {
  readonly place: RecordPlace;
  readonly style: StyleName;
  readonly note: string;
}

/** Starts every note of ours: a host knows by it which notes it may take away. */
export const MARK_SIGN = 'Spawnbook check';
const STYLE_OF: Readonly<Record<Finding['severity'], StyleName>> = {
  impossible: 'bad',
  unlikely: 'warning',
  look: 'warning',
};

const noteOf = (findings: readonly Finding[]): string =>
  [
    MARK_SIGN,
    ...findings.map(
      ({ severity, sentence, proposal }) =>
        `${SEVERITY_WORDS[severity]}: ${sentence}${proposal ? ` Proposal: ${proposal}.` : ''}`,
    ),
  ].join('\n');

/** One mark for each cell with a finding, the worst deciding the colour. */
export function marksOf({ groups }: AuditReport): FindingMark[] {
  const at = new Map<string, Finding[]>();
  for (const { findings } of groups)
    for (const finding of findings) {
      const key = placeKey(finding.place);
      at.set(key, [...(at.get(key) ?? []), finding]);
    }
  return [...at.values()].flatMap((findings) => {
    const [worst] = findings;
    return worst ? [{ place: worst.place, style: STYLE_OF[worst.severity], note: noteOf(findings) }] : [];
  });
}
