import { gram, litre, millilitre, share } from '../../units/quantities';
import { line } from './declare';

const call = (litres: string, alkalinity: string): string =>
  `SPAWN.BUFFER.AIRED(${litres},{ph},{phWanted},${alkalinity},{water},{material})`;
/** Without a pH, or with one high enough, there is no dose. */
const dose = (litres: string): string =>
  `=IF(NOT(AND(ISNUMBER({ph}),ISNUMBER({phWanted}))),"",IF({ph}>={phWanted},0,IF(ISNUMBER({alkalinity}),${call(litres, '{alkalinity}')},${call(litres, '')})))`;
const toxic = (ph: string): string => `=IF(ISNUMBER({${ph}}),SPAWN.AMMONIA.SHARE({${ph}},{water}),"")`;

/** The water of a run before the eggs go in. */
export const WATER_LINES = {
  bucket: line('Trial bucket of 10 L', gram, dose('10'), {
    note: 'Air first; dissolve, air for an hour, read.',
  }),
  half: line('First half for 1,000 L', gram, '=IF(ISNUMBER({bucket}),{bucket}*50,"")'),
  stock: line('Trial bucket, of a stock of 5 g/L', millilitre, '=IF(ISNUMBER({bucket}),{bucket}*200,"")', {
    note: 'A trial of a bucket is a few hundredths of a gram: too little to weigh, so a stock is measured out.',
  }),
  halfEggs: line('First half, vats of the eggs', gram, '=IF(ISNUMBER({bucket}),{bucket}*{litresEggs}/20,"")'),
  changePerGram: line(
    'New water for a gram of feed',
    litre,
    '=INDEX(SPAWN.WATER.CHANGE(1,1000,MIN(9,IF(ISNUMBER({phWanted}),MAX({phWanted},N({ph})),7)),{water}),1,3)',
    { note: 'Keeps the toxic part of the ammonia under 0.05 mg/L at the pH of the vats.' },
  ),
  toxicNow: line('Toxic part of the ammonia now', share, toxic('ph')),
  toxicThen: line('Toxic part at the pH wanted', share, toxic('phWanted')),
} as const;
