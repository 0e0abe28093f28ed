import { sources } from './source';

/** Where the season plan's figures come from. */
export const planningSources = sources({
  STEEBY05: {
    citation: 'Steeby J., Avery J. 2005. Channel catfish broodfish and hatchery management. SRAC Publication 1803',
    standing: 'seen',
    note: 'another catfish: used for the arithmetic of the chain, not for rates',
  },
  PIKECHAIN: {
    citation: 'Course paper (Russian) on the capacity of a pike farm, bakalavr-info.ru/work/7743423: worked chain from surplus fish back to females',
    standing: 'seen',
    note: 'prints millions to one decimal; the arithmetic divides by survival',
  },
  STERLETCHAIN: {
    citation: 'Course paper (Russian) on sterlet brood stock, cwetochki.ru, page 4: worked chain that adds the loss instead of dividing by the survival',
    standing: 'seen',
    note: 'a counter-example: 50 % loss needs twice the number, not one and a half times',
  },
});
