export { FIELDS, fieldSpec, FIELD_NAMES, isTextField } from './fields';
export type { FieldName, FieldSpec, NumericField, RecordText } from './fields';
export { isAccepted, numberOf, RunRecordSchema, textOf } from './schema';
export type { RunRecord, RunValues, Sourced } from './schema';
export { readFileCells, sheetFromRange } from './read';
export type { FileCells, RangeCells, SheetCells } from './read';
export {
  CorrectionSchema,
  rememberedFrom,
  rememberedOf,
  RememberedSchema,
  rememberedText,
} from './columns/mapping';
export type { Correction, MappedColumn, Remembered } from './columns/mapping';
export { recordTables } from './table';
export type { RecordTable } from './table';
export { auditSheets } from './findings/run';
export type { AuditAsk, AuditReport } from './findings/run';
export type { Finding, FindingGroup, NotChecked } from './findings/finding';
export { placeKey, SEVERITY_WORDS } from './findings/finding';
export { addressText, findingsWorkbook, FINDINGS_SHEET, harmless, sourceWords } from './findings/sheet';
export { marksOf } from './findings/marks';
export type { FindingMark } from './findings/marks';
export { checkFile, runToEnd } from './checkFile';
export type { CheckedFile, Watch } from './checkFile';
export { runRecords } from './records';
export { baseInWords, hatchBaseOf, shareQuestions } from './shareBase';
export type { ShareBase, ShareQuestion } from './shareBase';
export { findRule, RULES } from './rules';
export type { AuditOptions, LatencyOffsets, Rule, Severity } from './rules/rule';
export { notReadSentence, readingShare } from './findings/reading';
export type { ColumnQuestion, ReadingShare } from './findings/reading';
export { unitChoices } from './columns/cells/units';
