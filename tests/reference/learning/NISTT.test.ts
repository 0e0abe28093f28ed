/**
 * NIST/SEMATECH e-Handbook of Statistical Methods, table of upper critical values of Student's t distribution
 * (http://www.itl.nist.gov/div898/handbook/). Columns 0.10 to 0.005, 33 rows, transcribed by the project from
 * a reprint that agrees with two others. The 0.001 column is left out: the reprints differ there in the third
 * decimal.
 */
import { normalQuantile } from '../../../shared/maths/normalQuantile';
import { twoSidedStudent } from '../../../shared/maths/studentQuantile';
import '../../support/printed';
import { tableOf } from '../../support/table';

const TAILS = ['0.10', '0.05', '0.025', '0.01', '0.005'];

test.each(tableOf('nist_student_t.csv').map((row) => [row.df ?? '', row] as const))(
  't with %s degrees of freedom',
  (df, row) => {
    for (const tail of TAILS)
      expect(twoSidedStudent(1 - 2 * Number(tail), Number(df))).toAgreeWithPrinted(row[tail] ?? '');
  },
);

test.each([
  ['0.10', '1.282'],
  ['0.05', '1.645'],
  ['0.025', '1.960'],
  ['0.01', '2.326'],
  ['0.005', '2.576'],
  ['0.001', '3.090'],
])('the last row, the normal distribution: %s', (tail, printed) => {
  expect(normalQuantile(1 - Number(tail))).toAgreeWithPrinted(printed);
});
