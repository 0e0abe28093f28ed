import { checkFile } from '../../../shared/records';
import { largeBook } from '../../bench/audit';

test('50,000 clean rows × 20 columns: every row read, progress reported, few false alarms', () => {
  let reports = 0;
  const checked = checkFile(largeBook(), 'book.xlsx', {}, () => {
    reports++;
    return true;
  });
  if (!('report' in checked)) throw new Error(JSON.stringify(checked));
  const { report } = checked;
  expect(report.records).toBe(50_000);
  expect(report.tables[0]?.mapping.filter(({ field }) => field !== undefined)).toHaveLength(20);
  expect(reports).toBeGreaterThan(20);
  expect(report.found / report.records).toBeLessThanOrEqual(1 / 200);
});
