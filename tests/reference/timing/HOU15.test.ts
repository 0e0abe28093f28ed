/**
 * Hou C.H., Siew I.N. 2015. Nutritional transition period in early larvae of Clarias gariepinus (abstract):
 * 27.5 to 28.6 °C, first food at 36 h, yolk gone at 68 h after hatching. Transcribed from the abstract.
 */
import { number } from '../../support/call';

test('first food at 36 h and no yolk at 68 h at the middle of the printed temperatures', () => {
  expect((number('FEEDING.START', 46000, 28.05) - 46000) * 24).toAgreeWithPrinted('36');
  expect((number('YOLK.GONE', 46000, 28.05) - 46000) * 24).toAgreeWithPrinted('68');
});
