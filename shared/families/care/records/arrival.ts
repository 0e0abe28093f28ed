import { deadOnArrival } from '../kernels/arrival';
import { bagFish } from '../kernels/bags';
import { weightParam } from '../../feeding/records/feed';
import { celsius, count, hours, perLitre, share, text } from '../../../units/quantities';
import { outside } from '../../../base/values';
import { column, defineFunction, fields } from '../../../functions/define';
import { num } from '../../../functions/params';

export const bagDead = defineFunction({
  id: 'BAG.DEAD',
  family: 'Rearing',
  summary: 'Dead fish to expect in bags on arrival, and how many to pack so that the order arrives alive.',
  params: {
    fish: num(count, { min: 1, max: 1e8, doc: 'Fish the buyer wants alive.' }),
    weight: weightParam,
    perLitre: num(perLitre, { above: 0, max: 5000, doc: 'Fish in a litre of bag water.' }),
    hours: num(hours, { min: 1, max: 48, doc: 'From closing the bag to opening it.' }),
    temperature: num(celsius, { min: 5, max: 35, default: 27, doc: 'Water in the bag: 27 °C if left out.' }),
  },
  returns: fields(
    {
      dead: column('Dead on arrival', count),
      share: column('Share', share),
      pack: column('Fish to pack', count),
      says: column('In words', text),
    },
    'A figure to plan with; count the dead of every trip and use your own.',
  ),
  valid: 'Sealed bags with oxygen, up to the highest load in print; the shares are chosen here, no source',
  sources: ['DUPREE84', 'SWANN', 'LIM03', 'JANSSEN85', 'PRACTICE'],
  questions: [
    'dead on arrival',
    'how many fish die in transport',
    'how many extra fish for the road',
    'losses in the bag',
    'fish that die on the way to the buyer',
  ],
  help:
    'No trial of this fish was found. 2 % at the careful load of SPAWN.BAG.FISH, up to 5 % at the ' +
    'highest: from there a trade in small fish pays the buyer back. Drums of fry of 1 g went 50 km without ' +
    'a loss. The share goes into Figures as fish alive when the buyer counts them.',
  examples: [
    {
      args: [6000, 0.5, 100, 5, 29],
      gives: [['123', '0.02', '6123', 'Pack 6123: 123 may be dead on arrival. Count them with the buyer.']],
      because: '100 in a litre is below the careful load of 110.',
    },
    {
      args: [6000, 0.5, 256, 5, 29],
      gives: [['218', '0.035', '6218', 'Pack 6218: 218 may be dead on arrival. Count them with the buyer.']],
      because: 'Halfway from 110 to 402 in a litre.',
    },
    {
      args: [6000, 0.5, 800, 5, 29],
      fails: { code: '#N/A', says: 'at most 401' },
      because: 'Denser than anything in print.',
    },
  ],
  compute: ({ fish, weight, perLitre: density, hours: span, temperature }) => {
    const lost = deadOnArrival(weight, density, span, temperature);
    if (Number.isNaN(lost)) {
      const most = Math.floor(bagFish(weight, span, temperature).high);
      return outside(
        `perLitre: ${density} fish of ${weight} g in a litre are more than any table holds for ${span} h at ${temperature} °C: at most ${most}. Take more bags.`,
      );
    }
    const pack = Math.ceil(fish / (1 - lost) - 1e-9);
    return {
      dead: pack - fish,
      share: lost,
      pack,
      says: `Pack ${pack}: ${pack - fish} may be dead on arrival. Count them with the buyer.`,
    };
  },
});
