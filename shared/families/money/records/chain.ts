import { endOfChain, startOfChain } from '../kernels/chain';
import { count, share } from '../../../units/quantities';
import { defineFunction, value } from '../../../functions/define';
import { num, series } from '../../../functions/params';

const survivals = series(share, {
  above: 0,
  max: 1,
  doc: 'Share that comes through each step, one cell per step (80 % is 0.8). Blank cells are skipped.',
});
const because = 'A share above 1 is a percentage typed as a number, and the sentence says so.';

export const chainStart = defineFunction({
  id: 'CHAIN.START',
  family: 'Plan and money',
  summary:
    'Number to start with so that the wanted number is left after every step: divides by each survival.',
  questions: [
    'losses at each stage',
    'overall survival egg to juvenile',
    'if I want 10k fingerlings how many egg I need',
  ],
  params: {
    wanted: num(count, { min: 0, doc: 'Number wanted at the end.' }),
    survivals,
  },
  returns: value(count, 'Number needed before the first step, not rounded: round it up yourself.'),
  valid: 'Exact arithmetic; as good as the survivals',
  sources: ['DEFINITION', 'SRAC1803', 'PIKEPLAN', 'STERLETCHAIN'],
  native: '{wanted}/PRODUCT({survivals})',
  help:
    'Losses are never added up or added on: to have 10,000 left after losing half you ' +
    'need 20,000, not 15,000. The order of the steps does not matter.',
  examples: [
    {
      args: [1e6, [[0.7], [0.7]]],
      gives: '2040816',
      because:
        'A million divided by 70 % twice; times 1 / (0.5 spawning · 3000 eggs per lb) it is ' +
        'the 1,360 lb of females of SRAC1803.',
    },
    {
      args: [10000000, 0.5],
      gives: '20000000',
      because:
        'Half is lost, so twice as many are needed; STERLETCHAIN prints 15 million, which leaves only 7.5.',
    },
    { args: [1000, [[70], [0.8]]], fails: { code: '#VALUE!', says: '70' }, because },
  ],
  compute: ({ wanted, survivals: shares }) => startOfChain(wanted, shares),
});

export const chainEnd = defineFunction({
  id: 'CHAIN.END',
  family: 'Plan and money',
  summary: 'Number left of those started with after every step: multiplies by each survival.',
  questions: [
    'how many are left after every step',
    'fry left from so many eggs',
    'number after each survival',
  ],
  params: {
    started: num(count, { min: 0, doc: 'Number before the first step.' }),
    survivals,
  },
  returns: value(count, 'Number expected to be left, not rounded: round it down yourself.'),
  valid: 'Exact arithmetic; as good as the survivals',
  sources: ['DEFINITION'],
  native: '{started}*PRODUCT({survivals})',
  examples: [
    {
      args: [2040816, [[0.7], [0.7]]],
      gives: '1000000',
      because: 'The way back of the chain of a million fish.',
    },
    { args: [1000, 60], fails: { code: '#VALUE!', says: '60' }, because },
  ],
  compute: ({ started, survivals: shares }) => endOfChain(started, shares),
});
