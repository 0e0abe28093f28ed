/**
 * de Graaf G.J., Galemoni F., Banzoussi B. 1995. Aquaculture Research 26(4):233-242 (abstract): stripped eggs
 * 14.3 ± 1.3 % of body weight in the rainy, 1.3 ± 0.3 % in the dry season. Dadebo E. 2000 (DADEBO00): 669
 * eggs per gram on average. Transcribed from the abstracts.
 */
import { grid } from '../support/call';

test.each([
  ['rainy', '14.3', '13.0'],
  ['dry', '1.3', '1.0'],
])('%s season: %s %% of body weight, %s %% at the low end', (season, mean, low) => {
  // A million females' worth of eggs makes the whole number fine enough to read the share back.
  const eggs = 1e9;
  const [females, careful] = grid('FEMALES.SEASON', eggs, 1, season)[0] ?? [];
  expect((eggs / Number(females) / 1000 / 669) * 100).toAgreeWithPrinted(mean);
  expect((eggs / Number(careful) / 1000 / 669) * 100).toAgreeWithPrinted(low);
});
