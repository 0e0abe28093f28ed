import type { MaterialName } from '../carbonate/materials';
import type { Advice } from '../titration/advise';
import { chanceOrganic, hardlyMoved } from '../titration/advise';
import type { Aim } from '../titration/nextDose';
import type { Series } from '../titration/series';

/** What the tables of a dosing say in words. */

const to2 = (x: number): string => (Math.round(x * 100) / 100).toFixed(2);

const WHY: Readonly<Record<Advice['limit'], string>> = {
  target: 'This should reach the target.',
  step: 'One step, no more.',
  top: 'Held back so as not to pass the top of the window.',
  doubt: 'Held back: the water does not answer as carbon dioxide alone would.',
  none: '',
};

/** The sentence for the vat side. */
export const todoFor = ({ action, limit, now, isMisfit }: Advice, aim: Aim): string => {
  switch (action) {
    case 'dose':
      return `Dissolve this dose in a bucket, pour it in where the water moves, mix, wait, measure, write the pH down. ${WHY[limit]}`;
    case 'stop':
      return `Stop: pH ${to2(now.likely)} is ${Math.abs(now.likely - aim.target) <= aim.near + 1e-9 ? 'near enough to the target' : 'in the window, and what is left moves less than the meter shows'}. Aerate and measure again tomorrow.`;
    case 'too high':
      return `Stop: pH ${to2(isMisfit ? now.high : now.likely)} is above the window. Add nothing; aerate, wait and measure again, or exchange water. Check ammonia if fish are in.`;
    case 'wait':
      return (
        'Wait: two readings at the same dose differ. Mix, give it the same time as before, ' +
        'measure again.'
      );
    case 'check':
      return (
        'Check before adding: the last dose did not raise the pH. Mix again, rinse and check ' +
        'the meter, check the product and the volume.'
      );
  }
};

export interface LikelierProduct {
  readonly name: MaterialName;
  readonly odds: number;
}

/** Chance of a hidden buffer from which it is spoken of; clear waters stay below 0.3. */
const LIKELY = 0.5;

/** What does not fit, and what the answer rests on. */
export const flagsFor = (
  a: { readonly material: MaterialName },
  s: Series,
  advice: Advice,
  likelier: LikelierProduct | undefined,
): string => {
  const remarks: string[] = [];
  const organic = chanceOrganic(advice.cloud);
  if (s.readings.length === 1)
    remarks.push(
      'One reading only: the dose rests on what such waters usually hold, and is kept ' +
        'small. The next reading tells far more.',
    );
  else if (new Set(s.doses).size === 1)
    remarks.push('No product given yet: repeated readings tell about the meter, not about the water.');
  if (advice.action === 'wait' || advice.action === 'check') return remarks.join(' ');
  if (advice.isMisfit)
    remarks.push(
      'The readings do not go together: a hidden buffer (peat, ammonia, phosphate, ' +
        'limestone in the vat), a wrong volume, a wrong product, or a meter that drifts. ' +
        'Half steps only.',
    );
  else if (s.readings.length > 2 && organic > LIKELY)
    remarks.push(
      `The water answers as if it held a buffer beside carbon dioxide (chance ${Math.round(100 * organic)} %), most likely acids of peat or leaves, or as if the product were weaker than said: small steps, pH can leap once the buffer is used up.`,
    );
  else if (hardlyMoved(s))
    remarks.push(
      'The last dose hardly moved the pH: the water is strongly buffered, or the product, ' +
        'the meter or the volume is not what it seems.',
    );
  if (likelier) remarks.push(`The readings fit ${likelier.name} better than ${a.material}: look at the bag.`);
  return remarks.join(' ');
};
