import type { AuditReport, Finding } from '../../../shared/records';

const saidOf = ({ rule, severity, place, related, sentence, proposal }: Finding): string =>
  [
    `${rule} ${severity} ${place.sheet}!${place.cell}`,
    related.map(({ sheet, cell }) => `${sheet}!${cell}`).join(' '),
    sentence,
    proposal ?? '',
  ].join(' | ');
/** Every finding of a report, a line each. */
export const findingsOf = ({ groups }: AuditReport): string[] =>
  groups.flatMap(({ findings, more }) => [...findings.map(saidOf), ...(more > 0 ? [`and ${more}`] : [])]);
/** What every column of every table was read as. */
export const columnsOf = ({ tables }: AuditReport): string[] =>
  tables.map(
    ({ title, layout, length, mapping, links }) =>
      `${title} (${layout}, ${length}, ${links.length} links): ${mapping
        .map(({ field, unit }) => `${field ?? '–'} ${unit ?? ''}`.trim())
        .join(', ')}`,
  );
