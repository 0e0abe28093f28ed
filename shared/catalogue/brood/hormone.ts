import { volumeByWeight } from '../../brood/hormone';
import { kilogram, millilitre, mlPerKg } from '../../units/quantities';
import { defineFunction, value } from '../define';
import { num } from '../params';

export const fishWeight = num(kilogram, { above: 0, max: 30, doc: 'Weight of one fish.' });

export const hormoneVolume = defineFunction({
  id: 'HORMONE.VOLUME',
  family: 'Brood fish',
  summary: 'Millilitres of a ready-made hormone solution for one fish, by its weight.',
  params: {
    weight: fishWeight,
    dose: num(mlPerKg, { above: 0, max: 3, default: 0.5, doc: 'Millilitres per kg of fish, from the leaflet. Published for African catfish: 0.4 to 0.5.' }),
  },
  returns: value(millilitre, 'Volume to inject.'),
  valid: 'African catfish at 0.4 to 0.5 mL/kg, single injection; carps were given 0.25 to 0.80 mL/kg',
  sources: ['BRZUSKA03', 'SUEZ', 'READYMADE'],
  cautions: ['HORMONE'],
  help: 'Give it a range of weights and the doses spill. For pituitary powder or hCG use SPAWN.HORMONE.DOSE.',
  examples: [
    { args: [1.2], gives: '0.60', because: '1.2 kg at 0.5 mL/kg.' },
    { args: [[[0.8], [1.5]], 0.4], gives: [['0.32'], ['0.60']], because: 'A range of weights gives a range of doses.' },
    { args: [1200], fails: { code: '#VALUE!', says: '1.2 kg' }, because: 'A weight typed in grams is named.' },
  ],
  compute: ({ weight, dose }) => volumeByWeight(weight, dose),
});
