/**
 * Uka A., Kalu S.E. Neighbourhood boreholes and Clarias gariepinus egg hatching (abstract): first hatch after
 * 1443 to 1517 minutes, last after 1957 to 2037. Transcribed from the abstract. The temperature is not given,
 * so only the width is checked.
 */
import { LAST_HATCH_SHARE } from '../../../shared/families/timing/kernels/window';

test('from the middle of the first hatch the window ends within the printed range', () => {
  const last = ((1443 + 1517) / 2) * LAST_HATCH_SHARE;
  expect(last).toBeGreaterThanOrEqual(1957);
  expect(last).toBeLessThanOrEqual(2037);
});
