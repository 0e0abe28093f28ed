import { TEMPLATES, buildTemplate } from '../../../templates';
import { dosingWaterHolds, seasonWaterHolds } from '../../templates/support/water';

// That the committed files are what a fresh build gives is looked at by `npm run check`.
describe.each(Object.entries(TEMPLATES))('%s', (name, model) => {
  const made = model();
  const built = buildTemplate(made);
  test('two builds give the same bytes', () => {
    expect(Buffer.from(buildTemplate(model())).equals(Buffer.from(built))).toBe(true);
  });

  test('its water, dosed as it says and aired, stands between 6.5 and 8 by another calculation', () => {
    if (name === 'dosing.xlsx') dosingWaterHolds(made);
    else seasonWaterHolds(made);
  });
});
